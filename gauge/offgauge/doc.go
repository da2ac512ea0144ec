// Package offgauge works out the numbers of a pattern for a maker whose gauge is
// another than the pattern's.
//
// A Change holds the two gauges of one direction. Measures says what comes out
// when the counts are left as they are; Count and Counts give new counts by a
// rule; Alike gives counts that are all even or all odd, or share another
// remainder; Centred and Parts keep the parts of a row adding up: a neck between
// two equal shoulders, or any list of parts.
//
// Every count carries its exact value, its neighbours and the length it is off;
// see gauge.Count. Errors are those of package gauge.
package offgauge

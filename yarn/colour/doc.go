// Package colour follows yarn that changes colour along its length: where each
// colour ends on a panel, and how a second panel is made to match the first.
package colour

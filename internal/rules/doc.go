// Package rules holds no code. Its tests read the packages of this module and
// fail where one breaks a rule that a compiler does not know: a float or a
// rounding division on the way to a number, a package variable that can change,
// an exported name without a doc comment, an exported function or method
// without a checked example.
package rules

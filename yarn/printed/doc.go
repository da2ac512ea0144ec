// Package printed goes the way back: it checks the yarn that a pattern prints.
// A right list gives no finding; a finding says size, got, want and why, and
// leaves the repair to the editor.
package printed

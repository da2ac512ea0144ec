// Package yarn works out how much yarn to buy, how sure that is, and what to do
// with another yarn.
package yarn

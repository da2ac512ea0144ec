// Package care holds what a pattern should say about finishing and safety, as
// data with its sources: how to block a fibre, and the cautions that belong to a
// step. None of it is legal or medical advice: local rules and licensed practice
// go first, and the care symbols of the label before any table.
package care

// Package weight tells how thick a yarn is (grist), which weight categories of
// the published tables fit it, and what another yarn in its place would take.
package weight

// Package svg writes plain SVG 1.1: lines, dots and text in black on white,
// placed by whole tenths of a unit.
package svg

import (
	"bytes"
	"encoding/xml"
	"fmt"
	"strconv"
)

// Doc is a drawing in the making. The zero value is empty.
type Doc struct{ b bytes.Buffer }

// num prints tenths of a unit.
func num(n int) string {
	sign := ""
	if n < 0 {
		sign, n = "-", -n
	}
	if n%10 == 0 {
		return sign + strconv.Itoa(n/10)
	}
	return sign + strconv.Itoa(n/10) + "." + strconv.Itoa(n%10)
}

func escape(s string) string {
	var b bytes.Buffer
	xml.EscapeText(&b, []byte(s)) // a buffer takes all
	return b.String()
}

// Line draws a line; style holds further attributes.
func (d *Doc) Line(x1, y1, x2, y2 int, style string) {
	fmt.Fprintf(&d.b, "<line x1=\"%s\" y1=\"%s\" x2=\"%s\" y2=\"%s\" %s/>\n", num(x1), num(y1), num(x2), num(y2), style)
}

// Arrow draws a level or upright line with a head at its end.
func (d *Doc) Arrow(x1, y1, x2, y2 int) {
	const head, half = 70, 35
	d.Line(x1, y1, x2, y2, `stroke-width="1.2"`)
	ax, ay, bx, by := x2-head, y2-half, x2-head, y2+half
	switch {
	case x2 < x1:
		ax, bx = x2+head, x2+head
	case y2 < y1:
		ax, ay, bx, by = x2-half, y2+head, x2+half, y2+head
	case y2 > y1:
		ax, ay, bx, by = x2-half, y2-head, x2+half, y2-head
	}
	fmt.Fprintf(&d.b, "<path d=\"M%s %sL%s %sL%s %sZ\" stroke=\"none\" fill=\"black\"/>\n", num(x2), num(y2), num(ax), num(ay), num(bx), num(by))
}

// Dot draws a small full circle.
func (d *Doc) Dot(x, y int) {
	fmt.Fprintf(&d.b, "<circle cx=\"%s\" cy=\"%s\" r=\"3\" stroke=\"none\" fill=\"black\"/>\n", num(x), num(y))
}

// Text writes a line of text from, about or to x (anchor start, middle, end),
// its base line at y.
func (d *Doc) Text(x, y int, anchor string, bold bool, text string) {
	if text == "" {
		return
	}
	weight := ""
	if bold {
		weight = ` font-weight="bold"`
	}
	fmt.Fprintf(&d.b, "<text x=\"%s\" y=\"%s\" text-anchor=\"%s\"%s stroke=\"none\" fill=\"black\">%s</text>\n", num(x), num(y), anchor, weight, escape(text))
}

// Bytes returns the whole document, on white, with a title and a description
// for those who do not see it.
func (d *Doc) Bytes(width, height, fontSize int, title, desc string) []byte {
	var b bytes.Buffer
	w, h := num(width), num(height)
	fmt.Fprintf(&b, "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"+
		"<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" viewBox=\"0 0 %s %s\" width=\"100%%\" role=\"img\" aria-labelledby=\"schematic-title schematic-desc\">\n"+
		"<title id=\"schematic-title\">%s</title>\n<desc id=\"schematic-desc\">%s</desc>\n"+
		"<rect width=\"%s\" height=\"%s\" fill=\"white\"/>\n"+
		"<g stroke=\"black\" fill=\"none\" font-family=\"sans-serif\" font-size=\"%s\">\n", w, h, escape(title), escape(desc), w, h, num(fontSize))
	b.Write(d.b.Bytes())
	b.WriteString("</g>\n</svg>\n")
	return b.Bytes()
}

package svg

import (
	"encoding/xml"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestDoc(t *testing.T) {
	var d Doc
	d.Line(0, 5, 100, -5, `stroke-width="1"`)
	d.Dot(10, 20)
	d.Arrow(0, 0, 200, 0)
	d.Arrow(200, 0, 0, 0)
	d.Arrow(0, 0, 0, 200)
	d.Arrow(0, 200, 0, 0)
	d.Text(10, 20, "start", true, `a < b & "c"`)
	d.Text(10, 20, "start", false, "")
	got := string(d.Bytes(4800, 1005, 150, "A <title>", "what & how"))
	for _, want := range []string{
		`viewBox="0 0 480 100.5"`, `<title id="schematic-title">A &lt;title&gt;</title>`, `<desc id="schematic-desc">what &amp; how</desc>`,
		`<line x1="0" y1="0.5" x2="10" y2="-0.5" stroke-width="1"/>`, `<circle cx="1" cy="2" r="3"`, `font-size="15"`,
		`<path d="M20 0L13 -3.5L13 3.5Z"`, `<path d="M0 0L7 -3.5L7 3.5Z"`, `<path d="M0 20L-3.5 13L3.5 13Z"`, `<path d="M0 0L-3.5 7L3.5 7Z"`,
		`font-weight="bold" stroke="none" fill="black">a &lt; b &amp; &#34;c&#34;</text>`,
	} {
		require.Contains(t, got, want)
	}
	require.Equal(t, 1, strings.Count(got, "<text"), "an empty text draws nothing")
	require.NoError(t, xml.Unmarshal([]byte(got), new(struct {
		XMLName xml.Name `xml:"http://www.w3.org/2000/svg svg"`
	})))
}

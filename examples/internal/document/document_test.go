package document_test

import (
	"bytes"
	"encoding/xml"
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.com/panelmath/examples/internal/document"
	"example.com/panelmath/examples/internal/document/accessible"
	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"
)

var update = flag.Bool("update", false, "write the golden files")

const drawing = `<?xml version="1.0" encoding="UTF-8"?>
<svg xmlns="http://www.w3.org/2000/svg" version="1.1" viewBox="0 0 480 120" role="img" aria-labelledby="t d">
<title id="t">A panel</title><desc id="d">One panel, id=&#34;t&#34; in its text.</desc>
<rect x="40" y="20" width="400" height="80" fill="none" stroke="black"/><text x="240" y="115">A</text>
</svg>
`

// sampler has every kind of block, and two drawings that bear the same names.
func sampler() document.Document {
	return document.Document{Title: "Heron shawl & <friends>", Sections: []document.Section{
		{Heading: "Sizes", Blocks: []document.Block{
			document.Table{Caption: "To fit:", Header: []string{"Size", "Chest, in", "Chest, cm"}, Rows: [][]string{{"S", "32", "81"}, {"M–L", "36–42", "91.5 | 106.5"}}},
			document.Para{Text: "Numbers stand as S (M–L)."},
		}},
		{Heading: "Schematic", Blocks: []document.Block{
			document.Figure{SVG: drawing, Caption: "The panel, to scale.", Key: []document.KeyLine{{Sign: "A", Text: "hem: 57 (69) sts"}}},
			document.Figure{SVG: drawing, Caption: "The panel again."},
		}},
		{Heading: "Panel (make 2)", Blocks: []document.Block{
			document.Instructions{Lines: []document.Line{
				{Label: "Row 1 (RS)", Text: "fhdc 57 (69).", Count: "57 (69) sts"},
				{Label: "Row 2", Text: "[sc in next 2 sts, sc2tog] 4 times; *ch 2, sk 2, dc in next st; rep from * across."},
				{Text: "Rep Row 2 until 12 (14) rows are worked in total."},
			}},
			document.Caution{Text: "Rest your hands."},
		}},
		{Heading: "Finishing", Blocks: []document.Block{
			document.List{Numbered: true, Items: []string{"Block the panels.", "Sew the sides."}},
			document.List{Items: []string{"Markers", "Pins"}},
		}},
	}}
}

// hostile has the same text wherever a text can stand.
func hostile(s string) document.Document {
	return document.Document{Title: s, Sections: []document.Section{{Heading: s, Blocks: []document.Block{
		document.Para{Text: s}, document.Caution{Text: s}, document.Figure{SVG: drawing, Caption: s, Key: []document.KeyLine{{Sign: s, Text: s}}},
		document.List{Items: []string{s}}, document.List{Numbered: true, Items: []string{s}},
		document.Table{Caption: s, Header: []string{s, s}, Rows: [][]string{{s, s}}},
		document.Instructions{Lines: []document.Line{{Label: s, Text: s, Count: s}, {Text: s}}},
	}}}}
}

func html(t *testing.T, d document.Document, large bool) string {
	t.Helper()
	var b bytes.Buffer
	require.NoError(t, d.HTML(&b, large))
	return b.String()
}

func golden(t *testing.T, name, got string) {
	t.Helper()
	file := filepath.Join("testdata", name)
	if *update {
		require.NoError(t, os.WriteFile(file, []byte(got), 0o644))
	}
	want, err := os.ReadFile(file)
	require.NoError(t, err)
	if diff := cmp.Diff(string(want), got); diff != "" {
		t.Errorf("%s (-want +got):\n%s", file, diff)
	}
}

func TestGolden(t *testing.T) {
	golden(t, "sampler.md", sampler().Markdown())
	golden(t, "sampler.txt", sampler().Text())
	golden(t, "sampler.html", html(t, sampler(), false))
	golden(t, "sampler-large.html", html(t, sampler(), true))
	var b bytes.Buffer
	require.NoError(t, sampler().Fragment(&b))
	golden(t, "sampler-fragment.html", b.String())
}

// What each text must look like in Markdown so that a reader of CommonMark with
// pipe tables shows it as it is: at the start of a paragraph, and in a heading.
func TestMarkdownEscapes(t *testing.T) {
	for _, c := range []struct{ text, start, heading string }{
		{"*ch 2, sk 2; rep from * across", `\*ch 2, sk 2; rep from \* across`, `\*ch 2, sk 2; rep from \* across`},
		{"a_b __c__ `d` ~~e~~", "a\\_b \\_\\_c\\_\\_ \\`d\\` \\~\\~e\\~\\~", "a\\_b \\_\\_c\\_\\_ \\`d\\` \\~\\~e\\~\\~"},
		{`back\slash`, `back\\slash`, `back\\slash`},
		{"<script>alert(1)</script>", `\<script>alert(1)\</script>`, `\<script>alert(1)\</script>`},
		{"[text](javascript:alert(1))", `[text]\(javascript:alert(1))`, `[text]\(javascript:alert(1))`},
		{"[a]: /url", `[a]\: /url`, `[a]\: /url`},
		{"101 [113:125:137] sts", "101 [113:125:137] sts", "101 [113:125:137] sts"},
		{"&lt; &#60; R&B & more", `\&lt; \&#60; R&B & more`, `\&lt; \&\#60; R&B & more`},
		{"# no heading #", `\# no heading #`, `\# no heading \#`},
		{"> no quotation", `\> no quotation`, `> no quotation`},
		{"- no list", `\- no list`, `- no list`},
		{"-5 in of ease", `-5 in of ease`, `-5 in of ease`},
		{"---", `\---`, `---`},
		{"+ no list", `\+ no list`, `+ no list`},
		{"1. no list", `1\. no list`, `1. no list`},
		{"12) no list", `12\) no list`, `12) no list`},
		{"1.5 in", `1.5 in`, `1.5 in`},
		{"[ ] no box", `\[ ] no box`, `[ ] no box`},
		{"    no code", `no code`, `    no code`},
		{"two\nlines\r\nof text", `two lines  of text`, `two lines  of text`},
		{"a\x1b[31mb", `a [31mb`, `a [31mb`},
	} {
		t.Run(c.text, func(t *testing.T) {
			got := document.Document{Title: c.text, Sections: []document.Section{{Heading: c.text, Blocks: []document.Block{
				document.Para{Text: c.text}, document.List{Items: []string{c.text}}, document.Instructions{Lines: []document.Line{{Text: c.text}}}}}}}.Markdown()
			want := "# " + c.heading + "\n\n## " + c.heading + "\n\n" + c.start + "\n\n- " + c.start + "\n\n" + c.start + "\n"
			require.Equal(t, want, got)
		})
	}
}

func TestMarkdownTableCells(t *testing.T) {
	got := document.Document{Sections: []document.Section{{Blocks: []document.Block{document.Table{Header: []string{"a|b", "c"}, Rows: [][]string{{`d\|e`, "f\ng"}}}}}}}.Markdown()
	require.Contains(t, got, "| a\\|b | c |\n| --- | --- |\n| d\\\\\\|e | f g |\n")
}

// A text is shown as it is in HTML too, whatever it holds: the page has the same
// elements as with a harmless text, and shows the text.
func TestHTMLEscapes(t *testing.T) {
	harmless := elements(t, html(t, hostile("x"), false))
	for _, s := range []string{"<script>alert(1)</script>", `"><img src=x onerror=alert(1)>`, "</title></style></main>", "<!--", "]]>", "a & b &amp; c", "{{.}}", "\x00", "javascript:alert(1)"} {
		t.Run(s, func(t *testing.T) {
			for _, large := range []bool{false, true} {
				page := html(t, hostile(s), large)
				require.Equal(t, harmless, elements(t, page))
				require.Empty(t, accessible.Faults([]byte(page)))
			}
		})
	}
}

// elements lists the elements of a page, and fails where it is not well formed.
func elements(t *testing.T, page string) (names []string) {
	t.Helper()
	dec := xml.NewDecoder(strings.NewReader(page))
	dec.Strict, dec.AutoClose, dec.Entity = false, xml.HTMLAutoClose, xml.HTMLEntity
	depth := 0
	for {
		token, err := dec.Token()
		if token == nil {
			require.ErrorContains(t, err, "EOF")
			require.Zero(t, depth, "an element is left open")
			return names
		}
		switch e := token.(type) {
		case xml.StartElement:
			depth++
			names = append(names, e.Name.Local)
		case xml.EndElement:
			depth--
		}
	}
}

func TestPagesAreAccessible(t *testing.T) {
	for name, d := range map[string]document.Document{"sampler": sampler(), "title alone": {Title: "x"}} {
		for _, large := range []bool{false, true} {
			page := html(t, d, large)
			require.Empty(t, accessible.Faults([]byte(page)), name)
			elements(t, page)
			require.NotContains(t, page, "<script")
			require.NotContains(t, page, "@import")
			require.NotRegexp(t, `(src|href)=`, page, "a page needs nothing else")
		}
	}
}

// Two drawings on a page do not share names, and nothing in their text is
// mistaken for one.
func TestDrawingsKeepTheirNamesApart(t *testing.T) {
	page := html(t, sampler(), false)
	for _, want := range []string{`aria-labelledby="figure-1-t figure-1-d"`, `<title id="figure-1-t">`, `aria-labelledby="figure-2-t figure-2-d"`, `<desc id="figure-2-d">One panel, id=&#34;t&#34; in its text.`} {
		require.Contains(t, page, want)
	}
	require.NotContains(t, page, "<?xml")
}

package accessible_test

import (
	"strings"
	"testing"

	"example.com/panelmath/examples/internal/document/accessible"
	"github.com/stretchr/testify/require"
)

const good = `<!DOCTYPE html>
<html lang="en"><head><meta name="viewport" content="width=device-width, initial-scale=1"><title>Form</title></head>
<body><main><h1>Form</h1>
<form><fieldset><legend>Garment</legend><label for="name">Title</label><input id="name" aria-describedby="note"><p id="note">A note.</p>
<label for="terms">Terms</label><select id="terms"><option selected>US</option></select></fieldset><button>Go</button></form>
<h2>Table</h2><table><tr><th scope="col">Size</th></tr><tr><td>S</td></tr></table>
<svg role="img" aria-labelledby="t"><title id="t">Panel</title></svg>
</main></body></html>`

func TestGoodPage(t *testing.T) { require.Empty(t, accessible.Faults([]byte(good))) }

// Each rule finds its fault in a page that is good otherwise.
func TestFaults(t *testing.T) {
	for _, c := range []struct{ old, new, want string }{
		{` lang="en"`, ``, `html: no lang`},
		{`<title>Form</title>`, `<title> </title>`, `title: empty`},
		{`<title>Form</title>`, ``, `0 elements title, want one`},
		{`initial-scale=1`, `maximum-scale=1`, `viewport: zoom is kept from the reader`},
		{`<h1>Form</h1>`, ``, `0 elements h1, want one`},
		{`<h2>Table</h2>`, `<h3>Table</h3>`, `h3: a level is left out after h1`},
		{`<h2>Table</h2>`, `<h2></h2>`, `h2: empty`},
		{`<label for="name">Title</label>`, ``, `input "name": no label`},
		{`for="terms"`, `for="name"`, `select "terms": no label`},
		{`<label for="name">Title`, `<label for="name">`, `label: empty`},
		{`<p id="note">A note.</p>`, ``, `input "name": aria-describedby names "note", which is not there`},
		{`id="terms"`, `id="name"`, `select "name": an id that is empty or given twice`},
		{`<legend>Garment</legend>`, ``, `fieldset: no legend`},
		{` scope="col"`, ``, `th "Size": no scope`},
		{`<button>`, `<button tabindex="2">`, `button: a positive tabindex`},
		{`>Go<`, `><`, `button: empty`},
		{` role="img"`, ``, `svg: no role img with a title`},
		{`<h2>`, `<img src="a.png"><h2>`, `img: no alt`},
		{`</form>`, ``, `not well formed: </main>`},
		{`</main>`, `</main><main></main>`, `2 elements main, want one`},
	} {
		t.Run(c.want, func(t *testing.T) {
			require.Contains(t, good, c.old)
			require.Contains(t, accessible.Faults([]byte(strings.Replace(good, c.old, c.new, 1))), c.want)
		})
	}
}

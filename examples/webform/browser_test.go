package main

import (
	"net/http/httptest"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// The widths at which the page is looked at: a desktop, a phone, the narrowest
// phone.
var widths = []int{1280, 390, 320}

// set changes a control as a person would, the script hearing of it.
func (c *chromium) set(name, value string) {
	c.t.Helper()
	c.script(`{ const control = document.getElementById("`+name+`"); control.value = `+"`"+value+"`"+`; control.dispatchEvent(new Event("input", { bubbles: true })); }`, nil)
}

const ready = `document.getElementById("status").textContent === "The pattern is up to date."`

// In a browser with script the pattern follows the form, and what is wrong
// stands beside its control.
func TestLiveInABrowser(t *testing.T) {
	c := browse(t)
	server := httptest.NewServer(newServer(fresh(), timeLimit).Handler)
	defer server.Close()
	for _, width := range widths {
		c.open(server.URL, width, 800)
		c.until(ready)
		c.fits(width, "the form")
		c.shot(itoa(width) + "-opened")
		c.script("window.sameDocument = true", nil)

		c.set("name", "Harbour & <b>wrap</b>")
		c.until(`document.querySelector("#pattern .title").textContent === "Harbour & <b>wrap</b>"`)

		c.set("name", strings.Repeat("w", 300))
		c.until(`document.querySelector("#pattern .title").textContent.length === 300`)
		c.fits(width, "the form")

		c.set("ease", "9 inn")
		c.until(`document.getElementById("ease-error").textContent.includes('unknown unit "inn"')`)
		require.True(t, c.is(`document.getElementById("ease").matches('[aria-invalid="true"]')`))
		require.True(t, c.is(`document.getElementById("status").textContent === "To mend: Ease."`))
		require.True(t, c.is(`document.querySelector("#pattern.stale .title")`), "the pattern from before stays, and is marked")
		c.fits(width, "the form")
		c.script(`document.querySelector("#status a").click(), document.getElementById("ease").scrollIntoView()`, nil)
		c.until(`document.activeElement.id === "ease" || location.hash === "#ease"`)
		c.shot(itoa(width) + "-wrong")
		c.set("ease", "8 in")
		c.until(ready)
		require.True(t, c.is(`!document.querySelector("[aria-invalid], .stale") && document.getElementById("ease-error").textContent === ""`))

		c.set("layout", "poncho")
		require.True(t, c.is(`document.getElementById("ease").offsetParent === null && document.getElementById("neck_round").offsetParent !== null`))
		c.until(ready + ` && document.getElementById("pattern").textContent.includes("Neck opening")`)
		c.set("yarn", "stitches")
		c.until(ready + ` && document.getElementById("yarn.swatch.mass").offsetParent === null && document.getElementById("yarn.stitches").offsetParent !== null`)
		c.fits(width, "the form")
		c.shot(itoa(width) + "-poncho")
		require.True(t, c.is("window.sameDocument"), "the page was not loaded anew")
		for _, text := range c.complaints() {
			require.Contains(t, text, "422", "only the answer about the brief that did not hold")
		}
	}
}

// Every control that is seen is reached by the Tab key, in the order in which
// they stand, and none is hidden behind the foot of the form.
func TestKeyboardInABrowser(t *testing.T) {
	c := browse(t)
	server := httptest.NewServer(newServer(fresh(), timeLimit).Handler)
	defer server.Close()
	for _, width := range widths {
		c.open(server.URL, width, 800)
		var want []string
		for f := range fields() {
			if fresh().shown(f) {
				want = append(want, f.Name)
			}
		}
		var got []string
		c.press("Tab")
		c.until(`document.activeElement.matches(".skip")`) // the way past the form comes first
		for range want {
			c.press("Tab")
			var at struct {
				ID      string
				Covered bool
			}
			c.script(`(() => { const e = document.activeElement, b = e.getBoundingClientRect(), bar = document.querySelector(".bar").getBoundingClientRect();
				return { id: e.id, covered: b.top > bar.top - 20 || b.bottom < 20 } })()`, &at)
			require.False(t, at.Covered, "%d px: %s is not in view", width, at.ID)
			got = append(got, at.ID)
		}
		require.Equal(t, want, got)
		c.press("Tab") // the link of the status
		c.press("Tab")
		c.press("Enter") // the button
		c.until(`document.activeElement.id === "result"`)
	}
}

// What a screen reader is told: each control has its label as name and its note
// as description, landmarks and the drawing have names.
func TestNamesInABrowser(t *testing.T) {
	c := browse(t)
	server := httptest.NewServer(newServer(fresh(), timeLimit).Handler)
	defer server.Close()
	c.open(server.URL, 1280, 800)
	type value struct{ Value any }
	var tree struct {
		Nodes []struct {
			Ignored                 bool
			Role, Name, Description value
		}
	}
	c.call("Accessibility.getFullAXTree", nil, &tree)
	names := map[string]string{}
	for _, n := range tree.Nodes {
		role, _ := n.Role.Value.(string)
		name, _ := n.Name.Value.(string)
		switch role {
		case "textbox", "combobox", "button", "link", "image", "group", "form", "main", "heading", "columnheader", "rowheader":
			require.NotEmpty(t, name, role)
			about, _ := n.Description.Value.(string)
			names[role+" "+name] = about
		}
	}
	require.Equal(t, "Washed, blocked and dry: 13 sts and 9 rows = 4 in", names["textbox Finished gauge"])
	for _, want := range []string{"form Brief", "main Pattern", "combobox Layout", "heading Orchard wrap", "columnheader Size", "rowheader M–L", "group Gauge", "link The pattern"} {
		require.Contains(t, names, want)
	}
}

// Without script the button does the same.
func TestWithoutScriptInABrowser(t *testing.T) {
	c := browse(t)
	server := httptest.NewServer(newServer(fresh(), timeLimit).Handler)
	defer server.Close()
	c.call("Emulation.setScriptExecutionDisabled", map[string]any{"value": true}, nil) // the page's own; ours still runs
	for _, width := range widths {
		c.open(server.URL, width, 800)
		send := func() {
			c.events = nil
			c.script(`document.querySelector(".bar button").click()`, nil)
			c.loaded()
			c.fits(width, "the form")
		}
		c.set("layout", "cocoon")
		c.set("hook", "I-9")
		send()
		c.until(`document.getElementById("hook-error").textContent !== "" && document.activeElement.id === "hook"`)
		require.True(t, c.is(`document.getElementById("cocoon-length").offsetParent !== null && document.getElementById("neck_drop").offsetParent === null`))
		c.shot(itoa(width) + "-without-script")
		c.set("hook", "6 mm")
		send()
		require.True(t, c.is(ready))
		require.True(t, c.is(`document.getElementById("pattern").textContent.includes("6 mm")`))
	}
}

// The pages to print fit a phone, and a sheet of A4 or Letter.
func TestPagesToPrintInABrowser(t *testing.T) {
	c := browse(t)
	server := httptest.NewServer(newServer(fresh(), timeLimit).Handler)
	defer server.Close()
	for _, layout := range layouts() {
		for _, as := range []string{"page", "large"} {
			c.open(server.URL, 390, 800)
			c.set("layout", layout.Value)
			c.events = nil
			c.script(`{ const b = document.querySelector("button[value=`+as+`]"); b.formTarget = "_self"; b.click(); }`, nil)
			c.loaded()
			require.True(t, c.is(`document.querySelector("main.pattern svg") && !document.querySelector("script")`))
			for _, width := range []int{1280, 390, 320, 694, 718} { // the last two: A4 and Letter less the margins, 96 px an inch
				c.call("Emulation.setDeviceMetricsOverride", map[string]any{"width": width, "height": 800, "deviceScaleFactor": 1, "mobile": width < 600}, nil)
				media := ""
				if width == 694 || width == 718 {
					media = "print"
				}
				c.call("Emulation.setEmulatedMedia", map[string]any{"media": media}, nil)
				c.fits(width, layout.Value+", "+as)
				c.shot(layout.Value + "-" + as + "-" + itoa(width))
			}
			if as == "large" {
				require.True(t, c.is(`[...document.querySelectorAll("p, li, td, th, dd, dt, figcaption, caption, h1, h2")].every((e) => parseFloat(getComputedStyle(e).fontSize) >= 24)`), "18 pt are 24 px")
				require.True(t, c.is(`[...document.querySelectorAll("main *")].every((e) => getComputedStyle(e).color === "rgb(0, 0, 0)")`), "black on white")
			}
		}
	}
	require.Empty(t, c.complaints())
}

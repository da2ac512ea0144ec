package main

import (
	"context"
	"encoding/json"
	"fmt"
	"html"
	"io"
	"net"
	"net/http"
	"net/http/httptest"
	"net/url"
	"os"
	"path/filepath"
	"regexp"
	"runtime"
	"strconv"
	"strings"
	"sync"
	"sync/atomic"
	"testing"
	"time"

	"example.com/panelmath/examples/internal/brief"
	"example.com/panelmath/examples/internal/document/accessible"
	"example.com/panelmath/examples/internal/garment"
	"github.com/stretchr/testify/require"
)

func itoa(n int) string { return strconv.Itoa(n) }

// sent is the form as a browser sends it, with some controls changed.
func sent(change map[string]string) url.Values {
	v := fresh()
	for name, text := range change {
		v[name] = text
	}
	form := url.Values{}
	for f := range fields() {
		form.Set(f.Name, strings.ReplaceAll(v[f.Name], "\n", "\r\n"))
	}
	if as := change["as"]; as != "" {
		form.Set("as", as)
	}
	return form
}

func post(t *testing.T, form url.Values) *httptest.ResponseRecorder {
	t.Helper()
	r := httptest.NewRequest("POST", "http://localhost/", strings.NewReader(form.Encode()))
	r.Header.Set("Content-Type", "application/x-www-form-urlencoded")
	w := httptest.NewRecorder()
	newServer(fresh(), timeLimit).Handler.ServeHTTP(w, r)
	return w
}

func get(t *testing.T, host, path string) *httptest.ResponseRecorder {
	t.Helper()
	r := httptest.NewRequest("GET", "http://localhost"+path, nil)
	r.Host = host
	w := httptest.NewRecorder()
	newServer(fresh(), timeLimit).Handler.ServeHTTP(w, r)
	return w
}

// The page opens with the garment that the program pattern holds.
func TestOpensWithAPattern(t *testing.T) {
	w := get(t, "localhost:8080", "/")
	require.Equal(t, http.StatusOK, w.Code)
	require.Empty(t, accessible.Faults(w.Body.Bytes()))
	require.Contains(t, w.Body.String(), `<h2 class="title">Orchard wrap</h2>`)

	file, err := os.Open(filepath.Join("..", "pattern", "orchard-wrap.json"))
	require.NoError(t, err)
	defer file.Close()
	b, err := brief.Read(file)
	require.NoError(t, err)
	want, err := garment.Make(b)
	require.NoError(t, err)
	got, wrong := fresh().make()
	require.Empty(t, wrong)
	require.Equal(t, want.Result(true), got.Result(true))
}

// Every layout with every way to the quantity of yarn opens as a pattern, so
// that nobody who tries a choice stands before an empty form.
func TestEveryChoiceOpensAsAPattern(t *testing.T) {
	for _, layout := range layouts() {
		for _, way := range ways() {
			for _, direction := range []string{"lengthwise", "crosswise"} {
				t.Run(layout.Value+" "+way.Value+" "+direction, func(t *testing.T) {
					w := post(t, sent(map[string]string{"layout": layout.Value, "yarn": way.Value, "direction": direction}))
					require.Equal(t, http.StatusOK, w.Code, errorsOf(w.Body.String()))
					require.Empty(t, accessible.Faults(w.Body.Bytes()))
				})
			}
		}
	}
}

// The form has a control for every field of every layout, and knows which may be
// left empty.
func TestFormHasEveryField(t *testing.T) {
	names := map[string]field{}
	for f := range fields() {
		names[f.place()] = f
	}
	for f := range fields() { // yarn and rows are objects
		top, _, _ := strings.Cut(f.Name, ".")
		if _, ok := names[top]; !ok {
			names[top] = f
		}
	}
	for _, l := range brief.Layouts() {
		for _, name := range strings.Fields(l.Required()) {
			require.Contains(t, names, name)
			require.False(t, names[name].Optional, name)
		}
		for _, name := range strings.Fields(l.Optional()) {
			require.Contains(t, names, name)
			require.True(t, names[name].Optional || names[name].Kind == choice, name)
		}
	}
}

// errorsOf returns what stands beside the controls of a page.
func errorsOf(page string) map[string]string {
	out := map[string]string{}
	for _, m := range regexp.MustCompile(`id="([^"]*)-error">([^<]+)<`).FindAllStringSubmatch(page, -1) {
		out[m[1]] = m[2]
	}
	return out
}

// A bad text in any control, in any layout that has it, is told beside that
// control and nowhere else.
func TestEveryBadFieldIsToldBesideItsControl(t *testing.T) {
	for f := range fields() {
		bad := "nonsense §"
		switch f.Name {
		case "name", "yarn.name", "yarn.fibre":
			bad = ""
		}
		change := map[string]string{f.Name: bad}
		if f.When != "" {
			change[f.When] = f.Is[len(f.Is)-1]
		}
		t.Run(f.Name, func(t *testing.T) {
			w := post(t, sent(change))
			require.Equal(t, http.StatusUnprocessableEntity, w.Code)
			page := w.Body.String()
			wrong := errorsOf(page)
			require.Contains(t, wrong, f.Name)
			require.Len(t, wrong, 1)
			require.Regexp(t, `<\w+ id="`+regexp.QuoteMeta(f.Name)+`"[^>]* aria-invalid="true" autofocus`, page)
			require.Contains(t, page, `<a href="#`+f.Name+`">`+f.Label+`</a>`)
			require.Contains(t, page, "<title>To mend: ")
			require.Empty(t, accessible.Faults(w.Body.Bytes()))
		})
	}
}

// What is required and empty says so too.
func TestEveryEmptyFieldIsToldBesideItsControl(t *testing.T) {
	for _, layout := range layouts() {
		for _, way := range ways() {
			change := map[string]string{"layout": layout.Value, "yarn": way.Value}
			var want []string
			v := fresh()
			v["layout"], v["yarn"] = layout.Value, way.Value
			for f := range fields() {
				if len(f.Options) > 0 || !v.shown(f) || f.Name == "sizes" {
					continue
				}
				change[f.Name] = ""
				if !f.Optional && f.Name != "rows.repeat" && f.Name != "rows.closing" {
					want = append(want, f.Name)
				}
			}
			wrong := errorsOf(post(t, sent(change)).Body.String())
			for _, name := range want {
				require.Contains(t, wrong, name, "%s, %s", layout.Value, way.Value)
			}
		}
	}
}

func TestComplaintsNameThePlace(t *testing.T) {
	for _, c := range []struct {
		name    string
		change  map[string]string
		control string
		want    string
	}{
		{"unit", map[string]string{"ease": "9 inn"}, "ease", `&#34;9 inn&#34;: unknown unit &#34;inn&#34;.`},
		{"value of a list", map[string]string{"length": "25 in; 2x in; 26 in; 26 in"}, "length", `value 2: `},
		{"length of a list", map[string]string{"length": "25 in; 26 in"}, "length", `a list of 2, want one value, or one for each of the 4 groups of sizes.`},
		{"row", map[string]string{"rows.repeat": "hdc in each st across\n\nhdc in each stt across"}, "rows.repeat", `row 2: `},
		{"rows that do not fit", map[string]string{"rows.closing": "hdc in each st and 3 hdc in each ch-3 sp across"}, "rows.closing", `row 1: `},
		{"stitch", map[string]string{"yarn": "stitches", "yarn.stitches": "hdc 20 = 60 in\ndc x = 80 in"}, "yarn.stitches", `line 2: count: `},
		{"no length of stitches", map[string]string{"yarn": "stitches", "yarn.stitches": "hdc 20"}, "yarn.stitches", `line 1: length: empty.`},
		{"size", map[string]string{"armhole_depth": "9 in; 10 in; 7 in; 12 in"}, "armhole_depth", `size XL–2X: `},
		{"swatch as a whole", map[string]string{"yarn.swatch.width": "0 in"}, "yarn.swatch.width", ``},
		{"sizes", map[string]string{"sizes": "XS; 6X"}, "sizes", `size 6X: no such size`},
		{"script", map[string]string{"ease": "<script>alert(1)</script>"}, "ease", `&#34;&lt;script&gt;`},
	} {
		t.Run(c.name, func(t *testing.T) {
			w := post(t, sent(c.change))
			require.Equal(t, http.StatusUnprocessableEntity, w.Code)
			wrong := errorsOf(w.Body.String())
			require.Contains(t, wrong[c.control], c.want, wrong)
			require.Len(t, wrong, 1)
			require.NotContains(t, w.Body.String(), "<script>")
		})
	}
}

// A control that the layout has no use for is not part of the brief, whatever a
// browser without script sends.
func TestUnusedControlsAreNotSent(t *testing.T) {
	form := sent(map[string]string{"layout": "poncho"})
	form.Set("ease", "nonsense")
	form.Set("yarn.project.mass", "nonsense")
	w := post(t, form)
	require.Equal(t, http.StatusOK, w.Code, errorsOf(w.Body.String()))
	require.Regexp(t, `<input id="ease"[^>]* value="nonsense"`, w.Body.String(), "and comes back with the layout")
}

// The files to take along are what the program pattern reads and writes.
func TestTakeAlong(t *testing.T) {
	for _, c := range []struct{ as, kind, name, want string }{
		{"page", "text/html; charset=utf-8", "", `<h1 class="title">Orchard wrap</h1>`},
		{"large", "text/html; charset=utf-8", "", `font: 18pt`},
		{"markdown", "text/markdown; charset=utf-8", "pattern.md", "# Orchard wrap\n"},
		{"drawing", "image/svg+xml", "schematic.svg", "<svg "},
		{"brief", "application/json", "brief.json", `"name": "Orchard wrap"`},
	} {
		t.Run(c.as, func(t *testing.T) {
			w := post(t, sent(map[string]string{"as": c.as}))
			require.Equal(t, http.StatusOK, w.Code)
			require.Equal(t, c.kind, w.Header().Get("Content-Type"))
			require.Contains(t, w.Body.String(), c.want)
			if c.name != "" {
				require.Equal(t, "attachment; filename="+c.name, w.Header().Get("Content-Disposition"))
			} else {
				require.Empty(t, accessible.Faults(w.Body.Bytes()))
			}
			w = post(t, sent(map[string]string{"as": c.as, "ease": "x"}))
			require.Equal(t, http.StatusUnprocessableEntity, w.Code, "the form comes back with what is wrong")
			require.Contains(t, errorsOf(w.Body.String()), "ease")
		})
	}
	require.Equal(t, http.StatusBadRequest, post(t, sent(map[string]string{"as": "pdf"})).Code)
}

// A brief that is taken along opens again as it was.
func TestBriefRoundTrip(t *testing.T) {
	for _, layout := range layouts() {
		for _, way := range ways() {
			for _, change := range []map[string]string{nil, {"hem_slit": "3 in", "sleeve_length": "12 in", "neck_stretch": "10%", "worked_gauge": "", "rows.closing": "", "row_start": "no chain"}} {
				v := fresh()
				for name, text := range change {
					v[name] = text
				}
				v["layout"], v["yarn"] = layout.Value, way.Value
				data, err := v.brief()
				require.NoError(t, err)
				again, err := opened(data)
				require.NoError(t, err)
				second, err := again.brief()
				require.NoError(t, err)
				require.JSONEq(t, string(data), string(second))
				for f := range fields() {
					if v.shown(f) {
						require.Equal(t, v[f.Name], again[f.Name], f.Name)
					}
				}
			}
		}
	}
}

func TestOpening(t *testing.T) {
	for _, file := range []string{"orchard-wrap.json", "testdata/closed-front.json", "testdata/poncho.json", "testdata/uk-child.json"} {
		v, err := opening(filepath.Join("..", "pattern", filepath.FromSlash(file)))
		require.NoError(t, err)
		_, wrong := v.make()
		require.Empty(t, wrong, file)
	}
	bad := filepath.Join(t.TempDir(), "bad.json")
	for text, want := range map[string]string{"": "brief: empty", `{"nme": "x"}`: "nme: unknown field", "[1]": "brief: got a list"} {
		require.NoError(t, os.WriteFile(bad, []byte(text), 0o644))
		_, err := opening(bad)
		require.ErrorContains(t, err, want)
	}
	_, err := opening("no-such-file.json")
	require.ErrorContains(t, err, "brief: open no-such-file.json")
}

func TestHosts(t *testing.T) {
	for host, want := range map[string]int{
		"localhost": 200, "localhost:8080": 200, "127.0.0.1:8080": 200, "127.0.0.2": 200, "[::1]:8080": 200, "::1": 200,
		"": 403, "example.com": 403, "example.com:8080": 403, "localhost.example.com": 403, "127.0.0.1.example.com": 403, "192.0.2.1:8080": 403, "0.0.0.0:8080": 403, "[::ffff:192.0.2.1]:80": 403,
	} {
		require.Equal(t, want, get(t, host, "/").Code, host)
		require.Equal(t, want, get(t, host, "/live.js").Code, host)
	}
}

func TestAnswersToOtherRequests(t *testing.T) {
	require.Equal(t, http.StatusNotFound, get(t, "localhost", "/page.html").Code)
	require.Equal(t, http.StatusNotFound, get(t, "localhost", "/main.go").Code)
	for path, want := range map[string]string{"/": "text/html", "/style.css": "text/css", "/pattern.css": "text/css", "/live.js": "text/javascript"} {
		w := get(t, "localhost", path)
		require.Equal(t, http.StatusOK, w.Code)
		require.Contains(t, w.Header().Get("Content-Type"), want)
		require.Contains(t, w.Header().Get("Content-Security-Policy"), "default-src 'none'")
		require.Equal(t, "nosniff", w.Header().Get("X-Content-Type-Options"))
	}
	r := httptest.NewRequest("DELETE", "http://localhost/", nil)
	w := httptest.NewRecorder()
	newServer(fresh(), timeLimit).Handler.ServeHTTP(w, r)
	require.Equal(t, http.StatusMethodNotAllowed, w.Code)
	require.Equal(t, http.StatusUnprocessableEntity, post(t, nil).Code, "nothing was sent: everything is missing")
}

// Hostile texts cost little and get a plain answer.
func TestHostileForms(t *testing.T) {
	for name, change := range map[string]map[string]string{
		"long":     {"ease": strings.Repeat("9", 20_000)},
		"exponent": {"gauge": "1e1000000000 sts and 9 rows = 4 in"},
		"many":     {"length": strings.Repeat("1 in;", 4000)},
		"deep":     {"rows.repeat": strings.Repeat("[", 5000)},
		"bytes":    {"name": "\xff\xfe\x00", "ease": "\xff"},
		"unknown":  {"layout": "raglan", "yarn": "guess"},
	} {
		t.Run(name, func(t *testing.T) {
			w := post(t, sent(change))
			require.Equal(t, http.StatusUnprocessableEntity, w.Code)
			require.NotEmpty(t, errorsOf(w.Body.String()))
			require.Empty(t, accessible.Faults(w.Body.Bytes()))
		})
	}
}

// listen starts a server whose limits are short enough for a test.
func listen(t *testing.T, limit time.Duration) string {
	t.Helper()
	listener, err := net.Listen("tcp", "127.0.0.1:0")
	require.NoError(t, err)
	server := newServer(fresh(), limit)
	go func() { _ = server.Serve(listener) }()
	t.Cleanup(func() { _ = server.Close() })
	return listener.Addr().String()
}

func TestTooLargeRequests(t *testing.T) {
	form := sent(nil)
	form.Set("more", strings.Repeat("x", requestLimit))
	require.Equal(t, http.StatusRequestEntityTooLarge, post(t, form).Code)

	addr := listen(t, timeLimit)
	r, err := http.NewRequest("GET", "http://"+addr, nil)
	require.NoError(t, err)
	r.Header.Set("X-Long", strings.Repeat("x", 2*headerLimit))
	answer, err := http.DefaultClient.Do(r)
	require.NoError(t, err)
	answer.Body.Close()
	require.Equal(t, http.StatusRequestHeaderFieldsTooLarge, answer.StatusCode)
}

// A client that takes its time is cut off, in the head and in the body.
func TestSlowRequests(t *testing.T) {
	addr := listen(t, 100*time.Millisecond)
	for name, c := range map[string]struct{ begin, want string }{
		"head": {"POST / HTTP/1.1\r\nHost: localhost\r\n", ""},
		"body": {"POST / HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/x-www-form-urlencoded\r\nContent-Length: 1000\r\n\r\nname=", "408 Request Timeout"},
	} {
		t.Run(name, func(t *testing.T) {
			conn, err := net.Dial("tcp", addr)
			require.NoError(t, err)
			defer conn.Close()
			_, err = io.WriteString(conn, c.begin)
			require.NoError(t, err)
			require.NoError(t, conn.SetReadDeadline(time.Now().Add(30*time.Second)))
			answer, err := io.ReadAll(conn) // ends when the server closes the connection
			require.NoError(t, err)
			require.Contains(t, string(answer), c.want)
			require.NotContains(t, string(answer), "200 OK")
		})
	}
}

func TestListensToThisMachineOnly(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	for addr, want := range map[string]string{
		"0.0.0.0:0": "want a loopback address", ":0": "want a loopback address", "192.0.2.1:80": "want a loopback address", "example.com:80": "want a loopback address",
		"127.0.0.1": "missing port", "127.0.0.1:port": "port",
	} {
		require.ErrorContains(t, serve(ctx, addr, ""), want, addr)
	}
	require.ErrorContains(t, serve(ctx, "127.0.0.1:0", "no-such-file.json"), "brief: ")
	require.NoError(t, serve(ctx, "127.0.0.1:0", ""), "it ends when it is told to")
}

// Many clients at once: every request gets the answer that it would get alone,
// and the memory in use does not grow. WEBFORM_SOAK=1m runs it that long instead
// of for a fixed number of requests.
func TestParallelClients(t *testing.T) {
	const clients, rounds = 64, 3
	soak, _ := time.ParseDuration(os.Getenv("WEBFORM_SOAK"))
	addr := listen(t, time.Minute)

	type exchange struct {
		form string
		code int
		want string
	}
	var all []exchange
	for i, layout := range layouts() {
		for _, as := range []string{"", "page", "brief"} {
			form := sent(map[string]string{"layout": layout.Value, "as": as, "name": fmt.Sprintf("Wrap %d", i)})
			w := post(t, form)
			require.Equal(t, http.StatusOK, w.Code)
			all = append(all, exchange{form.Encode(), w.Code, w.Body.String()})
		}
		form := sent(map[string]string{"layout": layout.Value, "gauge": fmt.Sprintf("%d stts", i)})
		w := post(t, form)
		require.Equal(t, http.StatusUnprocessableEntity, w.Code)
		all = append(all, exchange{form.Encode(), w.Code, w.Body.String()})
	}

	transport := &http.Transport{MaxIdleConnsPerHost: clients}
	defer transport.CloseIdleConnections()
	client := &http.Client{Transport: transport, Timeout: time.Minute}
	var sentOff, answered atomic.Int64
	deadline := time.Now().Add(soak)
	run := func(id int, on func(n int) bool) error {
		for n := 0; on(n); n++ {
			x := all[(id+n)%len(all)]
			sentOff.Add(1)
			answer, err := client.Post("http://"+addr+"/", "application/x-www-form-urlencoded", strings.NewReader(x.form))
			if err != nil {
				return err
			}
			got, err := io.ReadAll(answer.Body)
			answer.Body.Close()
			if err != nil {
				return err
			}
			if answer.StatusCode != x.code || string(got) != x.want {
				return fmt.Errorf("client %d, request %d: got %d and %d bytes, want %d and %d bytes", id, n, answer.StatusCode, len(got), x.code, len(x.want))
			}
			answered.Add(1)
		}
		return nil
	}
	wave := func(on func(n int) bool) {
		var wait sync.WaitGroup
		errs := make([]error, clients)
		for id := range clients {
			wait.Go(func() { errs[id] = run(id, on) })
		}
		wait.Wait()
		for _, err := range errs {
			require.NoError(t, err)
		}
	}
	heap := func() int {
		var m runtime.MemStats
		runtime.GC()
		runtime.GC()
		runtime.ReadMemStats(&m)
		return int(m.HeapAlloc)
	}
	wave(func(n int) bool { return n < 1 }) // connections and caches are there then
	before := heap()
	began := time.Now()
	wave(func(n int) bool {
		if soak > 0 {
			return time.Now().Before(deadline)
		}
		return n < rounds
	})
	took := time.Since(began)
	after := heap()
	require.Equal(t, sentOff.Load(), answered.Load(), "nothing is lost")
	require.Less(t, after-before, 8<<20, "the memory in use is flat")
	t.Logf("%d requests of %d clients in %v (%d a second); heap in use %d KiB before, %d KiB after",
		answered.Load(), clients, took.Round(time.Millisecond), int64(float64(answered.Load())/took.Seconds()), before>>10, after>>10)
}

// BenchmarkPage is one request of the live form, from its text to the page.
func BenchmarkPage(b *testing.B) {
	v := fresh()
	b.ReportAllocs()
	for b.Loop() {
		w := httptest.NewRecorder()
		show(w, v)
		if w.Code != http.StatusOK {
			b.Fatal(w.Code)
		}
	}
}

// A change of the layout, or of the way to the yarn, and back loses nothing: the
// page sends what it does not show.
func TestThereAndBack(t *testing.T) {
	form := sent(map[string]string{"ease": "7 in", "yarn.swatch.mass": "15 g", "length": "24 in"})
	want := post(t, form).Body.String()
	for _, other := range [][2]string{{"layout", "cocoon"}, {"layout", "poncho"}, {"yarn", "unravelled"}} {
		back := form.Get(other[0])
		form.Set(other[0], other[1])
		page := post(t, form).Body.String()
		for _, m := range regexp.MustCompile(`<input id="([^"]*)"[^>]* value="([^"]*)"`).FindAllStringSubmatch(page, -1) {
			require.NotContains(t, m[0], "disabled")
			form.Set(m[1], html.UnescapeString(m[2])) // as a browser would send the page
		}
		form.Set(other[0], back)
		require.Equal(t, want, post(t, form).Body.String(), "%v", other)
	}
}

// What did not come is missing, and is not taken from the example.
func TestMissingIsNotTheExample(t *testing.T) {
	for f := range fields() {
		form := sent(nil)
		form.Del(f.Name)
		w := post(t, form)
		if !fresh().shown(f) || f.Optional || f.Name == "yarn.name" || f.Name == "yarn.fibre" {
			continue
		}
		if f.Name == "rows.repeat" || f.Name == "rows.closing" { // may be empty
			require.Equal(t, http.StatusOK, w.Code)
			continue
		}
		require.Equal(t, http.StatusUnprocessableEntity, w.Code, f.Name)
	}
}

func TestRefusedRequests(t *testing.T) {
	for kind, want := range map[string]int{"application/x-www-form-urlencoded; charset=utf-8": 200, "application/json": 415, "text/plain": 415, "multipart/form-data; boundary=x": 415, "": 415, "nonsense;;": 415} {
		r := httptest.NewRequest("POST", "http://localhost/", strings.NewReader(sent(nil).Encode()))
		r.Header.Set("Content-Type", kind)
		w := httptest.NewRecorder()
		newServer(fresh(), timeLimit).Handler.ServeHTTP(w, r)
		require.Equal(t, want, w.Code, kind)
	}
	twice := sent(nil)
	twice.Add("ease", "1 in")
	w := post(t, twice)
	require.Equal(t, 400, w.Code)
	require.Equal(t, "form: ease came 2 times\n", w.Body.String())
	for host, want := range map[string]int{"LOCALHOST:80": 200, "localhost.": 200, "localhost.evil.example": 403, "evil.example": 403} {
		w := get(t, host, "/")
		require.Equal(t, want, w.Code, host)
		require.NotEmpty(t, w.Header().Get("Content-Security-Policy"))
	}
	many := sent(map[string]string{"rows.repeat": strings.Repeat("hdc in each st across\n", 2000)})
	require.NotContains(t, post(t, many).Body.String(), "(line ")
}

// FuzzForm: whatever is sent, the answer is a page, and a pattern or something
// to mend.
func FuzzForm(f *testing.F) {
	f.Add("ease", "9 inn")
	f.Add("yarn.stitches", "hdc 20 = 60 in\n= =")
	f.Add("sizes", "XS, S;;, ;")
	f.Add("layout", "poncho")
	f.Fuzz(func(t *testing.T, name, text string) {
		v, err := posted(sent(map[string]string{"yarn": "stitches"}))
		require.NoError(t, err)
		v[name] = text
		_, wrong := v.make()
		data, err := v.brief()
		require.NoError(t, err)
		require.True(t, json.Valid(data))
		if len(wrong) == 0 {
			_, err := opened(data)
			require.NoError(t, err)
		}
		for control, texts := range wrong {
			require.NotEmpty(t, texts)
			require.True(t, control == "" || v.shown(v.control(control)), control)
		}
	})
}

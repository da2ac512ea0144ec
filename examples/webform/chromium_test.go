package main

import (
	"bufio"
	"encoding/json"
	"fmt"
	"os"
	"os/exec"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// chromium is a headless browser, driven through a pair of pipes: each message
// is a JSON object, with a zero byte after it.
type chromium struct {
	t       *testing.T
	in      *os.File
	pipe    *os.File
	out     *bufio.Reader
	id      int
	session string
	events  []event // that came while an answer was awaited
}

type event struct {
	ID     int
	Method string
	Params json.RawMessage
	Result json.RawMessage
	Error  *struct{ Message string }
}

// browse starts the browser, or skips the test where there is none.
func browse(t *testing.T) *chromium {
	t.Helper()
	program, err := exec.LookPath("chromium")
	if err != nil {
		t.Skip("no chromium on this machine: the page is not looked at in a browser (Debian: apt-get install chromium)")
	}
	theirs, in, err := os.Pipe()
	require.NoError(t, err)
	out, ours, err := os.Pipe()
	require.NoError(t, err)
	cmd := exec.Command(program, "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
		"--disable-background-networking", "--disable-component-update", "--disable-sync", "--remote-debugging-pipe", "--user-data-dir="+t.TempDir())
	cmd.ExtraFiles = []*os.File{theirs, ours} // it reads from 3 and writes to 4
	require.NoError(t, cmd.Start())
	theirs.Close()
	ours.Close()
	c := &chromium{t: t, in: in, pipe: out, out: bufio.NewReader(out)}
	t.Cleanup(func() {
		c.send("Browser.close", nil)
		in.Close()
		watch := time.AfterFunc(10*time.Second, func() { _ = cmd.Process.Kill() })
		defer watch.Stop()
		_ = cmd.Wait() // its folder can be removed then
		out.Close()
	})
	var target struct{ TargetID string }
	c.call("Target.createTarget", map[string]any{"url": "about:blank"}, &target)
	var attached struct{ SessionID string }
	c.call("Target.attachToTarget", map[string]any{"targetId": target.TargetID, "flatten": true}, &attached)
	c.session = attached.SessionID
	for _, domain := range []string{"Page", "Runtime", "Log", "Network"} {
		c.call(domain+".enable", nil, nil)
	}
	return c
}

func (c *chromium) send(method string, params any) {
	c.id++
	message := map[string]any{"id": c.id, "method": method}
	if params != nil {
		message["params"] = params
	}
	if c.session != "" {
		message["sessionId"] = c.session
	}
	text, err := json.Marshal(message)
	require.NoError(c.t, err)
	_, _ = c.in.Write(append(text, 0)) // a browser that has gone does not answer
}

// next reads one message.
func (c *chromium) next() event {
	require.NoError(c.t, c.pipe.SetReadDeadline(time.Now().Add(time.Minute)))
	text, err := c.out.ReadBytes(0)
	require.NoError(c.t, err, "the browser has gone, or says nothing any more")
	var e event
	require.NoError(c.t, json.Unmarshal(text[:len(text)-1], &e))
	return e
}

// call sends a command and reads its result.
func (c *chromium) call(method string, params, result any) {
	c.t.Helper()
	c.send(method, params)
	for {
		e := c.next()
		if e.ID != c.id {
			c.events = append(c.events, e)
			continue
		}
		require.Nil(c.t, e.Error, method)
		if result != nil {
			require.NoError(c.t, json.Unmarshal(e.Result, result))
		}
		return
	}
}

// open loads a page at a width.
func (c *chromium) open(url string, width, height int) {
	c.t.Helper()
	c.call("Emulation.setDeviceMetricsOverride", map[string]any{"width": width, "height": height, "deviceScaleFactor": 1, "mobile": width < 600}, nil)
	c.events = nil
	c.call("Page.navigate", map[string]any{"url": url}, nil)
	c.loaded()
}

// loaded waits for the page that is on its way.
func (c *chromium) loaded() {
	for _, e := range c.events {
		if e.Method == "Page.loadEventFired" {
			return
		}
	}
	for c.events = nil; ; {
		e := c.next()
		c.events = append(c.events, e)
		if e.Method == "Page.loadEventFired" {
			return
		}
	}
}

// script runs a script in the page and reads its value.
func (c *chromium) script(text string, value any) {
	c.t.Helper()
	var answer struct {
		Result           struct{ Value json.RawMessage }
		ExceptionDetails *struct {
			Exception struct{ Description string }
		}
	}
	c.call("Runtime.evaluate", map[string]any{"expression": text, "returnByValue": true, "awaitPromise": true}, &answer)
	if e := answer.ExceptionDetails; e != nil {
		c.t.Fatalf("%s: %s", text, e.Exception.Description)
	}
	if value != nil {
		require.NoError(c.t, json.Unmarshal(answer.Result.Value, value), text)
	}
}

// is reports what a script finds: true or false.
func (c *chromium) is(text string) (yes bool) {
	c.t.Helper()
	c.script("Boolean("+text+")", &yes)
	return yes
}

// until waits for a script to find true. What a browser does in its own time
// after a page is loaded or a key is pressed (autofocus, scrolling, a new width)
// is awaited and not asked for once.
func (c *chromium) until(text string) {
	c.t.Helper()
	for began := time.Now(); !c.is(text); time.Sleep(20 * time.Millisecond) {
		if time.Since(began) > 30*time.Second {
			var focus, status string
			c.script(`String(document.activeElement?.id)`, &focus)
			c.script(`String(document.getElementById("status")?.textContent)`, &status)
			c.t.Fatalf("not true within 30 s: %s\nfocus at %q, status %q", text, focus, status)
		}
	}
}

// fits checks that nothing of the page scrolls sideways at a width. A phone
// zooms out on a page that is too wide, and says a larger innerWidth then: the
// width is the one asked for.
func (c *chromium) fits(width int, what string) {
	c.t.Helper()
	c.until(fmt.Sprintf("document.documentElement.clientWidth <= %d && innerWidth >= %d", width, width))
	var got int
	c.script("document.scrollingElement.scrollWidth", &got)
	require.LessOrEqual(c.t, got, width, "%d px: %s scrolls sideways", width, what)
}

// press presses a key.
func (c *chromium) press(key string) {
	for _, kind := range []string{"keyDown", "keyUp"} {
		params := map[string]any{"type": kind, "key": key, "code": key, "windowsVirtualKeyCode": map[string]int{"Tab": 9, "Enter": 13}[key]}
		if key == "Enter" && kind == "keyDown" {
			params["text"] = "\r"
		}
		c.call("Input.dispatchKeyEvent", params, nil)
	}
}

// complaints are what the browser has written to its log: a file that is not
// found, a script that fails, a policy that is broken.
func (c *chromium) complaints() (out []string) {
	c.call("Runtime.evaluate", map[string]any{"expression": "0"}, nil) // what came before has been read then
	for _, e := range c.events {
		if e.Method == "Log.entryAdded" || e.Method == "Runtime.exceptionThrown" {
			out = append(out, fmt.Sprintf("%s %s", e.Method, e.Params))
		}
	}
	return out
}

// shot writes what is seen to a folder, where WEBFORM_SHOTS names one.
func (c *chromium) shot(name string) {
	folder := os.Getenv("WEBFORM_SHOTS")
	if folder == "" {
		return
	}
	var picture struct{ Data []byte }
	c.call("Page.captureScreenshot", nil, &picture)
	require.NoError(c.t, os.WriteFile(folder+"/"+name+".png", picture.Data, 0o644))
}

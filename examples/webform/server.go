package main

import (
	"bytes"
	"errors"
	"html/template"
	"mime"
	"net"
	"net/http"
	"os"
	"strings"
	"time"

	"example.com/panelmath/examples/internal/document"
	"example.com/panelmath/examples/internal/garment"
)

const (
	requestLimit = 64 << 10 // bytes of a form; the one that the page opens with has about two thousand
	headerLimit  = 16 << 10
	timeLimit    = 5 * time.Second // to read a request, and to answer it
)

// newServer returns the server of a form that opens with the given values. Every
// request is bounded in size and time.
func newServer(start values, limit time.Duration) *http.Server {
	return &http.Server{
		Handler:           guard(bounded(http.TimeoutHandler(pages(start), limit, "The answer took too long."))),
		ReadHeaderTimeout: limit,
		ReadTimeout:       limit,
		WriteTimeout:      3 * limit, // from the head on: to read, to work and to write
		IdleTimeout:       time.Minute,
		MaxHeaderBytes:    headerLimit,
	}
}

func pages(start values) http.Handler {
	mux := http.NewServeMux()
	mux.HandleFunc("GET /{$}", func(w http.ResponseWriter, _ *http.Request) { show(w, start) })
	mux.HandleFunc("POST /{$}", func(w http.ResponseWriter, r *http.Request) {
		v, err := posted(r.PostForm)
		if err != nil {
			http.Error(w, err.Error(), http.StatusBadRequest)
			return
		}
		if as := r.PostForm.Get("as"); as != "" {
			give(w, v, as)
			return
		}
		show(w, v)
	})
	mux.Handle("GET /style.css", http.FileServerFS(files))
	mux.Handle("GET /live.js", http.FileServerFS(files))
	mux.HandleFunc("GET /pattern.css", func(w http.ResponseWriter, _ *http.Request) {
		send(w, "text/css; charset=utf-8", http.StatusOK, []byte(document.Style()))
	})
	return mux
}

// guard keeps other pages out: the Host must be this machine (a name that was
// made to point here is refused), and nothing but the page's own files loads.
func guard(next http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		h := w.Header()
		h.Set("Content-Security-Policy", "default-src 'none'; style-src 'self'; script-src 'self'; connect-src 'self'; img-src data:; form-action 'self'; base-uri 'none'; frame-ancestors 'none'")
		h.Set("X-Content-Type-Options", "nosniff")
		h.Set("Referrer-Policy", "no-referrer")
		h.Set("Cache-Control", "no-store")
		host, _, err := net.SplitHostPort(r.Host)
		if err != nil {
			host = r.Host
		}
		if !loopback(host) {
			http.Error(w, "This page is for this machine only.", http.StatusForbidden)
			return
		}
		next.ServeHTTP(w, r)
	})
}

// bounded reads the form before anything is done with it, and stops where it is
// too large or too slow.
func bounded(next http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if kind, _, err := mime.ParseMediaType(r.Header.Get("Content-Type")); r.Method == http.MethodPost && (err != nil || kind != "application/x-www-form-urlencoded") {
			http.Error(w, "form: want application/x-www-form-urlencoded", http.StatusUnsupportedMediaType)
			return
		}
		r.Body = http.MaxBytesReader(w, r.Body, requestLimit)
		if err := r.ParseForm(); err != nil {
			http.Error(w, "form: "+err.Error(), status(err))
			return
		}
		next.ServeHTTP(w, r)
	})
}

func loopback(host string) bool {
	ip := net.ParseIP(host)
	return strings.EqualFold(strings.TrimSuffix(host, "."), "localhost") || ip != nil && ip.IsLoopback()
}

// status tells what was wrong with the request itself.
func status(err error) int {
	var size *http.MaxBytesError
	switch {
	case errors.As(err, &size):
		return http.StatusRequestEntityTooLarge
	case errors.Is(err, os.ErrDeadlineExceeded):
		return http.StatusRequestTimeout
	}
	return http.StatusBadRequest
}

// show answers with the page: the form, and the pattern or what is wrong.
func show(w http.ResponseWriter, v values) {
	g, wrong := v.make()
	var text bytes.Buffer
	if len(wrong) == 0 {
		d, err := written(g)
		if err == nil {
			err = d.Fragment(&text)
		}
		if err != nil {
			wrong = map[string][]string{"": {err.Error()}}
			text.Reset()
		}
	}
	pattern := template.HTML(text.String()) // written by a template that escapes
	var out bytes.Buffer
	if err := page.Execute(&out, v.sheet(pattern, wrong)); err != nil {
		http.Error(w, err.Error(), http.StatusInternalServerError)
		return
	}
	code := http.StatusOK
	if len(wrong) > 0 {
		code = http.StatusUnprocessableEntity
	}
	send(w, "text/html; charset=utf-8", code, out.Bytes())
}

// give answers with the pattern as a page to print or as a file.
func give(w http.ResponseWriter, v values, as string) {
	g, wrong := v.make()
	if len(wrong) > 0 {
		show(w, v)
		return
	}
	var out bytes.Buffer
	kind, name, err := "", "", error(nil)
	switch as {
	case "page", "large":
		var d document.Document
		if d, err = written(g); err == nil {
			err = d.HTML(&out, as == "large")
		}
		kind = "text/html; charset=utf-8"
		w.Header().Set("Content-Security-Policy", "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'") // its style is in the page
	case "markdown":
		var d document.Document
		d, err = g.Document(garment.Options{})
		out.WriteString(d.Markdown())
		kind, name = "text/markdown; charset=utf-8", "pattern.md"
	case "drawing":
		var svg []byte
		svg, err = g.Schematic()
		out.Write(svg)
		kind, name = "image/svg+xml", "schematic.svg"
	case "brief":
		var data []byte
		data, err = v.brief()
		out.Write(append(data, '\n'))
		kind, name = "application/json", "brief.json"
	default:
		http.Error(w, "as: want page, large, markdown, drawing or brief", http.StatusBadRequest)
		return
	}
	if err != nil {
		http.Error(w, err.Error(), http.StatusInternalServerError)
		return
	}
	if name != "" {
		w.Header().Set("Content-Disposition", "attachment; filename="+name)
	}
	send(w, kind, http.StatusOK, out.Bytes())
}

func send(w http.ResponseWriter, kind string, code int, text []byte) {
	w.Header().Set("Content-Type", kind)
	w.WriteHeader(code)
	_, _ = w.Write(text) // the client has gone where this fails
}

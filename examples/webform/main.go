// Command webform serves one page to this machine: a form for a brief, and
// beside it the pattern that follows from it, worked out anew as the form
// changes. It works without script; with it, the page does not reload.
//
//	go run ./examples/webform                        then open http://127.0.0.1:8080
//	go run ./examples/webform -brief my.json         open with a brief of your own
//	go run ./examples/webform -addr 127.0.0.1:9000   listen elsewhere on this machine
package main

import (
	"context"
	"errors"
	"flag"
	"fmt"
	"log"
	"net"
	"net/http"
	"os"
	"os/signal"
	"time"
)

func main() {
	addr := flag.String("addr", "127.0.0.1:8080", "where to listen; this machine only")
	file := flag.String("brief", "", "a brief to open with (default: one that the program holds)")
	flag.Parse()
	if flag.NArg() > 0 {
		log.Fatalf("unexpected %q after the flags", flag.Arg(0))
	}
	stop, cancel := signal.NotifyContext(context.Background(), os.Interrupt)
	defer cancel()
	if err := serve(stop, *addr, *file); err != nil {
		log.Fatal(err)
	}
}

// serve serves the page until the context ends.
func serve(ctx context.Context, addr, file string) error {
	start, err := opening(file)
	if err != nil {
		return err
	}
	host, _, err := net.SplitHostPort(addr)
	if err != nil {
		return fmt.Errorf("addr: %w", err)
	}
	if !loopback(host) {
		return fmt.Errorf("addr: got %q, want a loopback address such as 127.0.0.1:8080", addr)
	}
	listener, err := net.Listen("tcp", addr)
	if err != nil {
		return err
	}
	server := newServer(start, timeLimit)
	closed := make(chan error, 1)
	go func() {
		<-ctx.Done()
		grace, cancel := context.WithTimeout(context.Background(), 3*time.Second)
		defer cancel()
		closed <- server.Shutdown(grace)
	}()
	log.Printf("open http://%s", listener.Addr())
	if err := server.Serve(listener); !errors.Is(err, http.ErrServerClosed) {
		return err
	}
	return <-closed
}

// opening returns the values of the form when the page is opened.
func opening(file string) (values, error) {
	if file == "" {
		return fresh(), nil
	}
	data, err := os.ReadFile(file)
	if err != nil {
		return nil, fmt.Errorf("brief: %w", err)
	}
	return opened(data)
}

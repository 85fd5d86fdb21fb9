package cli

import (
	"fmt"
	"io"
	"sync"
	"sync/atomic"
	"time"
)

// progress tells on a terminal how far a long run has come. It is quiet where nobody
// looks: into a file, in a build, on a terminal that can't erase a line.
type progress struct {
	out   io.Writer
	total int
	after time.Duration // how long a run may take before it is told of
	every time.Duration
	begun atomic.Int64
}

// How soon a run is told of, and how often it is told how far it has come.
const (
	tellAfter = time.Second
	tellEvery = 200 * time.Millisecond
)

// progress is for so many plans; nil where it is to be quiet.
func (e Environment) progress(total int) *progress {
	if !e.ErrTerminal || e.Getenv("CI") != "" || e.Getenv("TERM") == "dumb" {
		return nil
	}
	return &progress{out: e.Stderr, total: total, after: tellAfter, every: tellEvery}
}

// counting counts each plan as its reading begins.
func (p *progress) counting(inputs []input) []input {
	if p == nil {
		return inputs
	}
	out := make([]input, len(inputs))
	for i, in := range inputs {
		out[i] = input{path: in.path, read: func() ([]byte, error) {
			p.begun.Add(1)
			return in.read()
		}}
	}
	return out
}

// start begins to tell, until the function that it gives is called. That leaves the
// line as it was.
func (p *progress) start() (stop func()) {
	if p == nil {
		return func() {}
	}
	done := make(chan struct{})
	var told sync.WaitGroup
	told.Go(func() { p.tell(done) })
	return func() {
		close(done)
		told.Wait()
	}
}

func (p *progress) tell(done <-chan struct{}) {
	select {
	case <-done:
		return
	case <-time.After(p.after):
	}
	tick := time.NewTicker(p.every)
	defer tick.Stop()
	for {
		fmt.Fprintf(p.out, "\r\x1b[Kliftlint: plan %d of %d", p.begun.Load(), p.total)
		select {
		case <-done:
			fmt.Fprint(p.out, "\r\x1b[K")
			return
		case <-tick.C:
		}
	}
}

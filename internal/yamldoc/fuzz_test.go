package yamldoc

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"liftlint/internal/source"
)

// FuzzRead checks for any bytes: no panic, an end within bounds, either a
// document or faults, every range within the file, and the same tree as the
// reference reader's.
func FuzzRead(f *testing.F) {
	files, _ := filepath.Glob("testdata/good/*.yaml")
	for _, file := range files {
		src, err := os.ReadFile(file)
		if err != nil {
			f.Fatal(err)
		}
		f.Add(src)
	}
	for _, seed := range []string{"a: &a [*a]", "a:\n- b\n", "[:a]", "{a:}", "a: 'b''\n c'", "a: \"\\u12\"", ">+\n\n x\n", "\xff\xfea", "a: |2\n   x\n", "- - -\n"} {
		f.Add([]byte(seed))
	}
	f.Fuzz(func(t *testing.T, src []byte) {
		start := time.Now()
		d, faults := Read("fuzz", src)
		if took := time.Since(start); took > 5*time.Second {
			t.Fatalf("took %v", took)
		}
		if (d == nil) == (len(faults) == 0) {
			t.Fatalf("document %v, %d faults", d != nil, len(faults))
		}
		for _, fault := range faults {
			checkFault(t, fault)
			checkInside(t, src, fault.Range)
			for _, r := range fault.Related {
				checkInside(t, src, r.Range)
			}
		}
		if d == nil {
			return
		}
		for _, n := range d.index {
			checkInside(t, src, n.Place.Value)
			if !n.Place.Key.IsZero() {
				checkInside(t, src, n.Place.Key)
			}
		}
		if diff := referenceDiff(src, d); diff != "" {
			t.Fatal(diff)
		}
	})
}

func checkInside(t *testing.T, src []byte, r source.Range) {
	t.Helper()
	if r.To.Before(r.From) || r.From.Line < 1 || r.From.Column < 1 {
		t.Fatalf("range %v", r)
	}
	text := string(bytes.TrimPrefix(src, []byte(byteOrderMark)))
	lines := strings.Split(strings.NewReplacer("\r\n", "\n", "\r", "\n").Replace(text), "\n")
	if r.To.Line > len(lines) || r.To.Column > len([]rune(lines[r.To.Line-1]))+1 || r.From.Column > len([]rune(lines[r.From.Line-1]))+1 {
		t.Fatalf("range %v lies outside", r)
	}
}

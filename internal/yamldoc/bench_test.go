package yamldoc

import (
	"bytes"
	"os"
	"testing"
)

// BenchmarkRead reads a plan of the usual size.
func BenchmarkRead(b *testing.B) {
	src, err := os.ReadFile("testdata/good/plan.yaml")
	if err != nil {
		b.Fatal(err)
	}
	b.Logf("%d lines, %d bytes", bytes.Count(src, []byte("\n")), len(src))
	b.SetBytes(int64(len(src)))
	b.ReportAllocs()
	for b.Loop() {
		if d, faults := Read("plan", src); d == nil {
			b.Fatal(faults)
		}
	}
}

// BenchmarkFirstReading leaves the second reading out.
func BenchmarkFirstReading(b *testing.B) {
	src, err := os.ReadFile("testdata/good/plan.yaml")
	if err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for b.Loop() {
		faults := &faultList{}
		text, _ := clean(src, faults)
		if s := scan(text, faults); compose(s.tokens, faults).root == nil {
			b.Fatal(faults.all)
		}
	}
}

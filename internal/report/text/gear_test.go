package text

import (
	"bytes"
	"testing"

	"liftlint/internal/report"
	"liftlint/internal/report/reporttest"
)

// TestGear: registers are told of as such, with what was not judged for want of a
// day, and one that can't be read with its faults.
func TestGear(t *testing.T) {
	reporttest.EachGear(t, ".txt", func(run report.Run) string {
		var b bytes.Buffer
		if err := Write(&b, run, Options{}); err != nil {
			t.Fatal(err)
		}
		return b.String()
	}, nil)
}

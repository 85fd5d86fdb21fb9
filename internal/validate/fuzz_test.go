package validate

import (
	"slices"
	"strings"
	"testing"

	"liftlint/internal/yamldoc"
)

// Any document that can be read is either valid or gets faults of one line at
// a place inside it.
func FuzzPlan(f *testing.F) {
	for _, path := range matches(f, "testdata/*/*.yaml") {
		f.Add(mustReadFile(f, path))
	}
	v := mustNew(f)
	f.Fuzz(func(t *testing.T, text string) {
		doc, faults := yamldoc.Read("fuzz", []byte(text))
		if len(faults) > 0 {
			return
		}
		for _, fault := range v.Plan(doc) {
			known := fault.ID == yamldoc.TooManyFaults || fault.ID != NotValid && slices.Contains(FaultIDs(), fault.ID)
			if !known || fault.Range.From.Line < 1 || strings.ContainsAny(fault.Message, "\n\r\x1b") {
				t.Errorf("%+v", fault)
			}
		}
	})
}

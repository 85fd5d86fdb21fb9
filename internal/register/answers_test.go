package register_test

import (
	"slices"
	"testing"
	"time"

	"liftlint/internal/register"
)

// TestAnswers holds which record takes away what another left open.
func TestAnswers(t *testing.T) {
	by := map[register.InspectionKind][]register.InspectionKind{
		register.BeforeUse: {register.BeforeUse, register.Frequent, register.Periodic, register.Thorough, register.Repair},
		register.Frequent:  {register.Frequent, register.Periodic, register.Thorough, register.Repair},
		register.Periodic:  {register.Periodic, register.Thorough},
		register.Thorough:  {register.Thorough},
		register.ProofTest: {register.ProofTest},
		register.Repair:    {register.Periodic, register.Thorough, register.Repair},
	}
	for _, earlier := range register.InspectionKinds() {
		failed := &register.Inspection{Kind: earlier, Outcome: register.Failed}
		for _, kind := range register.InspectionKinds() {
			later := register.Inspection{Kind: kind, Inspector: "Q. Example", Outcome: register.PassedWithRemarks}
			if got, want := later.Answers(failed), slices.Contains(by[earlier], kind); got != want {
				t.Errorf("%s after %s: %v", kind, earlier, got)
			}
			unnamed, without := later, later
			unnamed.Inspector, without.Outcome = "", ""
			if unnamed.Answers(failed) || without.Answers(failed) {
				t.Errorf("%s after %s: one that shows nothing answers it", kind, earlier)
			}
		}
	}
}

// TestOpen: what a record left open stays so until one after it answers, in the
// order of days and, on a day of a repair, of the file; on any other day what failed is
// taken to come last.
func TestOpen(t *testing.T) {
	day := func(d int) time.Time { return time.Date(2026, 6, d, 0, 0, 0, 0, time.UTC) }
	failed := func(d int) register.Inspection {
		return register.Inspection{Date: day(d), Kind: register.Periodic, Outcome: register.Failed}
	}
	passed := func(d int) register.Inspection {
		return register.Inspection{Date: day(d), Kind: register.Periodic, Outcome: register.Passed, Inspector: "Q. Example"}
	}
	until := day(10)
	for _, c := range []struct {
		name string
		list []register.Inspection
		want []int
	}{
		{"answered", []register.Inspection{failed(1), passed(2)}, nil},
		{"any order of the file", []register.Inspection{passed(2), failed(1)}, nil},
		{"passed before", []register.Inspection{passed(1), failed(2)}, []int{1}},
		{"on one day what failed counts", []register.Inspection{passed(3), failed(3)}, []int{1}},
		{"on one day, in the other order", []register.Inspection{failed(3), passed(3)}, []int{0}},
		{"on one day, repaired", []register.Inspection{failed(3), {Date: day(3), Kind: register.Repair, Outcome: register.Passed, Inspector: "Q. Example"}, passed(3)}, nil},
		{"passed after the day", []register.Inspection{failed(1), passed(11)}, []int{0}},
		{"failed after the day", []register.Inspection{failed(11), passed(1)}, nil},
		{"two", []register.Inspection{failed(4), failed(2)}, []int{1, 0}},
	} {
		item := &register.Item{Inspections: c.list}
		var got []int
		for _, r := range register.Open(item.InOrder(&until), func(r *register.Inspection) bool { return r.Outcome == register.Failed }) {
			got = append(got, item.Index(r))
		}
		if !slices.Equal(got, c.want) {
			t.Errorf("%s: %v", c.name, got)
		}
	}
	if all := (&register.Item{Inspections: []register.Inspection{passed(2), failed(1)}}).InOrder(nil); len(all) != 2 || all[0].Outcome != register.Failed {
		t.Errorf("without a day: %v", all)
	}
}

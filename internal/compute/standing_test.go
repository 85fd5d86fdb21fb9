package compute_test

import (
	"testing"
	"time"

	"liftlint/internal/compute"
	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/quantity"
	"liftlint/internal/register"
)

// look is a record of broken wires; -1 is a record that did not look.
func look(day int, kind register.InspectionKind, inspector string, outcome register.Outcome, wires int) register.Inspection {
	i := register.Inspection{Date: time.Date(2026, 6, day, 0, 0, 0, 0, time.UTC), Kind: kind, Inspector: inspector, Outcome: outcome}
	if wires >= 0 {
		i.Found = &register.Found{BrokenWiresInOneLay: &wires}
	}
	return i
}

// onRecord are the facts of one wire rope sling with a history.
func onRecord(t *testing.T, list []register.Inspection, on *time.Time) *facts.Facts {
	t.Helper()
	sling := &gear.WireRopeSling{Common: gear.Common{ID: "S1", Kind: gear.WireRopeSlingKind, Pointer: "/gear/0"}}
	item := &register.Item{Number: "S1", Gear: sling, Inspections: list, RatedLoad: &quantity.Load{Newtons: 1000}}
	return compute.Gear([]gear.Item{sling}, compute.Conditions{
		On: on, IntervalMonths: func(string, string) (int, bool) { return 12, true }, OnFile: map[string]*register.Item{"S1": item},
	})
}

// TestWhatStands: wires do not grow together again because a slighter look, or one
// that nobody stands for, finds none.
func TestWhatStands(t *testing.T) {
	const q = "Q. Example"
	periodic := look(1, register.Periodic, q, register.Passed, 14)
	for _, c := range []struct {
		name string
		then []register.Inspection
		want float64
		went string
		why  string
	}{
		{"nothing after", nil, 14, "no", ""},
		{"a look without a name", []register.Inspection{look(2, register.BeforeUse, "", register.Passed, 0)}, 14, "not_counted", "names no inspector"},
		{"without an outcome", []register.Inspection{look(2, register.Periodic, q, "", 0)}, 14, "not_counted", "gives no outcome"},
		{"not passed", []register.Inspection{look(2, register.Periodic, q, register.Failed, 0)}, 14, "not_counted", "did not pass it"},
		{"a slighter look", []register.Inspection{look(2, register.Frequent, q, register.Passed, 0)}, 14, "not_counted", "is of a frequent inspection, which goes less far than a periodic inspection"},
		{"one that goes as far", []register.Inspection{look(2, register.Periodic, q, register.PassedWithRemarks, 3)}, 3, "counted", ""},
		{"and again the same", []register.Inspection{look(2, register.Thorough, q, register.Passed, 3), look(3, register.Periodic, q, register.Passed, 3)}, 3, "no", ""},
		{"a slighter look that finds more", []register.Inspection{look(2, register.BeforeUse, "", "", 15)}, 15, "no", ""},
		{"more and then less", []register.Inspection{look(2, register.BeforeUse, "", "", 15), look(3, register.BeforeUse, q, register.Passed, 1)}, 14, "not_counted", "is of a look before use, which goes less far than a periodic inspection"},
		{"a repair that looked", []register.Inspection{look(2, register.Repair, q, register.Passed, 0)}, 0, "no", ""},
		{"a repair, and a look after it", []register.Inspection{look(2, register.Repair, q, register.Passed, -1), look(3, register.BeforeUse, q, register.Passed, 0)}, 0, "no", ""},
		{"a repair, and a look without a name", []register.Inspection{look(2, register.Repair, q, register.Passed, -1), look(3, register.BeforeUse, "", register.Passed, 0)}, 14, "no", ""},
		{"a repair before a slighter look only", []register.Inspection{look(2, register.Frequent, q, register.Passed, 0), look(3, register.Repair, q, register.Passed, -1)}, 14, "not_counted", "is of a frequent inspection, which goes less far than a periodic inspection"},
		{"a repair that nobody passed", []register.Inspection{look(2, register.Repair, q, "", 0)}, 14, "not_counted", "gives no outcome"},
		{"less, and less again without a name", []register.Inspection{look(2, register.Periodic, q, register.Passed, 5), look(3, register.BeforeUse, "", register.Passed, 4)}, 5, "counted", ""},
		{"less, and the same without a name", []register.Inspection{look(2, register.Periodic, q, register.Passed, 5), look(3, register.BeforeUse, "", register.Passed, 5)}, 5, "counted", ""},
		{"less, and a little more without a name", []register.Inspection{look(2, register.Periodic, q, register.Passed, 5), look(3, register.BeforeUse, "", "", 6)}, 6, "counted", ""},
		{"less, and confirmed", []register.Inspection{look(2, register.Periodic, q, register.Passed, 5), look(3, register.Frequent, q, register.Passed, 5), look(4, register.BeforeUse, "", "", 5)}, 5, "no", ""},
		{"after the day", []register.Inspection{look(20, register.Periodic, q, register.Passed, 0)}, 14, "no", ""},
	} {
		day := time.Date(2026, 6, 10, 0, 0, 0, 0, time.UTC)
		signs := onRecord(t, append([]register.Inspection{periodic}, c.then...), &day).Document.Signs
		if len(signs) != 1 {
			t.Fatalf("%s: %+v", c.name, signs)
		}
		if s := signs[0]; *s.Count != c.want || s.WentBack != c.went || s.Back.Because != c.why {
			t.Errorf("%s: %v, went back %s %+v", c.name, *s.Count, s.WentBack, s.Back)
		}
	}
}

// TestScatterIsNoStepBack: two measurements of one thing differ a little.
func TestScatterIsNoStepBack(t *testing.T) {
	worn := func(day int, ratio float64) register.Inspection {
		i := look(day, register.Periodic, "Q. Example", register.Passed, -1)
		share := quantity.Ratio(ratio)
		i.Found = &register.Found{OuterWireWear: &share}
		return i
	}
	for after, want := range map[float64]string{0.13: "no", 0.1: "counted"} {
		signs := onRecord(t, []register.Inspection{worn(1, 0.14), worn(2, after)}, nil).Document.Signs
		if len(signs) != 1 || *signs[0].LostRatio != after || signs[0].WentBack != want {
			t.Errorf("%v: %+v", after, signs)
		}
	}
}

// TestScatterWithoutName: a measurement that nobody stands for, and that hardly differs,
// does not take the place of the step before it.
func TestScatterWithoutName(t *testing.T) {
	worn := func(day int, inspector string, ratio float64) register.Inspection {
		i := look(day, register.Periodic, inspector, register.Passed, -1)
		share := quantity.Ratio(ratio)
		i.Found = &register.Found{OuterWireWear: &share}
		return i
	}
	signs := onRecord(t, []register.Inspection{worn(1, "Q. Example", 0.09), worn(2, "Q. Example", 0.04), worn(3, "", 0.039)}, nil).Document.Signs
	if s := signs[0]; len(signs) != 1 || s.WentBack != "counted" || s.Back.Worse != "9 %" || s.Back.Better != "4 %" || *s.LostRatio != 0.04 {
		t.Errorf("%+v", signs)
	}
}

// TestProofTestAfterRepair: a proof test answers a repair that it comes after, by the
// order of the records on one day, where somebody who is named has passed it.
func TestProofTestAfterRepair(t *testing.T) {
	const q = "Q. Example"
	load := &quantity.Load{Newtons: 1000}
	test := func(day int, inspector string, o register.Outcome) register.Inspection {
		i := look(day, register.ProofTest, inspector, o, -1)
		i.ProofLoad = load
		return i
	}
	repair := func(inspector string) register.Inspection {
		return look(2, register.Repair, inspector, register.Passed, -1)
	}
	tested := repair(q)
	tested.ProofLoad = load
	unnamed := repair("")
	unnamed.ProofLoad = load
	for _, c := range []struct {
		name         string
		records      []register.Inspection
		since, atAll string
	}{
		{"never", []register.Inspection{repair(q)}, "no", "no"},
		{"the day before", []register.Inspection{test(1, q, register.Passed), repair(q)}, "no", "yes"},
		{"before it on one day", []register.Inspection{test(2, q, register.Passed), repair(q)}, "no", "yes"},
		{"after it on one day", []register.Inspection{repair(q), test(2, q, register.Passed)}, "yes", "yes"},
		{"the day after", []register.Inspection{test(3, q, register.PassedWithRemarks), repair(q)}, "yes", "yes"},
		{"by nobody", []register.Inspection{repair(q), test(3, "", register.Passed)}, "no", "no"},
		{"failed", []register.Inspection{repair(q), test(3, q, register.Failed)}, "no", "no"},
		{"with the repair", []register.Inspection{tested}, "yes", "no"},
		{"with a repair by nobody", []register.Inspection{unnamed}, "no", "no"},
		{"between two repairs", []register.Inspection{repair(q), test(2, q, register.Passed), repair(q)}, "no", "yes"},
	} {
		f := onRecord(t, c.records, nil).Document.OnFile[0]
		if got := f.ProofTested; f.Repair.ProofTested != c.since || got != "yes" && c.atAll == "yes" || got == "yes" && c.atAll == "no" {
			t.Errorf("%s: since the repair %s, at all %s", c.name, f.Repair.ProofTested, got)
		}
	}
}

// TestAfterTheDay: what a record says that is dated too late is told, figures as what
// nobody has judged.
func TestAfterTheDay(t *testing.T) {
	day := time.Date(2026, 6, 10, 0, 0, 0, 0, time.UTC)
	late := func(f register.Found) register.Inspection {
		i := look(20, register.Frequent, "Q. Example", register.Passed, -1)
		i.Found = &f
		return i
	}
	wear, none, yes, no, wires := quantity.Ratio(0.4), quantity.Ratio(0), true, false, 3
	for _, c := range []struct {
		found      register.Found
		doubt, say string
	}{
		{register.Found{Wear: &wear}, "after_the_day", "passed, with figures that were not judged"},
		{register.Found{BrokenWiresInOneLay: &wires}, "after_the_day", "passed, with figures that were not judged"},
		{register.Found{Wear: &wear, Kink: &yes}, "unfit_after_the_day", "passed, with damage found"},
		{register.Found{Wear: &none, Kink: &no}, "after_the_day", "passed"},
	} {
		d := onRecord(t, []register.Inspection{late(c.found)}, &day).Document.Doubtful
		if len(d) != 1 || d[0].Doubt != c.doubt || d[0].Says != c.say {
			t.Errorf("%+v", d)
		}
	}
}

// TestWhatIsPutRight: a tag is put on anew without a repair, but not by a look
// that nobody stands for.
func TestWhatIsPutRight(t *testing.T) {
	legible := func(day int, inspector string, is bool) register.Inspection {
		i := look(day, register.Periodic, inspector, register.Passed, -1)
		i.Found = &register.Found{TagLegible: &is}
		return i
	}
	for inspector, seen := range map[string]bool{"Q. Example": false, "": true} {
		signs := onRecord(t, []register.Inspection{legible(1, "Q. Example", false), legible(2, inspector, true)}, nil).Document.Signs
		if len(signs) != 1 || *signs[0].Seen != seen || signs[0].WentBack != "no" {
			t.Errorf("%q: %+v", inspector, signs)
		}
	}
}

// TestTwoCalendars: a thorough examination is due again whatever periodic
// inspections there were since, and a periodic one whatever its record says.
func TestTwoCalendars(t *testing.T) {
	day := func(month, d int) time.Time { return time.Date(2026, time.Month(month), d, 0, 0, 0, 0, time.UTC) }
	on := day(12, 4)
	gearOf := func(thoroughDue, periodicDue *time.Time) facts.Inspection {
		sling := &gear.WireRopeSling{Common: gear.Common{ID: "S1", Kind: gear.WireRopeSlingKind, Pointer: "/gear/0"}}
		sling.Inspection = &gear.Inspection{Pointer: "/periodic", Date: day(8, 1), NextDue: periodicDue, Service: gear.NormalService,
			Standing: &gear.Inspection{Pointer: "/thorough", Thorough: true, Date: day(5, 3), NextDue: thoroughDue, Service: gear.NormalService}}
		f := compute.Gear([]gear.Item{sling}, compute.Conditions{On: &on, IntervalMonths: func(string, string) (int, bool) { return 12, true }})
		return *f.Document.Gear[0].Inspection
	}
	ran, long := day(11, 3), day(12, 31).AddDate(1, 0, 0)
	if got := gearOf(&ran, nil); got.At != "#/thorough" || got.Named != "thorough examination" || *got.OverdueDays != 31 || got.Because != "" {
		t.Errorf("the examination has run out: %+v", got)
	}
	if got := gearOf(nil, &ran); got.At != "#/periodic" || got.Named != "periodic inspection" || *got.OverdueDays != 31 {
		t.Errorf("the periodic inspection has run out: %+v", got)
	}
	want := ", by the interval from 2026-05-03 on; the day on the record, 2027-12-31, is later and does not count"
	if got := gearOf(&long, nil); got.At != "#/thorough" || *got.Due != "2027-05-03" || got.Because != want {
		t.Errorf("the day on the record is too late: %+v", got)
	}
}

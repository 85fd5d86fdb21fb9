package lint_test

import (
	"strings"
	"testing"

	"liftlint/internal/lint"
)

// TestLookOfTheDay: a look before use that the register has of the day of the lift, by
// somebody who is named, is what the plan is asked for; one of another day, by nobody,
// or that found the item unfit is not.
func TestLookOfTheDay(t *testing.T) {
	plan, register := onFile(t)
	names := func(record string) string {
		t.Helper()
		const first = "    inspections:\n"
		text := strings.Replace(register, first, first+record, 1) // of WR-11, which is S1
		r := check(t, linter(t, lint.Options{Stage: "prelift"}).WithRegisters(lint.RegisterText("loft.gear.yaml", text)), plan)
		found := of(r, "inspection/not_looked_over")
		if len(found) != 1 || found[0].Place.File != "plan.lift.yaml" {
			t.Fatalf("%s: %v", rules(r), found)
		}
		return found[0].Message
	}
	for record, missing := range map[string]bool{
		"": true,
		"      - {date: 2026-12-04, kind: before_use, inspector: Q. Example, outcome: passed}\n": false,
		"      - {date: 2026-12-04, kind: before_use, outcome: passed}\n":                        true,
		"      - {date: 2026-12-04, kind: before_use, inspector: Q. Example, outcome: failed}\n": true,
		"      - {date: 2026-12-03, kind: before_use, inspector: Q. Example, outcome: passed}\n": true,
	} {
		if got := names(record); strings.Contains(got, " S1,") != missing {
			t.Errorf("%q: %s", record, got)
		}
	}
}

// TestRecordsThatHideNothing: a proof test under the rated load shows nothing of a
// repair, and an overload whose year is mistyped is still one.
func TestRecordsThatHideNothing(t *testing.T) {
	plan, loft := onFile(t)
	const first = "    inspections:\n"
	records := func(more string) string { return strings.Replace(loft, first, first+more, 1) }
	const repaired = "      - {date: 2026-08-01, kind: repair, inspector: Q. Example, outcome: passed}\n"
	test := func(load string) string {
		return repaired + "      - {date: 2026-08-02, kind: proof_test, inspector: Q. Example, outcome: passed" + load + "}\n"
	}
	for name, c := range map[string]struct {
		register, rule string
		found          bool
	}{
		"a test of its rated load":  {records(test(", proof_load: 4.5 t")), "inspection/repair_untested", false},
		"a test of a little":        {records(test(", proof_load: 0.1 t")), "inspection/repair_untested", true},
		"a test of nothing said":    {records(test("")), "inspection/repair_untested", true},
		"overloaded in a year more": {changed(t, loft, "overloaded: {date: 2026-02-03, cleared_by: Q. Example, cleared_on: 2026-02-20}", "overloaded: {date: 2027-02-03}"), "register/overload_not_cleared", true},
		"cleared on no day":         {changed(t, loft, ", cleared_on: 2026-02-20", ""), "register/overload_not_cleared", true},
	} {
		if got := len(of(checkOnFile(t, plan, c.register), c.rule)) > 0; got != c.found {
			t.Errorf("%s: found %v", name, got)
		}
	}
}

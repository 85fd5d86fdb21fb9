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

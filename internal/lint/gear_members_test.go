package lint_test

import (
	"context"
	"strings"
	"testing"

	"liftlint/internal/finding"
	"liftlint/internal/gear"
	"liftlint/internal/lint"
	"liftlint/internal/register"
)

const bridleOfParts = `liftlint: 1
register: {title: a}
items:
  - {number: W-1, kind: wire_rope_sling, status: scrapped, why: cut up}
  - {number: W-2, kind: wire_rope_sling, status: in_service}
  - {number: L-1, kind: intermediate_link, status: quarantined}
  - {number: M-1, kind: master_link, status: out_of_service}
  - number: B-1
    kind: bridle
    status: in_service
    master: M-1
    groups: [{link: L-1, legs: [W-1, W-2]}]
    tag: {condition: legible, maker: loft, serial: "1", diameter: 14 mm, rated_load: 2 t, rated_for: assembly, angle_from_horizontal: 60 deg, legs: 2}
    inspections: [{date: 2026-06-01, kind: periodic, inspector: Q. Example, outcome: passed, next_due: 2027-06-01, found: {kink: false}}]
`

// TestBridleOfPartsOut: a bridle in service is held against what it is made of, and
// nothing is said of one that is itself out of service.
func TestBridleOfPartsOut(t *testing.T) {
	count, found := checkedGear(t, bridleOfParts, "2026-12-04")
	var out []string
	for _, f := range found {
		if f.Rule == "register/member_not_in_service" {
			if f.Severity != finding.Error || f.Key != "gear/B-1" || len(f.Related) != 1 {
				t.Errorf("%+v", f)
			}
			out = append(out, f.Place.Pointer+": "+f.Message)
		}
	}
	got := strings.Join(out, "\n")
	for _, want := range []string{
		"/items/4/master: bridle B-1 may be used by the register, and its master link M-1 is out of service:",
		"/items/4/groups/0/link: bridle B-1 may be used by the register, and its intermediate link L-1 is quarantined:",
		"/items/4/groups/0/legs/0: bridle B-1 may be used by the register, and its leg W-1 is scrapped:",
	} {
		if !strings.Contains(got, want) {
			t.Errorf("lacks %s:\n%s", want, got)
		}
	}
	if len(out) != 3 || count.Judged != 2 || count.Aside != 3 || count.Findings[finding.Error] != 3 {
		t.Errorf("%d: %+v", len(out), count)
	}
	if _, found := checkedGear(t, strings.Replace(bridleOfParts, "kind: bridle\n    status: in_service", "kind: bridle\n    status: quarantined", 1), "2026-12-04"); strings.Contains(rulesOf(found), "member_not_in_service") {
		t.Error(rulesOf(found))
	}
}

func rulesOf(list []finding.Finding) string {
	var rules []string
	for _, f := range list {
		rules = append(rules, f.Rule)
	}
	return strings.Join(rules, " ")
}

// TestGearThatStops: what can't be judged for a fault of the program is an error that
// names the item, and no register is called judged that was not gone through.
func TestGearThatStops(t *testing.T) {
	l := linter(t, lint.Options{})
	ctx := context.Background()
	none := &register.Register{Items: []register.Item{{Number: "X-1"}}}
	show := func([]finding.Finding) error { return nil }
	if _, err := l.CheckGear(ctx, none, show); err == nil || !strings.Contains(err.Error(), "X-1") {
		t.Error(err)
	}
	if _, err := l.DueDays(ctx, none); err == nil || !strings.Contains(err.Error(), "X-1") {
		t.Error(err)
	}
	own := register.Item{Number: "B-1", Gear: &gear.Bridle{}, Members: &register.Members{Master: "B-1"}}
	if _, err := l.CheckGear(ctx, &register.Register{Items: []register.Item{own}}, show); err == nil || !strings.Contains(err.Error(), "of 1 item 0 were judged") {
		t.Error(err)
	}
}

package lint_test

import (
	"context"
	"errors"
	"os"
	"slices"
	"strings"
	"testing"
	"time"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
)

// onFile is the base plan whose gear stands in a register, and that register.
func onFile(t testing.TB) (plan, register string) {
	t.Helper()
	read := func(name string) string {
		text, err := os.ReadFile("../../policies/bases/" + name)
		if err != nil {
			t.Fatal(err)
		}
		return string(text)
	}
	return read("on_file.lift.yaml"), read("on_file.gear.yaml")
}

// checkOnFile checks a plan with a register, both changed as given.
func checkOnFile(t testing.TB, plan, register string) *lint.Result {
	t.Helper()
	return check(t, linter(t, lint.Options{}).WithRegisters(lint.RegisterText("loft.gear.yaml", register)), plan)
}

// TestFindingsLeadIntoTheRegister: a finding about gear on file stands there,
// with its use in the plan beside it; one about the plan's own word stands in the
// plan.
func TestFindingsLeadIntoTheRegister(t *testing.T) {
	plan, register := onFile(t)
	overdue := changed(t, register, "date: 2026-06-01, kind: periodic", "date: 2025-06-01, kind: periodic", "next_due: 2027-06-01", "next_due: 2026-06-01")
	found := of(checkOnFile(t, plan, overdue), "inspection/overdue")
	if len(found) != 1 {
		t.Fatal(found)
	}
	f := found[0]
	if f.Place.File != "loft.gear.yaml" || f.Place.Pointer != "/items/0/inspections/0" || f.Place.Range.From.Line != 25 || f.Key != "gear/S1" {
		t.Errorf("%+v", f.Place)
	}
	if !slices.ContainsFunc(f.Related, func(x finding.Related) bool {
		return x.Place.File == "plan.lift.yaml" && x.Place.Pointer == "/gear/1/item" && strings.Contains(x.Caption, "WR-11")
	}) {
		t.Errorf("%+v", f.Related)
	}
}

// TestFaultsStandWhereTheyAreWritten: what the plan says is seen on an item of the
// register is found in the plan, what the register says in the register, and what
// both say in the plan.
func TestFaultsStandWhereTheyAreWritten(t *testing.T) {
	plan, register := onFile(t)
	inPlan := changed(t, plan, "item: WR-11", "item: WR-11, faults_seen: [kink]")
	onRegister := changed(t, register, "    length: 2.5 m\n", "    length: 2.5 m\n    faults_seen: [heat]\n")
	for _, c := range []struct{ plan, register, file, pointer, names string }{
		{inPlan, register, "plan.lift.yaml", "/gear/1/faults_seen", "it: kink"},
		{plan, onRegister, "loft.gear.yaml", "/items/0/faults_seen", "it: heat"},
		{inPlan, onRegister, "plan.lift.yaml", "/gear/1/faults_seen", "it: heat, kink"},
	} {
		found := of(checkOnFile(t, c.plan, c.register), "sling/faults_seen")
		if len(found) != 1 || found[0].Place.File != c.file || found[0].Place.Pointer != c.pointer || !strings.HasSuffix(found[0].Message, c.names) {
			t.Errorf("%s in %s: %+v", c.names, c.file, found)
		}
	}
}

// TestMissingLeadsIntoTheRegister: what the register does not say is asked for
// there, by the item's id.
func TestMissingLeadsIntoTheRegister(t *testing.T) {
	plan, register := onFile(t)
	r := checkOnFile(t, plan, changed(t, register, "    length: 2.5 m\n", ""))
	for _, f := range of(r, "input/missing") {
		if f.Key == "input/gear/S1/length" && f.Place.File == "loft.gear.yaml" && f.Place.Pointer == "/items/0" && len(f.Related) == 1 {
			return
		}
	}
	t.Errorf("%+v", of(r, "input/missing"))
}

func TestUnlikeIsFoundAtBothPlaces(t *testing.T) {
	plan, register := onFile(t)
	r := checkOnFile(t, changed(t, plan, "item: WR-11", "item: WR-11, length: 2.4 m"), register)
	found := of(r, "register/disagrees")
	if len(found) != 1 || found[0].Severity != finding.Error || found[0].Place.Pointer != "/gear/1/length" ||
		found[0].Related[0].Place.File != "loft.gear.yaml" || found[0].Related[0].Place.Pointer != "/items/0/length" {
		t.Errorf("%+v", found)
	}
	if len(r.Findings) != 1 { // the length of the register is computed with
		t.Errorf("%+v", r.Findings)
	}
}

// TestUnfitIsNeverFine: a newest inspection that was not passed, or does not say
// so, leaves no due day that is met.
func TestUnfitIsNeverFine(t *testing.T) {
	plan, register := onFile(t)
	for to, rule := range map[string]string{"outcome: failed": "inspection/found_unfit", "qualification: x": "inspection/record_incomplete"} {
		r := checkOnFile(t, plan, changed(t, register, "qualification: competent person, outcome: passed", to))
		if len(of(r, rule)) != 1 {
			t.Errorf("%s: %+v", to, r.Findings)
		}
		for _, c := range r.Checked {
			if c.Rule == "inspection/overdue" && (slices.Contains(c.Met, "gear/S1") || len(c.NotJudged) != 1) {
				t.Errorf("%s: %+v", to, c)
			}
		}
	}
}

func TestRegisterWithFaultsIsNotUsed(t *testing.T) {
	plan, register := onFile(t)
	l := linter(t, lint.Options{}).WithRegisters(lint.RegisterText("loft.gear.yaml", changed(t, register, "kind: hook", "kind: hok")))
	if _, err := l.Check(context.Background(), "plan.lift.yaml", []byte(plan)); err == nil || !strings.Contains(err.Error(), "loft.gear.yaml") {
		t.Error(err)
	}
	if r := check(t, linter(t, lint.Options{}), plan); r.State != lint.NotValid || len(of(r, "plan/unknown_reference")) != 3 {
		t.Errorf("%+v", r.Findings)
	}
}

func TestOneItemTwice(t *testing.T) {
	plan, register := onFile(t)
	r := checkOnFile(t, changed(t, plan, "serial: \"0062\"", "serial: \"0061\""), register)
	found := of(r, "register/same_item_twice")
	if len(found) != 1 || found[0].Key != "gear/S2" || !strings.Contains(found[0].Message, "serial number 0061") {
		t.Errorf("%+v", found)
	}
	other := changed(t, plan, "serial: \"0062\"", "serial: \"0061\"", "maker: loft, serial: \"0061\"", "maker: other, serial: \"0061\"")
	if found := of(checkOnFile(t, other, register), "register/same_item_twice"); len(found) > 0 {
		t.Errorf("two makers: %+v", found)
	}
}

// TestOneSerialInTwoSpellings: capitals and blanks tell neither serial numbers nor makers
// apart, in one plan and in two lifts of a day.
func TestOneSerialInTwoSpellings(t *testing.T) {
	plan, register := onFile(t)
	register = changed(t, register, "\"0061\"", "\"a 61\"")
	spelt := changed(t, plan, "maker: loft, serial: \"0062\"", "maker: LOFT, serial: \"A61\"")
	found := of(checkOnFile(t, spelt, register), "register/same_item_twice")
	if len(found) != 1 || !strings.Contains(found[0].Message, "serial number a 61, written A61 too") {
		t.Errorf("%+v", found)
	}
	alone := changed(t, spelt, "{id: S1, kind: register, item: WR-11}", strings.Replace(lineWith(t, plan, "{id: S2,"), "S2", "S1", 1), "id: EX-F", "id: EX-G")
	a, b := checkOnFile(t, plan, register), checkOnFile(t, alone, register)
	lint.SameDay([]*lint.Result{a, b}, nil)
	if !slices.ContainsFunc(of(b, "register/same_item_twice"), func(f finding.Finding) bool {
		return strings.Contains(f.Message, "serial number a 61, written A61 too")
	}) {
		t.Errorf("%+v", b.Findings)
	}
}

// TestSerialsThatDiffer: what is one serial number to the register differs nowhere.
func TestSerialsThatDiffer(t *testing.T) {
	plan, register := onFile(t)
	for on, want := range map[string]int{"00 61": 0, "0071": 1} {
		r := checkOnFile(t, plan, changed(t, register, "proof_load: 4.5 t, serial: \"0061\"", "proof_load: 4.5 t, serial: \""+on+"\""))
		if found := of(r, "register/serials_differ"); len(found) != want {
			t.Errorf("%s: %+v", on, found)
		}
	}
}

// lineWith is the item of a list on the line that has a text.
func lineWith(t *testing.T, text, part string) string {
	t.Helper()
	for line := range strings.Lines(text) {
		if strings.Contains(line, part) {
			return strings.TrimPrefix(strings.TrimSpace(line), "- ")
		}
	}
	t.Fatal("no line has " + part)
	return ""
}

// TestTwoLiftsOfADay: one item in two lifts is told of in the later plan; on two
// days, or in two versions of one lift, it is not.
func TestTwoLiftsOfADay(t *testing.T) {
	plan, register := onFile(t)
	for _, c := range []struct {
		from, to string
		want     int
	}{
		{"id: EX-F", "id: EX-G", 3},
		{"id: EX-F", "id: EX-F", 0},
		{"title: A spreader beam", "title: Another beam", 3},
		{"id: EX-F, title: A spreader beam with gear from a register, date: 2026-12-04", "id: EX-G, title: b, date: 2026-12-05", 0},
	} {
		a, b := checkOnFile(t, plan, register), checkOnFile(t, changed(t, plan, c.from, c.to), register)
		lint.SameDay([]*lint.Result{a, nil, b}, nil)
		found := of(b, "register/same_item_twice")
		if len(found) != c.want || len(of(a, "register/same_item_twice")) > 0 {
			t.Errorf("%s: %d findings", c.to, len(found))
		}
		for _, f := range found {
			if f.Severity != finding.Warning || !strings.Contains(f.Message, "in lift EX-F too") {
				t.Errorf("%+v", f)
			}
		}
	}
}

// TestUnchangedPlansAreComparedWith: what a checked plan has in common with one that is
// only identified is found in the one that is checked, with the other as its place.
func TestUnchangedPlansAreComparedWith(t *testing.T) {
	plan, register := onFile(t)
	identified := func(name, text string) *lint.Result {
		r, err := linter(t, lint.Options{}).WithRegisters(lint.RegisterText("loft.gear.yaml", register)).Identify(name, []byte(text))
		if err != nil {
			t.Fatal(err)
		}
		return r
	}
	other := changed(t, plan, "id: EX-F", "id: EX-G")
	b, a, twin := checkOnFile(t, plan, register), identified("a.lift.yaml", other), identified("b.lift.yaml", other)
	lint.SameDay([]*lint.Result{b}, []*lint.Result{a, twin})
	found := of(b, "register/same_item_twice")
	if len(found) != 3 || len(a.Findings)+len(twin.Findings) > 0 {
		t.Fatalf("%+v %+v %+v", found, a.Findings, twin.Findings)
	}
	for _, f := range found {
		if len(f.Related) != 1 || f.Related[0].Place.File != "a.lift.yaml" || f.Related[0].Place.Range.IsZero() || f.Place.File != b.File {
			t.Errorf("%+v", f)
		}
	}
	c := checkOnFile(t, other, register)
	lint.SameDay([]*lint.Result{c}, []*lint.Result{a, twin})
	if found := of(c, "plan/lift_number_twice"); len(found) != 1 || found[0].Related[0].Place.File != "a.lift.yaml" || len(a.Findings)+len(twin.Findings) > 0 {
		t.Errorf("%+v", found)
	}
	if _, err := linter(t, lint.Options{}).Identify("x", []byte("liftlint: 1")); !errors.Is(err, lint.ErrNotValid) {
		t.Error(err)
	}
}

// TestLiftNumberTwice: two plans with one number are told of, whether they are
// two versions of a lift or two lifts.
func TestLiftNumberTwice(t *testing.T) {
	plan, register := onFile(t)
	for _, c := range []struct{ from, to, want string }{
		{"id: EX-F", "id: EX-F", "keep only the one that counts"},
		{"title: A spreader beam", "title: Another beam", `EX-F is the number of the lift "A spreader beam with gear from a register" in plan.lift.yaml too: give each its own`},
		{"date: 2026-12-04", "date: 2026-12-05", "keep only the one that counts"},
		{"id: EX-F", "id: EX-G", ""},
	} {
		a, b := checkOnFile(t, plan, register), checkOnFile(t, changed(t, plan, c.from, c.to), register)
		lint.SameDay([]*lint.Result{a, nil, b}, nil)
		found := of(b, "plan/lift_number_twice")
		if len(of(a, "plan/lift_number_twice")) > 0 || (len(found) == 1) != (c.want != "") || len(found) > 1 {
			t.Errorf("%s: %+v", c.to, found)
		}
		for _, f := range found {
			if !strings.Contains(f.Message, c.want) || f.Severity != finding.Warning || f.Place.Pointer != "/lift/id" {
				t.Errorf("%s: %+v", c.to, f)
			}
		}
	}
}

// checkedGear checks the gear of a register by itself.
func checkedGear(t testing.TB, text string, on string) (lint.GearCount, []finding.Finding) {
	t.Helper()
	o := lint.Options{}
	if day, err := time.Parse(time.DateOnly, on); err == nil {
		o.On = &day
	}
	registers := lint.RegisterText("loft.gear.yaml", text)
	r, err := registers.Register()
	if err != nil {
		t.Fatal(err)
	}
	var all []finding.Finding
	count, err := linter(t, o).WithRegisters(registers).CheckGear(context.Background(), r, func(list []finding.Finding) error {
		all = append(all, list...)
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	return count, all
}

// TestGearAlone: without a plan the same is found of an item, unless it may not
// be used; without a day nothing is overdue.
func TestGearAlone(t *testing.T) {
	_, register := onFile(t)
	if count, found := checkedGear(t, register, "2026-12-04"); count.Items != 3 || count.Judged != 3 || len(found) > 0 {
		t.Errorf("%+v %+v", count, found)
	}
	_, found := checkedGear(t, register, "2027-06-02")
	var keys []string
	for _, f := range found {
		keys = append(keys, f.Rule+" "+f.Key)
	}
	if want := []string{"inspection/overdue gear/WR-11", "inspection/overdue gear/HK-3", "inspection/overdue gear/BM-1"}; !slices.Equal(keys, want) {
		t.Error(keys)
	}
	if _, found := checkedGear(t, register, ""); len(found) > 0 {
		t.Errorf("%+v", found)
	}
	scrapped := strings.Replace(changed(t, register, "kink: false", "kink: true"), "status: in_service", "status: scrapped", 1)
	if count, found := checkedGear(t, scrapped, "2026-12-04"); count.Aside != 1 || count.Judged != 2 || len(found) > 0 {
		t.Errorf("%+v %+v", count, found)
	}
	bare := "liftlint: 1\nregister: {title: a}\nitems:\n  - {number: A-1, kind: shackle, status: in_service}\n"
	if _, found := checkedGear(t, bare, ""); len(found) != 1 || found[0].Rule != "input/missing" || found[0].Severity != finding.Error {
		t.Errorf("none on record: %+v", found)
	}
}

// TestBridleAlone: what a bridle is made of is inspected with it, in whichever
// order they stand.
func TestBridleAlone(t *testing.T) {
	text := `liftlint: 1
register: {title: a}
items:
  - {number: S-1, kind: wire_rope_sling, status: in_service}
  - {number: M-1, kind: master_link, status: in_service}
  - number: B-1
    kind: bridle
    status: in_service
    master: M-1
    groups: [{legs: [S-1]}]
    tag: {condition: legible, maker: loft, serial: "1", diameter: 14 mm, rated_load: 2 t, rated_for: assembly, angle_from_horizontal: 90 deg, legs: 1}
    inspections: [{date: 2026-06-01, kind: periodic, inspector: Q. Example, outcome: passed, next_due: 2027-06-01, found: {kink: false}}]
`
	_, found := checkedGear(t, text, "2026-12-04")
	var rules []string
	for _, f := range found {
		rules = append(rules, f.Rule)
	}
	if want := []string{"sling/rope_not_described", "sling/turn_back_eye"}; !slices.Equal(rules, want) {
		t.Errorf("%v: %+v", rules, found)
	}
}

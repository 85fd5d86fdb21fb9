package compare_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"liftlint/internal/compare"
	"liftlint/internal/finding"
	"liftlint/internal/lint"
)

// TestNoChange: order, units, comments, quotes and layout are none.
// TestWaiverComes as one line, whatever there is to it.
func TestWaiverComes(t *testing.T) {
	text := example(t, "pump-skid")
	with := text + "waivers:\n  - {rule: angle/leg_too_flat, grade: below_usual, subject: leg/hook/1, reason: checked, by: A. Planner, approved_by: B. Engineer, until: 2026-12-31}\n" +
		"  - {rule: angle/leg_too_flat, grade: below_usual, subject: leg/hook/2, reason: checked, by: A. Planner, approved_by: B. Engineer, until: 2026-12-31}\n"
	p := between(t, text, with)
	if len(p.Written) != 2 || p.Written[0].Old != nil || !strings.Contains(*p.Written[0].New, "approved_by B. Engineer") {
		t.Errorf("%+v", p.Written)
	}
	if p = between(t, with, strings.Replace(with, "reason: checked", "reason: looked at", 1)); len(p.Written) != 1 || *p.Written[0].Old != "checked" {
		t.Errorf("%+v", p.Written)
	}
}

func TestNoChange(t *testing.T) {
	for _, name := range []string{"filter-vessel", "pump-skid"} {
		text := example(t, name)
		gear := text[strings.Index(text, "\ngear:\n")+len("\ngear:\n") : strings.Index(text, "\nrigging:")+1]
		legs := text[strings.Index(text, "      - {down: [S1, K1]"):]
		for what, other := range map[string]string{
			"a comment":       "# looked at\n" + text,
			"gear turned":     strings.Replace(text, gear, turned(gear, "  - "), 1),
			"legs turned":     strings.Replace(text, legs, turned(legs, "      - "), 1),
			"sections turned": strings.Replace(text, "\ngear:\n"+gear, "", 1) + "\ngear:\n" + gear,
		} {
			if other == text {
				t.Fatalf("%s: nothing was edited", what)
			}
			if c := compared(compare.Pair{Old: side(t, text), New: side(t, other)}); c.Same != 1 || len(c.Plans) != 0 {
				t.Errorf("%s, %s: %+v", name, what, c.Plans)
			}
		}
	}
	waivers := []string{"  - {rule: angle/leg_too_flat, subject: leg/hook to A, grade: too_flat, reason: the roof is low, by: lift planner, approved_by: appointed engineer, until: 2026-12-31}\n", "  - {rule: angle/leg_too_flat, subject: leg/hook to B, grade: too_flat, reason: the roof is low, by: lift planner, approved_by: appointed engineer, until: 2026-12-31}\n"}
	text := example(t, "filter-vessel")
	if c := compared(compare.Pair{Old: side(t, text+"waivers:\n"+waivers[0]+waivers[1]), New: side(t, text+"waivers:\n"+waivers[1]+waivers[0])}); c.Same != 1 {
		t.Errorf("waivers turned: %+v", c.Plans)
	}
	other := edited(t, text, "mass: 11.4 t\n", "mass: '11400 kg'\n", "throat: 100 mm", "throat: 10 cm")
	if c := compared(compare.Pair{Old: side(t, text), New: side(t, other)}); c.Same != 1 {
		t.Errorf("units: %+v", c.Plans)
	}
}

// turned turns the items of a list round.
func turned(list, mark string) string {
	items := strings.Split(strings.TrimPrefix(list, mark), "\n"+mark)
	out := ""
	for _, i := range items {
		out = mark + strings.TrimSuffix(i, "\n") + "\n" + out
	}
	return out
}

// TestForcesFollowTheMass: statics is linear in the mass, so that each force grows as
// that does, but for what the legs stretch more: less than 0.2 % here.
func TestForcesFollowTheMass(t *testing.T) {
	text := example(t, "filter-vessel")
	p := between(t, text, edited(t, text, "mass: 11.4 t\n", "mass: 12.54 t\n")) // 10 % more
	seen := 0
	for _, f := range p.Figures {
		if f.Field != "tension_n" && f.Field != "mass_kg" {
			continue
		}
		seen++
		if f.Old == nil || f.New == nil || math.Abs(*f.New / *f.Old - 1.1) > 2e-3 {
			t.Errorf("%s, %s: %s to %s", f.Of, f.What, f.OldText, f.NewText)
		}
	}
	if seen != 5 {
		t.Errorf("%d figures, not the mass and the force of four legs", seen)
	}
	if got := became(p, "load/over_rated_load"); strings.Count(got, "worse") != 4 || strings.Contains(got, "better") {
		t.Errorf("the overloads: %s", got)
	}
	if got := became(p, "angle/leg_too_flat"); strings.Contains(got, "worse") { // longer legs stand steeper
		t.Errorf("the angles: %s", got)
	}
	lighter := between(t, text, edited(t, text, "mass: 11.4 t\n", "mass: 11 t\n"))
	if got := became(lighter, "load/over_rated_load"); strings.Count(got, "better") != 4 || strings.Contains(got, "worse") {
		t.Errorf("the overloads of a lighter load: %s", got)
	}
}

// TestFaultIsNew, and mending it lets the finding go.
func TestFaultIsNew(t *testing.T) {
	text := example(t, "pump-skid")
	faulty := strings.Replace(text, "throat: ", "throat: 0.", 1)
	if faulty == text {
		faulty = strings.Replace(text, "mass_known_by: weighed", "mass_known_by: estimated", 1)
	}
	there, back := between(t, text, faulty), between(t, faulty, text)
	if len(there.Findings) == 0 || len(there.Findings) != len(back.Findings) {
		t.Fatalf("%d findings one way and %d the other", len(there.Findings), len(back.Findings))
	}
	for i := range there.Findings {
		if there.Findings[i].Change != "new" || back.Findings[i].Change != "gone" {
			t.Errorf("%+v, %+v", there.Findings[i], back.Findings[i])
		}
	}
}

// TestLegsChangePlaces: the numbers of legs change with their order, and what is
// told of them goes by where they lead.
func TestLegsChangePlaces(t *testing.T) {
	text := example(t, "filter-vessel")
	legs := text[strings.Index(text, "      - {down: [S1, K1]"):]
	other := strings.Replace(text, legs, turned(legs, "      - "), 1)
	p := between(t, text, edited(t, other, "hook: {body_width: 120 mm", "hook: {body_width: 130 mm"))
	if len(p.Figures)+len(p.Gear) > 0 || len(p.Written) != 1 {
		t.Errorf("%+v", p)
	}
	if got := became(p, "fit/eye_over_body"); len(p.Findings) != strings.Count(got, "worse")+strings.Count(got, "new") {
		t.Errorf("%+v", p.Findings)
	}
}

// TestNothingIsGood news where nobody looked.
func TestNothingIsGood(t *testing.T) {
	f := finding.Finding{Rule: "a/b", Key: "k", Severity: finding.Error, Message: "m"}
	waits, off, invalid := handMade(), handMade(), handMade()
	waits.Result.Checked[0].NotJudged = []lint.Unjudged{{Key: "k"}}
	off.Result.Checked = []lint.Checked{{Rule: "a/c"}}
	invalid.Result.State = lint.NotValid
	for want, new := range map[string]*compare.Side{"gone": handMade(), "not_looked_for": off, "not_judged": waits} {
		c := compared(compare.Pair{Old: handMade(f), New: new})
		if got := c.Plans[0].Findings[0].Change; got != want {
			t.Errorf("%s is told as %s", want, got)
		}
		if failed := c.Exit == 1; failed != (want != "gone") {
			t.Errorf("%s: exit code %d", want, c.Exit)
		}
	}
	c := compared(compare.Pair{Old: handMade(f), New: invalid})
	if p := c.Plans[0]; c.Exit != 1 || p.Status != "not_judged" || p.Findings[0].Change != "not_judged" {
		t.Errorf("a plan that is not valid: %+v", c)
	}
	unread := &compare.Side{Name: file, Result: lint.Unreadable(file, errors.New("gone"))}
	if c := compared(compare.Pair{Old: unread, New: unread}); c.Exit != 3 || c.Same != 0 {
		t.Errorf("plans that can't be read: %+v", c)
	}
	if c := compared(compare.Pair{Old: invalid, New: invalid}); c.Exit != 1 || c.Same != 0 {
		t.Errorf("a plan that still is not valid: %+v", c)
	}
	if c := compared(); c.Exit != 4 {
		t.Errorf("no plan: %+v", c)
	}
	none := handMade()
	none.Result.Checked = nil
	if c := compared(compare.Pair{Old: none, New: none}); c.Exit != 3 || len(c.Failures) != 2 {
		t.Errorf("plans that no rule was put to: %+v", c)
	}
}

func TestBecame(t *testing.T) {
	of := func(measured, limit float64) finding.Finding {
		return finding.Finding{Rule: "a/b", Key: "k", Severity: finding.Warning, Measured: &finding.Figure{Field: "x_m", Value: measured}, Limit: &finding.Figure{Field: "l_m", Value: limit}}
	}
	with := func(f finding.Finding, change func(*finding.Finding)) finding.Finding { change(&f); return f }
	waived := with(of(3, 2), func(f *finding.Finding) { f.Aside = &finding.Aside{} })
	graded := with(of(3, 2), func(f *finding.Finding) { f.Severity = finding.Error })
	printed := func(f *finding.Finding) { f.Measured.Text, f.Limit.Text = "3 m", "2 m" }
	for _, c := range []struct {
		old, new finding.Finding
		want     string
	}{
		{of(3, 2), of(3.1, 2), "worse"},
		{of(3, 2), of(2.9, 2), "better"},
		{of(1, 2), of(0.9, 2), "worse"},
		{of(1, 2), of(1.1, 2), "better"},
		{of(3, 2), of(3, 2), ""},
		{of(3, 2), of(3*(1+1e-9), 2), ""},
		{of(3, 2), of(3, 1), "worse"},   // more is asked for
		{of(3, 2), of(1, 2), "changed"}, // on the other side
		{of(3, 2), waived, "set_aside"},
		{waived, of(3, 2), "counts_again"},
		{of(3, 2), graded, "worse"},
		{graded, of(2.5, 2), "better"},
		{graded, of(4, 2), "judged_otherwise"}, // less bad, and further beyond its limit
		{graded, of(3, 2), "judged_otherwise"},
		{of(3, 2), of(3, 2.5), "judged_otherwise"}, // less is asked for
		{of(3, 2), of(3.1, 2.5), "judged_otherwise"},
		{of(3, 2), of(2.9, 2.5), "better"},
		{with(of(3, 2), printed), with(of(3.001, 2), printed), ""}, // as far as is printed
		{with(of(3, 2), printed), with(of(3.001, 2), func(*finding.Finding) {}), "worse"},
		{finding.Finding{Rule: "a/b", Key: "k", Severity: finding.Error}, finding.Finding{Rule: "a/b", Key: "k", Severity: finding.Note}, "judged_otherwise"},
		{finding.Finding{Rule: "a/b", Key: "k"}, finding.Finding{Rule: "a/b", Key: "k", Message: "in other words"}, ""},
	} {
		got := ""
		if x := compared(compare.Pair{Old: handMade(c.old), New: handMade(c.new)}); len(x.Plans) > 0 {
			got = x.Plans[0].Findings[0].Change
		}
		if got != c.want {
			t.Errorf("%+v to %+v is %q, not %q", c.old.Measured, c.new.Measured, got, c.want)
		}
	}
}

// TestPairs: by path, then by number; alone whatever the name.
func TestPairs(t *testing.T) {
	named := func(name, id string) *compare.Side {
		return &compare.Side{Name: name, Result: &lint.Result{ID: id, State: lint.Judged}}
	}
	old := map[string]*compare.Side{"a": named("a", "1"), "b": named("b", "2"), "c": named("c", "3"), "d": named("d", "3")}
	new := map[string]*compare.Side{"a": named("a", "9"), "x": named("x", "2"), "y": named("y", "3"), "z": named("z", "")}
	var got []string
	for _, p := range compare.Pairs(old, new, false) {
		pair := "-"
		if p.Old != nil {
			pair = p.Old.Name
		}
		if p.New != nil {
			pair += p.New.Name
		}
		got = append(got, pair)
	}
	if s := strings.Join(got, " "); s != "aa c d bx -y -z" {
		t.Error(s)
	}
	if p := compare.Pairs(map[string]*compare.Side{"a": old["a"]}, map[string]*compare.Side{"z": new["z"]}, true); len(p) != 1 || p[0].Old == nil || p[0].New == nil {
		t.Errorf("%+v", p)
	}
}

package policy

import (
	"errors"
	"testing"

	"liftlint/internal/facts"
)

func TestParseTemplate(t *testing.T) {
	got, err := parseTemplate("leg {id} at {measured}")
	if err != nil || len(got) != 4 || got[1].name != "id" || got[2].words != " at " || got[3].name != "measured" {
		t.Errorf("%v %v", got, err)
	}
	for _, bad := range []string{"a { b", "a } b", "{a{b}}", "}{", "{"} {
		if _, err := parseTemplate(bad); err == nil {
			t.Errorf("%q is taken", bad)
		}
	}
}

func TestUnitOf(t *testing.T) {
	for name, want := range map[string]string{
		"tension_n": "n", "inspection.overdue_days": "days", "angle_from_horizontal_deg": "deg",
		"used_ratio": "ratio", "legs": "", "n": "", "maker_name": "", "minimum": "",
	} {
		if got := unitOf(name); got != want {
			t.Errorf("%s: %q, want %q", name, got, want)
		}
	}
}

func TestCondition(t *testing.T) {
	slack, legs := true, 4.0
	d := facts.Document{
		Legs:  []facts.Leg{{Record: facts.Record{Key: "leg"}, Slack: &slack}},
		Lifts: []facts.Lift{{Legs: 4, Category: "routine"}},
	}
	leg, _ := d.Records("legs")
	lift, _ := d.Records("lifts")
	three := 3.0
	for _, c := range []struct {
		c    Condition
		v    facts.View
		want answer
		text string
	}{
		{Condition{Field: "slack", Values: []any{true}}, leg[0], yes, "slack true"},
		{Condition{Field: "slack", Values: []any{false}}, leg[0], no, "slack false"},
		{Condition{Field: "length_m", AtLeast: &three}, leg[0], unknown, "length_m at least 3"},
		{Condition{Field: "legs", Values: []any{3.0, 4.0}}, lift[0], yes, "legs 3 or 4"},
		{Condition{Field: "legs", AtLeast: &legs}, lift[0], yes, "legs at least 4"},
		{Condition{Field: "legs", AtMost: &three}, lift[0], no, "legs at most 3"},
		{Condition{Field: "category", AtMost: &three}, lift[0], no, "category at most 3"},
	} {
		if got := c.c.ask(c.v); got != c.want || c.c.String() != c.text {
			t.Errorf("%s: %v, want %v", c.c, got, c.want)
		}
	}
	both := []Condition{{Field: "length_m", AtLeast: &three}, {Field: "slack", Values: []any{false}}}
	if got := askAll(both, leg[0]); got != no {
		t.Errorf("one no is no, whatever is absent: %v", got)
	}
}

func TestProblemOfAnyError(t *testing.T) {
	var out Problems
	noteRego(&out, "f", errors.New("plain"))
	if out[0].String() != "f: plain" {
		t.Errorf("%v", out)
	}
}

package policy

import (
	"errors"
	"strings"
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

func TestReadYAML(t *testing.T) {
	y := yamlText{file: "f", line: 10, columns: []int{2, 2, 2}, text: "a: 1\nb: [x, 'y/z']\nc: {d: true, e: -2.5}\n"}
	tree, ps := readYAML(y)
	if len(ps) > 0 {
		t.Fatal(ps)
	}
	root := tree.root.(map[string]any)
	if root["a"] != 1.0 || root["b"].([]any)[1] != "y/z" || root["c"].(map[string]any)["e"] != -2.5 {
		t.Errorf("%v", root)
	}
	for pointer, want := range map[string]string{"/a": "f:10:3: x", "/b/1": "f:11:10: x", "/c/e": "f:12:16: x", "/c/none": "f:12:3: x"} {
		if got := tree.problem(pointer, "x").String(); got != want {
			t.Errorf("%s: %s, want %s", pointer, got, want)
		}
	}
}

// Each is a trap of the YAML reader that plain data does without.
func TestYAMLThatIsRefused(t *testing.T) {
	for _, text := range []string{
		"a: &x 1", "a: *x", "<<: {a: 1}", "a: !!int 3", "a: 010", "a: 0x1F", "a: 1_000", "a: .inf", "a: .nan",
		"1: x", "a: 1\na: 2", "a: 1\n---\nb: 2", "# nothing", "a: [1", "a: &a [*a]", "",
		strings.Repeat("[", 40), strings.Repeat("- ", 200) + "x", "a: " + strings.Repeat("x", maxYAMLBytes),
		strings.Repeat("[\n", 2000), "? {a: 1}\n: 2",
	} {
		if _, ps := readYAML(yamlText{file: "f", line: 1, text: text}); len(ps) == 0 {
			t.Errorf("%.40q is taken", text)
		}
	}
}

func TestProblems(t *testing.T) {
	ps := Problems{{File: "b", Line: 1, Column: 1, Message: "x"}, {File: "a", Line: 2, Column: 3, Message: "y"}, {File: "a", Line: 2, Column: 3, Message: "y"}, {Message: "z"}, {File: "c", Message: "w"}}
	if got, want := ps.sorted().Error(), "z\na:2:3: y\nb:1:1: x\nc: w"; got != want {
		t.Errorf("got %q", got)
	}
	if (Problems{}).sorted() != nil {
		t.Error("no problems are no error")
	}
	var out Problems
	out.rego("f", errors.New("plain"))
	if out[0].String() != "f: plain" {
		t.Errorf("%v", out)
	}
}

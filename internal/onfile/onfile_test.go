package onfile

import (
	"errors"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"liftlint/internal/gear"
	"liftlint/internal/plan"
	"liftlint/internal/register"
	"liftlint/internal/validate"
	"liftlint/internal/yamldoc"
)

const loft = `liftlint: 1
register: {title: Loft}
items:
  - number: WR-1
    kind: wire_rope_sling
    serial: "0061"
    diameter: 22 mm
    length: 2.5 m
    core: iwrc
    faults_seen: []
    tag: {condition: legible, serial: "0061", rated_load: 3-1/4 short_ton}
    inspections:
      - {date: 2026-06-01, kind: periodic, outcome: passed}
      - {date: 2026-09-01, kind: frequent, outcome: failed}
      - {date: 2027-02-01, kind: periodic, outcome: passed}
      - {date: 2026-08-01, kind: thorough, outcome: failed}
  - {number: WR-2, kind: wire_rope_sling, diameter: 22 mm, length: 2.5 m}
  - {number: SH-1, kind: shackle, pin: upper, jaw: 27 mm}
  - {number: BR-1, kind: bridle, master: ML-2, groups: [{legs: [WR-1, WR-2]}]}
  - {number: ML-2, kind: master_link, rated_load: 8 t}
`

func mustRegister(t *testing.T) *register.Register {
	t.Helper()
	rd, err := register.NewReader()
	if err != nil {
		t.Fatal(err)
	}
	r, err := rd.ReadYAML("gear/loft.gear.yaml", []byte(loft))
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// resolved takes the gear of a plan from the loft.
func resolved(t *testing.T, gear string) (*Plan, []yamldoc.Fault) {
	t.Helper()
	r := mustRegister(t)
	p, faults, err := resolveWith(t, gear, func() (*register.Register, error) { return r, nil })
	if err != nil {
		t.Fatal(err)
	}
	return p, faults
}

func resolveWith(t *testing.T, gear string, open func() (*register.Register, error)) (*Plan, []yamldoc.Fault, error) {
	t.Helper()
	v, err := validate.New()
	if err != nil {
		t.Fatal(err)
	}
	doc, faults := yamldoc.Read("a.lift.yaml", []byte("gear:\n"+gear))
	if doc == nil {
		t.Fatal(faults)
	}
	return Resolve(doc, v, open)
}

// TestTakesAll: the entry becomes what the register says, under the id of the
// plan, and values stay where they are told from.
func TestTakesAll(t *testing.T) {
	p, faults := resolved(t, "  - {id: S1, kind: register, item: WR-1, mass: 4 kg}\n")
	if len(faults) > 0 || len(p.Unlike) > 0 {
		t.Fatal(faults, p.Unlike)
	}
	n := p.Doc.Root().Get("gear").Items[0]
	want := map[string]any{
		"id": "S1", "kind": "wire_rope_sling", "diameter": "22 mm", "length": "2.5 m", "core": "iwrc", "mass": "4 kg", "faults_seen": []any{},
		"tag": map[string]any{"condition": "legible", "serial": "0061", "rated_load": "3-1/4 short_ton"},
	}
	if diff := cmp.Diff(want, n.Value()); diff != "" {
		t.Error(diff)
	}
	for pointer, want := range map[string]string{
		"/gear/0":                 "gear/loft.gear.yaml#/items/0",
		"/gear/0/tag/rated_load":  "gear/loft.gear.yaml#/items/0/tag/rated_load",
		"/gear/0/inspections/3":   "gear/loft.gear.yaml#/items/0/inspections/3",
		"/gear/0/eyes/upper":      "gear/loft.gear.yaml#/items/0/eyes/upper",
		"/gear/0/item":            "",
		"/gear/0/mass":            "",
		"/gear/1":                 "",
		"/rigging/0/legs/0/end":   "",
		"/gear/00":                "",
		"/gear":                   "",
		"/load/gear/0":            "",
		"/gear/0/mass/of/nothing": "",
	} {
		got := ""
		if at, ok := p.Place(pointer); ok {
			got = at.String()
		}
		if got != want {
			t.Errorf("%s leads to %q, not %q", pointer, got, want)
		}
	}
}

// TestUnlike: what the plan says besides is compared as quantities, sizes as
// trades name them in two systems of units; the register counts.
func TestUnlike(t *testing.T) {
	for _, c := range []struct{ besides, want string }{
		{"length: 2500 mm", ""},
		{"length: 2501 mm", ""},
		{"length: 2520 mm", "length: 2.5 m"},
		{"diameter: 7/8 in", ""}, // 22.2 mm
		{"diameter: 24 mm", "diameter: 22 mm"},
		{"core: iwrc", ""},
		{"core: fiber", "core: iwrc"},
		{`tag: {condition: legible, serial: "0061"}`, ""},
		{`tag: {condition: legible, serial: "61"}`, "tag.serial: 0061"},
		{"tag: {condition: illegible}", "tag.condition: legible"},
		{"tag: {condition: legible, rated_load: 2.95 t}", ""}, // 3.25 short tons are 2.948 t
		{"tag: {condition: legible, rated_load: 3.25 t}", "tag.rated_load: 3-1/4 short_ton"},
		{"tag: 5", "tag: {condition: legible, rated_load: 3-1/4 short_ton, serial: 0061}"},
		{"faults_seen: [kink]", ""},
		{"grade: EIPS", ""}, // the register does not say
	} {
		p, faults := resolved(t, "  - {id: S1, kind: register, item: WR-1, "+c.besides+"}\n")
		got := ""
		for _, u := range p.Unlike {
			got += u.Field + ": " + u.There
			if u.Place().Pointer != "/items/0/"+strings.ReplaceAll(u.Field, ".", "/") {
				t.Errorf("%s: %v", c.besides, u.Place())
			}
		}
		if got != c.want || len(faults) > 0 {
			t.Errorf("%s: %q, not %q %v", c.besides, got, c.want, faults)
		}
		n := p.Doc.Root().Get("gear").Items[0]
		if n.Get("length").Text != "2.5 m" || n.Get("diameter").Text != "22 mm" {
			t.Errorf("%s: the plan is taken for the register", c.besides)
		}
	}
}

// TestOfUse: how a shackle hangs is for the plan to say, and faults seen add up.
func TestOfUse(t *testing.T) {
	p, _ := resolved(t, "  - {id: K1, kind: register, item: SH-1, pin: lower}\n  - {id: S1, kind: register, item: WR-1, faults_seen: [kink]}\n")
	list := p.Doc.Root().Get("gear").Items
	if list[0].Get("pin").Text != "lower" || len(p.Unlike) > 0 {
		t.Errorf("%v %v", list[0].Value(), p.Unlike)
	}
	if got := list[1].Get("faults_seen").Value(); !cmp.Equal(got, []any{"kink"}) {
		t.Error(got)
	}
}

func TestFaults(t *testing.T) {
	for _, c := range []struct{ gear, want string }{
		{"  - {id: S1, kind: register, item: WR-l}\n", `1:`},
		{"  - {id: S1, kind: register, item: WR-1, inspection: {date: 2026-01-01}}\n", "the inspections of S1 stand in the register"},
		{"  - {id: B1, kind: register, item: BR-1}\n  - {id: WR-2, kind: shackle}\n", "the plan has other gear with this id"},
		{"  - {id: S1, kind: register, item: QQQQQQ}\n", "no item of the register has the number \"QQQQQQ\""},
		{"  - {id: S1, kind: register, item: WR-1, length: 4}\n", ""}, // the schemas tell
		{"  - {id: S1, kind: register}\n", ""},
		{"  - {kind: register, item: WR-1}\n", ""},
	} {
		_, faults := resolved(t, c.gear)
		switch {
		case c.want == "1:":
			if len(faults) != 1 || !strings.Contains(faults[0].Message, "did you mean WR-1?") || faults[0].Range.From.Line != 2 {
				t.Errorf("%+v", faults)
			}
		case c.want == "":
			if len(faults) > 0 {
				t.Errorf("%s: %v", c.gear, faults)
			}
		case len(faults) != 1 || !strings.Contains(faults[0].Message, c.want):
			t.Errorf("%s: %+v", c.gear, faults)
		}
	}
}

// TestUnreadableIsKept: what is no quantity stays in the plan, for the schemas to
// refuse.
func TestUnreadableIsKept(t *testing.T) {
	p, _ := resolved(t, "  - {id: S1, kind: register, item: WR-1, length: 4}\n")
	if got := p.Doc.Root().Get("gear").Items[0].Get("length").Text; got != "4" {
		t.Error(got)
	}
}

// TestWithoutARegister: a plan that needs none opens none; one that does says so.
func TestWithoutARegister(t *testing.T) {
	refuse := func() (*register.Register, error) { return nil, errors.New("opened") }
	if _, _, err := resolveWith(t, "  - {id: S1, kind: shackle}\n", refuse); err != nil {
		t.Error(err)
	}
	if _, _, err := resolveWith(t, "  - {id: S1, kind: register, item: WR-1}\n", refuse); err == nil {
		t.Error("a register that can't be read is no register")
	}
	none := func() (*register.Register, error) { return nil, ErrNone }
	_, faults, err := resolveWith(t, "  - {id: S1, kind: register, item: WR-1}\n", none)
	if err != nil || len(faults) != 1 || faults[0].ID != plan.UnknownReference || !strings.Contains(faults[0].Message, "--register FILE") {
		t.Error(faults, err)
	}
}

// TestBridle: its members are those of the plan with their numbers, and others
// are added under their numbers.
func TestBridle(t *testing.T) {
	p, faults := resolved(t, "  - {id: B1, kind: register, item: BR-1}\n  - {id: S1, kind: register, item: WR-1}\n")
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	list := p.Doc.Root().Get("gear").Items
	if got := list[0].Get("groups").Value(); !cmp.Equal(got, []any{map[string]any{"legs": []any{"S1", "WR-2"}}}) || list[0].Get("master").Text != "ML-2" {
		t.Error(list[0].Value())
	}
	var ids []string
	for _, e := range p.Entries {
		ids = append(ids, e.ID+" "+e.Pointer+" "+e.Use)
	}
	if diff := cmp.Diff([]string{"B1 /gear/0 /gear/0/item", "S1 /gear/1 /gear/1/item", "ML-2 /gear/2 /gear/0/item", "WR-2 /gear/3 /gear/0/item"}, ids); diff != "" {
		t.Error(diff)
	}
	if at, ok := p.Place("/gear/3/length"); !ok || at.String() != "gear/loft.gear.yaml#/items/1/length" {
		t.Error(at)
	}
}

// TestHistory: the newest inspection of the whole by the day, whatever it came
// to; looks in between do not move it, nor does one that is still to come.
func TestHistory(t *testing.T) {
	for _, c := range []struct {
		day, want string
		void      gear.Void
	}{
		{"2026-12-04", "2026-08-01", gear.NotPassed},
		{"2026-07-31", "2026-06-01", ""},
		{"2026-08-01", "2026-08-01", gear.NotPassed},
		{"2027-03-01", "2027-02-01", ""},
		{"2026-01-01", "2026-06-01", ""}, // all still to come: the first of them
		{"", "2027-02-01", ""},
	} {
		p, _ := resolved(t, "  - {id: S1, kind: register, item: WR-1}\n")
		s := &gear.WireRopeSling{Common: gear.Common{ID: "S1"}}
		var day *time.Time
		if d, err := time.Parse(time.DateOnly, c.day); err == nil {
			day = &d
		}
		items := p.History(&plan.Plan{Gear: []gear.Item{s}}, day)
		if got := s.Inspection; got == nil || got.Date.Format(time.DateOnly) != c.want || got.Void != c.void || items["S1"].Number != "WR-1" {
			t.Errorf("%s: %+v", c.day, got)
		}
	}
}

// TestMalformedListsAreKept: a list of the plan that is malformed stays as the plan
// has it, for the schemas to refuse, and is never joined to the register's; one that
// is well formed adds to it.
func TestMalformedListsAreKept(t *testing.T) {
	for _, c := range []struct {
		says string
		want any
		own  bool // whether it is led to the plan
	}{
		{"faults_seen: cut", "cut", true},
		{"faults_seen: null", nil, true},
		{"faults_seen: {kink: true}", map[string]any{"kink": true}, true},
		{"faults_seen: [knik]", []any{"knik"}, true},
		{"labels: red", "red", true},
		{"labels: []", []any{}, true},
		{"labels: [red]", []any{"red"}, true},
		{"faults_seen: [kink, kink]", []any{"kink"}, true},
		{"faults_seen: []", []any{}, false},
		{"labels: [{label: color, value: red}]", []any{map[string]any{"label": "color", "value": "red"}}, true}, // the register has none
	} {
		p, faults := resolved(t, "  - {id: S1, kind: register, item: WR-1, "+c.says+"}\n")
		key, _, _ := strings.Cut(c.says, ":")
		got := p.Doc.Root().Get("gear").Items[0].Get(key)
		if diff := cmp.Diff(c.want, got.Value()); diff != "" || len(faults) > 0 {
			t.Errorf("%s: %v %s", c.says, faults, diff)
		}
		if _, inRegister := p.Place("/gear/0/" + key); inRegister == c.own {
			t.Errorf("%s leads to the register: %v", c.says, inRegister)
		}
	}
}

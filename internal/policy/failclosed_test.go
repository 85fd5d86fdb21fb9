package policy_test

import (
	"reflect"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"liftlint/internal/facts"
	"liftlint/internal/policy"
)

// drop makes a field of one record absent, and reports whether it was there
// and can be.
func drop(d *facts.Document, over string, i int, path string) bool {
	v := fieldNamed(reflect.ValueOf(d).Elem(), over).Index(i)
	for name := range strings.SplitSeq(path, ".") {
		if v.Kind() == reflect.Pointer {
			if v.IsNil() {
				return false
			}
			v = v.Elem()
		}
		v = fieldNamed(v, name)
	}
	if v.Kind() != reflect.Pointer {
		return false // always there
	}
	there := !v.IsNil()
	v.SetZero()
	return there
}

func fieldNamed(v reflect.Value, name string) reflect.Value {
	for _, f := range reflect.VisibleFields(v.Type()) {
		if tag, _, _ := strings.Cut(f.Tag.Get("json"), ","); tag == name {
			return v.FieldByIndex(f.Index)
		}
	}
	panic("no field " + name)
}

// prefixes are a path and each shorter path that it begins with.
func prefixes(path string) []string {
	out := []string{path}
	for i, c := range path {
		if c == '.' {
			out = append(out, path[:i])
		}
	}
	return out
}

// Taking away any fact that a rule reads from a record that breaks it never
// lets the record pass.
func TestNoAbsentFactLetsABrokenRecordPass(t *testing.T) {
	p := builtin(t, "us")
	tried := 0
	for _, b := range breaks() {
		r, _ := p.Rule(b.rule)
		for _, need := range r.Needs {
			for _, path := range prefixes(need) {
				d := level()
				b.change(d)
				if !drop(d, r.Over, 0, path) && path != need {
					continue
				}
				tried++
				o := judge(t, p, d)[b.rule].Outcomes[0]
				switch {
				case o.State == policy.Met:
					t.Errorf("%s: %s without %s is met", b.rule, o.Subject.Key, path)
				case o.State == policy.NotJudged && !slices.Contains(o.Missing, path):
					t.Errorf("%s without %s: missing %v", b.rule, path, o.Missing)
				}
			}
		}
	}
	if tried < 20 {
		t.Errorf("only %d tried", tried)
	}
}

// optionals are the fields of the facts that may be absent, by collection.
func optionals() map[string][]string {
	return map[string][]string{
		"loads": {"hangs", "tilt_deg"},
		"legs":  {"slack", "angle_from_horizontal_deg", "tension_n"},
		"parts": {"load_n", "load_bound_n", "rated_load_n", "used_ratio"},
		"gear":  {"inspection.overdue_days", "inspection"},
		"fits":  {"width_over_length_ratio", "eye_included_angle_deg"},
	}
}

// However many facts are taken from however broken a lift, a record is broken
// as before, broken less badly with the rest missing, or not judged.
func TestTakingFactsAwayNeverMendsALift(t *testing.T) {
	p := builtin(t, "us")
	rapid.Check(t, func(t *rapid.T) {
		whole, thinned := level(), level()
		for _, b := range breaks() {
			if rapid.Bool().Draw(t, b.rule+b.grade) {
				b.change(whole)
				b.change(thinned)
			}
		}
		for over, paths := range optionals() {
			for _, path := range paths {
				if rapid.Bool().Draw(t, over+path) {
					drop(thinned, over, 0, path)
				}
			}
		}
		compareStates(t, p, whole, thinned)
	})
}

func compareStates(t *rapid.T, p *policy.Pack, whole, thinned *facts.Document) {
	before, after := judge(t, p, whole), judge(t, p, thinned)
	for id, v := range before {
		states := map[string]policy.Outcome{}
		for _, o := range after[id].Outcomes {
			states[o.Subject.Key] = o
		}
		for _, o := range v.Outcomes {
			now, ok := states[o.Subject.Key]
			if !ok {
				t.Fatalf("%s: %s is no subject any more", id, o.Subject.Key)
			}
			if o.State == policy.Broken && now.State == policy.Met {
				t.Fatalf("%s: %s was broken and is met", id, o.Subject.Key)
			}
			if o.State != policy.Broken && now.State == policy.Broken {
				t.Fatalf("%s: %s was %s and is broken", id, o.Subject.Key, o.State)
			}
			if o.State == policy.Broken && now.State == policy.Broken && o.Grade != nil && o.Grade.Name != now.Grade.Name && len(now.Missing) == 0 {
				t.Fatalf("%s: %s went from %s to %s and misses nothing", id, o.Subject.Key, o.Grade.Name, now.Grade.Name)
			}
		}
	}
}

package compute_test

import (
	"encoding/json"
	"fmt"
	"os"
	"strconv"
	"strings"
	"sync"
	"testing"

	"github.com/goccy/go-yaml"

	"liftlint/internal/capacity"
	"liftlint/internal/compute"
	"liftlint/internal/facts"
	"liftlint/internal/hang"
	"liftlint/internal/plan"
	"liftlint/internal/validate"
	"liftlint/internal/yamldoc"
)

// tree is a plan as maps and lists, to be changed before it is read.
type tree map[string]any

// example reads a plan of the examples.
func example(t testing.TB, name string) tree {
	t.Helper()
	text, err := os.ReadFile("../../examples/" + name + ".lift.yaml")
	if err != nil {
		t.Fatal(err)
	}
	return parse(t, string(text))
}

// rulesBase reads a plan that the examples of rules begin from.
func rulesBase(t testing.TB, name string) tree {
	t.Helper()
	text, err := os.ReadFile("../../policies/bases/" + name + ".lift.yaml")
	if err != nil {
		t.Fatal(err)
	}
	return parse(t, string(text))
}

func parse(t testing.TB, text string) tree {
	t.Helper()
	var v tree
	if err := yaml.Unmarshal([]byte(text), &v); err != nil {
		t.Fatal(err)
	}
	return v
}

// text writes the plan as JSON, which is YAML too.
func (v tree) text() []byte {
	b, err := json.MarshalIndent(v, "", " ")
	if err != nil {
		panic(err)
	}
	return b
}

// parent finds what holds the last step of a path such as gear/0/tag.
func (v tree) parent(path string) (any, string) {
	steps := strings.Split(path, "/")
	var at any = map[string]any(v)
	for _, s := range steps[:len(steps)-1] {
		switch x := at.(type) {
		case map[string]any:
			at = x[s]
		case []any:
			i, _ := strconv.Atoi(s)
			at = x[i]
		}
	}
	return at, steps[len(steps)-1]
}

func (v tree) set(path string, value any) tree {
	at, last := v.parent(path)
	switch x := at.(type) {
	case map[string]any:
		x[last] = value
	case []any:
		i, _ := strconv.Atoi(last)
		x[i] = value
	default:
		panic("no place " + path)
	}
	return v
}

// drop takes keys out.
func (v tree) drop(paths ...string) tree {
	for _, p := range paths {
		if at, last := v.parent(p); at != nil {
			delete(at.(map[string]any), last)
		}
	}
	return v
}

var validator = sync.OnceValues(validate.New)

// decode reads a plan that has to be valid.
func decode(t testing.TB, text []byte) *plan.Plan {
	t.Helper()
	doc, faults := yamldoc.Read("plan", text)
	if len(faults) > 0 {
		t.Fatalf("not read: %v", faults)
	}
	v, err := validator()
	if err != nil {
		t.Fatal(err)
	}
	if faults := v.Plan(doc); len(faults) > 0 {
		t.Fatalf("not valid: %v\n%s", faults, text)
	}
	p, faults, err := plan.Decode(doc)
	if err != nil || len(faults) > 0 {
		t.Fatalf("not linked: %v %v", faults, err)
	}
	return p
}

// conditions count three legs and give a year in normal service.
func conditions() compute.Conditions {
	return compute.Conditions{
		Profile:        "us",
		Stage:          "review",
		Decides:        compute.ThreeLegs,
		Parts:          capacity.EqualParts,
		BridlePractice: capacity.ByAngle,
		IntervalMonths: func(kind, service string) (int, bool) {
			return 12, service == "normal"
		},
	}
}

// europe counts two legs, three where they are loaded evenly, and rates bridles
// by the bands of EN 13414-1.
func europe() compute.Conditions {
	c := conditions()
	c.Profile, c.Decides, c.DecidesWhenEven, c.BridlePractice = "eu", compute.TwoLegs, compute.ThreeLegs, capacity.ByBand
	return c
}

func (v tree) compute(t testing.TB) (*facts.Facts, []hang.Trouble) {
	t.Helper()
	return compute.Facts(decode(t, v.text()), conditions())
}

func computeText(t testing.TB, text string) (*facts.Facts, []hang.Trouble) {
	t.Helper()
	return compute.Facts(decode(t, []byte(text)), conditions())
}

// facts computes a plan that has to have no trouble.
func (v tree) facts(t testing.TB) *facts.Facts {
	t.Helper()
	f, troubles := v.compute(t)
	if len(troubles) > 0 {
		t.Fatalf("troubles: %v", troubles)
	}
	return f
}

// fataler is a test or a check within one.
type fataler interface {
	Helper()
	Fatalf(format string, args ...any)
}

// find returns the record with that key.
func find(t fataler, f *facts.Facts, key string) facts.View {
	t.Helper()
	for _, c := range facts.Collections() {
		records, _ := f.Document.Records(c)
		for _, r := range records {
			if r.Key == key {
				return r
			}
		}
	}
	t.Fatalf("there is no record %s", key)
	return facts.View{}
}

func figure(t fataler, f *facts.Facts, key, field string) float64 {
	t.Helper()
	v, ok := find(t, f, key).Field(field)
	if !ok {
		t.Fatalf("%s of %s is absent", field, key)
	}
	x, ok := v.(float64)
	if !ok {
		t.Fatalf("%s of %s is %v", field, key, v)
	}
	return x
}

func lacks(t fataler, f *facts.Facts, key, field string) facts.Gap {
	t.Helper()
	if v, ok := find(t, f, key).Field(field); ok {
		t.Fatalf("%s of %s is %v, though it can't be known", field, key, v)
	}
	return f.Gaps[facts.GapKey{Key: key, Field: field}]
}

// labels words what a gap waits for.
func labels(g facts.Gap) string {
	var list []string
	for _, in := range g.Inputs {
		list = append(list, in.Label+" `"+in.Field+"` at "+in.At)
	}
	for _, why := range g.Reasons {
		list = append(list, fmt.Sprint(why.Text))
	}
	return strings.Join(list, "; ")
}

// rulesBaseOf is rulesBase where no test is at hand.
func rulesBaseOf(name string) tree {
	text, err := os.ReadFile("../../policies/bases/" + name + ".lift.yaml")
	if err != nil {
		panic(err)
	}
	var v tree
	if err := yaml.Unmarshal(text, &v); err != nil {
		panic(err)
	}
	return v
}

// computeTree computes a plan that is known to be valid.
func computeTree(v tree) (*facts.Facts, []hang.Trouble) {
	doc, _ := yamldoc.Read("plan", v.text())
	p, _, err := plan.Decode(doc)
	if err != nil {
		panic(err)
	}
	return compute.Facts(p, conditions())
}

func containsText(text, part string) bool { return strings.Contains(text, part) }

func written(m float64) string { return strconv.FormatFloat(m, 'f', 6, 64) + " m" }

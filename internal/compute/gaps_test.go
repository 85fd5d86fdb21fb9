package compute_test

import (
	"encoding/json"
	"fmt"
	"maps"
	"reflect"
	"regexp"
	"slices"
	"sort"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v5"
	"pgregory.net/rapid"

	"liftlint/internal/compute"
	"liftlint/internal/facts"
	"liftlint/internal/plan"
	"liftlint/internal/record"
	"liftlint/internal/yamldoc"
)

// concernsNot lists the optional fields that do not concern a record, as the
// schema of the facts says: they have no gap.
func concernsNot(r facts.View, collection, field string) bool {
	name := collection + "." + field
	return hangingConcernsNot(r, name) || arrangedConcernsNot(r, name) || gearConcernsNot(r, name) || fitConcernsNot(r, name)
}

// unexplained lists the absent fields without a gap, and the gaps of fields
// that are there.
func unexplained(f *facts.Facts) []string {
	var bad []string
	gaps := map[facts.GapKey]bool{}
	for k, g := range f.Gaps {
		gaps[k] = true
		if len(g.Inputs)+len(g.Reasons) == 0 {
			bad = append(bad, fmt.Sprintf("%v says nothing", k))
		}
	}
	var walk func(r facts.View, collection string, t reflect.Type, prefix string)
	walk = func(r facts.View, collection string, t reflect.Type, prefix string) {
		for _, field := range record.Fields(t) {
			path, inner := prefix+field.Name, field.Type
			if inner.Kind() == reflect.Pointer {
				inner = inner.Elem()
			}
			_, present := r.Field(path)
			key := facts.GapKey{Key: r.Key, Field: path}
			switch {
			case present && gaps[key]:
				bad = append(bad, fmt.Sprintf("%v is there and has a gap", key))
			case !present && !gaps[key] && !concernsNot(r, collection, path):
				bad = append(bad, fmt.Sprintf("%v is absent and nothing says why", key))
			}
			delete(gaps, key)
			if present && inner.Kind() == reflect.Struct {
				walk(r, collection, inner, path+".")
			}
		}
	}
	for _, c := range record.Fields(reflect.TypeFor[facts.Document]()) {
		records, _ := f.Document.Records(c.Name)
		for _, r := range records {
			walk(r, c.Name, c.Type.Elem(), "")
		}
	}
	for k := range gaps {
		bad = append(bad, fmt.Sprintf("%v is a gap of nothing", k))
	}
	sort.Strings(bad)
	return bad
}

// keys lists the paths of all keys of a plan, those below lists included.
func keys(v any, prefix string) []string {
	var list []string
	switch x := v.(type) {
	case tree:
		return keys(map[string]any(x), prefix)
	case map[string]any:
		for k, inner := range x {
			list = append(append(list, prefix+k), keys(inner, prefix+k+"/")...)
		}
	case []any:
		for i, inner := range x {
			list = append(list, keys(inner, fmt.Sprintf("%s%d/", prefix, i))...)
		}
	}
	slices.Sort(list)
	return list
}

// situations are plans that come out in every way a plan can.
func situations(t testing.TB) map[string]func() tree {
	pump := func() tree { return example(t, "pump-skid") }
	list := map[string]func() tree{
		"four legs on a link":    pump,
		"four legs on a hook":    func() tree { return example(t, "filter-vessel") },
		"two legs, US":           func() tree { return example(t, "valve-block-us") },
		"turns over":             func() tree { return pump().set("load/center_of_gravity/z", "9 m") },
		"two legs that roll":     func() tree { return example(t, "valve-block-us").set("load/center_of_gravity/z", "5 ft") },
		"legs too short":         func() tree { return shortLegs(t) },
		"one leg far too short":  func() tree { return pump().set("gear/1/length", "1.5 m") },
		"a slack leg":            func() tree { return pump().set("gear/1/length", "6.8 m") },
		"tag for a whole bridle": func() tree { return pump().set("gear/1/tag/legs", 2) },
		"tag at an angle":        func() tree { return pump().set("gear/1/tag/angle_from_horizontal", "60 deg") },
		"inspected afterwards":   func() tree { return pump().set("gear/1/inspection/date", "2027-01-10") },
		"special service":        func() tree { return pump().set("gear/1/inspection/service", "special") },
		"two legs at one point": func() tree {
			return pump().set("rigging/0/legs/1/end/at", "A").set("rigging/0/legs/0/id", "first")
		},
	}
	maps.Copy(list, gearSituations(t))
	maps.Copy(list, fitSituations(t))
	maps.Copy(list, arrangedSituations(t))
	maps.Copy(list, kindSituations(t))
	return list
}

func TestEverySituationIsExplained(t *testing.T) {
	for name, make := range situations(t) {
		t.Run(name, func(t *testing.T) {
			f, _ := make().compute(t)
			for _, b := range unexplained(f) {
				t.Error(b)
			}
			if _, err := f.Document.Value(); err != nil {
				t.Error(err)
			}
			meetsSchema(t, f)
		})
	}
}

// meetsSchema validates the facts as they are printed against the schema as
// it is published.
func meetsSchema(t *testing.T, f *facts.Facts) {
	t.Helper()
	schema, err := jsonschema.Compile("../../schema/facts.schema.json")
	if err != nil {
		t.Fatal(err)
	}
	text, err := json.Marshal(f.Document)
	if err != nil {
		t.Fatal(err)
	}
	var v any
	if err := json.Unmarshal(text, &v); err != nil {
		t.Fatal(err)
	}
	if err := schema.Validate(v); err != nil {
		t.Errorf("%#v", err)
	}
}

// TestEveryGapIsExplained takes data out of plans at random: whatever is
// missing, each figure that is absent says what it waits for.
func TestEveryGapIsExplained(t *testing.T) {
	validator, err := validator()
	if err != nil {
		t.Fatal(err)
	}
	read := func(v tree) (*plan.Plan, bool) {
		doc, faults := yamldoc.Read("plan", v.text())
		if len(faults) > 0 {
			t.Fatalf("not read: %v", faults)
		}
		if len(validator.Plan(doc)) > 0 {
			return nil, false
		}
		p, faults, err := plan.Decode(doc)
		if err != nil {
			t.Fatal(err)
		}
		return p, len(faults) == 0
	}
	optional := optionalKeys(t, read)
	names := slices.Sorted(maps.Keys(optional))
	all := situations(t)
	t.Run("any situation", rapid.MakeCheck(func(t *rapid.T) {
		for range 5 { // each draw of the library's is worth several plans
			name := rapid.SampledFrom(names).Draw(t, "situation")
			keys := optional[name]
			v := all[name]()
			gone := rapid.SliceOfNDistinct(rapid.SampledFrom(keys), 0, len(keys)/2, rapid.ID[string]).Draw(t, "left out")
			// The deepest first, so that each step of a path still exists.
			slices.SortFunc(gone, func(a, b string) int { return strings.Compare(b, a) })
			v.drop(gone...)
			p, ok := read(v)
			if !ok {
				continue // what is left needs what was taken
			}
			f, _ := compute.Facts(p, conditions())
			if bad := unexplained(f); len(bad) > 0 {
				t.Fatal(strings.Join(bad, "\n"))
			}
			if _, err := f.Document.Value(); err != nil {
				t.Fatal(err)
			}
		}
	}))
}

// optionalKeys lists the keys that each situation's plan can do without. What
// holds for an entry of a list is taken to hold for its fellows: a plan that is
// not valid after all is passed over.
func optionalKeys(t *testing.T, read func(tree) (*plan.Plan, bool)) map[string][]string {
	t.Helper()
	number := regexp.MustCompile(`/[0-9]+`)
	known := map[string]bool{}
	optional := map[string][]string{}
	for name, make := range situations(t) {
		for _, k := range keys(make(), "") {
			like := number.ReplaceAllString(k, "/*")
			can, tried := known[like]
			if !tried {
				_, can = read(make().drop(k))
				known[like] = can
			}
			if can {
				optional[name] = append(optional[name], k)
			}
		}
		if len(optional[name]) < 10 {
			t.Fatalf("%s: only %d keys can be left out", name, len(optional[name]))
		}
	}
	return optional
}

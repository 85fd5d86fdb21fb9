package facts

import (
	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
	"pgregory.net/rapid"
)

func chosenFor(t *testing.T, fields map[string][]string) Choice {
	t.Helper()
	c, err := Choose(fields)
	if err != nil {
		t.Fatal(err)
	}
	return c
}

func TestChoiceKeepsWhatIsNamed(t *testing.T) {
	days := 3.0
	d := Document{
		Gear:  []Gear{{Record: named("gear/S1"), ID: "S1", Kind: "shackle", Tag: Tag{State: "missing", At: "#/tag"}, Inspection: &Inspection{Date: "2026-05-04", OverdueDays: &days}}},
		Signs: []Sign{{Record: named("sign/S1/kink"), ID: "S1"}},
	}
	d.Finish()
	for _, c := range []struct {
		name   string
		fields map[string][]string
		want   string
	}{
		{"keys alone", nil, `{"gear": [{"key": "gear/S1"}], "signs": [{"key": "sign/S1/kink"}]}`},
		{"a field", map[string][]string{"gear": {"kind"}}, `{"gear": [{"key": "gear/S1", "kind": "shackle"}], "signs": [{"key": "sign/S1/kink"}]}`},
		{"one inside another", map[string][]string{"gear": {"inspection.overdue_days", "tag.state"}},
			`{"gear": [{"key": "gear/S1", "tag": {"state": "missing"}, "inspection": {"overdue_days": 3}}], "signs": [{"key": "sign/S1/kink"}]}`},
		{"one that is absent", map[string][]string{"gear": {"diameter_m", "inspection.due"}}, `{"gear": [{"key": "gear/S1", "inspection": {}}], "signs": [{"key": "sign/S1/kink"}]}`},
		{"all of a nested record, and a part of it", map[string][]string{"gear": {"tag", "tag.state"}},
			`{"gear": [{"key": "gear/S1", "tag": {"at": "#/tag", "state": "missing", "shows": []}}], "signs": [{"key": "sign/S1/kink"}]}`},
		{"the same the other way round", map[string][]string{"gear": {"tag.state", "tag"}},
			`{"gear": [{"key": "gear/S1", "tag": {"at": "#/tag", "state": "missing", "shows": []}}], "signs": [{"key": "sign/S1/kink"}]}`},
	} {
		t.Run(c.name, func(t *testing.T) {
			got, err := d.ValueOf(chosenFor(t, c.fields))
			if err != nil {
				t.Fatal(err)
			}
			want := ast.MustParseTerm(c.want).Value.(ast.Object)
			kept, ok := got.(ast.Object)
			if !ok || kept.Len() != len(Collections()) {
				t.Fatalf("%v has not all collections", got)
			}
			kept.Foreach(func(name, list *ast.Term) {
				w := want.Get(name)
				if w == nil {
					w = ast.ArrayTerm()
				}
				if !w.Equal(list) {
					t.Errorf("%v: %v, want %v", name, list, w)
				}
			})
		})
	}
}

func TestChoiceOfNothingThatIs(t *testing.T) {
	for _, c := range []struct {
		fields map[string][]string
		says   string
	}{
		{map[string][]string{"geer": nil}, "there is no collection geer"},
		{map[string][]string{"gear": {"color"}}, "gear: there is no field color"},
		{map[string][]string{"gear": {"tag.color"}}, "gear: there is no field color"},
		{map[string][]string{"gear": {"kind.of"}}, "gear: there is no field kind.of"},
	} {
		if _, err := Choose(c.fields); err == nil || !strings.Contains(err.Error(), c.says) {
			t.Errorf("%v: %v", c.fields, err)
		}
	}
}

// TestChoiceOfEverything: with every field named, and with the zero choice, the
// whole document comes out.
func TestChoiceOfEverything(t *testing.T) {
	every := map[string][]string{}
	schema := Schema()["properties"].(map[string]any)
	for _, name := range Collections() {
		collection := schema[name].(map[string]any)["items"].(map[string]any)
		if ref, ok := collection["$ref"].(string); ok {
			collection = Schema()["$defs"].(map[string]any)[ref[strings.LastIndexByte(ref, '/')+1:]].(map[string]any)
		}
		for field := range collection["properties"].(map[string]any) {
			every[name] = append(every[name], field)
		}
	}
	all := chosenFor(t, every)
	rapid.Check(t, func(t *rapid.T) {
		d := document().Draw(t, "facts")
		d.Finish()
		want, err := d.Value()
		if err != nil {
			t.Fatal(err)
		}
		for _, c := range []Choice{all, {}} {
			if got, err := d.ValueOf(c); err != nil || ast.Compare(got, want) != 0 {
				t.Fatalf("%v, %v; want %v", got, err, want)
			}
		}
	})
}

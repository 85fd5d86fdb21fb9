package facts

import (
	"encoding/json"
	"math"
	"os"
	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/util"
	"github.com/santhosh-tekuri/jsonschema/v5"
	"pgregory.net/rapid"
)

// TestValueIsTheJSON: what rules see is what is printed, by the way round that
// does not go through reflection.
func TestValueIsTheJSON(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := document().Draw(t, "facts")
		d.Finish()
		got, err := d.Value()
		if err != nil {
			t.Fatal(err)
		}
		text, err := json.Marshal(d)
		if err != nil {
			t.Fatal(err)
		}
		var plain any
		if err := util.UnmarshalJSON(text, &plain); err != nil {
			t.Fatal(err)
		}
		want, err := ast.InterfaceToValue(plain)
		if err != nil {
			t.Fatal(err)
		}
		if ast.Compare(got, want) != 0 {
			t.Fatalf("rules see\n%v\nand printed is\n%v", got, want)
		}
	})
}

// TestDocumentsMeetTheirSchema validates facts of every shape, finished, with
// a validator of its own.
func TestDocumentsMeetTheirSchema(t *testing.T) {
	text, err := os.ReadFile("../../schema/facts.schema.json")
	if err != nil {
		t.Fatal(err)
	}
	schema, err := jsonschema.CompileString("facts.schema.json", string(text))
	if err != nil {
		t.Fatal(err)
	}
	rapid.Check(t, func(t *rapid.T) {
		d := document().Draw(t, "facts")
		d.Finish()
		text, err := json.Marshal(d)
		if err != nil {
			t.Fatal(err)
		}
		var v any
		if err := json.Unmarshal(text, &v); err != nil {
			t.Fatal(err)
		}
		if err := schema.Validate(v); err != nil {
			t.Fatal(err)
		}
	})
	if err := schema.Validate(map[string]any{}); err == nil {
		t.Error("facts without a single list meet the schema")
	}
}

func named(key string) Record { return Record{Key: key, At: "#/" + key} }

func TestValueRefuses(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	for _, c := range []struct {
		name string
		doc  Document
		says string
	}{
		{"not a number", Document{Legs: []Leg{{Record: named("leg/1"), TensionN: &nan}}}, "tension_n of leg/1 is not a finite number"},
		{"infinite", Document{Hooks: []Hook{{Record: named("hook"), RiggingMassKg: inf}}}, "rigging_mass_kg of hook is not a finite number"},
		{"inside another", Document{Gear: []Gear{{Record: named("gear/S1"), Inspection: &Inspection{OverdueDays: &nan}}}}, "inspection.overdue_days of gear/S1"},
		{"two of one key", Document{Legs: []Leg{{Record: named("a")}, {Record: named("a")}}}, `key "a" in legs is not unique`},
		{"one key in two lists", Document{Legs: []Leg{{Record: named("a")}}, Fits: []Fit{{Record: named("a")}}}, `key "a" in fits is not unique`},
		{"no key", Document{Parts: []Part{{}}}, "a record of parts has no key"},
	} {
		t.Run(c.name, func(t *testing.T) {
			c.doc.Finish()
			v, err := c.doc.Value()
			if err == nil || !strings.Contains(err.Error(), c.says) {
				t.Errorf("%v, %v", v, err)
			}
		})
	}
}

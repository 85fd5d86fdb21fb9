package plangen_test

import (
	"encoding/json"
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/goccy/go-yaml"

	"liftlint/internal/facts"
	"liftlint/internal/quantity"
)

// node is a plan as maps, lists and texts.
type node = map[string]any

func parsed(t testing.TB, text string) node {
	t.Helper()
	var v node
	if err := yaml.Unmarshal([]byte(text), &v); err != nil {
		t.Fatal(err)
	}
	return v
}

// asText writes a plan as JSON, which is YAML too.
func asText(v node) string {
	b, err := json.MarshalIndent(v, "", " ")
	if err != nil {
		panic(err)
	}
	return string(b)
}

// each visits every mapping, what it is below first.
func each(v any, visit func(node)) {
	switch x := v.(type) {
	case node:
		visit(x)
		for _, below := range x {
			each(below, visit)
		}
	case []any:
		for _, below := range x {
			each(below, visit)
		}
	}
}

// listOf is a list of mappings; empty where there is none.
func listOf(v node, keys ...string) []node {
	var at any = v
	for _, k := range keys {
		m, _ := at.(node)
		at = m[k]
	}
	var list []node
	items, _ := at.([]any)
	for _, item := range items {
		list = append(list, item.(node))
	}
	return list
}

func texts(v any) []string {
	var list []string
	items, _ := v.([]any)
	for _, item := range items {
		list = append(list, item.(string))
	}
	return list
}

func lengthM(v any) float64 { return must(quantity.ParseLength(v.(string))) }

func massKg(v any) float64 { return must(quantity.ParseMass(v.(string))) }

func must[T ~float64](v T, err error) float64 {
	if err != nil {
		panic(err)
	}
	return float64(v)
}

func meters(m float64) string { return strconv.FormatFloat(m, 'f', -1, 64) + " m" }

// numbers lists the figures of some collections of the facts, by collection, key
// and field. Directions and signed parts have a handedness and are left out.
func numbers(t testing.TB, f *facts.Facts, collections ...string) map[string]float64 {
	t.Helper()
	b, err := json.Marshal(f.Document)
	if err != nil {
		t.Fatal(err)
	}
	var doc map[string][]map[string]any
	if err := json.Unmarshal(b, &doc); err != nil {
		t.Fatal(err)
	}
	out := map[string]float64{}
	for _, c := range collections {
		for _, record := range doc[c] {
			for field, v := range record {
				if n, ok := v.(float64); ok && !strings.Contains(field, "direction") && field != "pull_across_n" {
					out[c+" "+record["key"].(string)+" "+field] = n
				}
			}
		}
	}
	return out
}

// alike compares two sets of figures; factor says by how much a field grows.
func alike(t *testing.T, what string, before, after map[string]float64, within float64, factor func(field string) float64) {
	t.Helper()
	if len(before) == 0 || len(after) != len(before) {
		t.Errorf("%s: %d figures before and %d after", what, len(before), len(after))
	}
	for field, was := range before {
		is, ok := after[field]
		want := was * factor(field)
		if floor := within * scaleOf(field); !ok || math.Abs(is-want) > within*math.Abs(want)+floor {
			t.Errorf("%s: %s is %g (%v), not %g", what, field, is, ok, want)
		}
	}
}

// scaleOf is how large a figure may be that stands for nothing: forces of some
// newtons and angles of thousandths of a degree come of rounding.
func scaleOf(field string) float64 {
	switch {
	case strings.HasSuffix(field, "_n"), strings.HasSuffix(field, "_nm"):
		return 1e4
	case strings.HasSuffix(field, "_deg"):
		return 10
	}
	return 1
}

func same(string) float64 { return 1 }

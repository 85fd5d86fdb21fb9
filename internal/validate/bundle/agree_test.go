package bundle

import (
	"bytes"
	"encoding/json"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v5"
	"pgregory.net/rapid"

	"liftlint/internal/quantity"
	"liftlint/internal/validate"
	"liftlint/internal/yamldoc"
)

// passed lists all that the bundle lets through and the split schemas refuse,
// by words of the messages. A pattern can't compare numbers, count digits in
// pairs or days of months.
var passed = [...]string{
	"is zero",
	"divides by zero",
	"has a fraction of one or more after its whole number",
	"has 12 in or more after its feet",
	"has more digits than any measured value",
	"has more decimals than any measured value",
	"is larger than anything on a lift",
	"is longer than any value",
	"is below absolute zero",
	"is not in the calendar",
}

func listed(message string) bool {
	return slices.ContainsFunc(passed[:], func(p string) bool { return strings.Contains(message, p) })
}

func mustEditor(t testing.TB) *jsonschema.Schema {
	t.Helper()
	c := jsonschema.NewCompiler()
	if err := c.AddResource("embedded:///bundle.json", bytes.NewReader(mustBundle(t))); err != nil {
		t.Fatal(err)
	}
	s, err := c.Compile("embedded:///bundle.json")
	if err != nil {
		t.Fatal(err)
	}
	if s.Draft != jsonschema.Draft7 {
		t.Fatal("not draft-07")
	}
	return s
}

func mustValidator(t testing.TB) *validate.Validator {
	t.Helper()
	v, err := validate.New()
	if err != nil {
		t.Fatal(err)
	}
	return v
}

// disagreement says how the two differ on a document, empty where they agree
// or differ as listed.
func disagreement(v *validate.Validator, editor *jsonschema.Schema, doc *yamldoc.Document) string {
	faults := v.Plan(doc)
	err := editor.Validate(doc.Root().Value())
	switch {
	case (err == nil) == (len(faults) == 0):
		return ""
	case err != nil:
		return "only the bundle refuses it: " + err.Error()
	}
	for _, f := range faults {
		if !listed(f.Message) {
			return "only the split schemas refuse it: " + f.ID + " " + f.Message
		}
	}
	return ""
}

func TestBundleAgreesOnPlans(t *testing.T) {
	v, editor := mustValidator(t), mustEditor(t)
	paths, err := filepath.Glob("../testdata/*/*.yaml")
	if err != nil || len(paths) < 50 {
		t.Fatal(len(paths), err)
	}
	for _, path := range paths {
		text, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		doc, faults := yamldoc.Read(path, text)
		if len(faults) > 0 {
			t.Fatal(path, faults)
		}
		if d := disagreement(v, editor, doc); d != "" {
			t.Errorf("%s: %s", path, d)
		}
	}
}

// values are what a random change puts in place of another value.
var values = [...]string{
	`null`, `true`, `3`, `-1`, `2.0`, `0.5`, `21`, `""`, `[]`, `{}`, `"S1"`, `"S 1"`, `["S1"]`, `[{}]`, `{"kind": "to"}`, `"to"`,
	`"shackle"`, `"padeye"`, `"grommet"`, `"basket"`, `"SB1.left"`, `"SB1.left.top"`, `"12 kN m"`, `"12 kN  m"`, `"12 kNm"`, `{"id": "K9", "kind": "shackle"}`, `"8650 kg"`, `"8650"`, `"-8650 kg"`, `"0 kg"`, `"3 ton"`, `"-0 deg"`,
	`"4.2 m"`, `"-6 in"`, `"12 ft 6 in"`, `"12 ft 13 in"`, `"5 kN"`, `"2 %"`, `"60 deg"`, `"2026-12-04"`, `"2026-02-30"`, `"04/12/2026"`,
	`"vertical"`, `"legible"`, `"us"`, `"6x36"`, `"text of any kind"`,
}

func TestBundleAgreesOnChangedPlans(t *testing.T) {
	v, editor := mustValidator(t), mustEditor(t)
	var texts [][]byte
	for _, name := range []string{"four_legs", "arrangement", "kinds"} {
		text, err := os.ReadFile("../testdata/valid/" + name + ".yaml")
		if err != nil {
			t.Fatal(err)
		}
		texts = append(texts, text)
	}
	rapid.Check(t, func(t *rapid.T) {
		doc, _ := yamldoc.Read("plan", rapid.SampledFrom(texts).Draw(t, "plan"))
		var plan any = doc.Root().Value()
		for range rapid.IntRange(1, 3).Draw(t, "changes") {
			plan = change(t, plan)
		}
		out, err := json.Marshal(plan)
		if err != nil {
			t.Fatal(err)
		}
		doc, faults := yamldoc.Read("plan", out)
		if len(faults) > 0 {
			t.Fatal(faults)
		}
		if d := disagreement(v, editor, doc); d != "" {
			t.Fatalf("%s\n%s", d, out)
		}
	})
}

// change goes down a random way and changes what it finds there.
func change(t *rapid.T, v any) any {
	switch v := v.(type) {
	case map[string]any:
		keys := slices.Sorted(maps.Keys(v))
		if len(keys) == 0 {
			break
		}
		k := rapid.SampledFrom(keys).Draw(t, "key")
		switch rapid.IntRange(0, 9).Draw(t, "what") {
		case 0:
			delete(v, k)
		case 1:
			v[rapid.SampledFrom([]string{"kind", "id", "length", "mas", "x"}).Draw(t, "new")] = v[k]
		case 2:
			v[k] = drawValue(t)
		default:
			v[k] = change(t, v[k])
		}
		return v
	case []any:
		if len(v) == 0 {
			break
		}
		i := rapid.IntRange(0, len(v)-1).Draw(t, "item")
		if rapid.IntRange(0, 5).Draw(t, "what") == 0 {
			return append(v, v[i])
		}
		v[i] = change(t, v[i])
		return v
	}
	return drawValue(t)
}

func drawValue(t *rapid.T) any {
	var v any
	if err := json.Unmarshal([]byte(rapid.SampledFrom(values[:]).Draw(t, "value")), &v); err != nil {
		t.Fatal(err)
	}
	return v
}

// Whatever is read as a quantity, its pattern accepts; and what the pattern
// accepts beyond that is on the list.
func TestPatternsAgreeWithQuantities(t *testing.T) {
	patterns := map[string]*jsonschema.Schema{}
	for _, k := range quantity.Kinds() {
		for _, s := range []quantity.Sign{quantity.AnySign, quantity.NotNegative, quantity.Positive} {
			p := `{"pattern": ` + strconv.Quote(quantityPattern(k, s)) + `}`
			patterns[k.Name()+s.String()] = jsonschema.MustCompileString("embedded:///p.json", p)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		k := rapid.SampledFrom(quantity.Kinds()).Draw(t, "kind")
		s := rapid.SampledFrom([]quantity.Sign{quantity.AnySign, quantity.NotNegative, quantity.Positive}).Draw(t, "sign")
		if k == quantity.KindTemperature {
			s = quantity.AnySign // others are refused, see TestRefusesWhatItCannotExpress
		}
		text := drawText(t, k)
		read, fits := k.CheckSign(text, s), patterns[k.Name()+s.String()].Validate(text)
		if read == nil && fits != nil {
			t.Fatalf("%q is read as %v (%v), and its pattern refuses it", text, k, s)
		}
		if read != nil && fits == nil && !listed(read.Error()) {
			t.Fatalf("%q fits the pattern of %v (%v), and is refused: %v", text, k, s, read)
		}
	})
}

// drawText draws values well formed in most of their parts.
func drawText(t *rapid.T, k quantity.Kind) string {
	number := `(-|\+|)([0-9]{1,3}|0|0\.0|[0-9]{0,2}\.[0-9]{0,3}|[0-9]{1,2}/[0-9]|[0-9]{1,2}[- ][0-9]/[1-9]|[0-9]{1,18})`
	unit := rapid.SampledFrom(append(k.Units(), "ton", "KG", "kg", "m", "")).Draw(t, "unit")
	text := rapid.StringMatching(`[ \t]?`+number+` ?`).Draw(t, "number") + unit
	if rapid.IntRange(0, 3).Draw(t, "more") == 0 {
		text += rapid.StringMatching(` ?(0|[0-9]{1,2}|[0-9]\.[0-9]|[0-9]-[0-9]/[0-9]) ?(in|ft|mm|)`).Draw(t, "inches")
	}
	return text + rapid.SampledFrom([]string{"", "", " ", "\n"}).Draw(t, "end")
}

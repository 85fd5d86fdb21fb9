package yamldoc

import (
	"encoding/json"
	"math"
	"reflect"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v5"
)

// Readings after YAML 1.2.2, 10.3.2 (core schema); the ambiguous ones are
// those on which the types int, float, bool and null of YAML 1.1
// (https://yaml.org/type/) differ from it, or that a reader easily misses.
func TestPlainScalars(t *testing.T) {
	for _, c := range []struct {
		text string
		kind Kind
		want any
	}{
		{"null", Null, nil}, {"NULL", Null, nil}, {"", Null, nil},
		{"true", Bool, true}, {"FALSE", Bool, false},
		{"0", Number, int64(0)}, {"-12", Number, int64(-12)}, {"+5", Number, int64(5)},
		{"9223372036854775807", Number, int64(math.MaxInt64)}, {"9223372036854775808", Number, 9223372036854775808.0},
		{"2.5", Number, 2.5}, {"-.5", Number, -0.5}, {"5.", Number, 5.0}, {"1.5e+3", Number, 1500.0}, {"00.5", Number, 0.5},
		{"2026-12-04", String, nil}, {"12 t", String, nil}, {"12t", String, nil}, {"1-1/8 in", String, nil}, {"2 %", String, nil},
		{"3.35 m", String, nil}, {"07:30", String, nil}, {"12:75", String, nil}, {"1.2.3", String, nil}, {"0x1G", String, nil}, {"-", String, nil}, {"--1", String, nil},
		{".", String, nil}, {"1,000", String, nil}, {"tRue", String, nil}, {"yEs", String, nil}, {"inf", String, nil}, {"nan", String, nil},
		{"e3", String, nil}, {"HP-114", String, nil}, {"#1", String, nil},
	} {
		if r := resolve(c.text); r.kind != c.kind || r.id != "" || !reflect.DeepEqual(r.value, c.want) {
			t.Errorf("%q: %+v", c.text, r)
		}
	}
}

func TestAmbiguousScalars(t *testing.T) {
	for _, c := range []struct{ text, id, advice string }{
		{"010", AmbiguousScalar, "write 10,"}, {"08", AmbiguousScalar, "write 8,"}, {"-010", AmbiguousScalar, "write -10,"},
		{"+07", AmbiguousScalar, "write +7,"}, {"00", AmbiguousScalar, "write 0,"},
		{"1_000", AmbiguousScalar, "write 1000,"}, {"1_0.5", AmbiguousScalar, "write 10.5,"},
		{"1e3", AmbiguousScalar, "write 1000,"}, {"1.5E3", AmbiguousScalar, "write 1500,"}, {"12e-1", AmbiguousScalar, "write 1.2,"},
		{"1e999", AmbiguousScalar, "write the decimal number,"},
		{"0x1F", AmbiguousScalar, "write 31,"}, {"0o17", AmbiguousScalar, "write 15,"}, {"0b11", AmbiguousScalar, "write 3,"},
		{"12:30", AmbiguousScalar, "in quotes"}, {"190:20:30", AmbiguousScalar, "in quotes"}, {"1:30.5", AmbiguousScalar, "in quotes"},
		{"yes", AmbiguousScalar, "write true or false"}, {"No", AmbiguousScalar, "YAML 1.1"}, {"ON", AmbiguousScalar, "quotes"},
		{"off", AmbiguousScalar, "quotes"}, {"y", AmbiguousScalar, "quotes"}, {"N", AmbiguousScalar, "quotes"}, {"~", AmbiguousScalar, "write null"},
		{".nan", NotFinite, "finite"}, {".NaN", NotFinite, "finite"}, {".inf", NotFinite, "finite"}, {"-.INF", NotFinite, "finite"},
		{"+.Inf", NotFinite, "finite"}, {"1.0e+999", NotFinite, "too large"}, {strings.Repeat("9", 400), NotFinite, "too large"},
	} {
		if r := resolve(c.text); r.id != c.id || !strings.Contains(r.advice, c.advice) {
			t.Errorf("%q: %+v", c.text, r)
		}
	}
}

func TestQuotedScalarsAreText(t *testing.T) {
	d, faults := Read("f", []byte(`["010", 'yes', "", "~", ".nan", '12:30', "true"]`))
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	if want := []any{"010", "yes", "", "~", ".nan", "12:30", "true"}; !reflect.DeepEqual(d.Root().Value(), want) {
		t.Errorf("%#v", d.Root().Value())
	}
}

func TestKeysLikeYStayText(t *testing.T) {
	d, faults := Read("f", []byte("{x: 3.35 m, y: 1.05 m, n: 2, on: 3, 2026-12-04: 4}"))
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	if got := d.Root().Get("y"); got == nil || got.Text != "1.05 m" {
		t.Errorf("%+v", got)
	}
}

// Whatever Value gives must pass the schema library, which panics on numbers
// that are not finite and refuses some Go types, and must encode as JSON.
func TestValuesSuitTheSchemaLibrary(t *testing.T) {
	d, faults := Read("f", []byte("a: 1\nb: 2.5\nc: [text, null, true, "+strings.Repeat("9", 300)+"]\nd: {}\ne:\n"))
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	schema, err := jsonschema.CompileString("s.json", `{"type": "object", "properties": {"a": {"type": "integer", "multipleOf": 1},
		"b": {"type": "number", "maximum": 3}, "c": {"prefixItems": [{"type": "string"}, {"type": "null"}, {"type": "boolean"}, {"type": "number"}]},
		"d": {"type": "object"}, "e": {"type": "null"}}, "required": ["a", "b", "c", "d", "e"]}`)
	if err != nil {
		t.Fatal(err)
	}
	if err := schema.Validate(d.Root().Value()); err != nil {
		t.Error(err)
	}
	if _, err := json.Marshal(d.Root().Value()); err != nil {
		t.Error(err)
	}
}

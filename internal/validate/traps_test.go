package validate

import (
	"errors"
	"io/fs"
	"math"
	"strings"
	"sync"
	"testing"
	"testing/fstest"

	"github.com/santhosh-tekuri/jsonschema/v5"

	"liftlint/schema"
)

// withPlan is a file system whose schema of a plan is the given one.
func withPlan(text string) fstest.MapFS {
	files := fstest.MapFS{"plan/plan.schema.json": {Data: []byte(text)}}
	for _, d := range dispatches {
		files["plan/"+d.folder+"/k.schema.json"] = &fstest.MapFile{Data: []byte(`{"type": 7}`)}
	}
	return files
}

func planWith(t *testing.T, files fs.FS, text string) string {
	t.Helper()
	v, err := newValidator(files)
	if err != nil {
		t.Fatal(err)
	}
	return render(v.Plan(mustRead(t, text)))
}

// What the library refuses without words of this package still comes out.
func TestFailsClosed(t *testing.T) {
	for want, s := range map[string]string{
		"1:1-1:5 plan/not_valid `gear` is not valid: items at index 0 and 1 are equal": `{"properties": {"gear": {"uniqueItems": true}}}`,
		"1:1-1:5 plan/not_valid `gear` is not valid: not failed":                       `{"properties": {"gear": {"not": {"type": "array"}}}}`,
		"1:1-1:5 plan/not_valid `gear` is not valid: not allowed":                      `{"properties": {"gear": false}}`,
		"plan/not_valid the plan is not valid: minimum 2 properties":                   `{"minProperties": 2}`,
		"plan/not_valid gear entry 1 is not valid: value must be":                      `{"properties": {"gear": {"items": {"const": 2}}}}`,
	} {
		if got := planWith(t, withPlan(s), "gear: [1, 1]\n"); !strings.Contains(got, want) {
			t.Errorf("%s: got %q, want %q", s, got, want)
		}
	}
}

// A schema of a kind that can't be compiled is not passed over.
func TestBrokenKindFailsClosed(t *testing.T) {
	got := planWith(t, withPlan(`{}`), "gear: [{id: S1, kind: k}]\n")
	if !strings.Contains(got, "plan/not_valid gear S1 is not valid: its schema could not be read") {
		t.Error(got)
	}
}

func TestBrokenPlanSchemaIsAnError(t *testing.T) {
	for _, s := range []string{`{"type": 7}`, `{"quantity": "mass"}`, `{"sign": "any"}`, `{"quantity": "size", "sign": "any"}`,
		`{"quantity": "mass", "sign": "plus"}`, `{"calendar_day": false}`, `{"$ref": "file:///etc/hostname"}`,
		`{"$ref": "http://127.0.0.1/x.json"}`, `{"$ref": "other.schema.json"}`} {
		if _, err := newValidator(withPlan(s)); err == nil {
			t.Errorf("%s compiles", s)
		}
	}
	if _, err := newValidator(fstest.MapFS{}); err == nil {
		t.Error("no files at all are enough")
	}
}

// The library loads file references by default.
func TestOnlyEmbeddedSchemasAreRead(t *testing.T) {
	for _, address := range []string{"file:///etc/hostname", "https://example.org/a.json", "embedded:///../embed.go", "plan/plan.schema.json"} {
		if f, err := open(schema.Files, address); err == nil {
			t.Errorf("%s is read", address)
			f.Close()
		}
	}
}

// The library panics on numbers that are not finite. Reading refuses them
// (yaml/not_finite); should one get here all the same, it is an error.
func TestPanicIsAnError(t *testing.T) {
	v := mustNew(t)
	sch, err := v.schemas.get(planPath)
	if err != nil {
		t.Fatal(err)
	}
	for _, bad := range []any{math.NaN(), math.Inf(1), uint16(1), struct{}{}} {
		err := run(sch, map[string]any{"liftlint": bad})
		var found *jsonschema.ValidationError
		if err == nil || errors.As(err, &found) {
			t.Errorf("%v: %v", bad, err)
		}
	}
}

// Locations come escaped twice.
func TestSteps(t *testing.T) {
	got := steps("/a~1b~0c%20d%2520/0")
	if strings.Join(got, "|") != "a/b~c d%20|0" || steps("") != nil {
		t.Errorf("%q", got)
	}
}

// The library's order follows Go's maps, and so does its list of unknown keys.
func TestSameFaultsEveryTime(t *testing.T) {
	text := "lift: {a: 1, b: 2, c: 3, d: 4, e: 5}\ngear: [{a: 1, b: 2, c: 3, kind: shackle, mass: 3, rated_load: 4}]\nz: 1\ny: 2\n"
	doc := mustRead(t, text)
	want := render(mustNew(t).Plan(doc))
	for range 30 {
		if got := render(mustNew(t).Plan(doc)); got != want {
			t.Fatalf("got\n%s, want\n%s", got, want)
		}
	}
}

func TestConcurrentUse(t *testing.T) {
	v := mustNew(t)
	var wait sync.WaitGroup
	for _, path := range append(matches(t, "testdata/valid/*.yaml"), matches(t, "testdata/faulty/t*.yaml")...) {
		doc := mustRead(t, mustReadFile(t, path))
		want := render(mustNew(t).Plan(doc))
		wait.Go(func() {
			if got := render(v.Plan(doc)); got != want {
				t.Errorf("%s: got %s", path, got)
			}
		})
	}
	wait.Wait()
}

// A file full of faults lists the first hundred and says that there are more.
func TestManyFaults(t *testing.T) {
	text := "gear:\n" + strings.Repeat("  - {kind: shackle, ma: 3, x: 4}\n", 20_000)
	faults := mustNew(t).Plan(mustRead(t, text))
	if len(faults) != mostFaults+1 || faults[mostFaults].ID != "yaml/too_many_faults" {
		t.Fatal(len(faults))
	}
	if !strings.Contains(faults[mostFaults].Message, "has 60004 faults") {
		t.Error(faults[mostFaults].Message)
	}
}

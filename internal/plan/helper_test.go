package plan

import (
	"fmt"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"liftlint/internal/validate"
	"liftlint/internal/yamldoc"
)

// base is a plan with a link and two legs. Each test changes lines of it.
const base = `liftlint: 1
lift: {id: SQ-1, title: Set a pump}
load:
  mass: 2 t
  attachments:
    - {id: A, kind: padeye, x: 0 m, y: 0 m, z: 1 m, rated_load: 2 t}
    - {id: B, kind: padeye, x: 2 m, y: 0 m, z: 1 m}
gear:
  - {id: ML1, kind: master_link, inside_length: 200 mm}
  - {id: S1, kind: wire_rope_sling, length: 2 m}
  - {id: S2, kind: wire_rope_sling, length: 2 m}
  - {id: K1, kind: shackle, inside_length: 80 mm}
  - {id: K2, kind: shackle, inside_length: 80 mm}
rigging:
  - from: hook
    by: [ML1]
    legs:
      - {down: [S1, K1], end: {kind: to, at: A}}
      - {down: [S2, K2], end: {kind: to, at: B}}
`

// changed replaces parts of the base plan: old, new, old, new ...
func changed(t testing.TB, pairs ...string) string {
	t.Helper()
	return changedIn(t, base, pairs...)
}

// changedIn does so in another plan.
func changedIn(t testing.TB, text string, pairs ...string) string {
	t.Helper()
	for i := 0; i < len(pairs); i += 2 {
		if !strings.Contains(text, pairs[i]) {
			t.Fatalf("the plan has no %q", pairs[i])
		}
		text = strings.Replace(text, pairs[i], pairs[i+1], 1)
	}
	return text
}

// readText goes as far as Decode; the text has to meet the schemas.
func readText(t testing.TB, text string) (*Plan, []yamldoc.Fault, *yamldoc.Document) {
	t.Helper()
	doc, faults := yamldoc.Read("plan.lift.yaml", []byte(text))
	if len(faults) > 0 {
		t.Fatalf("not read: %v", faults)
	}
	v, err := validate.New()
	if err != nil {
		t.Fatal(err)
	}
	if faults := v.Plan(doc); len(faults) > 0 {
		t.Fatalf("not valid: %v", faults)
	}
	p, faults, err := Decode(doc)
	if err != nil {
		t.Fatal(err)
	}
	return p, faults, doc
}

// good decodes a plan that has no faults.
func good(t testing.TB, text string) *Plan {
	t.Helper()
	p, faults, _ := readText(t, text)
	if p == nil || len(faults) > 0 {
		t.Fatalf("faults: %v", faults)
	}
	return p
}

// words writes a fault with its line.
func words(f yamldoc.Fault) string {
	s := fmt.Sprintf("%d %s: %s", f.Range.From.Line, f.ID, f.Message)
	for _, r := range f.Related {
		s += fmt.Sprintf(" (%d %s)", r.Range.From.Line, r.Caption)
	}
	return s
}

// expectFaults reads a text that meets the schemas and has just these faults.
func expectFaults(t *testing.T, text string, want []string) {
	t.Helper()
	p, faults, _ := readText(t, text)
	if p != nil {
		t.Error("there is a plan, faults and all")
	}
	var got []string
	for _, f := range faults {
		got = append(got, words(f))
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Error(diff)
	}
}

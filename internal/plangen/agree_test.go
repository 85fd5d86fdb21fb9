package plangen_test

import (
	"slices"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v5"

	"liftlint/internal/plangen"
	"liftlint/internal/validate"
	"liftlint/internal/yamldoc"
)

// TestSchemaForEditorsAgrees: what the published schema lets through and
// refuses is what the program does. Of quantities and days it knows the form
// alone, and of ids nothing but their form.
func TestSchemaForEditorsAgrees(t *testing.T) {
	t.Parallel()
	editor, err := jsonschema.Compile("../../schema/plan.bundled.schema.json")
	if err != nil {
		t.Fatal(err)
	}
	v, err := validate.New()
	if err != nil {
		t.Fatal(err)
	}
	refused := map[bool]int{}
	for seed := range uint64(3 * plangen.Mistakes()) {
		for _, text := range []string{plangen.Valid(seed), plangen.Draft(seed), plangen.Fault(seed).Text} {
			doc, faults := yamldoc.Read("plan", []byte(text))
			if doc == nil || len(faults) > 0 {
				continue
			}
			ours, theirs := v.Plan(doc), editor.Validate(doc.Root().Value())
			refused[theirs != nil]++
			formOnly := slices.ContainsFunc(ours, func(f yamldoc.Fault) bool {
				return strings.Contains(f.Message, "calendar") || strings.Contains(f.Message, "12 in or more")
			})
			if (theirs == nil) != (len(ours) == 0) && !formOnly {
				t.Errorf("seed %d: the program says %v, the schema for editors %v\n%s", seed, ours, theirs, text)
			}
		}
	}
	if refused[true] < 40 || refused[false] < 250 {
		t.Errorf("only %v", refused)
	}
}

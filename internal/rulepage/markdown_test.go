package rulepage

import (
	"strings"
	"testing"

	"liftlint/internal/finding"
	"liftlint/internal/policy"
)

// TestMarkdown: severities, limits and parameters in a column a profile, a rule
// that a profile switches off among them, and what is said of each example.
func TestMarkdown(t *testing.T) {
	p := Page{
		ID: "own/try", Title: "A try", Description: "Why it matters.", Judges: "legs", Reads: []string{"tension_n"},
		Profiles: []ProfileSettings{
			{Profile: "eu", Off: "not asked for there"},
			{Profile: "us", Grades: []GradeLine{{Name: "too_far", Severity: finding.Error, Limit: "error_deg"}, {Name: "far", Title: "Rather far", Severity: finding.Note}}, Params: []ParamValue{{"error_deg", 30.0}}},
		},
		Sources: []policy.Cited{
			{Citation: finding.Citation{Document: "our handbook", Basis: "company"}},
			{Citation: finding.Citation{Document: "site rules", Basis: "company"}, Grades: []string{"too_far", "far"}},
		},
		Examples: []Example{
			{Kind: "breaks", What: "a leg too far", Set: []Change{{At: "/a", To: "1 m"}, {At: "/b", To: ""}}, Says: []string{"error: too far"}},
			{Kind: "meets", What: "a leg that is near", Set: []Change{}, Says: []string{}},
		},
	}
	p.Profiles[0].Params = p.Profiles[1].Params
	got := p.Markdown()
	for _, want := range []string{
		"# A try\n\n`own/try`\n\nWhy it matters.\n",
		"It judges each of the `legs`. Where one of these is not known it does not judge, and says so: `tension_n`.\nIt can't be lowered or switched off.\nA plan can't waive it.\n",
		"| | eu | us |\n|---|---|---|\n| too far | off: not asked for there | error by `error_deg` |\n| far: Rather far | off: not asked for there | note |\n| `error_deg` | 30 deg | 30 deg |\n",
		"## Broken by a leg too far\n\n```yaml\n# /a\n1 m\n# /b: taken out\n```\n\n> error: too far\n",
		"## Met by a leg that is near\n\nNothing is found.\n",
		"- our handbook (company rule)\n- site rules (company rule); of: too far, far\n",
	} {
		if !strings.Contains(got, want) {
			t.Errorf("the page lacks %q:\n%s", want, got)
		}
	}
	p.Where = []Asked{{"kind", "hook or bridle"}, {"uses", "at least 1"}}
	p.When, p.Stages = []Asked{{"category", "critical"}}, []string{"review", "prelift"}
	if want, got := "It judges each of the `legs` whose `kind` is hook or bridle, and whose `uses` is at least 1, on lifts whose `category` is critical, at stage review or prelift. Where one", p.Markdown(); !strings.Contains(got, want) {
		t.Errorf("the page lacks %q:\n%s", want, got)
	}
	if want, got := "Judges each of the legs whose kind is hook or bridle, and whose uses is at least\n1, on lifts whose category is critical, at stage review or prelift.\n", p.Text(); !strings.Contains(got, want) {
		t.Errorf("the text lacks %q:\n%s", want, got)
	}
	index := Index([]Page{p}, "All of them.")
	if want := "## own\n\n| rule | finds | severity |\n|---|---|---|\n| [own/try](own/try/README.md) | A try | off or error |\n"; !strings.HasSuffix(index, want) {
		t.Errorf("the index is %q", index)
	}
}

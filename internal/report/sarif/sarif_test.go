package sarif

import (
	"encoding/json"
	"errors"
	"io"
	"math"
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v5"

	"liftlint/internal/builtin"
	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/policy"
	"liftlint/internal/report"
	"liftlint/internal/report/reporttest"
)

const root = "../../.."

// published is the JSON Schema of SARIF 2.1.0 with errata 01, as OASIS published
// it.
const published = root + "/schema/testdata/sarif-2.1.0.schema.json"

var schemaCache *jsonschema.Schema

func schema(t testing.TB) *jsonschema.Schema {
	t.Helper()
	if schemaCache != nil {
		return schemaCache
	}
	f, err := os.Open(published)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	c := jsonschema.NewCompiler()
	c.AssertFormat = true
	c.LoadURL = func(s string) (io.ReadCloser, error) { return nil, errors.New("the schema refers to " + s) }
	if err := c.AddResource("sarif.json", f); err != nil {
		t.Fatal(err)
	}
	schemaCache = c.MustCompile("sarif.json")
	return schemaCache
}

func rulesOf(t testing.TB, profiles ...string) []*policy.Rule {
	t.Helper()
	l, err := reporttest.Linter()
	if err != nil {
		t.Fatal(err)
	}
	var list []*policy.Rule
	for _, p := range profiles {
		rules, err := l.Rules(p)
		if err != nil {
			t.Fatal(err)
		}
		list = append(list, rules...)
	}
	return list
}

// written writes a run, holds it against the published schema and reads it back.
func written(t testing.TB, r report.Run, o Options) (string, run) {
	t.Helper()
	var b strings.Builder
	if err := Write(&b, r, o); err != nil {
		t.Fatal(err)
	}
	var generic any
	if err := json.Unmarshal([]byte(b.String()), &generic); err != nil {
		t.Fatal(err)
	}
	if err := schema(t).Validate(generic); err != nil {
		t.Errorf("%#v", err)
	}
	var d document
	if err := json.Unmarshal([]byte(b.String()), &d); err != nil {
		t.Fatal(err)
	}
	return b.String(), d.Runs[0]
}

// TestSchemaRefuses makes sure that the published schema is in force.
func TestSchemaRefuses(t *testing.T) {
	for _, wrong := range []string{
		`{"version": "2.1.0"}`,
		`{"version": "2.0.0", "runs": []}`,
		`{"version": "2.1.0", "runs": [{"tool": {"driver": {"name": "x"}}, "other": 1}]}`,
		`{"version": "2.1.0", "runs": [{"tool": {"driver": {"name": "x"}}, "results": [{"message": {"text": "m"}, "level": "fatal"}]}]}`,
		`{"version": "2.1.0", "runs": [{"tool": {"driver": {"name": "x"}}, "columnKind": "bytes"}]}`,
	} {
		var v any
		if err := json.Unmarshal([]byte(wrong), &v); err != nil {
			t.Fatal(err)
		}
		if schema(t).Validate(v) == nil {
			t.Errorf("%s is let through", wrong)
		}
	}
}

func TestGolden(t *testing.T) {
	flat := rule(30, finding.Warning, "")
	flat.ID = "angle/leg_too_flat"
	got, _ := written(t, reporttest.Everything(t), Options{Rules: []*policy.Rule{flat}, Stage: policy.Review, Version: "v1.2.3", Evidence: true})
	got = withoutBuiltIn(t, got)
	reporttest.Golden(t, "everything.sarif", got)
	reporttest.NeverSaysSafe(t, got)
}

// withoutBuiltIn leaves out what the checks built in say of themselves, which is
// their own affair.
func withoutBuiltIn(t *testing.T, text string) string {
	t.Helper()
	var d map[string]any
	if err := json.Unmarshal([]byte(text), &d); err != nil {
		t.Fatal(err)
	}
	driver := d["runs"].([]any)[0].(map[string]any)["tool"].(map[string]any)["driver"].(map[string]any)
	driver["rules"] = slices.DeleteFunc(driver["rules"].([]any), func(r any) bool {
		_, ok := builtin.Lookup(r.(map[string]any)["id"].(string))
		return ok
	})
	var b strings.Builder
	if err := report.WriteJSON(&b, d); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

// TestExamples holds the report of every example, alone and together, with and
// without evidence, against the schema, and compares it with the findings.
func TestExamples(t *testing.T) {
	results := reporttest.Examples(t, root)
	rules := rulesOf(t, "us", "eu")
	for _, evidence := range []bool{false, true} {
		_, got := written(t, report.Run{Results: results}, Options{Rules: rules, Stage: policy.Review, Evidence: evidence})
		checkLinks(t, got)
		i := 0
		for _, x := range results {
			for _, f := range x.Findings {
				for got.Results[i].Kind != "fail" {
					i++
				}
				checkResult(t, f, got.Results[i])
				i++
			}
		}
		if len(got.Artifacts) != len(results) {
			t.Errorf("%d artifacts for %d plans", len(got.Artifacts), len(results))
		}
	}
}

func checkResult(t *testing.T, f finding.Finding, r result) {
	t.Helper()
	at := r.Locations[0].PhysicalLocation
	switch {
	case r.RuleID != f.Rule || r.Level != string(f.Severity) || !strings.HasPrefix(r.Message.Text, report.Sentence(f.Message)):
		t.Errorf("%+v arrives as %+v", f, r)
	case at.ArtifactLocation.URI != f.Place.File || at.ArtifactLocation.URIBaseID != baseID:
		t.Errorf("%+v arrives in %+v", f.Place, at)
	case at.Region == nil || at.Region.StartLine != f.Place.Range.From.Line || at.Region.StartColumn != f.Place.Range.From.Column || at.Region.EndLine != at.Region.StartLine:
		t.Errorf("%+v arrives at %+v", f.Place, at.Region)
	case !strings.Contains(r.Message.Text, "Source: "+report.Sources(f.Citations)):
		t.Errorf("%s has no source", r.Message.Text)
	case f.Remedy != "" && !strings.Contains(r.Message.Text, f.Remedy):
		t.Errorf("%s lacks the remedy %s", r.Message.Text, f.Remedy)
	case len(r.Fingerprints[ownPrint]) != 32 || r.PartialFingerprints[sharedPrint] != r.Fingerprints[ownPrint]+":1":
		t.Errorf("fingerprints %v, %v", r.Fingerprints, r.PartialFingerprints)
	}
	if f.Measured != nil {
		if m := r.Properties["measured"].(map[string]any); m["value"] != f.Measured.Value || m["field"] != f.Measured.Field {
			t.Errorf("%+v arrives as %v", f.Measured, m)
		}
	}
}

// checkLinks follows every index of the report.
func checkLinks(t *testing.T, got run) {
	t.Helper()
	last := ""
	for _, d := range got.Tool.Driver.Rules {
		if d.ID <= last {
			t.Errorf("%s stands behind %s", d.ID, last)
		}
		last = d.ID
		if d.Help == nil || !strings.Contains(d.Help.Text, "On the authority of") || d.ShortDescription == nil {
			t.Errorf("%s: help lacks its authority", d.ID)
		}
		for _, r := range d.Relationships {
			taxonomy := got.Taxonomies[r.Target.ToolComponent.Index]
			if taxonomy.Name != r.Target.ToolComponent.Name || taxonomy.Taxa[r.Target.Index].ID != r.Target.ID {
				t.Errorf("%s cites %+v, which is %s", d.ID, r.Target, taxonomy.Name)
			}
		}
	}
	for i, l := range got.Tool.Driver.SupportedTaxonomies {
		if l.Index != i || got.Taxonomies[i].Name != l.Name {
			t.Errorf("%+v", l)
		}
	}
	for _, r := range got.Results {
		if got.Tool.Driver.Rules[r.RuleIndex].ID != r.RuleID {
			t.Errorf("%s has the index of %s", r.RuleID, got.Tool.Driver.Rules[r.RuleIndex].ID)
		}
		if (r.Kind == "fail") == (r.Level == "none") { // 3.27.10
			t.Errorf("kind %s has level %s", r.Kind, r.Level)
		}
	}
}

// TestEvidence: each subject is told once, by its own kind.
func TestEvidence(t *testing.T) {
	x := reporttest.Judge(t, "p", reporttest.Example(t, root, "pump-skid.lift.yaml"))
	x.Checked = append(x.Checked, lint.Checked{Rule: "own/silent"}, lint.Checked{Rule: "own/waits", NotJudged: []lint.Unjudged{{Key: "load"}}})
	_, got := written(t, report.Run{Results: []*lint.Result{x}}, Options{Rules: rulesOf(t, "us"), Stage: policy.Review, Evidence: true})
	want, have := map[string]int{"fail": len(x.Findings)}, map[string]int{}
	for _, c := range x.Checked {
		want["pass"] += len(c.Met)
		want["open"] += len(c.NotJudged)
		if c.DoesNotApply != "" {
			want["notApplicable"]++
		}
	}
	want["open"]++ // the rule that says nothing
	for _, r := range got.Results {
		have[r.Kind]++
	}
	for kind, n := range want {
		if have[kind] != n {
			t.Errorf("%d results of kind %s, not %d", have[kind], kind, n)
		}
	}
	if want["pass"] == 0 || want["notApplicable"] == 0 {
		t.Errorf("nothing was tried: %v", want)
	}
}

// TestWhatCouldNotBeChecked stands in notifications, and the run has not
// succeeded.
func TestWhatCouldNotBeChecked(t *testing.T) {
	_, got := written(t, reporttest.Everything(t), Options{Stage: policy.Review})
	v := got.Invocations[0]
	if v.ExecutionSuccessful || v.ExitCode != 3 || len(v.ToolExecutionNotifications) != 6 || len(v.ToolConfigurationNotes) != 1 {
		t.Errorf("%+v", v)
	}
	for i, want := range []string{"stopped after 1 s", "permission denied", "gone, and not checked: plans/before.lift.yaml", "plans/liftlint.yaml", "plans/broken.lift.yaml", "the change concerns 4 of 8 plans"} {
		level := "error"
		if i > 1 { // what is left out on purpose
			level = "note"
		}
		if n := v.ToolExecutionNotifications[i]; n.Level != level || !strings.Contains(n.Message.Text, want) || got.Tool.Driver.Notifications[n.Descriptor.Index].ID != n.Descriptor.ID {
			t.Errorf("%+v", n)
		}
	}
	_, empty := written(t, report.Run{}, Options{})
	if v := empty.Invocations[0]; v.ExitCode != 4 || empty.Results == nil {
		t.Errorf("a run without plans: %+v", empty)
	}
	_, odd := written(t, report.Run{Results: []*lint.Result{{File: "a", State: lint.Judged}}}, Options{})
	if v := odd.Invocations[0]; v.ExecutionSuccessful || len(v.ToolExecutionNotifications) != 1 {
		t.Errorf("a plan that no rule was put to: %+v", v)
	}
	if err := Write(io.Discard, report.Run{Results: []*lint.Result{nil}}, Options{}); err == nil {
		t.Error("a plan without a result is no error")
	}
}

// TestPlaces: one line at fault, the whole of it beside; places in other files
// name them, and say which plan was looked at.
func TestPlaces(t *testing.T) {
	_, got := written(t, reporttest.Everything(t), Options{})
	by := map[string]result{}
	for _, r := range got.Results {
		by[r.RuleID] = r
	}
	wide := by["own/wide"]
	if r := wide.Locations[0].PhysicalLocation.Region; *r != (region{StartLine: 1, StartColumn: 1, EndLine: 1}) {
		t.Errorf("%+v", r)
	}
	if r := wide.RelatedLocations[0].PhysicalLocation.Region; *r != (region{1, 1, 3, 17}) {
		t.Errorf("%+v", r)
	}
	if r := by["own/whole"].Locations[0].PhysicalLocation.Region; r != nil {
		t.Errorf("a place that is not known has region %+v", r)
	}
	elsewhere := by["own/rule"]
	if uri := elsewhere.Locations[0].PhysicalLocation.ArtifactLocation.URI; uri != "gear/a%20register.yaml" || elsewhere.AnalysisTarget.URI != "plans/a.lift.yaml" {
		t.Errorf("%s, %+v", uri, elsewhere.AnalysisTarget)
	}
}

// TestNumbersThatJSONLacks are left out, and their texts are kept.
func TestNumbersThatJSONLacks(t *testing.T) {
	f := finding.Finding{Rule: "a/b", Severity: finding.Error, Measured: &finding.Figure{Field: "x_m", Value: math.Inf(1), Text: "no bound"}}
	_, got := written(t, report.Run{Results: []*lint.Result{{File: "a", State: lint.NotValid, Findings: []finding.Finding{f}}}}, Options{})
	if m := got.Results[0].Properties["measured"].(map[string]any); m["value"] != nil || m["text"] != "no bound" {
		t.Errorf("%v", m)
	}
}

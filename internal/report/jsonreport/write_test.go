package jsonreport

import (
	"bytes"
	"encoding/json"
	"errors"
	"math"
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v5"
	"pgregory.net/rapid"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/policy"
	"liftlint/internal/report"
	"liftlint/internal/source"
)

func schemaOf(t *testing.T) *jsonschema.Schema {
	t.Helper()
	text, err := os.ReadFile(published)
	if err != nil {
		t.Fatal(err)
	}
	c := jsonschema.NewCompiler()
	if err := c.AddResource("report.json", bytes.NewReader(text)); err != nil {
		t.Fatal(err)
	}
	return c.MustCompile("report.json")
}

// examples are the plans shown to users, judged by the rules built in.
func examples(t *testing.T) []*lint.Result {
	t.Helper()
	const folder = "../../../examples"
	files, err := os.ReadDir(folder)
	if err != nil {
		t.Fatal(err)
	}
	l, err := lint.New(lint.Options{Stage: "review", Remedies: true})
	if err != nil {
		t.Fatal(err)
	}
	var results []*lint.Result
	for _, f := range files {
		if !strings.HasSuffix(f.Name(), ".lift.yaml") {
			continue
		}
		text, err := os.ReadFile(folder + "/" + f.Name())
		if err != nil {
			t.Fatal(err)
		}
		for _, text := range [][]byte{text, text[:len(text)/2], nil} { // whole, torn, empty
			r, err := l.Check(t.Context(), f.Name(), text)
			if err != nil {
				t.Fatal(err)
			}
			results = append(results, r)
		}
	}
	return results
}

// validated writes a run and holds it against the published schema.
func validated(t *testing.T, run report.Run) (string, Report) {
	t.Helper()
	var b bytes.Buffer
	if err := Write(&b, run); err != nil {
		t.Fatal(err)
	}
	var generic any
	if err := json.Unmarshal(b.Bytes(), &generic); err != nil {
		t.Fatal(err)
	}
	if err := schemaOf(t).Validate(generic); err != nil {
		t.Errorf("%#v", err)
	}
	var back Report
	if err := json.Unmarshal(b.Bytes(), &back); err != nil {
		t.Fatal(err)
	}
	return b.String(), back
}

func TestRealReportsMeetTheSchema(t *testing.T) {
	results := append(examples(t), lint.Unreadable("gone", errors.New("permission denied")))
	states := map[lint.State]bool{}
	for _, r := range results {
		states[r.State] = true
		text, _ := validated(t, report.Run{Results: []*lint.Result{r}, FailOn: finding.Note})
		if strings.Contains(text, "null") {
			t.Errorf("%s: a list is null", r.File)
		}
	}
	if len(states) != 3 {
		t.Errorf("only states %v were tried", states)
	}
	text, _ := validated(t, report.Run{Failures: []string{"a rule"}})
	if strings.Contains(text, "null") || !strings.Contains(text, `"plans": []`) {
		t.Error(text)
	}
}

// TestEverythingArrives compares the report, read back, with the results.
func TestEverythingArrives(t *testing.T) {
	run := report.Run{Results: examples(t), Failures: []string{"one", "two"}, FailOn: finding.Warning}
	_, got := validated(t, run)
	if got.FailOn != "warning" || got.Exit.Code != int(report.Unchecked) || !slices.Equal(got.Failures, run.Failures) || got.Caution != report.Caution {
		t.Errorf("head: %+v", got)
	}
	if got.Summary.Plans != len(run.Results) || got.Summary.Errors != run.Count().Errors {
		t.Errorf("summary: %+v", got.Summary)
	}
	for i, r := range run.Results {
		p := got.Plans[i]
		if p.File != r.File || p.State != string(r.State) || len(p.Findings) != len(r.Findings) || len(p.Checked) != len(r.Checked) {
			t.Errorf("%s: %+v", r.File, p)
		}
		for k, f := range r.Findings {
			g := p.Findings[k]
			if g.Rule != f.Rule || g.Key != f.Key || g.Message != f.Message || len(g.Related) != len(f.Related) || len(g.Citations) != len(f.Citations) {
				t.Errorf("%+v arrives as %+v", f, g)
			}
			if f.Measured != nil && *g.Measured.Value != f.Measured.Value || f.Remedy != "" && *g.Remedy != f.Remedy {
				t.Errorf("%+v arrives as %+v", f, g)
			}
			if (g.Place.Range == nil) != f.Place.Range.IsZero() || g.Place.Range != nil && (source.Range{From: source.Position(g.Place.Range.From), To: source.Position(g.Place.Range.To)}) != f.Place.Range {
				t.Errorf("%+v arrives at %+v", f.Place, g.Place)
			}
		}
		for k, c := range r.Checked {
			g := p.Checked[k]
			if !slices.Equal(g.Met, c.Met) || !slices.Equal(g.Broken, c.Broken) || len(g.NotJudged) != len(c.NotJudged) {
				t.Errorf("%+v arrives as %+v", c, g)
			}
		}
	}
}

// TestEnumsAreComplete fails when a value is added that the schema lacks.
func TestEnumsAreComplete(t *testing.T) {
	for _, stage := range policy.Stages() {
		for _, s := range finding.Severities() {
			for _, b := range []finding.Basis{finding.Read, finding.Memory, finding.Practice, finding.Company, finding.Format} {
				f := finding.Finding{Severity: s, Citations: []finding.Citation{{Document: "d", Basis: b}}}
				validated(t, report.Run{FailOn: s, Results: []*lint.Result{{State: lint.Judged, Stage: stage, Findings: []finding.Finding{f}}}})
			}
		}
	}
}

func TestNumbersThatJSONLacks(t *testing.T) {
	f := finding.Finding{Severity: finding.Error, Measured: &finding.Figure{Field: "x_m", Value: math.Inf(1), Text: "no bound"}, Limit: &finding.Figure{Field: "y_m", Value: 0, Text: "0 m"}}
	_, got := validated(t, report.Run{Results: []*lint.Result{{State: lint.Judged, Findings: []finding.Finding{f}}}})
	g := got.Plans[0].Findings[0]
	if g.Measured.Value != nil || g.Measured.Text != "no bound" || g.Limit.Value == nil || *g.Limit.Value != 0 {
		t.Errorf("%+v %+v", g.Measured, g.Limit)
	}
}

func TestNoResultIsAnError(t *testing.T) {
	var b bytes.Buffer
	if err := Write(&b, report.Run{Results: []*lint.Result{nil}}); err == nil || b.Len() > 0 {
		t.Errorf("%v, %q", err, b.String())
	}
}

// TestHostileText lets no character act on a terminal, and loses none.
func TestHostileText(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.String().Draw(t, "text") + "\x1b\u009b\u202e\U000e0041"
		var b bytes.Buffer
		if err := Write(&b, report.Run{Results: []*lint.Result{{File: text, State: lint.NotValid}}, Failures: []string{text}}); err != nil {
			t.Fatal(err)
		}
		for _, r := range b.String() {
			if r != '\n' && report.Hidden(r) {
				t.Fatalf("%U is written as it is", r)
			}
		}
		var back Report
		if err := json.Unmarshal(b.Bytes(), &back); err != nil {
			t.Fatal(err)
		}
		if back.Failures[0] != text || back.Plans[0].File != text {
			t.Fatalf("%q arrives as %q", text, back.Failures[0])
		}
	})
}

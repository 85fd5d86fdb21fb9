package compare_test

import (
	"bytes"
	"encoding/json"
	"io"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/yuin/goldmark"

	"liftlint/internal/compare"
	"liftlint/internal/finding"
	"liftlint/internal/report/markdown"
	"liftlint/internal/report/reporttest"
)

func written(t *testing.T, write func(io.Writer, compare.Comparison) error, c compare.Comparison) string {
	t.Helper()
	var b bytes.Buffer
	if err := write(&b, c); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

// TestGoldens shows a review of each kind of change.
func TestGoldens(t *testing.T) {
	f := finding.Finding{Rule: "a/b", Title: "Leg too flat", Key: "leg/hook/1", Message: "leg hook/1 is flat", Severity: finding.Error,
		Measured: &finding.Figure{Field: "angle_deg", Value: 29}, Limit: &finding.Figure{Field: "least_deg", Value: 30}}
	worse, other := f, f
	worse.Measured = &finding.Figure{Field: "angle_deg", Value: 28}
	other.Key, other.Severity = "leg/hook/2", finding.Warning
	third := other
	third.Key = "leg/hook/3"
	c := compared(compare.Pair{Old: handMade(f), New: handMade(worse, other, third)}, compare.Pair{New: handMade(f)}, compare.Pair{Old: handMade(f)}, compare.Pair{Old: handMade(f), New: handMade(f)})
	was, is := "2.5 m", "4.6 m"
	c.Plans[0].Figures = []compare.Figure{{Of: "leg hook/1 to A", What: "length", Field: "length_m", OldText: was, NewText: is}, {Of: "load", What: "how it hangs", OldText: "steady", NewText: "overturns"}}
	c.Plans[0].Gear = []compare.Gear{{ID: "ML1", Kind: "master_link", Change: "added"}, {ID: "S1", Kind: "wire_rope_sling", Change: "changed", Fields: []compare.Word{{What: "length", Old: &was, New: &is}}}}
	c.Plans[0].Written = []compare.Word{{What: "load / freed", New: &is}, {What: "load / size", Old: &was}}
	c.Plans[0].Unjudged = []compare.Subject{
		{Rule: "a/c", Title: "Sling worn", Severity: "error", Change: "not_judged", Key: "x", Why: []string{"the length is not given"}},
		{Rule: "a/c", Title: "Sling worn", Severity: "error", Change: "not_judged", Key: "y", Why: []string{"the length is not given"}},
		{Rule: "a/d", Title: "Tag gone", Severity: "note", Change: "not_looked_for", Key: "x", Why: []string{"switched off by liftlint.yaml: kits"}},
	}
	c.Plans[0].Judged = []compare.Ruling{{What: "profile", Old: &was, New: &is}}
	c.Failures = []string{"plans/b.lift.yaml: stopped"}
	text := written(t, compare.WriteText, c)
	reporttest.NeverSaysSafe(t, text)
	reporttest.Golden(t, "all.txt", text)
	reporttest.Golden(t, "all.md", written(t, compare.WriteMarkdown, c))
}

// TestHostile: nothing that stands in a plan acts on a terminal or in Markdown.
func TestHostile(t *testing.T) {
	const bad = "\x1b[31m<img src=x onerror=y>[a](javascript:x)\u202e|**b**\n# c @all"
	f := finding.Finding{Rule: bad, Title: bad, Key: bad, Message: bad, Severity: finding.Error}
	s := handMade(f)
	s.Name, s.Result.Title = bad, bad
	c := compared(compare.Pair{Old: handMade(), New: s})
	c.Old, c.Failures = bad, []string{bad}
	c.Plans[0].Figures = []compare.Figure{{Of: bad, What: bad, OldText: bad, NewText: bad}}
	c.Plans[0].Gear = []compare.Gear{{ID: bad, Kind: bad, Change: "added"}}
	text := bad
	c.Plans[0].Written = []compare.Word{{What: bad, Old: &text}}
	for _, out := range []string{written(t, compare.WriteText, c), written(t, compare.WriteMarkdown, c), written(t, compare.WriteJSON, c)} {
		if strings.ContainsAny(out, "\x1b\u202e") {
			t.Errorf("%q acts on a terminal", out)
		}
	}
	var html bytes.Buffer
	if err := goldmark.Convert([]byte(written(t, compare.WriteMarkdown, c)), &html); err != nil {
		t.Fatal(err)
	}
	for _, act := range []string{"<img", "<a ", "<strong>b", "<h1"} {
		if strings.Contains(html.String(), act) {
			t.Errorf("%s acts:\n%s", act, html.String())
		}
	}
}

// TestFits: a comment has a length; what does not fit in is counted.
func TestFits(t *testing.T) {
	var pairs []compare.Pair
	for range 400 {
		pairs = append(pairs, compare.Pair{Old: handMade(), New: handMade(finding.Finding{Rule: "a/b", Key: "k", Message: strings.Repeat("long ", 100), Severity: finding.Error})})
	}
	out := written(t, compare.WriteMarkdown, compared(pairs...))
	if len(out) > markdown.Comment || !strings.Contains(out, "plans more do not fit") || !strings.Contains(out, "Caution") {
		t.Errorf("%d bytes: %s", len(out), out[len(out)-500:])
	}
}

// TestJSONReadsBack: the document holds what was compared.
func TestJSONReadsBack(t *testing.T) {
	c := compared(compare.Pair{Old: side(t, example(t, "filter-vessel")), New: side(t, example(t, "filter-vessel-reviewed"))})
	var got compare.Comparison
	if err := json.Unmarshal([]byte(written(t, compare.WriteJSON, c)), &got); err != nil {
		t.Fatal(err)
	}
	if d := cmp.Diff(c.Plans[0].Findings, got.Plans[0].Findings); d != "" || got.Exit != c.Exit {
		t.Error(d)
	}
}

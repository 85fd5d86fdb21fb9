package junit

import (
	"encoding/xml"
	"errors"
	"io"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/report"
	"liftlint/internal/report/reporttest"
)

const root = "../../.."

// node is any element: a reader that knows nothing of what was meant to be
// written.
type node struct {
	XMLName  xml.Name
	Attrs    []xml.Attr `xml:",any,attr"`
	Text     string     `xml:",chardata"`
	Children []node     `xml:",any"`
}

func (n node) attr(name string) string {
	for _, a := range n.Attrs {
		if a.Name.Local == name {
			return a.Value
		}
	}
	return ""
}

// all are the elements of a name at any depth.
func (n node) all(name string) []node {
	var list []node
	for _, c := range n.Children {
		if c.XMLName.Local == name {
			list = append(list, c)
		}
		list = append(list, c.all(name)...)
	}
	return list
}

type fataler interface{ Fatalf(string, ...any) }

// read writes a run and reads it back strictly.
func read(t fataler, run report.Run) (string, node) {
	var b strings.Builder
	if err := Write(&b, run); err != nil {
		t.Fatalf("%v", err)
	}
	var n node
	d := xml.NewDecoder(strings.NewReader(b.String()))
	if err := d.Decode(&n); err != nil {
		t.Fatalf("%v in\n%s", err, b.String())
	}
	if _, err := d.Token(); !errors.Is(err, io.EOF) && err != nil {
		t.Fatalf("%v behind the report", err)
	}
	if n.XMLName.Local != "testsuites" {
		t.Fatalf("the root is %s", n.XMLName.Local)
	}
	return b.String(), n
}

func TestGolden(t *testing.T) {
	got, _ := read(t, reporttest.Everything(t))
	reporttest.Golden(t, "everything.xml", got)
	reporttest.NeverSaysSafe(t, got)
}

// count compares the sums of an element with what is in it.
func count(t *testing.T, n node) {
	t.Helper()
	for attr, name := range map[string]string{"tests": "testcase", "failures": "failure", "errors": "error", "skipped": "skipped"} {
		if got, want := n.attr(attr), len(n.all(name)); got != strconv.Itoa(want) {
			t.Errorf("%s: %s=%s, and there are %d", n.attr("name"), attr, got, want)
		}
	}
}

// TestExamples reads the report of all examples back: every rule is a case, and
// every finding stands in it with its source.
func TestExamples(t *testing.T) {
	results := reporttest.Examples(t, root)
	_, n := read(t, report.Run{Results: results})
	suites := n.all("testsuite")
	if len(suites) != len(results) {
		t.Fatalf("%d suites for %d plans", len(suites), len(results))
	}
	count(t, n)
	for i, x := range results {
		s := suites[i]
		count(t, s)
		cases := map[string]node{}
		for _, c := range s.all("testcase") {
			rule, _, _ := strings.Cut(c.attr("name"), ": ")
			if _, ok := cases[rule]; ok {
				t.Errorf("%s: %s stands twice", x.File, rule)
			}
			cases[rule] = c
		}
		for _, k := range x.Checked {
			c, ok := cases[k.Rule]
			if !ok {
				t.Errorf("%s: no case for %s", x.File, k.Rule)
			}
			fine := len(c.all("failure"))+len(c.all("skipped")) == 0
			if fine && (len(k.NotJudged) > 0 || len(k.Met) == 0 && len(k.Broken) == 0) {
				t.Errorf("%s: %s reads as met", x.File, k.Rule)
			}
		}
		for _, f := range x.Findings {
			text := inside(cases[f.Rule])
			for _, want := range []string{report.Place(f.Place), report.Sentence(f.Message), f.Remedy, report.Sources(f.Citations)} {
				if !strings.Contains(text, want) {
					t.Errorf("%s: %s does not tell %q", x.File, f.Rule, want)
				}
			}
		}
	}
}

func inside(n node) string {
	text := n.Text
	for _, c := range n.Children {
		text += inside(c)
	}
	return text
}

// TestFailsAsTheRunDoes: a build that goes by the report stops where one that
// goes by the exit code does.
func TestFailsAsTheRunDoes(t *testing.T) {
	of := func(state lint.State, severity ...finding.Severity) *lint.Result {
		x := &lint.Result{File: "a", State: state}
		if state == lint.Judged {
			x.Checked = []lint.Checked{{Rule: "a/met", Met: []string{"k"}}}
		}
		for _, s := range severity {
			x.Findings = append(x.Findings, finding.Finding{Rule: "a/b", Severity: s})
		}
		return x
	}
	results := []*lint.Result{nil, of(lint.Judged), of(lint.Judged, finding.Note), of(lint.Judged, finding.Note, finding.Warning), of(lint.Judged, finding.Error), of(lint.Judged, "odd"),
		of(lint.NotValid), of(lint.NotValid, finding.Note), of(lint.Unread), of(lint.Unread, finding.Error), of(lint.Unread, finding.Note), of("odd"), {File: "b", State: lint.Judged}}
	rapid.Check(t, func(t *rapid.T) {
		run := report.Run{
			Results:  rapid.SliceOfN(rapid.SampledFrom(results), 0, 3).Draw(t, "results"),
			FailOn:   rapid.SampledFrom([]finding.Severity{"", finding.Error, finding.Warning, finding.Note}).Draw(t, "fail on"),
			Failures: rapid.SampledFrom([][]string{nil, nil, {"a rule"}}).Draw(t, "failures"),
		}
		text, n := read(t, run)
		fails := n.attr("failures") != "0" || n.attr("errors") != "0"
		if fails != (run.Exit() != report.Clean) {
			t.Fatalf("exit code %d:\n%s", run.Exit(), text)
		}
		if (n.attr("errors") != "0") != (run.Exit() == report.Unchecked || run.Exit() == report.Nothing) {
			t.Fatalf("exit code %d:\n%s", run.Exit(), text)
		}
	})
}

// TestHostileText: whatever stands in a plan, the report can be read, has the
// cases it should have, and nothing in it acts.
func TestHostileText(t *testing.T) {
	real := reporttest.Judge(t, "a", "liftlint: 1\n")
	rapid.Check(t, func(t *rapid.T) {
		run := reporttest.HostileRun(t, real)
		text, n := read(t, run)
		for _, r := range text {
			if r != '\n' && report.Hidden(r) {
				t.Fatalf("%U is written as it is", r)
			}
		}
		suites := n.all("testsuite")
		s := suites[len(suites)-1]
		if s.attr("name") != report.Visible(run.Results[0].File) {
			t.Fatalf("%q arrives as %q", run.Results[0].File, s.attr("name"))
		}
		said := inside(s)
		for _, f := range run.Results[0].Findings {
			if !strings.Contains(said, report.Visible(f.Message[min(1, len(f.Message)):])) && f.Message != "" && f.Message[0] < 0x80 {
				t.Fatalf("%q is lost in\n%s", f.Message, said)
			}
		}
	})
}

func TestWriterFails(t *testing.T) {
	r, w := io.Pipe()
	r.Close()
	if err := Write(w, report.Run{}); !errors.Is(err, io.ErrClosedPipe) {
		t.Errorf("got %v", err)
	}
}

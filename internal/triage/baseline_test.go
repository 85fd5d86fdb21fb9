package triage

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"liftlint/internal/finding"
	"liftlint/internal/quantity"
)

// taken is the baseline of one plan with these findings.
func taken(fs []finding.Finding) (*Baseline, KnownPlan) {
	p := KnownPlan{File: "p", Profile: "us"}
	Run(slices.Clone(fs), Record(&p, plain()))
	return &Baseline{Version: BaselineVersion, Stage: "review", File: "known.json", Plans: []KnownPlan{p}}, p
}

// drawFindings has one finding at most of each rule and subject, as rules do.
func drawFindings(t *rapid.T) []finding.Finding {
	var fs []finding.Finding
	seen := map[string]bool{}
	for i := range rapid.IntRange(0, 8).Draw(t, "findings") {
		f := drawFinding(t, i)
		if !seen[f.Rule+f.Key] {
			seen[f.Rule+f.Key] = true
			fs = append(fs, f)
		}
	}
	return fs
}

func again(t interface {
	Helper()
	Fatal(...any)
}, b *Baseline) (*Baseline, []byte) {
	t.Helper()
	text, err := b.Text()
	if err != nil {
		t.Fatal(err)
	}
	read, err := ReadBaseline(b.File, text)
	if err != nil {
		t.Fatal(err)
	}
	return read, text
}

// TestWhatIsKnownIsSetAside: after a baseline is written and read, the same plan
// has nothing that counts but what nobody may accept, and nothing is dropped.
func TestWhatIsKnownIsSetAside(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		fs := drawFindings(t)
		b, _ := taken(fs)
		b, _ = again(t, b)
		out := Run(slices.Clone(fs), Known(b, "p", plain()))
		if len(out) != len(fs) {
			t.Fatalf("%d of %d: %v", len(out), len(fs), out)
		}
		for _, f := range out {
			if may := f.Rule == "a/graded" || f.Rule == "a/plain"; may != (f.Aside != nil) {
				t.Fatalf("%+v", f)
			}
		}
		for _, f := range Run(slices.Clone(fs), Known(b, "other", plain())) {
			if f.Aside != nil {
				t.Fatalf("%+v is set aside in another plan", f)
			}
		}
	})
}

// TestSameBytes whatever the order of the findings, and after reading.
func TestSameBytes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		fs := drawFindings(t)
		one, _ := taken(fs)
		slices.Reverse(fs)
		other, _ := taken(fs)
		_, want := again(t, one)
		read, got := again(t, other)
		if d := cmp.Diff(string(want), string(got)); d != "" {
			t.Fatal(d)
		}
		if _, got = again(t, read); string(got) != string(want) {
			t.Fatal("it changes by being read")
		}
	})
	b, _ := taken([]finding.Finding{{Rule: "a/plain", Key: "k1", Severity: finding.Error, Measured: figure(20), Limit: figure(30)}, {Rule: "a/graded", Key: "k2", Grade: "bad", Severity: finding.Note}})
	_, text := again(t, b)
	meetsSchema(t, text)
}

// TestWorseThanKnownCounts where a reader of the figures would see it.
func TestWorseThanKnownCounts(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		way := rapid.SampledFrom([]float64{1, -1}).Draw(t, "way")
		value := func(name string) float64 { return 40 + way*rapid.Float64Range(1, 20).Draw(t, name) }
		draw := func(when string) finding.Finding {
			return finding.Finding{Rule: "a/graded", Key: "k1", Grade: rapid.SampledFrom([]string{"bad", "less"}).Draw(t, "grade "+when),
				Severity: rapid.SampledFrom(finding.Severities()).Draw(t, "severity "+when),
				Measured: figure(value("measured " + when)), Limit: figure(40 - way*rapid.SampledFrom([]float64{0, 0.3}).Draw(t, "limit "+when))}
		}
		then, now := draw("then"), draw("now")
		worse := !then.Severity.AtLeast(now.Severity) || now.Grade == "bad" && then.Grade == "less" ||
			now.Grade == then.Grade && (way*(now.Measured.Value-then.Measured.Value) > 0.05 && now.Measured.Text != then.Measured.Text || way*(then.Limit.Value-now.Limit.Value) > 0)
		b, _ := taken([]finding.Finding{then})
		out := Run([]finding.Finding{now}, Known(b, "p", plain()))
		aside := slices.ContainsFunc(out, func(f finding.Finding) bool { return f.Aside != nil })
		said := slices.ContainsFunc(out, func(f finding.Finding) bool { return f.Rule == baselineNotHeld })
		if aside == worse || said != worse {
			t.Fatalf("worse %v, set aside %v, said %v: %v", worse, aside, said, out)
		}
	})
}

// TestNearlyAsKnown: a figure that differs by less than is printed is known, however
// many digits there are behind it, and the next that is printed is not.
func TestNearlyAsKnown(t *testing.T) {
	of := func(field string, v float64, units quantity.System) *finding.Figure {
		text, _ := quantity.FormatSuffix(field, v, units)
		return &finding.Figure{Field: field, Value: v, Text: text}
	}
	for _, x := range []struct {
		field         string
		limit, was    float64
		near, further float64
		units         quantity.System
	}{
		{"angle_deg", 30, 29.1903577, 29.1903576, 29.13, quantity.Metric},
		{"angle_deg", 30, 29.1903577, 29.151, 29.04, quantity.Metric}, // 29 deg: fewer digits are no wider
		{"use_ratio", 1, 1.0424, 1.0428, 1.06, quantity.Metric},
		{"pull_n", 50000, 52500, 52510, 52800, quantity.Metric},
		{"length_m", 1, 1.5, 1.50001, 1.6, quantity.US},
	} {
		found := func(v float64) finding.Finding {
			return finding.Finding{Rule: "a/plain", Key: "k1", Severity: finding.Error, Measured: of(x.field, v, x.units), Limit: of(x.field, x.limit, x.units)}
		}
		c := plain()
		c.Print = func(field string, v float64) string { return of(field, v, x.units).Text }
		b, _ := taken([]finding.Finding{found(x.was)})
		b, _ = again(t, b)
		for v, known := range map[float64]bool{x.was: true, x.near: true, x.further: false} {
			out := Run([]finding.Finding{found(v)}, Known(b, "p", c))
			aside := slices.ContainsFunc(out, func(f finding.Finding) bool { return f.Aside != nil })
			if aside != known {
				t.Errorf("%s: %v (%s), %v (%s) was accepted: known %v", x.field, v, found(v).Measured.Text, x.was, found(x.was).Measured.Text, aside)
			}
		}
	}
}

// TestGone: an entry that no longer occurs is told of at its line.
func TestGone(t *testing.T) {
	b, _ := taken([]finding.Finding{{Rule: "a/plain", Key: "k1", Severity: finding.Error}, {Rule: "a/plain", Key: "k2", Severity: finding.Error}})
	b, text := again(t, b)
	out := Run(nil, Known(b, "p", plain()))
	if len(out) != 2 {
		t.Fatalf("%v", out)
	}
	for i, f := range out {
		line := strings.Split(string(text), "\n")[f.Place.Range.From.Line-1]
		if f.Rule != baselineGone || f.Severity != finding.Note || f.Place.File != "known.json" || !strings.Contains(line, fmt.Sprintf(`"key":"k%d"`, i+1)) {
			t.Errorf("%+v at %s", f, line)
		}
	}
}

// TestFormerIDInBaseline: entries by an id that the rule had before hold.
func TestFormerIDInBaseline(t *testing.T) {
	b := &Baseline{Stage: "review", File: "known.json", Plans: []KnownPlan{{File: "p", Profile: "us", Findings: []KnownFinding{
		{Rule: "a/once", Key: "k1", Severity: "error", Grade: ptr("bad"), Fingerprint: finding.Fingerprint("p", "a/once", "k1", 0)}}}}}
	out := Run([]finding.Finding{{Rule: "a/graded", Key: "k1", Grade: "bad", Severity: finding.Error}}, Known(b, "p", plain()))
	if len(out) != 2 || !slices.ContainsFunc(out, func(f finding.Finding) bool { return f.Aside != nil }) || !slices.ContainsFunc(out, func(f finding.Finding) bool { return f.Rule == baselineFormer }) {
		t.Errorf("%v", out)
	}
}

func ptr[T any](v T) *T { return &v }

// TestWaivedIsNotTaken down: a waiver that lapses is not to be covered.
func TestWaivedIsNotTaken(t *testing.T) {
	p := KnownPlan{File: "p", Profile: "us"}
	f := finding.Finding{Rule: "a/plain", Key: "k1", Aside: &finding.Aside{Means: finding.ByWaiver}}
	Run([]finding.Finding{f}, Record(&p, plain()))
	if len(p.Findings) != 0 {
		t.Errorf("%v", p.Findings)
	}
}

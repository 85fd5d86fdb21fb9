package sarif

import (
	"encoding/json"
	"regexp"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"liftlint/internal/report"
	"liftlint/internal/report/reporttest"
)

// TestHostileText: whatever stands in a plan, the report is valid, is the same
// each time, and nothing in its messages links or acts.
func TestHostileText(t *testing.T) {
	real := reporttest.Judge(t, "a", reporttest.Example(t, root, "pump-skid.lift.yaml"))
	s := schema(t)
	rapid.Check(t, func(t *rapid.T) {
		r := reporttest.HostileRun(t, real).RelativeTo(report.Paths{})
		var b, again strings.Builder
		o := Options{Evidence: rapid.Bool().Draw(t, "evidence")}
		if err := Write(&b, r, o); err != nil {
			t.Fatal(err)
		}
		if err := Write(&again, r, o); err != nil || again.String() != b.String() {
			t.Fatalf("written again it differs: %v", err)
		}
		var generic any
		if err := json.Unmarshal([]byte(b.String()), &generic); err != nil {
			t.Fatal(err)
		}
		if err := s.Validate(generic); err != nil {
			t.Fatalf("%#v", err)
		}
		for _, c := range b.String() {
			if c != '\n' && report.Hidden(c) {
				t.Fatalf("%U is written as it is", c)
			}
		}
		var d document
		if err := json.Unmarshal([]byte(b.String()), &d); err != nil {
			t.Fatal(err)
		}
		for _, res := range d.Runs[0].Results {
			if acts.MatchString(res.Message.Text) || report.Visible(res.Message.Text) != res.Message.Text {
				t.Fatalf("%q would act", res.Message.Text)
			}
		}
	})
}

// acts finds what readers take for a link or a placeholder.
var acts = regexp.MustCompile(`(^|[^\\])\]\(|(^|[^{])\{\d+\}([^}]|$)`)

package text

import (
	"context"
	"os"
	"strings"
	"testing"

	"liftlint/internal/lint"
	"liftlint/internal/report"
)

// TestHowItHangs: a plan without findings still shows its decisive figures,
// and a load that turns over shows none of its legs'.
func TestHowItHangs(t *testing.T) {
	source, err := os.ReadFile("../../../examples/pump-skid.lift.yaml")
	if err != nil {
		t.Fatal(err)
	}
	l, err := lint.New(lint.Options{Stage: "review"})
	if err != nil {
		t.Fatal(err)
	}
	print := func(text string) string {
		r, err := l.Check(context.Background(), "plan", []byte(text))
		if err != nil {
			t.Fatal(err)
		}
		return written(t, report.Run{Results: []*lint.Result{r}}, Options{})
	}
	got := print(string(source))
	for _, want := range []string{"3 of 4 legs are taken to carry", "computed  design force  worst split  highest utilization\n", "87.3 kN on the hook", "  hook/2  B   65.5 deg         25.1 kN   31.7 kN       48 kN        S2 57.5 %\n"} {
		if !strings.Contains(got, want) {
			t.Errorf("the report does not show %q:\n%s", want, got)
		}
	}
	over := print(strings.Replace(string(source), "z: 1.15 m", "z: 9 m", 1))
	if !strings.Contains(over, "How it hangs: it would turn over") || strings.Contains(over, "design force") {
		t.Errorf("a load that turns over:\n%s", over)
	}
	unrated := print(strings.Replace(string(source), "rated_load: 5.65 t, ", "", 1))
	if !strings.Contains(unrated, "not known\n") {
		t.Errorf("a leg with a part of unknown rating:\n%s", unrated)
	}
}

package policy_test

import (
	"context"
	"errors"
	"strings"
	"testing"
	"time"

	"liftlint/internal/policy"
)

// endless goes through 20^8 combinations for each leg.
const endless = `# METADATA
# title: Endless
# description: Never done.
# custom:
#   severity: error
#   over: legs
#   message: "leg {id}"
#   cite: [{document: common practice, basis: practice}]
package liftlint.rules.angle.endless

finding contains leg.key if {
	some leg in input.legs
	count([1 | some a in LIST; some b in LIST; some c in LIST; some d in LIST; some e in LIST; some f in LIST; some g in LIST; some h in LIST; a + b + c + d + e + f + g + h < 0]) > 0
}
`

const quick = `# METADATA
# title: Quick
# description: Done at once.
# custom:
#   severity: error
#   over: legs
#   message: "leg {id}"
#   cite: [{document: common practice, basis: practice}]
package liftlint.rules.angle.quick

finding contains leg.key if {
	some leg in input.legs
	leg.slack == true
}
`

func slowPack(t *testing.T) *policy.Pack {
	t.Helper()
	text := strings.ReplaceAll(endless, "LIST", "[1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20]")
	p, err := policy.Load(context.Background(), policy.Options{
		Sources:  folder(map[string]string{"angle/endless/rule.rego": text, "angle/quick/rule.rego": quick}),
		Deadline: 100 * time.Millisecond,
	})
	if err != nil {
		t.Fatal(err)
	}
	return p
}

func TestARuleThatTakesTooLongIsNamed(t *testing.T) {
	for how, p := range map[string]*policy.Pack{"together": slowPack(t), "one by one": slowPack(t).AskedApart()} {
		start := time.Now()
		v, err := p.Judge(context.Background(), level())
		if v != nil || !errors.Is(err, policy.ErrDeadline) {
			t.Fatalf("%s: %v, %v", how, v, err)
		}
		want := "rule angle/endless (angle/endless/rule.rego): took too long: stopped after 100ms"
		if err.Error() != want {
			t.Errorf("%s: got %q\nwant %q", how, err, want)
		}
		if took := time.Since(start); took > 5*time.Second {
			t.Errorf("%s: took %v", how, took)
		}
	}
}

// The end of the caller's own context is no rule's fault.
func TestTheCallersEndIsToldApart(t *testing.T) {
	ctx, cancel := context.WithTimeout(context.Background(), 20*time.Millisecond)
	defer cancel()
	if _, err := slowPack(t).Judge(ctx, level()); !errors.Is(err, context.DeadlineExceeded) || errors.Is(err, policy.ErrDeadline) {
		t.Errorf("got %v", err)
	}
	done, stop := context.WithCancel(context.Background())
	stop()
	for _, p := range []*policy.Pack{slowPack(t), slowPack(t).AskedApart()} {
		if _, err := p.Judge(done, level()); !errors.Is(err, context.Canceled) {
			t.Errorf("got %v", err)
		}
	}
}

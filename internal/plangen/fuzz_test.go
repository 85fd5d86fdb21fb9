package plangen_test

import (
	"context"
	"slices"
	"strings"
	"testing"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/plangen"
)

// generated is a plan of one of the sorts.
func generated(seed uint64, sort uint8) string {
	switch sort % 6 {
	case 0:
		return plangen.Valid(seed)
	case 1:
		return plangen.Draft(seed)
	case 2:
		return plangen.Arranged(seed)
	case 3:
		return plangen.ArrangedDraft(seed)
	case 4:
		return plangen.ArrangedFault(seed).Text
	}
	return plangen.Fault(seed).Text
}

// FuzzCheck puts bytes in place of a piece of a generated plan. Whatever comes
// of it, nothing panics, no rule fails, a plan that can't be understood fails,
// and one that is judged is judged by every rule.
func FuzzCheck(f *testing.F) {
	l := linter(f)
	rules, err := l.Rules(lint.DefaultProfile)
	if err != nil || len(rules) == 0 {
		f.Fatal(len(rules), err)
	}
	for i, put := range []string{"", "\n", "{", "0 m", "1e308 t", "-0.0001 in", "\x00", "é", "- &a", "99999999999 deg"} {
		f.Add(uint64(i), uint8(i), uint16(97*i), uint16(i), []byte(put))
	}
	f.Fuzz(func(t *testing.T, seed uint64, sort uint8, at, cut uint16, put []byte) {
		text := []byte(generated(seed, sort))
		from := int(at) % (len(text) + 1)
		to := min(from+int(cut%64), len(text))
		text = slices.Concat(text[:from], put, text[to:])
		r, err := l.Check(context.Background(), "plan.lift.yaml", text)
		if err != nil {
			t.Fatal(err)
		}
		sound(t, r, len(rules), 1+strings.Count(string(text), "\n")+strings.Count(string(text), "\r"))
	})
}

func sound(t *testing.T, r *lint.Result, rules, lines int) {
	t.Helper()
	switch r.State {
	case lint.Judged:
		if len(r.Checked) != rules {
			t.Fatalf("%d rules looked at it, of %d", len(r.Checked), rules)
		}
		accounted(t, 0, r)
	case lint.NotValid:
		if finding.Worst(r.Findings) != finding.Error || len(r.Checked) > 0 {
			t.Fatalf("not valid, and %s, %v", told(r), r.Checked)
		}
	default:
		t.Fatalf("state %q", r.State)
	}
	for _, x := range r.Findings {
		if from := x.Place.Range.From; x.Message == "" || from.Line < 1 || from.Line > lines || from.Column < 1 {
			t.Fatalf("%s at %v of %d lines: %q", x.Rule, from, lines, x.Message)
		}
	}
}

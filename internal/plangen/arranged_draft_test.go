package plangen_test

import (
	"reflect"
	"slices"
	"strings"
	"testing"

	"liftlint/internal/facts"
	"liftlint/internal/hang"
	"liftlint/internal/lint"
	"liftlint/internal/plangen"
)

// TestArrangedDrafts: whatever an arrangement says and lacks, it is judged, the same
// each time, and every subject is accounted for.
func TestArrangedDrafts(t *testing.T) {
	t.Parallel()
	l := linter(t)
	for seed := range arrangedSeeds() / 2 {
		text := plangen.ArrangedDraft(seed)
		r := check(t, l, text)
		if r.State != lint.Judged {
			t.Fatalf("seed %d is %s:\n%s\n%s", seed, r.State, told(r), text)
		}
		again := check(t, l, plangen.ArrangedDraft(seed))
		if !reflect.DeepEqual(r.Findings, again.Findings) || !reflect.DeepEqual(r.Checked, again.Checked) {
			t.Errorf("seed %d is judged in two ways", seed)
		}
		accounted(t, seed, r)
	}
}

// TestDraftsHangOrSayWhy: an arrangement hangs steady with figures of every leg, or it
// has none and says why: what is missing, what is wrong at which place, or that it
// turns over.
func TestDraftsHangOrSayWhy(t *testing.T) {
	t.Parallel()
	v := validator(t)
	seen := map[string]int{}
	for seed := range arrangedSeeds() {
		text := plangen.ArrangedDraft(seed)
		p := decoded(t, v, text)
		l := hang.Of(p)
		switch {
		case l.Steady():
			seen["steady"]++
		case len(l.Needs) > 0:
			seen["waits"]++
		case len(l.Troubles) > 0:
			seen["can't be"]++
		case l.Reason != "":
			seen["turns over"]++
		default:
			t.Errorf("seed %d, %s: no figures, and nothing says why\n%s", seed, plangen.ArrangementOf(seed), text)
		}
		f, _ := computed(t, v, text)
		noFigureWithoutRest(t, seed, l, f)
	}
	for _, what := range []string{"steady", "waits", "can't be", "turns over"} {
		if seen[what] < 3 {
			t.Errorf("drafts hardly ever show %q: %v", what, seen)
		}
	}
}

// noFigureWithoutRest: where the load is not known to hang steady, no leg has a force
// and none of its parts is used by so much; where it is, every leg that carries has one.
func noFigureWithoutRest(t *testing.T, seed uint64, l *hang.Lift, f *facts.Facts) {
	t.Helper()
	for i, leg := range f.Document.Legs {
		carries := l.Steady() && slices.ContainsFunc(l.Positions, func(p hang.Position) bool { return p.InUse(i) })
		if carries != (leg.TensionN != nil) {
			t.Errorf("seed %d, %s: leg %s carries: %v, and a force is given: %v", seed, plangen.ArrangementOf(seed), leg.ID, carries, leg.TensionN != nil)
		}
	}
	for _, part := range f.Document.Parts {
		inLeg := slices.ContainsFunc(f.Document.Legs, func(leg facts.Leg) bool { return strings.HasPrefix(part.Key, "part/"+leg.ID+"/") })
		if inLeg && part.UsedRatio != nil && !l.Steady() {
			t.Errorf("seed %d, %s: %s is used by %g, though the load does not hang", seed, plangen.ArrangementOf(seed), part.Key, *part.UsedRatio)
		}
	}
}

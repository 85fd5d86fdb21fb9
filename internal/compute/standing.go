package compute

import (
	"fmt"
	"slices"
	"strconv"
	"time"

	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/register"
)

// signs sets, of each sign, the worst on record by the day of the lift that no
// later record takes back: a kink that was seen stays until somebody who can say
// so has looked again, whatever a slighter look has found since.
func (w *work) signs(item gear.Item, r *register.Item, uses int) {
	base := item.Base()
	records := r.InOrder(w.day)
	if !slices.ContainsFunc(records, func(i *register.Inspection) bool { return i.Found != nil }) {
		return
	}
	rope, repaired := ropeMade(item), repairs(records)
	for _, l := range looks() {
		h := history{repaired: repaired}
		key := "sign/" + base.ID + "/" + l.what
		for n, x := range records {
			if x.Found == nil || !l.given(x.Found) {
				continue
			}
			s := facts.Sign{
				Record: facts.Record{Key: key, At: at(inspectionPointer(base, r.Index(x)) + "/found/" + l.what)},
				ID:     base.ID, Kind: string(base.Kind), Rope: rope, Uses: uses,
				What: l.what, Named: l.named, WentBack: "no", Date: x.Date.Format(time.DateOnly),
			}
			l.set(&s, x.Found, w, item)
			h.seen = append(h.seen, sighting{n, x, s})
		}
		if len(h.seen) > 0 && !toldOfByTag(base, l.what) {
			w.out.Document.Signs = append(w.out.Document.Signs, h.standing(!slices.Contains(putRight, l.what)))
		}
	}
}

// toldOfByTag reports the sign of a tag that can't be read where the item itself
// says so.
func toldOfByTag(base *gear.Common, what string) bool {
	return what == "tag_legible" && base.Tag != nil && base.Tag.Condition != gear.Legible
}

// putRight are the signs that somebody may put right without a repair that is
// worth a record. All others stay as they are or become worse.
var putRight = []string{"tag_legible", "latch", "pin_original", "knotted"}

// sighting is what one record says of a sign.
type sighting struct {
	n      int // of the record, the oldest being 0
	record *register.Inspection
	sign   facts.Sign
}

// history is what all records say of a sign, the oldest first.
type history struct {
	repaired []int // numbers of the records that show a repair
	seen     []sighting
}

// repairs lists the records that show that the item was repaired, and found fit.
func repairs(records []*register.Inspection) []int {
	var list []int
	for n, x := range records {
		if x.Kind == register.Repair && x.Vouched() {
			list = append(list, n)
		}
	}
	return list
}

// repairedBetween reports a repair after one record and no later than another.
func (h *history) repairedBetween(after, until int) bool {
	return slices.ContainsFunc(h.repaired, func(n int) bool { return n > after && n <= until })
}

// takesBack reports whether what a later record says stands in the place of what
// an earlier one says: somebody who is named has to have passed the item, looking as
// closely as before or after a repair.
func (h *history) takesBack(later, earlier sighting) bool {
	return later.record.Vouched() && (later.record.Kind.AtLeast(earlier.record.Kind) || h.repairedBetween(earlier.n, later.n))
}

// standing is the worst that is not taken back; of equals the newest.
func (h *history) standing(stays bool) facts.Sign {
	newest := h.seen[len(h.seen)-1]
	worst := newest
	for i := len(h.seen) - 2; i >= 0; i-- {
		s := h.seen[i]
		if amount(s.sign) > amount(worst.sign) && !slices.ContainsFunc(h.seen[i+1:], func(later sighting) bool { return h.takesBack(later, s) }) {
			worst = s
		}
	}
	sign, fit := worst.sign, h.foundFit(worst)
	before := h.worstBefore(fit)
	switch {
	case !stays:
	case h.wentBack(before, fit): // told rather than a later step, which changes nothing of what counts
		sign.WentBack, sign.Back = "counted", back(before, fit)
	case h.wentBack(worst, newest):
		sign.WentBack, sign.Back = "not_counted", back(worst, newest)
	}
	return sign
}

// foundFit is the last time, up to a record, that somebody who is named found the
// item fit; that record itself where there was none.
func (h *history) foundFit(until sighting) sighting {
	for i := len(h.seen) - 1; i >= 0; i-- {
		if s := h.seen[i]; s.n <= until.n && s.record.Vouched() {
			return s
		}
	}
	return until
}

// worstBefore is the worst found since the last time, before the record that counts,
// that somebody who is named found the item fit, that time included.
func (h *history) worstBefore(counts sighting) sighting {
	worst := counts
	for i := len(h.seen) - 1; i >= 0; i-- {
		s := h.seen[i]
		if s.n >= counts.n {
			continue
		}
		if amount(s.sign) > amount(worst.sign) {
			worst = s
		}
		if s.record.Vouched() {
			break
		}
	}
	return worst
}

// How far two measurements of one thing may lie apart: common practice.
const (
	scatterRatio = 0.02
	scatterDeg   = 2
)

// wentBack reports whether a later record says less than an earlier one, by more
// than two measurements differ, and no repair says why.
func (h *history) wentBack(worse, better sighting) bool {
	scatter := 0.0
	switch s := worse.sign; {
	case s.LostRatio != nil || s.GrewRatio != nil:
		scatter = scatterRatio
	case s.TwistDeg != nil:
		scatter = scatterDeg
	}
	return amount(worse.sign)-amount(better.sign) > scatter && !h.repairedBetween(worse.n, better.n)
}

// amount is how bad a sign is, to be compared with the same sign; zero where it
// is not known.
func amount(s facts.Sign) float64 {
	switch {
	case s.Seen != nil && *s.Seen:
		return 1
	case s.Count != nil:
		return *s.Count
	case s.LostRatio != nil:
		return *s.LostRatio
	case s.GrewRatio != nil:
		return *s.GrewRatio
	case s.TwistDeg != nil:
		return *s.TwistDeg
	}
	return 0
}

func back(worse, better sighting) facts.Back {
	return facts.Back{
		WorseDate: worse.sign.Date, Worse: inWords(worse.sign),
		BetterDate: better.sign.Date, Better: inWords(better.sign), Because: whyNot(worse.record, better.record),
	}
}

// whyNot says why what a later record says does not stand in the place of what an
// earlier one says; empty where it does.
func whyNot(earlier, later *register.Inspection) string {
	switch {
	case later.Inspector == "":
		return "names no inspector"
	case later.Outcome == "":
		return "gives no outcome"
	case !later.Vouched():
		return "did not pass it"
	case !later.Kind.AtLeast(earlier.Kind):
		return "is of a " + later.Kind.Words() + ", which goes less far than a " + earlier.Kind.Words()
	}
	return ""
}

// inWords is what a sign comes to, for people.
func inWords(s facts.Sign) string {
	switch {
	case s.Seen != nil && *s.Seen:
		return "yes"
	case s.Seen != nil:
		return "no"
	case s.TwistDeg != nil:
		return strconv.FormatFloat(*s.TwistDeg, 'f', -1, 64) + " deg"
	case s.Count != nil:
		return strconv.FormatFloat(*s.Count, 'f', -1, 64)
	}
	return fmt.Sprintf("%.3g %%", 100*amount(s))
}

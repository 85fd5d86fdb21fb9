package compute

import (
	"fmt"
	"math"
	"slices"

	"liftlint/internal/capacity"
	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/plan"
	"liftlint/internal/quantity"
)

func ratingInput(pointer, owner, field string) facts.Input {
	return input(pointer, field, owner+"'s rated load")
}

func attachmentRating(a *plan.Attachment) facts.Input {
	return ratingInput(a.Pointer, "attachment "+a.ID, "rated_load")
}

// rating is what an item may carry, or why that is not known.
type rating struct {
	ratedN    *float64 // of the item, or of one straight leg of a bridle
	assemblyN *float64 // of all its legs in use together, of a bridle only
	pointer   string   // where the figure stands
	needs     []facts.Input
	reason    facts.Reason
}

// rate sets the rated load from the item's marking, or from its tag.
func (w *work) rate(p *facts.Part, item gear.Item) {
	r := w.ratingOf(item)
	if r.ratedN == nil {
		w.unratedPart(p.Key, r)
		return
	}
	p.MarkedLoadN, p.RatedLoadN = ptr(*r.ratedN), ptr(*r.ratedN)
	w.relate(p.Key, r.pointer, "its rated load")
}

// unratedPart notes what the rated load of a part waits for, or why it has none.
func (w *work) unratedPart(key string, r rating) {
	w.wait(key, r.needs, "marked_load_n", "rated_load_n", "used_ratio")
	if r.reason.Text != "" {
		w.explain(key, r.reason, "marked_load_n", "rated_load_n", "used_ratio")
	}
}

func (w *work) ratingOf(item gear.Item) rating {
	if gear.IsSling(item) {
		return w.oneLegRating(item)
	}
	return marked(item)
}

// marked is what is marked on an item.
func marked(item gear.Item) rating {
	base := item.Base()
	load, field := item.Rating()
	if load == nil {
		return rating{needs: []facts.Input{ratingInput(base.Pointer, base.ID, field)}}
	}
	return rating{ratedN: ptr(load.Newtons), pointer: base.Pointer + "/" + slashed(field)}
}

// oneLegRating is what one straight leg may carry by the sling's own tag, or by
// that of its bridle; by the lower of the two where it has both.
func (w *work) oneLegRating(s gear.Item) rating {
	b := w.bridleOf(s)
	if b != nil && s.Base().Tag == nil {
		return w.bridleRating(b)
	}
	own := marked(s)
	if why := unrated(s); why.Text != "" {
		own = rating{reason: why}
	}
	if b == nil || own.ratedN == nil {
		return own
	}
	if whole := w.bridleRating(b); whole.ratedN == nil || *whole.ratedN < *own.ratedN {
		return whole
	}
	return own
}

// bridleOf is the bridle in use that a sling is part of.
func (w *work) bridleOf(s gear.Item) *gear.Bridle {
	for _, at := range w.plan.Supports {
		if at.Bridle == nil {
			continue
		}
		for _, l := range at.Bridle.Bridle.Legs() {
			if l.Sling == s {
				return at.Bridle.Bridle
			}
		}
	}
	return nil
}

// bridleRating is what the tag of a bridle in use rates one leg for along
// itself, and so many legs as are in use together at the tag's angle; never
// more than the tag says of the whole.
func (w *work) bridleRating(b *gear.Bridle) rating {
	if why := unreadable(b); why.Text != "" {
		return rating{reason: why}
	}
	t := b.Tag
	if why := unclear(b); why.Text != "" {
		return rating{reason: why}
	}
	at, _ := w.supportOf(b)
	legs, used, angle := len(b.Legs()), len(at.Legs), float64(*t.AngleFromHorizontal)
	one, ok := t.RatedLoad.Newtons, true
	if t.RatedFor == gear.RatedForAssembly {
		one, ok = capacity.BridleLegRatedN(t.RatedLoad.Newtons, legs, angle, w.practiceOf(b))
	} else if angle < nearPlumbDeg || angle > 90 {
		ok = false
	}
	if !ok {
		return rating{reason: facts.Reason{Text: fmt.Sprintf("%s's tag rates %s at %g deg from horizontal, from which no leg's rated load follows",
			b.ID, words(string(t.RatedFor)), angle)}}
	}
	r := rating{ratedN: &one, pointer: t.Pointer + "/rated_load"}
	if t.RatedFor == gear.RatedForOneLeg {
		angle = usualBridleAngleDeg(w.practiceOf(b))
	}
	if all, ok := capacity.BridleAssemblyRatedN(one, used, angle, w.practiceOf(b)); ok {
		if t.RatedFor == gear.RatedForAssembly {
			all = min(all, t.RatedLoad.Newtons)
		}
		all = min(all, w.shareOfTag(b, one, used, angle))
		r.assemblyN = &all
	}
	return r
}

// shareUsed is the share of a bridle's tag that is left with legs unused, by the legs
// it has and those used: a third for each leg used of three or four, half for one of
// two (EN 818-6, from memory; by its factors, 1.4 and 2.1, two of four carry two
// thirds too).
func shareUsed(legs, used int) float64 {
	return min(1, float64(used)/float64(min(legs, 3)))
}

// shareOfTag is what a bridle that is rated by band may carry with legs left
// unused. It is no bound where all are used, or where statics rates the legs.
func (w *work) shareOfTag(b *gear.Bridle, oneN float64, used int, angleDeg float64) float64 {
	legs := len(b.Legs())
	if w.practiceOf(b) != capacity.ByBand || used >= legs {
		return math.Inf(1)
	}
	whole := b.Tag.RatedLoad.Newtons
	if b.Tag.RatedFor != gear.RatedForAssembly {
		var ok bool
		if whole, ok = capacity.BridleAssemblyRatedN(oneN, legs, angleDeg, w.practiceOf(b)); !ok {
			return math.Inf(1)
		}
	}
	return whole * shareUsed(legs, used)
}

// unclear tells what the tag of a bridle leaves open, so that no rating follows
// from it. That the tag is incomplete is found at the tag.
func unclear(b *gear.Bridle) facts.Reason {
	switch {
	case b.Tag.RatedFor == "":
		return facts.Reason{Text: b.ID + "'s tag does not say what its rated load is for", ToldOf: b.ID}
	case b.Tag.AngleFromHorizontal == nil:
		return facts.Reason{Text: b.ID + "'s tag shows no angle", ToldOf: b.ID}
	}
	return facts.Reason{}
}

// nearPlumbDeg is the least angle from horizontal that counts as vertical:
// within 5 degrees of it, 29 CFR 1910.184(b) (read).
const nearPlumbDeg = 85.0

// unreadable tells why a tag gives no rated load to go by. A tag that can't be
// read or shows no load has a rule of its own, so it is told already.
func unreadable(item gear.Item) facts.Reason {
	base := item.Base()
	switch t := base.Tag; {
	case t == nil:
		return facts.Reason{Text: "no tag of " + base.ID + " is recorded", ToldOf: base.ID}
	case t.Condition != gear.Legible:
		return facts.Reason{Text: base.ID + "'s tag is " + string(t.Condition), ToldOf: base.ID}
	case t.RatedLoad == nil:
		return facts.Reason{Text: base.ID + "'s tag shows no rated load", ToldOf: base.ID}
	}
	return facts.Reason{}
}

// unrated tells why a sling has no rated load to go by though its tag is
// described. A tag that rates a bridle as a whole, or at an angle, says nothing
// of what one straight leg may carry.
func unrated(item gear.Item) facts.Reason {
	if why := unreadable(item); why.Text != "" {
		return why
	}
	s := item.Base()
	switch t := s.Tag; {
	case t.Legs != nil && *t.Legs > 1:
		return facts.Reason{Text: fmt.Sprintf("%s's tag is for %d legs: what one straight leg may carry is not on it; describe the whole as a bridle", s.ID, *t.Legs)}
	case t.AngleFromHorizontal != nil && *t.AngleFromHorizontal < nearPlumbDeg:
		return facts.Reason{Text: fmt.Sprintf("%s's tag is for %g deg from horizontal: what one straight leg may carry is not on it", s.ID, float64(*t.AngleFromHorizontal))}
	case t.AngleFromHorizontal != nil && *t.AngleFromHorizontal > 90:
		return facts.Reason{Text: fmt.Sprintf("%s's tag is written with %g deg from horizontal, which no leg can have", s.ID, float64(*t.AngleFromHorizontal))}
	case t.RatedFor == gear.RatedForAssembly:
		return facts.Reason{Text: s.ID + "'s tag is for a bridle: what one straight leg may carry is not on it; describe the whole as a bridle"}
	case t.AngleFromHorizontal == nil && !slices.Contains(t.Shows, "hitch"):
		return facts.Reason{Text: s.ID + "'s tag says neither the hitch nor the angle that its rated load stands for: write which, as the tag or the certificate has it"}
	}
	return facts.Reason{}
}

// bandEdgesDeg are the angles from horizontal at which the bands of EN 13414-1 end,
// which a tag rated by band names: 45 and 60 deg from vertical.
var bandEdgesDeg = []float64{45, 30}

// practiceOf is how the rated load of a bridle goes over to its legs. One that rates
// its legs together at an angle that is the edge of no band was not rated by bands,
// and holds for that angle by statics, whatever is usual.
func (w *work) practiceOf(b *gear.Bridle) capacity.BridlePractice {
	t := b.Tag
	if w.cond.BridlePractice != capacity.ByBand || t == nil || t.RatedFor != gear.RatedForAssembly || t.AngleFromHorizontal == nil {
		return w.cond.BridlePractice
	}
	for _, edge := range bandEdgesDeg {
		if math.Abs(float64(*t.AngleFromHorizontal)-edge) < 0.5 {
			return capacity.ByBand
		}
	}
	return capacity.ByAngle
}

// usualBridleAngleDeg is the angle from horizontal for which bridles are rated
// as a whole: 60 deg in the United States (common practice), the edge of the
// first band in EN 13414-1.
func usualBridleAngleDeg(p capacity.BridlePractice) float64 {
	if p == capacity.ByBand {
		return 45
	}
	return 60
}

// flatter takes off what a bridle's rated load loses where a leg hangs flatter than
// its tag's angle, by statics: sin b over sin of the tag's angle. By band there is
// no rating beyond the band, which is found at the leg.
func (w *work) flatter(p *facts.Part, support int) {
	worst := tagAngleFactor(1, 90)
	for _, i := range w.legsOfSupport(support) {
		f := w.out.Document.Legs[i]
		switch {
		case !f.TagNamesAngle:
		case f.AngleFromHorizontalDeg == nil:
			p.RatedLoadN = nil
			w.out.Gaps.CopyTo(f.Key, "angle_from_horizontal_deg", p.Key, "rated_load_n")
			w.out.Gaps.CopyTo(f.Key, "angle_from_horizontal_deg", p.Key, "used_ratio")
		case *f.AngleFromHorizontalDeg < *f.TagAngleDeg:
			if left := sine(*f.AngleFromHorizontalDeg) / sine(*f.TagAngleDeg); left < worst.Ratio {
				worst = tagAngleFactor(left, *f.AngleFromHorizontalDeg)
			}
		}
	}
	if p.RatedLoadN != nil {
		w.takes(p, worst)
	}
}

// newtons is a load as a force; nil where it is not given.
func newtons(l *quantity.Load) *float64 {
	if l == nil {
		return nil
	}
	return ptr(l.Newtons)
}

func sine(deg float64) float64 { return math.Sin(deg * math.Pi / 180) }

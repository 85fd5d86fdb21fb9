package compute

import (
	"fmt"
	"slices"

	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/plan"
)

func ratingInput(pointer, owner, field string) facts.Input {
	return input(pointer, field, owner+"'s rated load")
}

func attachmentRating(a *plan.Attachment) facts.Input {
	return ratingInput(a.Pointer, "attachment "+a.ID, "rated_load")
}

// nearPlumbDeg is the least angle from horizontal that counts as vertical:
// within 5 degrees of it, 29 CFR 1910.184(b) (read).
const nearPlumbDeg = 85.0

// unrated tells why a sling has no rated load to go by though its tag is
// described. A tag that can't be read or shows no load has a rule of its own,
// so it is told already. A tag that rates a bridle as a whole, or at an angle,
// says nothing of what one straight leg may carry.
func unrated(item gear.Item) facts.Reason {
	base := item.Base()
	if base.Kind != gear.WireRopeSlingKind {
		return facts.Reason{}
	}
	t := base.Tag
	switch {
	case t == nil:
		return facts.Reason{Text: "no tag of " + base.ID + " is recorded", Told: true}
	case t.Condition != gear.Legible:
		return facts.Reason{Text: base.ID + "'s tag is " + string(t.Condition), Told: true}
	case t.RatedLoad == nil:
		return facts.Reason{Text: base.ID + "'s tag shows no rated load", Told: true}
	case t.Legs != nil && *t.Legs > 1:
		return facts.Reason{Text: fmt.Sprintf("%s's tag is for %d legs: what one straight leg may carry is not on it", base.ID, *t.Legs)}
	case t.AngleFromHorizontal != nil && *t.AngleFromHorizontal < nearPlumbDeg:
		return facts.Reason{Text: fmt.Sprintf("%s's tag is for %g deg from horizontal: what one straight leg may carry is not on it", base.ID, float64(*t.AngleFromHorizontal))}
	case t.AngleFromHorizontal != nil && *t.AngleFromHorizontal > 90:
		return facts.Reason{Text: fmt.Sprintf("%s's tag is written with %g deg from horizontal, which no leg can have", base.ID, float64(*t.AngleFromHorizontal))}
	case t.AngleFromHorizontal == nil && !slices.Contains(t.Shows, "hitch"):
		return facts.Reason{Text: base.ID + "'s tag says neither the hitch nor the angle that its rated load stands for: write which, as the tag or the certificate has it"}
	}
	return facts.Reason{}
}

package compute

import (
	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/hitch"
)

// hasEnds reports whether a sling is another at its ends than along its body: endless
// ones and chain are alike all along.
func hasEnds(sling gear.Item) bool {
	switch x := sling.(type) {
	case *gear.WireRopeSling:
		return true
	case *gear.TagRatedSling:
		return x.Kind == gear.WebSlingKind && !x.Endless || x.Kind == gear.MeshSlingKind
	}
	return false
}

// onEnds tells whether an end of webbing or mesh lies where its body has to, from the
// length that is left for each end, in meters: the word for free or the word for lies
// there. It waits for the length of the ends.
func (w *work) onEnds(sling gear.Item, key, field string, leftM float64, free, lies string) *string {
	s, ok := sling.(*gear.TagRatedSling)
	if !ok || s.EndLength == nil {
		base := sling.Base()
		w.wait(key, []facts.Input{input(base.Pointer, "end_length", "the length of "+base.ID+"'s ends, with their stitching")}, field)
		return nil
	}
	if hitch.ChokeLands(leftM, float64(*s.EndLength), 0) {
		return &lies
	}
	return &free
}

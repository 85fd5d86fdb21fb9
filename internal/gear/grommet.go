package gear

import "liftlint/internal/quantity"

// Grommet is an endless sling of wire rope, strand-laid or cable-laid.
type Grommet struct {
	Common
	Rope                           // its diameter is that of the finished body
	Laid          string           // strand_laid or cable_laid
	Circumference *quantity.Length // along the middle of the body
	Component     *quantity.Length // diameter of the rope that a cable-laid one is made of
	// BreakingLoad is that of its certificate, and BreakingParts the number of
	// its parts, one or two, that the figure is for.
	BreakingLoad  *quantity.Load
	BreakingParts *int
	// SpliceAt is how far the tuck or sleeve is from the upper bearing, along one
	// part as it hangs.
	SpliceAt *quantity.Length
	Sleeve   string // its metal, or none; empty where the plan does not say
}

// Bearing is half the circumference: its two parts hang between two bearings.
func (g *Grommet) Bearing() (*quantity.Length, string) {
	if g.Circumference == nil {
		return nil, "circumference"
	}
	half := *g.Circumference / 2
	return &half, "circumference"
}

// Section is the diameter of the finished body.
func (g *Grommet) Section() (*quantity.Length, string) { return g.Diameter, "diameter" }

// Rating is what its own tag shows: nothing where it can't be read.
func (g *Grommet) Rating() (*quantity.Load, string) { return g.tagRating() }

package gear

import "liftlint/internal/quantity"

// WireRopeSling is a sling of wire rope with an eye at each end.
type WireRopeSling struct {
	Common
	Rope                       // its diameter is that of the finished body
	Body      Body             // how the body is made
	Parts     *int             // side by side in the body of a multi-part one
	Component *quantity.Length // diameter of the rope that its parts are of
	Length    *quantity.Length // bearing point to bearing point, eyes included
	// LengthTolerance is how far the length may lie from that, either way.
	LengthTolerance *quantity.Length
	Upper           Eye
	Lower           Eye
}

// Body is how the body of a wire rope sling is made.
type Body string

// The bodies.
const (
	SinglePart Body = "single_part" // one rope
	MultiPart  Body = "multi_part"  // several parts of one rope, braided or laid together
	CableLaid  Body = "cable_laid"  // ropes laid round one another
)

// OfOneRope reports whether the sling's body is one rope, whose figures are
// then those of the sling.
func (s *WireRopeSling) OfOneRope() bool { return s.Body == SinglePart || s.Body == "" }

// Rope is what a sling is made of; what the plan does not say is empty.
type Rope struct {
	Class        string
	Construction string
	Core         Core
	Grade        string
	Finish       string
	Lay          string
	Diameter     *quantity.Length
}

// Core is what the strands are laid round.
type Core string

// The cores.
const (
	CoreUnknown Core = ""
	CoreFiber   Core = "fiber"
	CoreIWRC    Core = "iwrc" // independent wire rope core
)

// Eye is one end of a sling.
type Eye struct {
	Pointer      string // JSON pointer of the eye, or of the sling where it gives none
	Kind         string // how it is made; empty where the plan does not say
	Thimble      bool
	Length       *quantity.Length // inside, bearing point to crotch
	Width        *quantity.Length // inside, across
	ThimbleSize  *quantity.Length // the rope that the thimble is made for
	SpliceLength *quantity.Length // crotch to plain rope
	Sleeve       string           // its metal; empty where the plan does not say
}

// Bearing is the sling's length.
func (s *WireRopeSling) Bearing() (*quantity.Length, string) { return s.Length, "length" }

// Section is the diameter of the body.
func (s *WireRopeSling) Section() (*quantity.Length, string) { return s.Diameter, "diameter" }

// Rating is what its own tag shows: nothing where it can't be read.
func (s *WireRopeSling) Rating() (*quantity.Load, string) { return s.tagRating() }

// tagRating is the rated load on a tag that can be read.
func (c *Common) tagRating() (*quantity.Load, string) {
	if c.Tag == nil || c.Tag.Condition != Legible {
		return nil, "tag.rated_load"
	}
	return c.Tag.RatedLoad, "tag.rated_load"
}

package gear

import "liftlint/internal/quantity"

// Shackle joins a sling to what it pulls.
type Shackle struct {
	Common
	Pattern      string
	PinKind      string
	Pin          End // where its pin is as it hangs; empty where the plan does not say
	RatedLoad    *quantity.Load
	InsideLength *quantity.Length
	Jaw          *quantity.Length // between the ears
	PinDiameter  *quantity.Length
	BowDiameter  *quantity.Length // section of the bow
	InsideWidth  *quantity.Length // of the bow
	Spacers      bool
	Secured      bool // its screw pin is kept from turning
	LeftInPlace  bool // it stays up after the lift, or is not watched
	Steel        string
}

// End is one end of a piece of gear as it hangs.
type End string

// The ends.
const (
	UpperEnd End = "upper"
	LowerEnd End = "lower"
)

// Bearing is the inside length.
func (s *Shackle) Bearing() (*quantity.Length, string) { return s.InsideLength, "inside_length" }

// Section is of no one diameter: pin and bow have their own.
func (s *Shackle) Section() (*quantity.Length, string) { return nil, "" }

// Rating is what is marked on the body.
func (s *Shackle) Rating() (*quantity.Load, string) { return s.RatedLoad, "rated_load" }

// Link is a master link, which gathers all legs below the crane hook, or an
// intermediate link, which hangs from it and takes two of them.
type Link struct {
	Common
	Shape           string
	RatedLoad       *quantity.Load
	InsideLength    *quantity.Length
	InsideWidth     *quantity.Length // where the legs bear
	UpperWidth      *quantity.Length // of a pear-shaped one, where it hangs
	SectionDiameter *quantity.Length
	Steel           string
}

// Bearing is the inside length.
func (l *Link) Bearing() (*quantity.Length, string) { return l.InsideLength, "inside_length" }

// Section is the thickness of the link.
func (l *Link) Section() (*quantity.Length, string) { return l.SectionDiameter, "section_diameter" }

// Rating is what is marked on the link.
func (l *Link) Rating() (*quantity.Load, string) { return l.RatedLoad, "rated_load" }

// Hook is at the lower end of a leg.
type Hook struct {
	Common
	MadeFor      string
	RatedLoad    *quantity.Load
	InsideLength *quantity.Length // bearing of its eye to bearing in its bowl
	EyeDiameter  *quantity.Length // section of its own eye
	BodyWidth    *quantity.Length // section at the bowl
	Throat       *quantity.Length
	Latch        string
	Points       string
	Steel        string
}

// Bearing is the inside length.
func (h *Hook) Bearing() (*quantity.Length, string) { return h.InsideLength, "inside_length" }

// Section is the largest size of the section at the bowl.
func (h *Hook) Section() (*quantity.Length, string) { return h.BodyWidth, "body_width" }

// Rating is what is marked on the hook.
func (h *Hook) Rating() (*quantity.Load, string) { return h.RatedLoad, "rated_load" }

package gear

import (
	"time"

	"liftlint/internal/quantity"
)

// Beam is a spreader beam, a lifting beam, a rocker plate or a lifting device
// made for one kind of load: rigid, with points that it hangs from and points
// that it holds by. Its points are in the plan, by their places.
type Beam struct {
	Common
	CenterOfGravity  *Position // in its own axes
	RatedLoad        *quantity.Load
	RatedCompression *quantity.Load
	RatedBending     *quantity.Moment
	// LeastTopAngle is the flattest angle from horizontal of the legs it hangs
	// from for which its rated load holds.
	LeastTopAngle *quantity.Angle
	// SpanRatedFor is the longest span, between its outer points, for which the
	// rated load of an adjustable one holds.
	SpanRatedFor *quantity.Length
	Category     string // of its design, as marked
	MadeFor      string // of a lifting device: what it takes and how
	ProofTest    *ProofTest
}

// ProofTest is a trial with more than the rated load.
type ProofTest struct {
	Pointer string
	Load    *quantity.Ratio // of the rated load
	Date    *time.Time
}

// Position is a place in an item's own axes: x along, y across, z up.
type Position struct{ X, Y, Z quantity.Length }

// Bearing is of no one length: its points have their places.
func (b *Beam) Bearing() (*quantity.Length, string) { return nil, "" }

// Section is of no one diameter.
func (b *Beam) Section() (*quantity.Length, string) { return nil, "" }

// Rating is what is marked on the beam.
func (b *Beam) Rating() (*quantity.Load, string) { return b.RatedLoad, "rated_load" }

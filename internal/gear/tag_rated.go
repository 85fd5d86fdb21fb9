package gear

import "liftlint/internal/quantity"

// TagRatedSling is a sling of chain, of webbing, an endless one of yarns in a
// cover, or one of metal mesh; its kind tells which. What it may carry is what
// its tag says and follows from no strength of its parts. Fields that its kind
// lacks are nil or empty.
type TagRatedSling struct {
	Common
	Length *quantity.Length // bearing point to bearing point, of one that is endless as it hangs
	// LengthTolerance is how far the length may lie from that, either way.
	LengthTolerance *quantity.Length
	Size            *quantity.Length // nominal diameter of the links of a chain
	Grade           string           // of a chain, as marked
	Fittings        string           // of a chain: what is at its ends
	Material        string           // of webbing, or of the core of an endless one
	Width           *quantity.Length // across the bearing, of all but chain
	Thickness       *quantity.Length // under load, of all but chain
	EndLength       *quantity.Length // of each end of webbing or mesh that is none: an eye with its stitching, or a handle
	EyeLength       *quantity.Length // inside length of each eye of webbing
	EyeWidth        *quantity.Length // of each eye of webbing that is folded or tapered
	HandleWidth     *quantity.Length // that a handle of mesh takes up in what it hangs in
	HandleThickness *quantity.Length // of a handle of mesh, as it passes a throat
	Endless         bool             // of webbing that has no eyes
	Coating         string           // of mesh
}

// Bearing is the sling's length.
func (s *TagRatedSling) Bearing() (*quantity.Length, string) { return s.Length, "length" }

// Section is the diameter of a chain's links; flat slings are of no one
// diameter.
func (s *TagRatedSling) Section() (*quantity.Length, string) {
	if s.Kind == ChainSlingKind {
		return s.Size, "size"
	}
	return nil, ""
}

// Rating is what its own tag shows: nothing where it can't be read.
func (s *TagRatedSling) Rating() (*quantity.Load, string) { return s.tagRating() }

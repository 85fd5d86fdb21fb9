package gear

import "liftlint/internal/quantity"

// InLine is a part of one length in a leg: a load cell, a turnbuckle, an
// adjuster, which shortens a chain, a swivel, or a sheave block that a sling
// runs over. Each end is an eye, or a jaw with a pin.
type InLine struct {
	Common
	Length            *quantity.Length // bearing to bearing, as set
	Shortest, Longest *quantity.Length // of what is set to a length
	SheaveDiameter    *quantity.Length // of a sheave block, at the bottom of its groove
	TurnsUnderLoad    *bool            // of a swivel; nil where the plan does not say
	RatedLoad         *quantity.Load
	Steel             string
	Upper, Lower      Opening
	EyeSection        *quantity.Length // thickness of the ends that are eyes
}

// Opening is what one end of a part in line has for its neighbor.
type Opening struct {
	PinDiameter *quantity.Length // of a jaw; nil for an eye
	Inside      *quantity.Length // clear width: inside the eye, or between the cheeks of the jaw
}

// Bearing is its length as set.
func (i *InLine) Bearing() (*quantity.Length, string) { return i.Length, "length" }

// Section is of no one diameter.
func (i *InLine) Section() (*quantity.Length, string) { return nil, "" }

// Rating is what is marked on it.
func (i *InLine) Rating() (*quantity.Load, string) { return i.RatedLoad, "rated_load" }

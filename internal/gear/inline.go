package gear

import "liftlint/internal/quantity"

// InLine is a part of one length in a leg: a load cell, a turnbuckle, or a
// sheave block that a sling runs over.
type InLine struct {
	Common
	Length            *quantity.Length // bearing to bearing, as set
	Shortest, Longest *quantity.Length // of a turnbuckle
	SheaveDiameter    *quantity.Length // of a sheave block, at the bottom of its groove
	RatedLoad         *quantity.Load
	Steel             string
}

// Bearing is its length as set.
func (i *InLine) Bearing() (*quantity.Length, string) { return i.Length, "length" }

// Section is of no one diameter.
func (i *InLine) Section() (*quantity.Length, string) { return nil, "" }

// Rating is what is marked on it.
func (i *InLine) Rating() (*quantity.Load, string) { return i.RatedLoad, "rated_load" }

// Package gear holds the slings and fittings that a lift is made of. Values
// that were not given are nil.
package gear

import (
	"time"

	"liftlint/internal/quantity"
)

// Kind tells what a piece of gear is.
type Kind string

// The kinds of gear.
const (
	WireRopeSlingKind Kind = "wire_rope_sling"
	ShackleKind       Kind = "shackle"
	MasterLinkKind    Kind = "master_link"
)

// Item is one sling or fitting.
type Item interface {
	Base() *Common
	// Bearing is the length that the item adds to its leg, bearing point to
	// bearing point, and the field that gives it.
	Bearing() (length *quantity.Length, field string)
	// Section is the diameter of rope or section, and the field that gives it.
	Section() (diameter *quantity.Length, field string)
	// Rating is the rated load as marked, and the field that gives it.
	Rating() (load *quantity.Load, field string)
}

// Common is what every kind of gear has.
type Common struct {
	ID         string
	Kind       Kind
	Pointer    string // JSON pointer of the item in its file
	Mass       *quantity.Mass
	Tag        *Tag
	Inspection *Inspection
}

// Base returns the common part.
func (c *Common) Base() *Common { return c }

// WireRopeSling is a single-part sling with an eye at each end.
type WireRopeSling struct {
	Common
	Class    string
	Core     Core
	Diameter *quantity.Length
	Length   *quantity.Length // bearing point to bearing point, eyes included
	Upper    Eye
	Lower    Eye
}

// Core is what the strands are laid round.
type Core string

// The cores.
const (
	CoreUnknown Core = ""
	CoreFiber   Core = "fiber"
	CoreIWRC    Core = "iwrc" // independent wire rope core
)

// Bearing is the sling's length.
func (s *WireRopeSling) Bearing() (*quantity.Length, string) { return s.Length, "length" }

// Section is the rope's diameter.
func (s *WireRopeSling) Section() (*quantity.Length, string) { return s.Diameter, "diameter" }

// Rating is what the tag shows: nothing where it can't be read.
func (s *WireRopeSling) Rating() (*quantity.Load, string) {
	if s.Tag == nil || s.Tag.Condition != Legible {
		return nil, "tag.rated_load"
	}
	return s.Tag.RatedLoad, "tag.rated_load"
}

// Eye is one end of a sling.
type Eye struct {
	Pointer string // JSON pointer of the eye, or of the sling where it gives none
	Kind    string // how it is made; empty where the plan does not say
	Thimble bool
	Length  *quantity.Length // inside, bearing point to crotch
	Width   *quantity.Length // inside, across
}

// Shackle joins a sling to what it pulls.
type Shackle struct {
	Common
	RatedLoad    *quantity.Load
	InsideLength *quantity.Length
}

// Bearing is the inside length.
func (s *Shackle) Bearing() (*quantity.Length, string) { return s.InsideLength, "inside_length" }

// Section is not used of a shackle yet.
func (s *Shackle) Section() (*quantity.Length, string) { return nil, "" }

// Rating is what is marked on the body.
func (s *Shackle) Rating() (*quantity.Load, string) { return s.RatedLoad, "rated_load" }

// MasterLink gathers the legs below the crane hook.
type MasterLink struct {
	Common
	RatedLoad       *quantity.Load
	InsideLength    *quantity.Length
	SectionDiameter *quantity.Length
}

// Bearing is the inside length.
func (m *MasterLink) Bearing() (*quantity.Length, string) { return m.InsideLength, "inside_length" }

// Section is the thickness of the link.
func (m *MasterLink) Section() (*quantity.Length, string) {
	return m.SectionDiameter, "section_diameter"
}

// Rating is what is marked on the link.
func (m *MasterLink) Rating() (*quantity.Load, string) { return m.RatedLoad, "rated_load" }

// Inspection is the last periodic one on record.
type Inspection struct {
	Pointer string
	Date    time.Time
	Service Service
	NextDue *time.Time
}

// Service is how hard a piece of gear works; it sets the interval.
type Service string

// The services.
const (
	NormalService  Service = "normal"
	SevereService  Service = "severe"
	SpecialService Service = "special"
)

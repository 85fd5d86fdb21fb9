// Package gear holds the slings and fittings that a lift is made of. Values
// that were not given are nil.
package gear

import (
	"slices"
	"time"

	"liftlint/internal/quantity"
)

// Kind tells what a piece of gear is.
type Kind string

// The kinds of gear.
const (
	WireRopeSlingKind    Kind = "wire_rope_sling"
	GrommetKind          Kind = "grommet"
	ChainSlingKind       Kind = "chain_sling"
	WebSlingKind         Kind = "web_sling"
	RoundSlingKind       Kind = "round_sling"
	MeshSlingKind        Kind = "mesh_sling"
	BridleKind           Kind = "bridle"
	ShackleKind          Kind = "shackle"
	MasterLinkKind       Kind = "master_link"
	IntermediateLinkKind Kind = "intermediate_link"
	HookKind             Kind = "hook"
	SpreaderBeamKind     Kind = "spreader_beam"
	LiftingBeamKind      Kind = "lifting_beam"
	RockerPlateKind      Kind = "rocker_plate"
	LiftingDeviceKind    Kind = "lifting_device"
	LoadCellKind         Kind = "load_cell"
	TurnbuckleKind       Kind = "turnbuckle"
	AdjusterKind         Kind = "adjuster"
	SwivelKind           Kind = "swivel"
	SheaveBlockKind      Kind = "sheave_block"
)

// Kinds lists all kinds, in the order in which plans are offered them.
func Kinds() []Kind {
	return append(SlingKinds(), BridleKind, ShackleKind, MasterLinkKind, IntermediateLinkKind, HookKind,
		SpreaderBeamKind, LiftingBeamKind, RockerPlateKind, LiftingDeviceKind,
		LoadCellKind, TurnbuckleKind, AdjusterKind, SwivelKind, SheaveBlockKind)
}

// SlingKinds lists the kinds that are slings by themselves.
func SlingKinds() []Kind {
	return []Kind{WireRopeSlingKind, GrommetKind, ChainSlingKind, WebSlingKind, RoundSlingKind, MeshSlingKind}
}

// IsSling reports whether an item is a sling by itself.
func IsSling(item Item) bool { return slices.Contains(SlingKinds(), item.Base().Kind) }

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
	Labels     []string // label=value, in their order
	FaultsSeen []string // what puts it out of service
	LookedOver bool     // whether the plan says what is seen on it, nothing included
}

// Base returns the common part.
func (c *Common) Base() *Common { return c }

// Inspection is the last periodic one on record.
type Inspection struct {
	Pointer string
	Date    time.Time
	Service Service
	NextDue *time.Time
	// Thorough reports that it is a thorough examination, as the law asks for.
	Thorough bool
	// Standing is the thorough examination before it, where it is none itself: the
	// next of those is due whatever periodic inspections there were since.
	Standing *Inspection
	// Void says why it does not show that the item is fit, though it is the newest
	// on record; empty where it does.
	Void Void
}

// Void is what keeps an inspection from counting.
type Void string

// What keeps one from counting.
const (
	NotPassed Void = "not_passed" // the item was found unfit
	NoOutcome Void = "no_outcome" // the record does not say what it came to
)

// Service is how hard a piece of gear works; it sets the interval.
type Service string

// The services.
const (
	NormalService  Service = "normal"
	SevereService  Service = "severe"
	SpecialService Service = "special"
)

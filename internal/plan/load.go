package plan

import (
	"liftlint/internal/gear"
	"liftlint/internal/quantity"
)

// Load is one rigid body.
type Load struct {
	Mass                *quantity.Mass
	MassKnownBy         string
	MassTolerance       *quantity.Ratio
	Size                *Size
	CenterOfGravity     *Point
	CenterTolerance     *Point // how far it may lie along, across and up, either way; nil where the plan gives none
	Contents            *Contents
	TurningHeldBy       string // what keeps it from turning, as tag lines
	Freed               string // how it is known that nothing holds it down
	StrengthConfirmedBy string
	Attachments         []Attachment
	Bodies              []Body // what slings may go round
	// The attitude it is meant to hang at: pitch raises the end of its x axis,
	// roll the end of its y axis. Of a lift in phases, each has its own pitch.
	Pitch, Roll quantity.Angle
}

// Body is a part of the load of one cross-section, which slings may go round.
type Body struct {
	Pointer    string
	ID         string
	Round      bool   // its section is round; otherwise it has corners
	Axis       string // along, across or up: the direction in which it runs
	Start      Point  // of the axis
	Length     *quantity.Length
	Diameter   *quantity.Length // of a round one
	Width      *quantity.Length // of one with corners, across its axis: along y, or along x where the axis is y or z
	Height     *quantity.Length // and along z, or along y where the axis is z
	EdgeRadius *quantity.Length // of its corners
	Surface    string           // dry_steel, wood, wet_or_oily; empty where the plan does not say
}

// Point is a position from the datum corner: x along, y across, z up.
type Point struct{ X, Y, Z quantity.Length }

// Size is the outer size of the load along x, y and z.
type Size struct{ Length, Width, Height quantity.Length }

// Contents is what is in the load or on it.
type Contents struct {
	Pointer    string
	State      string
	Hazardous  *bool
	Precaution string
}

// Attachment is a point on the load that legs can take.
type Attachment struct {
	Pointer      string
	Beam         *gear.Beam // that it is a point of; nil on the load itself
	ID           string
	Kind         string
	At           *Point   // nil unless all three coordinates are given
	Lacks        []string // the coordinates that are not given
	RatedLoad    *quantity.Load
	Hole         *quantity.Length
	Thickness    *quantity.Length
	HoleAxis     string // along, across or up; empty where the plan does not say
	Axis         string // of its bolt
	TurnedInPlan quantity.Angle
	Spare        bool // left free on purpose
	// How far from its plane, from its axis, and from the load's horizontal its
	// rated load holds.
	RatedToFromPlane      *quantity.Angle
	RatedToFromAxis       *quantity.Angle
	RatedToFromHorizontal *quantity.Angle
	Pattern               string
	Seated                *bool
	RatedAt               []AngleRating
	Insert                Insert
}

// AngleRating is a rated load at an angle from an axis.
type AngleRating struct {
	FromAxis  quantity.Angle
	RatedLoad quantity.Load
}

// Insert is what is known of an insert in concrete.
type Insert struct {
	Panel                string
	BreakingLoad         *quantity.Load
	HardwareBreakingLoad *quantity.Load
	StrengthNeeded       *quantity.Pressure
	Strength             *quantity.Pressure // of the concrete at the lift
}

// The kinds of attachment.
const (
	Padeye    = "padeye"
	Eyebolt   = "eyebolt"
	HoistRing = "hoist_ring"
	InsertIn  = "insert"
)

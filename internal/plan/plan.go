// Package plan holds the lift plan as typed values, decoded from a document
// that has passed its schemas. Values that the plan leaves out are nil or
// empty; every part knows the JSON pointer it was read from.
package plan

import (
	"time"

	"liftlint/internal/gear"
	"liftlint/internal/quantity"
)

// Plan is one lift, from the hook down.
type Plan struct {
	Lift    Lift
	Load    Load
	Hook    Hook
	Gear    []gear.Item
	Support Support
}

// Lift is the head of the plan.
type Lift struct {
	ID       string
	Title    string
	Date     *time.Time
	Category string
	Units    quantity.System
	Profile  string // empty where the plan leaves it to the command
}

// Load is one rigid body.
type Load struct {
	Mass            *quantity.Mass
	MassKnownBy     string
	MassTolerance   *quantity.Ratio
	CenterOfGravity *Point
	Attachments     []Attachment
}

// Point is a position from the datum corner: x along, y across, z up.
type Point struct{ X, Y, Z quantity.Length }

// Attachment is a point on the load that legs can take.
type Attachment struct {
	Pointer   string
	ID        string
	Kind      string
	At        *Point   // nil unless all three coordinates are given
	Lacks     []string // the coordinates that are not given
	RatedLoad *quantity.Load
}

// Hook is the crane's hook.
type Hook struct {
	Pointer   string // of the hook, or of where legs hang from it where the plan describes none
	BodyWidth *quantity.Length
}

// Support is what legs hang from.
type Support struct {
	Pointer string
	From    string
	By      []Use // the link between the hook and the legs
	Legs    []Leg
}

// Use is the place where the plan puts an item of gear to work.
type Use struct {
	Pointer string
	Item    gear.Item
}

// Leg is one leg from its support to its end.
type Leg struct {
	Pointer string
	ID      string // support and name or number, as in hook/1
	Down    []Use
	End     End
}

// End is how a leg ends: at an attachment.
type End struct {
	Pointer    string
	Attachment *Attachment
}

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
	// Temperature is that of the gear; nil for ordinary weather.
	Temperature *TemperatureRange
	Labels      []string // label=value, in their order
}

// TemperatureRange is how cold and how hot something gets.
type TemperatureRange struct{ Lowest, Highest quantity.Temperature }

// Hook is the crane's hook.
type Hook struct {
	Pointer   string // of the hook, or of where legs hang from it where the plan describes none
	BodyWidth *quantity.Length
	Throat    *quantity.Length
	Latch     string
}

// Support is what legs hang from.
type Support struct {
	Pointer string
	From    string
	By      []Use      // what is between the hook and the legs, from the top down
	Bridle  *BridleUse // the bridle that the last of By is the master link of
	Links   []LinkUse  // the bridle's intermediate links that legs in use hang from
	Legs    []Leg      // those that carry
	Parked  []Leg      // those that are hung up out of the way
}

// Use is the place where the plan puts an item of gear to work.
type Use struct {
	Pointer string
	Item    gear.Item
}

// BridleUse is the place where the plan puts a bridle to work.
type BridleUse struct {
	Pointer string
	Bridle  *gear.Bridle
}

// LinkUse is an intermediate link with the legs that hang from it: those that
// carry by their index in the support's Legs, and those that are parked.
type LinkUse struct {
	Use
	Legs   []int
	Parked []Leg
}

// Leg is one leg from its support to its end.
type Leg struct {
	Pointer     string
	ID          string // support and name or number, as in hook/1
	Link        *Use   // the intermediate link it hangs from
	Down        []Use
	StatedAngle *quantity.Angle // from horizontal, as meant
	End         End
}

// End is how a leg ends: at an attachment, or parked where that is nil.
type End struct {
	Pointer    string
	Attachment *Attachment
}

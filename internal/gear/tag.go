package gear

import "liftlint/internal/quantity"

// Condition says whether a tag can be read.
type Condition string

// The conditions.
const (
	Legible   Condition = "legible"
	Illegible Condition = "illegible"
	Missing   Condition = "missing"
)

// Tag is what can be read on the identification fixed to an item.
type Tag struct {
	Pointer   string
	Condition Condition
	Shows     []string // the fields that can be read, by their names in the plan
	Serial    string   // empty where the tag does not show it
	RatedLoad *quantity.Load
	// ChokerRatedLoad and BasketRatedLoad are those for the two other hitches,
	// the basket's for both its parts, vertical.
	ChokerRatedLoad, BasketRatedLoad *quantity.Load
	Diameter                         *quantity.Length
	Component                        *quantity.Length // diameter of the rope that the body is made of
	Size                             *quantity.Length // nominal diameter of a chain
	Width, Length                    *quantity.Length
	Material, Grade                  string // empty where the tag does not show them
	// AngleFromHorizontal is the angle that the rated load stands for.
	AngleFromHorizontal *quantity.Angle
	// Legs is the number of legs that the tag names.
	Legs *int
	// RatedFor says what a bridle's rated load is for; empty where the tag does not.
	RatedFor RatedFor
	// DesignFactor is breaking strength over rated load, as the tag has it.
	DesignFactor *float64
}

// RatedFor is what the rated load on a bridle's tag is for.
type RatedFor string

// What a bridle's rated load can be for.
const (
	RatedForOneLeg   RatedFor = "one_leg"
	RatedForAssembly RatedFor = "assembly"
)

// TagFields are the fields that a tag may show, in the order in which they
// are reported.
func TagFields() []string {
	return []string{"maker", "serial", "diameter", "component_diameter", "size", "width", "length", "material", "grade",
		"rated_load", "choker_rated_load", "basket_rated_load", "hitch", "angle_from_horizontal", "legs", "rated_for", "design_factor"}
}

package plan

import "liftlint/internal/gear"

func decodeTag(f fields) *gear.Tag {
	if !f.exists() {
		return nil
	}
	t := &gear.Tag{
		Pointer:             f.pointer(),
		Condition:           gear.Condition(f.text("condition")),
		Serial:              f.text("serial"),
		RatedLoad:           f.load("rated_load"),
		ChokerRatedLoad:     f.load("choker_rated_load"),
		BasketRatedLoad:     f.load("basket_rated_load"),
		Diameter:            f.length("diameter"),
		Component:           f.length("component_diameter"),
		Size:                f.length("size"),
		Width:               f.length("width"),
		Length:              f.length("length"),
		Material:            f.text("material"),
		Grade:               f.text("grade"),
		AngleFromHorizontal: f.angle("angle_from_horizontal"),
		Legs:                f.count("legs"),
		RatedFor:            gear.RatedFor(f.text("rated_for")),
		DesignFactor:        f.number("design_factor"),
	}
	for _, name := range gear.TagFields() {
		if f.of(name).exists() {
			t.Shows = append(t.Shows, name)
		}
	}
	return t
}

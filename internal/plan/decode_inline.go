package plan

import "liftlint/internal/gear"

func decodeInLine(f fields, common gear.Common) gear.Item {
	return &gear.InLine{
		Common:         common,
		Length:         f.length("length"),
		Shortest:       f.length("shortest"),
		Longest:        f.length("longest"),
		SheaveDiameter: f.length("sheave_diameter"),
		TurnsUnderLoad: f.yesOrNo("turns_under_load"),
		RatedLoad:      f.load("rated_load"),
		Steel:          f.text("steel"),
		Upper:          gear.Opening{PinDiameter: f.length("upper_pin_diameter"), Inside: f.length("upper_opening")},
		Lower:          gear.Opening{PinDiameter: f.length("lower_pin_diameter"), Inside: f.length("lower_opening")},
		EyeSection:     f.length("eye_section"),
	}
}

package policy_test

import (
	"fmt"

	"liftlint/internal/facts"
)

// fitsLevel gives a level lift places where one part goes over or into another,
// gathered legs and hooks, one of each kind that rules pick out.
func fitsLevel(d *facts.Document) {
	for i := range d.Fits {
		f := &d.Fits[i]
		f.RopeDiameterM, f.BendD = ptr(0.02), ptr(2.5)
	}
	soft := &d.Fits[0]
	soft.EyeWidthGiven, soft.EyeWidthM, soft.BodyWidthM = true, ptr(0.16), ptr(0.05)
	thimbled := &d.Fits[3]
	thimbled.ThimbleSizeGiven, thimbled.ThimbleOverRopeRatio = true, ptr(1.0)
	for _, f := range []facts.Fit{
		{What: "pin_in_hole", Inner: "K1's pin", Outer: "the hole of attachment A"},
		{What: "plate_in_jaw", Inner: "attachment A", Outer: "the jaw at K1's pin"},
		{What: "hook_in_hole", Inner: "H1", Outer: "the hole of attachment B"},
		{What: "link_over_hook", Inner: "ML1", Outer: "the crane hook"},
		{What: "link_in_bow", Inner: "ML1", Outer: "K9's bow"},
		{What: "bow_in_hole", Inner: "K3's bow", Outer: "the hole of point SB1.BL", PinOverHole: ptr(0.4)},
	} {
		f.Record = facts.Record{Key: "fit/" + f.What, At: fmt.Sprintf("#/fit/%d", len(d.Fits))}
		f.NeedsM, f.RoomM, f.FilledRatio = ptr(0.022), ptr(0.025), ptr(0.88)
		d.Fits = append(d.Fits, f)
	}
	d.Bearings = []facts.Bearing{{
		Record: facts.Record{Key: "bearing/hook/1/W1/upper", At: "#/bearing/0"}, ID: "W1", SlingKind: "web_sling", End: "upper", On: "the crane hook",
		BodyWidthM: ptr(0.08), ContactM: ptr(0.06), LoadN: ptr(15000.0), PressurePa: ptr(3.125e6), ThicknessM: ptr(0.007), EyeMatters: true, EyeLengthM: ptr(0.3), EyeWidthTimes: ptr(3.75),
	}}
	d.Gathers = []facts.Gather{{
		Record: facts.Record{Key: "gather/hook/K9", At: "#/gather/0"}, ID: "K9", Name: "K9's bow", What: "bow", Pattern: ptr("bow"), Legs: 4, Bearers: "4 legs",
		OnPin: ptr(false), IncludedAngleDeg: ptr(60.0), RoomM: ptr(0.2), NeedsM: ptr(0.12), FilledRatio: ptr(0.6),
	}}
	d.HookUses = []facts.HookUse{
		{Record: facts.Record{Key: "hook_use/hook", At: "#/hook_use/0"}, ID: "hook", Name: "the crane hook", Of: "crane", MadeFor: "lifting",
			Latch: ptr("works"), LegsDirect: 2, OffAxisDeg: ptr(25.0), Passes: "S1's upper eye", ThroatM: ptr(0.08), WidestM: ptr(0.02), ThroatFilledRatio: ptr(0.25)},
		{Record: facts.Record{Key: "hook_use/hook/1/H1", At: "#/hook_use/1"}, ID: "H1", Name: "H1", Of: "sling", MadeFor: "lifting",
			Latch: ptr("works"), Points: ptr("outward"), Passes: "attachment B", ThroatM: ptr(0.03), WidestM: ptr(0.02), ThroatFilledRatio: ptr(0.7)},
	}
}

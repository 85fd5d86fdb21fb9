package register

func decodeFound(f fields) *Found {
	if f.node == nil {
		return nil
	}
	return &Found{
		TagLegible: f.yes("tag_legible"),

		BrokenWiresInOneLay:            f.count("broken_wires_in_one_lay"),
		BrokenWiresInOneStrandInOneLay: f.count("broken_wires_in_one_strand_in_one_lay"),
		BrokenWiresIn6D:                f.count("broken_wires_in_6_d"),
		BrokenWiresIn30D:               f.count("broken_wires_in_30_d"),
		BrokenWiresAdjacent:            f.count("broken_wires_adjacent"),
		BrokenWiresAtFitting:           f.count("broken_wires_at_fitting"),
		OuterWireWear:                  f.ratio("outer_wire_wear"),
		DiameterNow:                    f.length("diameter_now"),
		LengthNow:                      f.length("length_now"),
		Kink:                           f.yes("kink"),
		Crushed:                        f.yes("crushed"),
		Birdcage:                       f.yes("birdcage"),
		SpliceSlipped:                  f.yes("splice_slipped"),
		SleeveCracked:                  f.yes("sleeve_cracked"),
		ThimbleLoose:                   f.yes("thimble_loose"),
		Corrosion:                      f.text("corrosion"),
		HeatDamage:                     f.yes("heat_damage"),

		ThroatNow:   f.length("throat_now"),
		Twist:       f.angle("twist"),
		Wear:        f.ratio("wear"),
		Stretch:     f.ratio("stretch"),
		Cracked:     f.yes("cracked"),
		Latch:       f.text("latch"),
		Bent:        f.yes("bent"),
		BentLink:    f.yes("bent_link"),
		PinOriginal: f.yes("pin_original"),
		BrokenWeld:  f.yes("broken_weld"),
		BrokenWire:  f.yes("broken_wire"),

		Cut:             f.yes("cut"),
		Abraded:         f.yes("abraded"),
		Burned:          f.yes("burned"),
		StitchingBroken: f.yes("stitching_broken"),
		CoreExposed:     f.yes("core_exposed"),
		Chemical:        f.yes("chemical"),
		Knotted:         f.yes("knotted"),
	}
}

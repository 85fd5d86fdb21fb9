package capacity

// endlessChokeFactor is the rating of an endless sling in a choke over that of
// one leg of the same rope (EN 13414-1:2003 Table 4, read).
const endlessChokeFactor = 1.6

// grommetParts hold a load that hangs from a grommet used straight.
const grommetParts = 2

// GrommetPartStrengthN is the strength of one part of a grommet in newtons, from
// the breaking load that its maker gives for one part or for two: of what is for
// both, a part has half, however the grommet is rigged (statics). ok is false
// for another number of parts and for a load that is none.
func GrommetPartStrengthN(breakingLoadN float64, isForParts int) (strengthN float64, ok bool) {
	if !usable(breakingLoadN) || isForParts != 1 && isForParts != grommetParts {
		return 0, false
	}
	return breakingLoadN / float64(isForParts), true
}

// GrommetRatedN is what a grommet used straight, as two parts, can be rated for
// by its breaking load, in newtons: both parts over 5 (ASME B30.9, from memory
// for grommets). The bend at its ends may take more off, which this does not.
// ok is as GrommetPartStrengthN has it.
func GrommetRatedN(breakingLoadN float64, isForParts int) (ratedN float64, ok bool) {
	part, ok := GrommetPartStrengthN(breakingLoadN, isForParts)
	return grommetParts * part / ropeDesignFactor, ok
}

// CableLaidRatedN is what a cable-laid sling of one straight leg can be rated
// for by the breaking load of the finished sling, its ends included, in newtons:
// a fifth. From rope alone it is not told: no source for the efficiency of its
// splices is at hand. ok is false for a load that is none.
func CableLaidRatedN(breakingLoadN float64) (ratedN float64, ok bool) {
	return GrommetPartRatedN(breakingLoadN, 1)
}

// GrommetPartRatedN is the rating of one part of a grommet in newtons, a fifth of
// its strength. ok is as GrommetPartStrengthN has it.
func GrommetPartRatedN(breakingLoadN float64, isForParts int) (ratedN float64, ok bool) {
	part, ok := GrommetPartStrengthN(breakingLoadN, isForParts)
	return part / ropeDesignFactor, ok
}

// StrongestGrommetRatedN is what a grommet can't be rated over where no breaking
// load is known, in newtons: two parts of the strongest rope as thick as its body,
// with all that is not known of it at its strongest. A strand-laid body is six
// strands on a seventh and a cable-laid one has less metal in it, so that none is
// stronger than such rope (derived). ok is false for a diameter that is none and
// a practice that is not known.
func StrongestGrommetRatedN(body Rope, p BridlePractice) (ratedN float64, ok bool) {
	strength, ok := countedStrengthN(body, p, StrongestNominalN)
	if !ok || p != ByAngle && p != ByBand {
		return 0, false
	}
	return grommetParts * strength / ropeDesignFactor, true
}

// BelievableBreakingRatio is how far over StrongestGrommetBreakingN a breaking load may
// lie and be read right: compacted strands, which no table here has, hold up to a
// fifth more than the strongest rope of their diameter (common practice). A breaking
// load for two parts taken for one lies at about twice, one with its decimal point
// misplaced at ten times what it is.
const BelievableBreakingRatio = 1.25

// StrongestGrommetBreakingN is what one part or both of a grommet can't hold more
// than, in newtons: so many ropes as thick as its body, the strongest that are made,
// as in StrongestGrommetRatedN. Solid steel of 2160 N/mm2 would hold more than twice as
// much (geometry). ok is false for another number of parts and for a diameter that is
// none.
func StrongestGrommetBreakingN(bodyM float64, parts int) (breakingN float64, ok bool) {
	if parts != 1 && parts != grommetParts {
		return 0, false
	}
	strength, ok := StrongestNominalN(Rope{DiameterM: bodyM})
	return float64(parts) * strength, ok
}

// EndlessChokeRatedN is what an endless sling can be rated for in a choke by EN
// 13414-1, in newtons, from the rating of one leg of the same rope. ok is false
// for a rating that is none.
func EndlessChokeRatedN(oneLegN float64) (ratedN float64, ok bool) {
	return times(endlessChokeFactor, oneLegN)
}

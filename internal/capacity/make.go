package capacity

import (
	"strconv"
	"sync"
)

// Make is how a wire rope sling is made up.
type Make string

// The makes.
const (
	SinglePart        Make = "single_part"
	MultiPart         Make = "multi_part" // braided of several component ropes
	CableLaid         Make = "cable_laid"
	StrandLaidGrommet Make = "strand_laid_grommet"
	CableLaidGrommet  Make = "cable_laid_grommet"
)

// BendDiameterM is the diameter that D/d is counted by, in meters: that of a
// multi-part sling's component, and of the finished body of every other
// (common practice). What passes through an eye or a jaw is the body of all of
// them. ok is false where that diameter is not known and for a make that is not
// known.
func BendDiameterM(m Make, bodyM, componentM float64) (diameterM float64, ok bool) {
	bend, known := statedBends()[m]
	switch {
	case !known:
		return 0, false
	case bend.ofComponent:
		bodyM = componentM
	}
	if !usable(bodyM) {
		return 0, false
	}
	return bodyM, true
}

// StatedBendD is the D/d that a tag's basket rating is usually stated for, in
// diameters as BendDiameterM has them: 25 for mechanical splices, 15 where both
// ends are hand-tucked, 25 components of a multi-part sling, 10 for cable-laid
// ones, 5 for grommets (common practice; older tables have 20 and 10, and the
// tag's own statement prevails). An end that is not known counts as pressed,
// which takes more off on a narrow body. ok is false for a make that is not
// known.
func StatedBendD(m Make, upper, lower Termination) (bodyOverRope float64, ok bool) {
	bend, ok := statedBends()[m]
	if ok && bend.tucked > 0 && spliceOf[upper] == "tuck" && spliceOf[lower] == "tuck" {
		return bend.tucked, true
	}
	return bend.pressed, ok
}

// statedBend is a make's rows of the table; tucked is 0 where splices make no
// difference.
type statedBend struct {
	pressed, tucked float64
	ofComponent     bool
}

var statedBends = sync.OnceValue(func() map[Make]statedBend {
	bends := map[Make]statedBend{}
	for _, row := range embeddedRows("stated-bends.csv") {
		bend := bends[Make(row["make"])]
		ratio := must(strconv.ParseFloat(row["body_over"], 64))
		if row["splice"] == "tuck" {
			bend.tucked = ratio
		} else {
			bend.pressed = ratio
		}
		bend.ofComponent = row["of"] == "component"
		bends[Make(row["make"])] = bend
	}
	return bends
})

// LeastEyeBendD is how wide what an eye goes round has to be, in rope diameters:
// under never it is not done (marine lifting guideline, read), under asked a
// soft eye of a single leg has less than EN 13414-1:2003 Table 4 note 1 (read)
// asks for. US practice only takes note of that: every matched shackle is about
// 1.1 to 1.5 rope diameters thick.
func LeastEyeBendD(soft bool) (never, asked float64) {
	if soft {
		return leastBodyOverRope, 2
	}
	return leastBodyOverRope, leastBodyOverRope
}

package capacity

import (
	"strconv"
	"sync"
)

// Least lengths that hold for every make of rope.
const (
	// circumferenceD is the least circumference of a grommet or an endless sling
	// over the diameter of its body (29 CFR 1910.184(f)(2), 1926.251(c)(13), read
	// in a state's text).
	circumferenceD = 96
	// endlessClear is the plain rope of an endless sling over the length of its
	// sleeve (EN 13414-1, read in a reprint).
	endlessClear = 3
	// eyeLays is the periphery of a soft eye over the rope's length of lay (EN
	// 13414-1, read in a reprint).
	eyeLays = 4
)

// LeastClearRopeM is the least length of plain rope between the splices or
// sleeves of a sling, in meters, which ClearRopeM is held against. By angle 10
// diameters of the body, or 40 components of a multi-part sling; by band 20
// diameters, or 15 where both ends are tucked (29 CFR 1910.184(f)(2); EN
// 13414-1; the table has the basis of each). An end that is not known counts as
// pressed, which asks for no less. ok is false where the diameter that counts
// is not known, for grommets, which have a least circumference instead, and for
// a make or practice that is not known.
func LeastClearRopeM(m Make, upper, lower Termination, bodyM, componentM float64, p BridlePractice) (lengthM float64, ok bool) {
	tucked := spliceOf[upper] == "tuck" && spliceOf[lower] == "tuck"
	for _, row := range leastLengths() {
		if row.practice != p || row.of != m || row.onlyTucked && !tucked {
			continue
		}
		d := bodyM
		if row.byComponent {
			d = componentM
		}
		if !usable(d) {
			return 0, false
		}
		lengthM, ok = row.times*d, true
	}
	return lengthM, ok
}

// leastLength is a row of the table; of those that hold, the last is meant.
type leastLength struct {
	practice                BridlePractice
	of                      Make
	onlyTucked, byComponent bool
	times                   float64
}

var leastLengths = sync.OnceValue(func() []leastLength {
	var rows []leastLength
	for _, row := range embeddedRows("least-lengths.csv") {
		rows = append(rows, leastLength{
			BridlePractice(row["practice"]), Make(row["make"]), row["splice"] == "tuck", row["of"] == "component",
			must(strconv.ParseFloat(row["times"], 64)),
		})
	}
	return rows
})

// LeastCircumferenceM is the least circumference of a grommet or an endless
// sling in meters: 96 diameters of its body. ok is false for a diameter that is
// none.
func LeastCircumferenceM(bodyM float64) (lengthM float64, ok bool) {
	return times(circumferenceD, bodyM)
}

// LeastEndlessClearM is the least length of plain rope of an endless sling with
// one sleeve, in meters, by EN 13414-1: 3 lengths of its sleeve. ok is false
// for a length that is none.
func LeastEndlessClearM(sleeveM float64) (lengthM float64, ok bool) {
	return times(endlessClear, sleeveM)
}

// LeastEyePeripheryM is the least inside periphery of a soft eye in meters, by
// EN 13414-1: 4 lengths of lay of its rope. ok is false for a length that is
// none.
func LeastEyePeripheryM(layM float64) (lengthM float64, ok bool) { return times(eyeLays, layM) }

// LayRangeD is how long a lay of six- and eight-strand rope is, in diameters, at
// the least and at the most. The range is wide on purpose (common practice, no
// source to name): it may only decide where a length that is not given can't
// matter.
func LayRangeD() (least, most float64) { return 5.5, 8 }

func times(n, m float64) (float64, bool) {
	if !usable(m) {
		return 0, false
	}
	return n * m, true
}

package capacity

import (
	"fmt"
	"strconv"
	"strings"
	"sync"
)

// ChokeFactor is the part of a sling's choker rating that is left at a choke
// angle in degrees, between the standing part and the loop: over 120 deg the
// whole, down to 0.49 under 30 deg (ASME B30.9 as trade tables give it, common
// practice). The tables count in whole degrees; what lies between two bands has
// the lower factor. It is an error unless the angle lies from 0 to 180 deg.
// Over about 135 deg a choke is not steady, which the factor does not say.
func ChokeFactor(chokeAngleDeg float64) (float64, error) {
	if !(chokeAngleDeg >= 0 && chokeAngleDeg <= 180) {
		return 0, fmt.Errorf("a choke angle lies from 0 to 180 deg between standing part and loop, not at %g", chokeAngleDeg)
	}
	for _, band := range chokeBands() {
		if band.holds(chokeAngleDeg) {
			return band.factor, nil
		}
	}
	return 0, fmt.Errorf("no factor is listed for a choke angle of %g deg", chokeAngleDeg)
}

// chokeBand is a row of the table; the first that holds is meant.
type chokeBand struct {
	holds  func(deg float64) bool
	factor float64
}

var chokeBands = sync.OnceValue(func() []chokeBand {
	var bands []chokeBand
	for _, row := range embeddedRows("choke-factors.csv") {
		bands = append(bands, chokeBand{anglesOf(row["angles"]), must(strconv.ParseFloat(row["factor"], 64))})
	}
	return bands
})

// anglesOf reads which angles a row is for: "over 120" or "from 90".
func anglesOf(text string) func(deg float64) bool {
	if least, ok := strings.CutPrefix(text, "over "); ok {
		over := must(strconv.ParseFloat(least, 64)) + angleSlackDeg
		return func(deg float64) bool { return deg > over }
	}
	from := must(strconv.ParseFloat(strings.TrimPrefix(text, "from "), 64)) - angleSlackDeg
	return func(deg float64) bool { return deg >= from }
}

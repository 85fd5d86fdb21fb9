package capacity

import (
	"strconv"
	"strings"
	"sync"

	"liftlint/internal/quantity"
)

// Termination is how the end of a sling is made.
type Termination string

// The terminations. The empty one is not known.
const (
	FlemishSleeve  Termination = "flemish_sleeve"
	TurnBackSleeve Termination = "turn_back_sleeve"
	HandTucked     Termination = "hand_tucked"
	HiddenTuck     Termination = "hidden_tuck"
	Socket         Termination = "socket"
)

// spliceOf is the name of a termination in the table of efficiencies. A hidden
// tuck counts as a hand-tucked splice (common practice).
var spliceOf = map[Termination]string{
	FlemishSleeve: "sleeve", TurnBackSleeve: "sleeve",
	HandTucked: "tuck", HiddenTuck: "tuck",
	Socket: "socket",
}

// SpliceEfficiency is the part of a rope's strength that is left at a
// termination, 0 to 1, the diameter in meters. By angle: MIL-DTL-3903F Table
// II (read), by size, and for a pressed sleeve by core. By band: KT of EN
// 13414-1 (read in a reprint). Sockets lose nothing (common practice). Between
// two sizes the higher efficiency holds, as the figure serves to find ratings
// that are too high. ok is false where termination, practice, or a core that
// matters is not known, and for tucks in rope thinner than the table's.
func SpliceEfficiency(t Termination, core string, diameterM float64, p BridlePractice) (efficiency float64, ok bool) {
	splice, known := spliceOf[t]
	if !known || !usable(diameterM) {
		return 0, false
	}
	for _, row := range spliceTable() {
		if row.practice == p && row.splice == splice && (row.core == anyCore || row.core == core) && row.sizes(diameterM) {
			efficiency, ok = row.efficiency, true
		}
	}
	return efficiency, ok
}

// BestSpliceEfficiency is the highest efficiency that an eye can have, be it
// pressed or tucked, for one whose making is not known; a core that is not
// known is taken at its strongest. It does not speak of sockets, which make no
// eye. Sources and limits are those of SpliceEfficiency.
func BestSpliceEfficiency(core string, diameterM float64, p BridlePractice) (efficiency float64, ok bool) {
	for _, t := range []Termination{FlemishSleeve, HandTucked} {
		for _, c := range givenOrAll(core, cores) {
			if e, known := SpliceEfficiency(t, c, diameterM, p); known {
				efficiency, ok = max(efficiency, e), true
			}
		}
	}
	return efficiency, ok
}

const anyCore = "any"

// spliceRow is a row of the table; of those that hold, the last is meant.
type spliceRow struct {
	practice     BridlePractice
	splice, core string
	sizes        func(diameterM float64) bool
	efficiency   float64
}

var spliceTable = sync.OnceValue(func() []spliceRow {
	var rows []spliceRow
	for _, row := range embeddedRows("splice-efficiencies.csv") {
		rows = append(rows, spliceRow{
			BridlePractice(row["practice"]), row["splice"], row["core"], sizesOf(row["sizes"]),
			must(strconv.ParseFloat(row["efficiency"], 64)),
		})
	}
	return rows
})

// sizesOf reads which sizes a row is for: "any", "over 1 in", "from 1/2 in",
// and "from about 3/8 in" where a table begins.
func sizesOf(text string) func(diameterM float64) bool {
	if text == "any" {
		return func(float64) bool { return true }
	}
	if size, ok := strings.CutPrefix(text, "over "); ok {
		least := float64(must(quantity.ParseLength(size))) * (1 + sameSize)
		return func(d float64) bool { return d > least }
	}
	size, slack := strings.TrimPrefix(text, "from "), sameSize
	if begins, ok := strings.CutPrefix(size, "about "); ok {
		size, slack = begins, tableReach
	}
	least := float64(must(quantity.ParseLength(size))) * (1 - slack)
	return func(d float64) bool { return d >= least }
}

package capacity

import (
	"math"
	"slices"
	"strconv"
	"strings"
	"sync"

	"liftlint/internal/quantity"
)

// chainDesignFactor is strength over rated load of alloy chain slings (ASME
// B30.9 and EN 818-4, from memory).
const chainDesignFactor = 4

// nominalOverBar is how much thicker the bar of a chain may be than its nominal
// size says: 3/8 in stands for 10 mm, 5 % more, and tables are rounded upwards.
const nominalOverBar = 1.06

// ChainRatedN is what a chain sling of one straight leg is rated for, in newtons,
// by grade ("80", "100") and nominal size in meters: by angle by US tables, in
// which 9/32 in and 7 mm are one chain, by band by metric ones (OSHA Guidance on
// Safe Sling Use Table 1, read; the other rows from memory, as the table says).
// A size that only the other practice lists is rated as it is there, the same chain
// being sold in both. Nothing is read between two sizes: chain is made in steps. ok
// is false for what is in neither table, and for a practice that is not known.
func ChainRatedN(sizeM float64, grade string, p BridlePractice) (ratedN float64, ok bool) {
	if p != ByAngle && p != ByBand {
		return 0, false
	}
	for _, row := range chainTable() {
		same := row.grade == grade && slices.ContainsFunc(row.sizesM, func(of float64) bool { return sameLength(of, sizeM) })
		if same && (row.practice == p || !ok) {
			ratedN, ok = row.ratedN, true
		}
		if same && row.practice == p {
			break
		}
	}
	return ratedN, ok
}

// StrongestChainRatedN is what a chain sling of one straight leg can't be rated
// over, in newtons: a chain breaks at a mean stress, over both bars of a link, of
// ten times its grade in N/mm2 (EN 818-2, from memory), its bar 6 % thicker than
// its nominal size, over 4. A grade that is not known counts as 120, the highest
// that is made (common practice). ok is false only for a size that is none.
func StrongestChainRatedN(sizeM float64, grade string) (ratedN float64, ok bool) {
	if !usable(sizeM) {
		return 0, false
	}
	return chainStrengthN(nominalOverBar*sizeM, chainStressPa(grade)) / chainDesignFactor, true
}

func chainStrengthN(barM, stressPa float64) float64 { return 2 * math.Pi / 4 * barM * barM * stressPa }

func chainStressPa(grade string) float64 {
	switch grade {
	case "80", "100":
		return must(strconv.ParseFloat(grade, 64)) * 10e6
	}
	return 120 * 10e6
}

func sameLength(a, b float64) bool { return math.Abs(a-b) <= sameSize*a }

// chainRow is a row of the table: all its sizes, in meters, name one chain.
type chainRow struct {
	practice BridlePractice
	grade    string
	sizesM   []float64
	ratedN   float64
}

var chainTable = sync.OnceValue(func() []chainRow {
	var rows []chainRow
	for _, row := range embeddedRows("chain-ratings.csv") {
		var sizes []float64
		for _, size := range strings.Split(row["sizes"], "|") {
			sizes = append(sizes, float64(must(quantity.ParseLength(size))))
		}
		rows = append(rows, chainRow{
			BridlePractice(row["practice"]), row["grade"], sizes, must(quantity.ParseLoad(row["rated"])).Newtons,
		})
	}
	return rows
})

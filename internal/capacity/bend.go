package capacity

import (
	"fmt"
	"math"
	"strconv"
	"sync"
)

// leastBodyOverRope is the D/d under which rope is not bent at all (marine
// lifting guideline, read).
const leastBodyOverRope = 1

// BendEfficiency is the part of a rope's own strength that is left where it
// goes round a body so many times its diameter wide, D/d: 1 - 0.5/sqrt(D/d)
// (marine lifting guideline, read). At a bend and a splice the two are not
// multiplied, the lower governs (same). It is an error under 1 and for what is
// no number.
func BendEfficiency(bodyOverRope float64) (float64, error) {
	if !(bodyOverRope >= leastBodyOverRope*(1-sameSize)) {
		return 0, tooTight(bodyOverRope)
	}
	return 1 - 0.5/math.Sqrt(bodyOverRope), nil
}

// TableBendEfficiency is the same by the table of the trade (common practice):
// 0.50 at D/d 1, 0.91 at 20, 0.95 from 40. Its rows lie up to 0.03 over the
// formula and 0.01 under it; between two rows the lower holds. Errors are those
// of BendEfficiency.
func TableBendEfficiency(bodyOverRope float64) (efficiency float64, err error) {
	if !(bodyOverRope >= leastBodyOverRope*(1-sameSize)) {
		return 0, tooTight(bodyOverRope)
	}
	for _, row := range bendTable() {
		if bodyOverRope >= row.bodyOverRope*(1-sameSize) {
			efficiency = row.efficiency
		}
	}
	return efficiency, nil
}

func tooTight(bodyOverRope float64) error {
	return fmt.Errorf("rope is not bent round a body less than %d rope diameter wide; this is %g", leastBodyOverRope, bodyOverRope)
}

// bendRow is a row of the table, which rises in both.
type bendRow struct{ bodyOverRope, efficiency float64 }

var bendTable = sync.OnceValue(func() []bendRow {
	var rows []bendRow
	for _, row := range embeddedRows("bend-efficiencies.csv") {
		rows = append(rows, bendRow{
			must(strconv.ParseFloat(row["body_over_rope"], 64)),
			must(strconv.ParseFloat(row["efficiency"], 64)),
		})
	}
	return rows
})

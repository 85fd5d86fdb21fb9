package capacity

import (
	"slices"
	"sort"
	"strconv"
	"sync"

	"liftlint/internal/quantity"
)

// Rope is what the strength of a wire rope follows from. What is not known is
// empty.
type Rope struct {
	Class      string  // "6x7", "6x19", "6x36", "6x37", "8x19" or "8x36"
	Core       string  // "fiber" or "iwrc"
	Grade      string  // "ips", "eips", "eeips", or "1770", "1960", "2160" in N/mm2
	DiameterM  float64 // nominal, in meters
	Galvanized bool    // takes off a sling's rating, not off the nominal strength
}

// Where no table gives a grade it is taken from extra improved plow steel with
// the same core (common practice, no source to name).
const (
	improvedOverExtra = 1 / 1.15
	doubleOverExtra   = 1.10
)

const (
	// tableReach is how far, as a part of the size, a rope may lie outside a
	// table and still be read from its last row: 9.5 mm stands for 3/8 in.
	tableReach = 0.03
	// sameSize is left for rounding where sizes are compared.
	sameSize = 1e-9
)

// usClasses are the classes that the US tables are used for. They are of
// 6x19; 6x36, of the 6x37 class, is up to 5 % weaker and counted alike, so
// that the strength is rather taken too high (common practice).
var usClasses = []string{"6x19", "6x36", "6x37"}

// NominalStrengthN is the nominal strength of a rope, in newtons, before any
// splice. Metric grades: K d^2 R, with K by class and core (EN 12385-4, from
// common practice). US grades: published tables of 6x19 rope. Between two
// sizes the one that is stronger for its size is followed, since the figure
// serves to find ratings that are too high. ok is false where class, core or
// grade is not known or has no table, and where the diameter is out of the
// table by more than 3 %.
func NominalStrengthN(r Rope) (strengthN float64, ok bool) {
	if !usable(r.DiameterM) {
		return 0, false
	}
	if tensile, metric := tensilePa(r.Grade); metric {
		k, ok := ropeFactors()[classAndCore{r.Class, r.Core}]
		return k * tensile * r.DiameterM * r.DiameterM, ok
	}
	if !slices.Contains(usClasses, r.Class) {
		return 0, false
	}
	rows, ratio := strengthTable(r.Core, r.Grade)
	perSquare, ok := perSquareAt(rows, r.DiameterM)
	return perSquare * ratio * r.DiameterM * r.DiameterM, ok
}

// tensilePa is R of a metric grade, in pascals.
func tensilePa(grade string) (float64, bool) {
	if !slices.Contains(metricGrades, grade) {
		return 0, false
	}
	return must(strconv.ParseFloat(grade, 64)) * 1e6, true
}

type (
	classAndCore struct{ class, core string }
	coreAndGrade struct{ core, grade string }
	// sizedStrength is a row of a table: strength over diameter squared, in
	// N/m2, of one diameter in meters.
	sizedStrength struct{ diameterM, perSquare float64 }
)

var ropeFactors = sync.OnceValue(func() map[classAndCore]float64 {
	factors := map[classAndCore]float64{}
	for _, row := range embeddedRows("rope-factors.csv") {
		factors[classAndCore{row["class"], row["core"]}] = must(strconv.ParseFloat(row["k"], 64))
	}
	return factors
})

// strengthTables hold their rows by rising diameter, as in the file.
var strengthTables = sync.OnceValue(func() map[coreAndGrade][]sizedStrength {
	tables := map[coreAndGrade][]sizedStrength{}
	for _, row := range embeddedRows("rope-strengths.csv") {
		d := float64(must(quantity.ParseLength(row["diameter"])))
		made := coreAndGrade{row["core"], row["grade"]}
		strength := must(quantity.ParseLoad(row["strength"])).Newtons
		tables[made] = append(tables[made], sizedStrength{d, strength / (d * d)})
	}
	return tables
})

// strengthTable is the table for a US grade, and what to multiply it by.
func strengthTable(core, grade string) (rows []sizedStrength, ratio float64) {
	if rows = strengthTables()[coreAndGrade{core, grade}]; rows != nil {
		return rows, 1
	}
	extra := strengthTables()[coreAndGrade{core, "eips"}]
	switch grade {
	case "ips":
		return extra, improvedOverExtra
	case "eeips":
		return extra, doubleOverExtra
	}
	return nil, 0
}

// perSquareAt reads a table: at one of its sizes that size's strength over
// diameter squared, between two the larger of theirs.
func perSquareAt(rows []sizedStrength, diameterM float64) (float64, bool) {
	last := len(rows) - 1
	if last < 0 || diameterM < rows[0].diameterM*(1-tableReach) || diameterM > rows[last].diameterM*(1+tableReach) {
		return 0, false
	}
	i := sort.Search(len(rows), func(i int) bool { return rows[i].diameterM >= diameterM*(1-sameSize) })
	if i <= last && rows[i].diameterM <= diameterM*(1+sameSize) {
		return rows[i].perSquare, true
	}
	return max(rows[max(i-1, 0)].perSquare, rows[min(i, last)].perSquare), true
}

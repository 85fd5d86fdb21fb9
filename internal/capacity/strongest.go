package capacity

import "slices"

// What a rope can be made of, as the plan has it.
var (
	cores        = []string{"fiber", "iwrc"}
	usGrades     = []string{"ips", "eips", "eeips"}
	metricGrades = []string{"1770", "1960", "2160"}
)

// thinnerThanTable is over the strongest row of a table, for its size, where a
// rope is thinner than the table's: for their size thinner ropes are stronger,
// by about 1 % a step at most. Thicker ones are weaker (read off the tables).
const thinnerThanTable = 1.05

// StrongestNominalN is the highest nominal strength, in newtons, that a rope
// can have by what is known of it: class, core and grade that are not given
// or not known are taken at their strongest, and so is what no table holds. A
// load over it is beyond any such rope. Sources and basis are those of
// NominalStrengthN; ok is false only if the diameter is none.
func StrongestNominalN(r Rope) (strengthN float64, ok bool) {
	if !usable(r.DiameterM) {
		return 0, false
	}
	perSquare := 0.0
	for _, core := range givenOrAll(r.Core, cores) {
		for _, grade := range givenOrAll(r.Grade, slices.Concat(usGrades, metricGrades)) {
			perSquare = max(perSquare, strongestPerSquare(r.Class, core, grade, r.DiameterM))
		}
	}
	return perSquare * r.DiameterM * r.DiameterM, true
}

func givenOrAll(given string, all []string) []string {
	if slices.Contains(all, given) {
		return []string{given}
	}
	return all
}

// strongestPerSquare is strength over diameter squared, in N/m2. For US grades
// the tables of 6x19 rope stand for every class, as K of the classes, which
// differ by 1 % upwards at most, shows to be right for metric ones.
func strongestPerSquare(class, core, grade string, diameterM float64) float64 {
	if tensile, metric := tensilePa(grade); metric {
		return strongestFactor(class, core) * tensile
	}
	rows, ratio := strengthTable(core, grade)
	if perSquare, ok := perSquareAt(rows, diameterM); ok {
		return perSquare * ratio
	}
	if last := rows[len(rows)-1]; diameterM > last.diameterM {
		return last.perSquare * ratio
	}
	most := 0.0
	for _, row := range rows {
		most = max(most, row.perSquare)
	}
	return most * ratio * thinnerThanTable
}

// strongestFactor is K of a class, or the largest with that core where the
// class is not known or has none.
func strongestFactor(class, core string) float64 {
	if k, ok := ropeFactors()[classAndCore{class, core}]; ok {
		return k
	}
	most := 0.0
	for of, k := range ropeFactors() {
		if of.core == core {
			most = max(most, k)
		}
	}
	return most
}

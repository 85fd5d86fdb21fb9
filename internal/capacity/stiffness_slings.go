package capacity

import (
	"math"
	"strconv"
	"sync"

	"liftlint/internal/gear"
)

// Stiffness of slings other than single ropes, EA in newtons, always at the stiff
// end, for the reason given at stiffModulusPa.

// layAgainModulusPa is the upper end of the modulus of ropes that are laid or
// braided once more, over the metallic area of their components: less than that of
// stranded rope, as the ropes straighten under load. From about 40 GPa up (common
// practice, no source to name).
const layAgainModulusPa = 80e9

// chainModulusPa is taken over both bars of a chain's links. It is this project's
// own choice, at the stiff end: mooring chain, of longer links, is counted at 54 to
// 64 GPa (from memory), and two straight bars would have 206.
const chainModulusPa = 100e9

// cableRopes is how many ropes a cable-laid body is laid up of, six round one
// (EN 13414-3, from memory), which makes it three ropes thick.
const cableRopes = 7

// MultiPartStiffnessN is EA of a multi-part sling: the area of its parts times the
// modulus of rope that is laid again. A core that is not known counts as a wire
// core. ok is false for less than two parts and a diameter that is none.
func MultiPartStiffnessN(componentM float64, parts int, core gear.Core) (stiffnessN float64, ok bool) {
	if !usable(componentM) || parts < 2 {
		return 0, false
	}
	one := AxialStiffnessN(componentM, core) * layAgainModulusPa / stiffModulusPa
	return float64(parts) * one, true
}

// CableLaidStiffnessN is EA of a cable-laid sling, or of one part of a cable-laid
// grommet: seven ropes of a third of its diameter, laid again. That of a
// strand-laid grommet's part is AxialStiffnessN of its body. ok is false for a
// diameter that is none.
func CableLaidStiffnessN(bodyM float64, core gear.Core) (stiffnessN float64, ok bool) {
	return MultiPartStiffnessN(bodyM/3, cableRopes, core)
}

// ChainStiffnessN is EA of a chain sling from its nominal size in meters: 100 GPa
// over the two bars of a link. ok is false for a size that is none.
func ChainStiffnessN(sizeM float64) (stiffnessN float64, ok bool) {
	if !usable(sizeM) {
		return 0, false
	}
	return chainModulusPa * 2 * math.Pi / 4 * sizeM * sizeM, true
}

// FabricStiffnessN is EA of a web or round sling: its rated load, straight, over
// the least stretch that is usual at it (common practice: polyester 3 %, nylon 6
// to 8 %). A material that is not known counts as the stiffer. ok is false for
// other kinds and materials, and for a rating that is none.
func FabricStiffnessN(k Kind, material string, ratedN float64) (stiffnessN float64, ok bool) {
	least, ok := LeastStretch(k, material)
	if !ok || !usable(ratedN) {
		return 0, false
	}
	return ratedN / least, true
}

// LeastStretch is the least stretch over length that is usual of a web or round sling
// at its rated load (common practice). A material that is not known counts as the
// stiffer. ok is false for other kinds and materials.
func LeastStretch(k Kind, material string) (ratio float64, ok bool) {
	least := math.Inf(1)
	for _, row := range stretchTable() {
		if row.kind == k && (row.material == material || material == "") {
			least = min(least, row.least)
		}
	}
	if math.IsInf(least, 1) {
		return 0, false
	}
	return least, true
}

type stretchRow struct {
	kind     Kind
	material string
	least    float64 // part of the length, at rated load
}

var stretchTable = sync.OnceValue(func() []stretchRow {
	var rows []stretchRow
	for _, row := range embeddedRows("stretch.csv") {
		rows = append(rows, stretchRow{Kind(row["kind"]), row["material"], must(strconv.ParseFloat(row["least_stretch"], 64))})
	}
	return rows
})

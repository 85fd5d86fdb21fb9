package capacity

import "math"

// What a section can be rated for at the most is reckoned so that no product comes
// near it: with more strength than is made and less of a design factor than is asked
// for. What lies over it is misread, or belongs to something larger.
const (
	// sectionSteelPa is a mean stress at which every steel of fittings has given way:
	// chain of grade 80 breaks at 800 N/mm2, of grade 100 at 1000 (EN 818-2, from
	// memory), and fittings, which are bent besides, sooner.
	sectionSteelPa = 1000e6
	// sectionShearOver is what a pin holds in shear over what a bar holds in tension
	// (common practice: 0.6).
	sectionShearOver = 0.6
	// sectionFactor is the least strength over rated load of fittings (ASME B30.26
	// asks for 5, and for 4 over 150 tons; read in a reprint).
	sectionFactor = 4
	// plateOverThickness is how wide an eye that is flat may be at each side of its
	// hole, in thicknesses (common practice: about 1).
	plateOverThickness = 1.5
	// fabricFactor is the least strength over rated load of fabric and mesh (ASME
	// B30.9, from memory).
	fabricFactor = 5
)

// What fabric and mesh hold at the most over width times thickness, in pascals:
// yarns of polyester, nylon and polypropylene break at up to about 1100 N/mm2, of
// HMPE and aramid at up to about 3500, and no weave or core is all yarn; of an
// endless sling, which hangs in two parts, less than half of each is (common
// practice). Mesh is mostly air.
const (
	fabricPa = 1000e6
	strongPa = 3000e6
	meshPa   = 400e6
)

// BarsMostRatedN is the most that a bow, a link or a ring can be rated for, in
// newtons, by the thickness of its section in meters: its two sides carry (statics).
// 0 for a thickness that is none.
func BarsMostRatedN(sectionM float64) float64 {
	return perSquare(2*math.Pi/4*sectionSteelPa/sectionFactor, sectionM)
}

// PinMostRatedN is the same of a pin by its diameter in meters: it is sheared in two
// places (statics).
func PinMostRatedN(diameterM float64) float64 {
	return perSquare(2*math.Pi/4*sectionShearOver*sectionSteelPa/sectionFactor, diameterM)
}

// EyeMostRatedN is the same of an eye, forged flat or cut from plate, by its
// thickness in meters.
func EyeMostRatedN(thicknessM float64) float64 {
	return perSquare(2*plateOverThickness*sectionSteelPa/sectionFactor, thicknessM)
}

// BowlMostRatedN is the same of a hook by the largest size of its section at the
// bowl, in meters.
func BowlMostRatedN(widthM float64) float64 {
	// The body is bent by half its opening and half its width besides being pulled,
	// which leaves about a sixth (statics, with the whole section yielding); but plans
	// give the lesser size of a section too, which may be two thirds of the larger: all
	// of it counts.
	return perSquare(sectionSteelPa/sectionFactor, widthM)
}

// FabricMostRatedN is the most that a straight sling of webbing, of yarns or of mesh
// can be rated for, in newtons, by width and thickness under load in meters and by
// its material; one that is not known counts as the strongest. 0 for sizes that are
// none and for other kinds.
func FabricMostRatedN(k Kind, material string, widthM, thicknessM float64) float64 {
	if !usable(widthM) || !usable(thicknessM) {
		return 0
	}
	return fabricStrengthPa(k, material) * widthM * thicknessM / fabricFactor
}

func fabricStrengthPa(k Kind, material string) float64 {
	switch {
	case k == Mesh:
		return meshPa
	case k != Web && k != Round:
		return 0
	}
	switch material {
	case "polyester", "nylon", "polypropylene":
		return fabricPa
	}
	return strongPa
}

// Package capacity holds what slings and fittings can carry and how they give:
// pure functions of their dimensions, in SI units.
package capacity

import "liftlint/internal/gear"

// Metallic area over diameter squared, at the upper end of what rope tables
// give: 0.45 to 0.46 for a wire core, 0.38 to 0.39 for a fiber core. Common
// practice: the tables agree, and no single document is named.
const (
	metallicAreaWireCore  = 0.46
	metallicAreaFiberCore = 0.39
)

// stiffModulusPa is the upper end of the modulus of stranded rope, 60 to 100
// GPa (common practice). The stiff end is the safe one for sharing a load:
// soft slings even their shares out, stiff ones do not.
const stiffModulusPa = 100e9

// AxialStiffnessN is EA of a wire rope, in newtons, at the stiff end. A core
// that is not known counts as a wire core, which is the stiffer.
func AxialStiffnessN(diameterM float64, core gear.Core) float64 {
	area := metallicAreaWireCore
	if core == gear.CoreFiber {
		area = metallicAreaFiberCore
	}
	return stiffModulusPa * area * diameterM * diameterM
}

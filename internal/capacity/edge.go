package capacity

import "fmt"

// Kind is what a sling or a fitting is, by the names of the plan; all fittings
// of forged or welded steel count as Hardware.
type Kind string

// The kinds.
const (
	WireRope Kind = "wire_rope_sling"
	Grommet  Kind = "grommet"
	Chain    Kind = "chain_sling"
	Web      Kind = "web_sling"
	Round    Kind = "round_sling"
	Mesh     Kind = "mesh_sling"
	Hardware Kind = "hardware"
)

const (
	bluntEdgeD   = 3 // radius over diameter from which an edge is none for rope and chain
	bluntFabricT = 3 // radius over thickness from which it is none for web and round slings
	bluntMeshT   = 6 // and for mesh (common practice: twice what fabric takes)
)

// EdgeFactor is the part of a rating that is left where a sling is bent over an
// edge of a radius, both in meters. sizeM is what BendDiameterM gives for rope,
// the nominal size of chain, the thickness of a flat or round sling under load.
// Rope and chain: under 1 d the edge is sharp, up to 3 d it takes what a bend
// round D = 2 r does, by BendEfficiency, from 3 d on it is no edge (a glossary
// of insurers, read). Web and round slings: sharp under 3 thicknesses (AS
// 1353.2, AS 4497.2, read), and nothing is taken off beyond. Of mesh no source
// tells: it is taken to be sharp under 6 thicknesses (common practice). What a basket
// loses round its body is BasketRatedN's. ok is false where the edge is sharp,
// where no source tells of the kind, and where a size is none: why says which.
func EdgeFactor(k Kind, radiusM, sizeM float64) (factor float64, ok bool, why string) {
	switch {
	case !(radiusM >= 0) || !usable(sizeM):
		return 0, false, fmt.Sprintf("an edge of radius %g m and a sling of %g m are no sizes", radiusM, sizeM)
	case k == WireRope || k == Grommet || k == Chain:
		return steelEdgeFactor(radiusM / sizeM)
	case k == Mesh && radiusM < bluntMeshT*sizeM*(1-sameSize):
		return 0, false, fmt.Sprintf("the edge is sharp: its radius is under %d thicknesses (common practice; no source tells of mesh)", bluntMeshT)
	case k == Mesh:
		return 1, true, ""
	case k != Web && k != Round:
		return 0, false, fmt.Sprintf("no source tells when an edge is sharp for the kind %q", k)
	case radiusM < bluntFabricT*sizeM*(1-sameSize):
		return 0, false, fmt.Sprintf("the edge is sharp: its radius is under %d thicknesses (AS 1353.2, AS 4497.2)", bluntFabricT)
	}
	return 1, true, ""
}

func steelEdgeFactor(radiusD float64) (float64, bool, string) {
	switch {
	case radiusD < 1-sameSize:
		return 0, false, "the edge is sharp: its radius is under 1 diameter (a glossary of insurers)"
	case radiusD >= bluntEdgeD*(1-sameSize):
		return 1, true, ""
	}
	factor, err := BendEfficiency(2 * radiusD)
	if err != nil {
		return 0, false, err.Error()
	}
	return factor, true, fmt.Sprintf("bent over a radius of %.3g diameters as round a body of twice that (a glossary of insurers)", radiusD)
}

package capacity

// Surface is what a sling bears on where it goes round a body.
type Surface string

// The surfaces.
const (
	DrySteel  Surface = "dry_steel"
	Wood      Surface = "wood"
	WetOrOily Surface = "wet_or_oily"
)

// Friction is the coefficient of friction between a wire rope sling and a
// surface, at the low end of what is usual: 0.15 to 0.2 of steel on steel, 0.3 to
// 0.5 of wood (common practice). For a wet or oily surface no figure is usual;
// 0.05 is this project's own choice, low enough that next to nothing is left to
// friction. It is false for a surface that is not known.
func Friction(s Surface) (mu float64, ok bool) {
	mu, ok = map[Surface]float64{DrySteel: 0.15, Wood: 0.3, WetOrOily: 0.05}[s]
	return mu, ok
}

package capacity

// Rules of thumb of US handbooks, good for a first choice and never for judging:
// chain of grade 80 holds three times what its rule says, and a tag prevails
// over all of them. All give rated loads, as newtons of force.

const (
	thumbInchM     = 0.0254
	thumbShortTonN = 2000 * 0.45359237 * 9.80665 // force, NIST SP 811
	thumbKgN       = 9.80665                     // force, standard gravity
)

// RopeThumbN is 8 D^2 short tons for rope of D inches (NAVEDTRA 14026, read),
// the diameter in meters; 0 for one that is none.
func RopeThumbN(diameterM float64) float64 {
	return perSquare(8*thumbShortTonN, diameterM/thumbInchM)
}

// MetricRopeThumbN is 8 d^2 kg for rope of d mm (Australian Emergency Manual,
// Disaster Rescue, s. 3.15, read): the square of d, not twice it.
func MetricRopeThumbN(diameterM float64) float64 { return perSquare(8*thumbKgN, diameterM*1000) }

// ChainThumbN is 8 D^2 short tons for chain of a nominal size of D inches (US
// Army FM 5-125 ch. 3, read).
func ChainThumbN(sizeM float64) float64 { return perSquare(8*thumbShortTonN, sizeM/thumbInchM) }

// ShackleThumbN is 3 D^2 short tons for a shackle of a nominal size of D inches
// (NAVEDTRA 14251, read).
func ShackleThumbN(sizeM float64) float64 { return perSquare(3*thumbShortTonN, sizeM/thumbInchM) }

func perSquare(ratedN, size float64) float64 {
	if !usable(size) {
		return 0
	}
	return ratedN * size * size
}

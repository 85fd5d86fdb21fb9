package capacity

import "fmt"

// PartPractice is how a load is taken to be shared by the parts of one sling
// that is doubled, or of a grommet.
type PartPractice string

// The practices.
const (
	// EqualParts gives each part the same.
	EqualParts PartPractice = "equal"
	// UnevenParts gives the two sides of each bend 45 and 55 % (marine lifting
	// guideline, read).
	UnevenParts PartPractice = "uneven"
	// SlidingParts gives the two sides 32.5 and 67.5 %, while the sling slides
	// round its bend as a load is upended (same, read).
	SlidingParts PartPractice = "sliding"
)

const (
	unevenShare  = 0.55
	slidingShare = 0.675
)

// PartShares is the share of the whole load, 0 to 1, in the most loaded part of
// a sling that carries it with so many parts: one straight; two over one bend,
// or a grommet used straight; four, a grommet doubled. Unevenly that is 0.55
// for each bend that shares the load; of sliding the source tells for two parts
// alone. It is an error for a number of parts that the practice does not tell
// of and for a practice that is not known.
func PartShares(parts int, p PartPractice) (float64, error) {
	switch {
	case parts == 1 && (p == EqualParts || p == UnevenParts || p == SlidingParts):
		return 1, nil
	case parts > 1 && p == EqualParts:
		return 1 / float64(parts), nil
	case parts == 2 && p == UnevenParts:
		return unevenShare, nil
	case parts == 4 && p == UnevenParts:
		return unevenShare * unevenShare, nil
	case parts == 2 && p == SlidingParts:
		return slidingShare, nil
	}
	return 0, fmt.Errorf("no share is known for %d parts of one sling by the practice %q", parts, p)
}

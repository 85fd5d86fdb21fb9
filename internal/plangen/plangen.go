// Package plangen makes lift plans from a seed: varied, believable, and the
// same text for the same seed. They serve tests and measuring; the site and
// all its gear are invented.
package plangen

import "math/rand/v2"

// Streams of chance, so that how a plan is written changes nothing of what it
// says.
const (
	lifts = iota
	styles
	changes
	arranging
)

func stream(seed, which uint64) *rand.Rand { return rand.New(rand.NewPCG(seed, which)) }

// Valid is the text of a complete plan that hangs level and breaks no rule
// worse than a note under United States practice.
func Valid(seed uint64) string {
	return print(seed, newSketch(stream(seed, lifts)).tree())
}

// Draft is the text of a plan as it comes to the desk: well formed, with data
// left out at random, tags and inspections in every state, legs of any length.
// Nothing is promised of what rules find in it.
func Draft(seed uint64) string { return print(seed, draft(seed)) }

func print(seed uint64, root *entry) string {
	s := newStyle(stream(seed, styles))
	text, _ := s.write(root, nil)
	return s.finish(text)
}

// Gap is a plan that lacks one thing it may leave out.
type Gap struct {
	Without string // path of what is left out, with ids in place of numbers
	Text    string
}

// Gaps takes each thing that a plan may leave out away from Draft or Valid of
// the seed, one at a time.
func Gaps(seed uint64, drafted bool) (whole string, gaps []Gap) {
	make := func() *entry {
		if drafted {
			return draft(seed)
		}
		return newSketch(stream(seed, lifts)).tree()
	}
	var paths []string
	make().optional("", func(path string, _, _ *entry) { paths = append(paths, path) })
	for _, without := range paths {
		root := make()
		root.leave(without)
		gaps = append(gaps, Gap{without, print(seed, root)})
	}
	return print(seed, make()), gaps
}

// leave takes the field at a path out.
func (e *entry) leave(without string) {
	var from, what *entry
	e.optional("", func(path string, parent, field *entry) {
		if path == without {
			from, what = parent, field
		}
	})
	from.drop(what.key)
}

package plangen

import "slices"

// arrangedMistake is one kind of mistake in an arrangement.
type arrangedMistake struct {
	what     string
	rule     string
	severity string              // error where it says nothing else
	in       []string            // the arrangements it can be made in
	suits    func(*rig) bool     // which of those; all where nil
	sow      func(*field) *entry // changes the plan; gives the entry that the report points at
}

// field is an arrangement and its plan, in which a mistake is sown.
type field struct {
	*rig
	root *entry
}

func (f *field) item(id string) *entry { return f.items.with("id", id) }

// kind is the first item of a kind.
func (f *field) kind(kind string) *entry { return f.items.with("kind", kind) }

func (f *field) load() *entry { return f.root.at("load") }

// hitch is the leg of the first sling that goes round or over something.
func (f *field) hitch() *entry {
	for _, s := range f.supports.below {
		for _, leg := range s.at("legs").below {
			if leg.at("end", "kind").text != "to" {
				return leg
			}
		}
	}
	return nil
}

// slingOf is the sling of a leg, and where that names it.
func (f *field) slingOf(leg *entry) (sling, named *entry) {
	for _, id := range leg.at("down").below {
		if item := f.item(id.text); item.at("core") != nil {
			return item, id
		}
	}
	return nil, nil
}

// ArrangedMistakes is how many kinds of mistake there are in arrangements.
func ArrangedMistakes() int { return len(arrangedMistakes()) }

func arrangedMistakes() []arrangedMistake {
	return slices.Concat(beamMistakes(), hitchMistakes(), craneMistakes())
}

// ArrangedFault makes a plan like those of Arranged and puts one mistake in: which
// one is the seed's remainder by ArrangedMistakes.
func ArrangedFault(seed uint64) Faulty {
	list := arrangedMistakes()
	n := uint64(len(list))
	m := list[seed%n]
	build := func(r *rig) {
		i := slices.IndexFunc(arrangements(), func(a arrangement) bool { return a.name == m.in[seed/n%uint64(len(m.in))] })
		r.open, r.plain = false, m.rule != "route/adjuster_out_of_range"
		arrangements()[i].build(r)
	}
	r := stream(seed, arranging)
	g := newRig(r)
	for build(g); m.suits != nil && !m.suits(g); build(g) {
		g = newRig(r)
	}
	f := &field{g, g.tree()}
	style := newStyle(stream(seed, styles))
	text, line := style.write(f.root, m.sow(f))
	if m.severity == "" {
		m.severity = "error"
	}
	return Faulty{What: m.what, Text: style.finish(text), Rule: m.rule, Severity: m.severity, Line: line}
}

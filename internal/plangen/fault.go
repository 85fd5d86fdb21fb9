package plangen

// Faulty is a plan with one mistake in it.
type Faulty struct {
	What     string // the mistake in words
	Text     string
	Rule     string // what is to report it
	Severity string // how bad that is at the stage review
	Line     int    // where it is to point, from 1
}

// mistake is one kind of mistake. The lift it is made in suits it.
type mistake struct {
	what     string
	rule     string
	severity string              // error where it says nothing else
	suits    func(*sketch) bool  // which lifts it can be made in; all where nil
	bend     func(*sketch)       // changes the lift
	sow      func(*plot) *entry  // changes the plan; gives the entry that the report points at
	scar     func(*lines) string // changes the text near that entry
}

// plot is a lift and its plan, in which a mistake is sown.
type plot struct {
	*sketch
	root *entry
}

func (p *plot) lift() *entry { return p.root.at("lift") }

func (p *plot) load() *entry { return p.root.at("load") }

func (p *plot) gear() *entry { return p.root.at("gear") }

func (p *plot) item(id string) *entry { return p.gear().with("id", id) }

func (p *plot) rigging() *entry { return p.root.at("rigging").below[0] }

func (p *plot) leg(i int) *entry { return p.rigging().at("legs").below[i] }

// Mistakes is how many kinds of mistake there are.
func Mistakes() int { return len(mistakes()) }

func mistakes() []mistake {
	var all []mistake
	for _, m := range [][]mistake{fileMistakes(), formMistakes(), linkMistakes(), gapMistakes(), gearMistakes(), liftMistakes()} {
		all = append(all, m...)
	}
	return all
}

// Fault makes a plan like that of Valid and puts one mistake in: which one is
// the seed's remainder by Mistakes.
func Fault(seed uint64) Faulty {
	all := mistakes()
	m := all[seed%uint64(len(all))]
	r := stream(seed, lifts)
	s := newSketch(r)
	for m.suits != nil && !m.suits(s) {
		s = newSketch(r)
	}
	if m.bend != nil {
		m.bend(s)
	}
	p := &plot{s, s.tree()}
	style := newStyle(stream(seed, styles))
	text, line := style.write(p.root, m.sow(p))
	if m.scar != nil {
		l := &lines{text: text, line: line}
		text = m.scar(l)
		line = l.line
	}
	if m.severity == "" {
		m.severity = "error"
	}
	return Faulty{What: m.what, Text: style.finish(text), Rule: m.rule, Severity: m.severity, Line: line}
}

// legs suits lifts of so many legs.
func legs(least, most int) func(*sketch) bool {
	return func(s *sketch) bool { return len(s.points) >= least && len(s.points) <= most }
}

func both(a, b func(*sketch) bool) func(*sketch) bool {
	return func(s *sketch) bool { return a(s) && b(s) }
}

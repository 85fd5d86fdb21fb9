package plangen

import "slices"

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

// tagged is what has the tag that sling S1 is used by: itself, or its bridle.
func (p *plot) tagged() *entry {
	if p.bridle {
		return p.item("B1")
	}
	return p.item("S1")
}

// fitting is the lowest part of the first leg.
func (p *plot) fitting() *entry { return p.item(p.fittingID(0)) }

func (p *plot) attachments() *entry { return p.load().at("attachments") }

// ratedFlat has every padeye rated for pulls as flat as any leg is made to hang.
func (p *plot) ratedFlat() {
	for _, a := range p.attachments().below {
		if a.at("kind").text == "padeye" {
			a.set(val("rated_to_angle_from_horizontal", "10 deg"))
		}
	}
}

func (p *plot) hook() *entry { return p.root.at("crane", "hook") }

func (p *plot) rigging() *entry { return p.root.at("rigging").below[0] }

func (p *plot) leg(i int) *entry { return p.rigging().at("legs").below[i] }

// Mistakes is how many kinds of mistake there are.
func Mistakes() int { return len(mistakes()) }

func mistakes() []mistake {
	var list []mistake
	for _, m := range [][]mistake{
		fileMistakes(), formMistakes(), linkMistakes(), gapMistakes(), gearMistakes(), liftMistakes(),
		ropeMistakes(), bridleMistakes(), fitMistakes(), pointMistakes(),
	} {
		list = append(list, m...)
	}
	return list
}

// Fault makes a plan like that of Valid and puts one mistake in: which one is
// the seed's remainder by Mistakes.
func Fault(seed uint64) Faulty {
	list := mistakes()
	m := list[seed%uint64(len(list))]
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

func all(those ...func(*sketch) bool) func(*sketch) bool {
	return func(s *sketch) bool {
		return !slices.ContainsFunc(those, func(suits func(*sketch) bool) bool { return !suits(s) })
	}
}

// loose suits lifts of slings with tags of their own.
func loose(s *sketch) bool { return !s.bridle }

func bridled(s *sketch) bool { return s.bridle }

func linked(s *sketch) bool { return s.link }

func direct(s *sketch) bool { return !s.link }

func hooked(s *sketch) bool { return s.hooks }

func shackled(s *sketch) bool { return !s.hooks }

// to suits lifts by attachments of these kinds.
func to(kinds ...string) func(*sketch) bool {
	return func(s *sketch) bool { return slices.Contains(kinds, s.kind) }
}

package remedy

import "fmt"

// wideEnough words an opening that takes what is to go into it, by the field
// that holds its width.
func (m *Mender) wideEnough(a ask, needs, words string) (string, bool) {
	width, ok := a.number(needs)
	if !ok {
		return "", false
	}
	return fmt.Sprintf(words, m.widthUp(width)), true
}

// fills reports whether what is judged is how much of an opening is filled.
func (a ask) fills() bool { return a.measured == "filled_ratio" }

// widerHole names the least hole for a pin or a hook; where the pin has too much
// play, the thinnest pin that fills enough of the hole.
func (m *Mender) widerHole(a ask) (string, bool) {
	if !a.fills() {
		return m.wideEnough(a, "needs_m", "a hole of at least %s, or a thinner part in it")
	}
	room, ok := a.number("room_m")
	if !ok {
		return "", false
	}
	return fmt.Sprintf("a shackle with a pin of at least %s, or a bush in the hole", m.widthUp(room*a.limit)), true
}

// widerJaw names the least jaw for a plate; where the plate lies loose, the
// widest jaw that it fills enough of.
func (m *Mender) widerJaw(a ask) (string, bool) {
	if !a.fills() {
		return m.wideEnough(a, "needs_m", "a shackle with at least %s there")
	}
	needs, ok := a.number("needs_m")
	if !ok || a.limit <= 0 {
		return "", false
	}
	widest, ok := m.widthDown(needs / a.limit)
	return "spacers on the pin on both sides, or a shackle with a jaw of at most " + widest, ok
}

func (m *Mender) widerLink(a ask) (string, bool) {
	return m.wideEnough(a, "needs_m", "a link or shackle of at least %s inside width, or a link between that goes over the hook")
}

func (m *Mender) widerOpening(a ask) (string, bool) {
	return m.wideEnough(a, "needs_m", "an opening of at least %s, or a thinner part in it")
}

func (m *Mender) widerCollector(a ask) (string, bool) {
	return m.wideEnough(a, "needs_m", "at least %s of clear width, or a wider link that gathers the legs")
}

func (m *Mender) widerThroat(a ask) (string, bool) {
	return m.wideEnough(a, "widest_m", "a hook with a throat of at least %s, or something thinner in it")
}

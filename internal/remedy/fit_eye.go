package remedy

import (
	"fmt"

	"liftlint/internal/quantity"
)

func (m *Mender) widerEye(a ask) (string, bool) {
	return m.wideEnough(a, "body_width_m", "an eye that lies at least %s wide, a thimbled eye that fits, or a link between")
}

func (m *Mender) widerThimble(a ask) (string, bool) {
	return m.wideEnough(a, "body_width_m", "a thimble of at least %s inside, or a shackle or link between")
}

// thimbleForRope names the rope that the thimble has to be made for.
func (m *Mender) thimbleForRope(a ask) (string, bool) {
	rope, ok := a.number("rope_diameter_m")
	if !ok {
		return "", false
	}
	return "a thimble made for a rope of " + quantity.Length(rope).Format(m.units), true
}

// thickerBody is as many rope diameters as are asked for.
func (m *Mender) thickerBody(a ask) (string, bool) {
	rope, ok := a.number("rope_diameter_m")
	if !ok {
		return "", false
	}
	return fmt.Sprintf("a body of at least %s to bend round, or a thimble in the eye", m.widthUp(rope*a.limit)), true
}

// rounderEdge is half as many sizes of the sling as are asked for across.
func (m *Mender) rounderEdge(a ask) (string, bool) {
	size, ok := a.number("sling_size_m")
	if !ok {
		return "", false
	}
	return fmt.Sprintf("edges, or corner pieces over them, of at least %s in radius", m.widthUp(size*a.limit/2)), true
}

// thickerRound is as many sizes of the sling as are asked for.
func (m *Mender) thickerRound(a ask) (string, bool) {
	size, ok := a.number("sling_size_m")
	if !ok {
		return "", false
	}
	return fmt.Sprintf("something of at least %s to bend round, or a thinner sling", m.widthUp(size*a.limit)), true
}

package remedy

import (
	"fmt"
	"math"

	"liftlint/internal/plan"
)

// alignedPlate says by how much a plate or an eye has to be turned about the
// vertical for its leg to pull in its plane, and what side pull it would have to
// be rated for as it stands.
func (m *Mender) alignedPlate(a ask) (string, bool) {
	off, ok := a.number("out_of_plane_deg")
	if !ok {
		return "", false
	}
	rated := fmt.Sprintf("one that is rated for a side pull of at least %s", upDeg(off))
	turn, ok := m.turnIntoPullDeg(a, off)
	switch onBeam, _ := a.subject.Field("on_beam"); {
	case onBeam == true:
		return "points as far apart as those below, so that their legs pull in the plane of the plates, or " + rated, true
	case off > crosswiseDeg && !ok:
		return "turn it by 90 deg, so that its leg pulls in its plane", true
	case off > crosswiseDeg:
		return fmt.Sprintf("turn it by %s about the vertical, so that its leg pulls in its plane", inDeg(turn)), true
	case !ok:
		return rated, true
	}
	return fmt.Sprintf("turn it by %s about the vertical, so that its leg pulls in its plane, or %s", inDeg(turn), rated), true
}

// crosswiseDeg is the side pull beyond which a plate stands across its pull, and no
// rating for it is to be had (this project's own limit).
const crosswiseDeg = 45.0

// turnIntoPullDeg is the angle about the vertical between an upright plate and
// the pull of its one leg: a pull at the angle e from horizontal, seen from
// above, leaves the plate by t where sin(off) = cos(e) sin(t) (statics of
// directions, worked here). Which way to turn is for whoever sees the two. Of a lift
// in phases no one turn suits all.
func (m *Mender) turnIntoPullDeg(a ask, offDeg float64) (float64, bool) {
	elevation, ok := a.number("pull_angle_from_horizontal_deg")
	legs, _ := a.subject.Field("legs")
	if !ok || legs != 1 || !m.standsUpright(a) || len(m.plan.Phases) > 0 {
		return 0, false
	}
	sine := math.Sin(offDeg*math.Pi/180) / math.Cos(elevation*math.Pi/180)
	if math.IsNaN(sine) || sine > 1+1e-9 {
		return 0, false
	}
	return math.Asin(min(1, sine)) * 180 / math.Pi, true
}

// standsUpright reports whether the hole of an attachment runs level.
func (m *Mender) standsUpright(a ask) bool {
	id, _ := a.subject.Field("id")
	at := m.attachment(id)
	return at != nil && (at.HoleAxis == "along" || at.HoleAxis == "across")
}

func (m *Mender) attachment(id any) *plan.Attachment {
	if m.plan == nil {
		return nil
	}
	for i := range m.plan.Load.Attachments {
		if at := &m.plan.Load.Attachments[i]; at.ID == id {
			return at
		}
	}
	return nil
}

// furtherFromAxis names how far from its axis a hoist ring has to be rated.
func (m *Mender) furtherFromAxis(a ask) (string, bool) {
	off, ok := a.number("off_axis_deg")
	if !ok {
		return "", false
	}
	return fmt.Sprintf("a hoist ring whose rated load holds to at least %s from its axis, or a leg more in line with it", upDeg(off)), true
}

// boltForAngle names what takes a pull at an angle in place of a plain eyebolt.
func (m *Mender) boltForAngle(a ask) (string, bool) {
	off, ok := a.number("off_axis_deg")
	if !ok {
		return "", false
	}
	return fmt.Sprintf("a hoist ring whose rated load holds to at least %s from its axis, or a shouldered eyebolt, seated, with a rated load of its own at that angle", upDeg(off)), true
}

// flatterRating names how flat a pull an attachment would have to be rated for.
func (m *Mender) flatterRating(a ask) (string, bool) {
	pull, ok := a.number("pull_angle_from_horizontal_deg")
	if !ok || a.limit <= pull {
		return "", false
	}
	return fmt.Sprintf("longer legs, for a pull at %s or steeper, or an attachment that is rated down to %s", upDeg(a.limit), inDeg(downTo(pull, 1))), true
}

// upDeg words an angle, rounded up to a whole degree.
func upDeg(deg float64) string { return inDeg(ceilTo(deg, 1)) }

// inDeg words an angle to a tenth of a degree.
func inDeg(deg float64) string { return plain(deg, 1) + " deg" }

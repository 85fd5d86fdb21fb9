package plan

import "liftlint/internal/gear"

func decodeBeam(f fields, common gear.Common) gear.Item {
	b := &gear.Beam{
		Common:           common,
		RatedLoad:        f.load("rated_load"),
		RatedCompression: f.load("rated_compression"),
		RatedBending:     f.moment("rated_bending_moment"),
		LeastTopAngle:    f.angle("least_top_angle_from_horizontal"),
		SpanRatedFor:     f.length("span_rated_for"),
		Category:         f.text("category"),
		MadeFor:          f.text("made_for"),
		ProofTest:        decodeProofTest(f.of("proof_test")),
	}
	if c, _ := decodePoint(f.of("center_of_gravity")); c != nil {
		b.CenterOfGravity = &gear.Position{X: c.X, Y: c.Y, Z: c.Z}
	}
	return b
}

func decodeProofTest(f fields) *gear.ProofTest {
	if !f.exists() {
		return nil
	}
	return &gear.ProofTest{Pointer: f.pointer(), Load: f.ratio("load"), Date: f.day("date")}
}

// decodeBeams lists all beams of the gear with their points, in the order of
// the gear.
func decodeBeams(list []fields, items []gear.Item) []Beam {
	var beams []Beam
	for i, item := range items {
		if b, ok := item.(*gear.Beam); ok {
			beams = append(beams, Beam{Item: b, Points: decodePoints(list[i], b)})
		}
	}
	return beams
}

// decodePoints reads the points of a beam. They are plates with a hole, as
// padeyes are.
func decodePoints(f fields, b *gear.Beam) []Attachment {
	var points []Attachment
	for _, p := range f.of("points").items() {
		a := decodeAttachment(p)
		a.ID, a.Kind, a.Beam = pointID(b, a.ID), Padeye, b
		points = append(points, a)
	}
	return points
}

// pointID is what the plan calls a point of a beam, as SB1.left.
func pointID(b *gear.Beam, id string) string { return b.ID + "." + id }

package plangen

import (
	"fmt"
	"math"
	"strings"

	"liftlint/internal/quantity"
)

// Valid is the text of a plan that is valid, hangs level and breaks no rule
// worse than a note under United States practice.
func Valid(seed uint64) string { return newSketch(seed).text() }

func (s *sketch) text() string {
	var b strings.Builder
	fmt.Fprintf(&b, "# Saltmarsh Quay water works, an invented site\nliftlint: 1\n\nlift:\n  id: SQ-%03d\n  title: Lift unit %d onto its base\n  date: 2026-12-04\n", s.r.IntN(1000), 1+s.r.IntN(40))
	if s.us {
		b.WriteString("  units: us\n")
	}
	s.writeLoad(&b)
	fmt.Fprintf(&b, "\ncrane:\n  hook: {body_width: %s}\n\ngear:\n", s.length(0.09))
	if s.link {
		fmt.Fprintf(&b, "  - {id: ML1, kind: master_link, rated_load: %s, inside_length: %s, section_diameter: %s, inspection: {date: 2026-05-20}}\n",
			s.mass(s.rating), s.length(0.27), s.length(0.03))
	}
	for i := range s.points {
		s.writeSling(&b, i)
		fmt.Fprintf(&b, "  - {id: K%d, kind: shackle, rated_load: %s, inside_length: %s, inspection: {date: 2026-05-20}}\n", i+1, s.mass(s.rating), s.length(s.shackle))
	}
	s.writeRigging(&b)
	return b.String()
}

func (s *sketch) writeLoad(b *strings.Builder) {
	fmt.Fprintf(b, "\nload:\n  mass: %s\n  mass_known_by: %s\n  mass_tolerance: %d %%\n", s.mass(s.massT), []string{"weighed", "documented", "calculated"}[s.r.IntN(3)], s.r.IntN(4))
	fmt.Fprintf(b, "  center_of_gravity: %s\n  attachments:\n", s.point(s.center))
	for i, p := range s.points {
		fmt.Fprintf(b, "    - {id: %c, kind: padeye, %s, rated_load: %s}\n", 'A'+i, strings.Trim(s.point(p), "{}"), s.mass(s.rating))
	}
}

func (s *sketch) writeSling(b *strings.Builder, i int) {
	fields := []string{
		fmt.Sprintf("id: S%d", i+1),
		"kind: wire_rope_sling",
		"core: iwrc",
		"diameter: " + s.diameter(),
		"length: " + s.length(s.legM[i]),
		fmt.Sprintf("eyes: {upper: {length: %s}, lower: {length: %s}}", s.length(0.35), s.length(0.35)),
		fmt.Sprintf("tag: {condition: legible, maker: loft, serial: \"%04d\", diameter: %s, rated_load: %s, hitch: vertical, angle_from_horizontal: 90 deg}", s.r.IntN(10000), s.diameter(), s.mass(s.rope.ratedT)),
		fmt.Sprintf("inspection: {date: 2026-%02d-11}", 1+s.r.IntN(9)),
	}
	if s.flow {
		fmt.Fprintf(b, "  - {%s}\n", strings.Join(fields, ", "))
		return
	}
	fmt.Fprintf(b, "  # leg %d\n  - %s\n", i+1, strings.Join(fields, "\n    "))
}

func (s *sketch) writeRigging(b *strings.Builder) {
	b.WriteString("\nrigging:\n  - from: hook\n")
	if s.link {
		b.WriteString("    by: [ML1]\n")
	}
	b.WriteString("    legs:\n")
	for i := range s.points {
		fmt.Fprintf(b, "      - {down: [S%d, K%d], end: {kind: to, at: %c}}\n", i+1, i+1, 'A'+i)
	}
}

func (s *sketch) point(p [3]float64) string {
	return fmt.Sprintf("{x: %s, y: %s, z: %s}", s.length(p[0]), s.length(p[1]), s.length(p[2]))
}

// length writes meters in one of the ways that people do.
func (s *sketch) length(m float64) string {
	switch {
	case s.us && m > 1:
		eighths := math.Round(m / 0.0254 * 8)
		feet := math.Floor(eighths / 96)
		return fmt.Sprintf("%.0f ft %s", feet, inches(eighths-96*feet))
	case s.us:
		return inches(math.Round(m / 0.0254 * 8))
	case m < 1:
		return fmt.Sprintf("%.0f mm", math.Round(m*1000))
	}
	return quantity.Length(math.Round(m*1000) / 1000).In("m")
}

func inches(eighths float64) string {
	whole, part := math.Floor(eighths/8), int(eighths)%8
	if part == 0 {
		return fmt.Sprintf("%.0f in", whole)
	}
	if whole == 0 {
		return fmt.Sprintf("%d/8 in", part)
	}
	return fmt.Sprintf("%.0f-%d/8 in", whole, part)
}

func (s *sketch) diameter() string { return fmt.Sprintf("%.0f mm", s.rope.diameterMM) }

// mass writes tonnes in one of the ways that people do.
func (s *sketch) mass(t float64) string {
	switch {
	case s.us:
		return fmt.Sprintf("%.0f lb", math.Round(t*1000/0.45359237))
	case t < 2:
		return fmt.Sprintf("%.0f kg", t*1000)
	}
	return quantity.Mass(t * 1000).In("t")
}

package mechanics

import "slices"

// boundMatrix is balanceMatrix as bounds count. Links that hang side by side from one
// place, as those of a bridle, shift with small differences of length, and with them
// the directions of what hangs from them: their lines are taken to lead to that place,
// where they meet. What points without mass would ask for is left out; what bodies ask
// for stays.
func (s *system) boundMatrix(st []pose, cols []strand) []float64 {
	if !s.hasPoints() {
		return s.balanceMatrix(st, cols)
	}
	places := s.linkPlaces()
	shifted := slices.Clone(cols)
	for j := range shifted {
		if s.holdsBody(&shifted[j]) {
			shifted[j].runs = slices.Clone(shifted[j].runs)
			for k := range shifted[j].runs {
				r := &shifted[j].runs[k]
				r.from, r.to = places.of(r.from), places.of(r.to)
			}
		}
	}
	a, m := s.balanceMatrix(st, shifted), len(cols)
	for b := range s.masses {
		if s.masses[b].point {
			o := s.masses[b].o
			clear(a[o*m : (o+3)*m])
		}
	}
	return a
}

// linkPlaces are, by point, the place that links side by side hang from.
type linkPlaces map[int]end

func (p linkPlaces) of(e end) end {
	if up, ok := p[e.body]; ok {
		return up
	}
	return e
}

// linkPlaces finds the points that hang, each by one line, from a place with others
// like them.
func (s *system) linkPlaces() linkPlaces {
	above := map[int][]end{}
	for i := range s.sliding {
		if s.holdsBody(&s.sliding[i]) {
			continue
		}
		for _, r := range s.sliding[i].runs {
			if r.to.body != World {
				above[r.to.body] = append(above[r.to.body], r.from)
			}
		}
	}
	from := map[end]int{}
	for _, ends := range above {
		if len(ends) == 1 {
			from[ends[0]]++
		}
	}
	places := linkPlaces{}
	for b, ends := range above {
		if len(ends) == 1 && from[ends[0]] > 1 {
			places[b] = ends[0]
		}
	}
	return places
}

// holdsBody reports whether a line pulls on a body that is no point.
func (s *system) holdsBody(l *strand) bool {
	return slices.ContainsFunc(l.runs, func(r run) bool { return s.isBody(r.from.body) || s.isBody(r.to.body) })
}

func (s *system) isBody(b int) bool { return b != World && !s.masses[b].point }

// holding leaves out columns that pull on no body, which nothing bounds.
func (s *system) holding(columns []int, cols []strand) []int {
	return slices.DeleteFunc(columns, func(j int) bool { return !s.holdsBody(&cols[j]) })
}

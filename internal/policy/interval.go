package policy

import (
	"fmt"
	"slices"
	"strings"

	"liftlint/internal/finding"
	"liftlint/internal/nearest"
)

// intervalRule is the rule that goes by the intervals: a configuration that sets
// one is told of with it.
const intervalRule = "inspection/overdue"

// normalService is what harder service is never inspected less often than.
const normalService = "normal"

// ofKind is a kind of gear in a service.
type ofKind struct{ kind, service string }

// Shortened is the profile with the intervals of configurations, the outermost
// first, and what each has changed. None can lengthen one that a profile or a
// configuration before it gives: past its inspection nobody may use gear, whatever
// a folder says.
func (p Profile) Shortened(layers []Layer) (Profile, []Override, Problems) {
	p.shortened = nil
	s := shortening{profile: p, months: map[ofKind]int{}}
	for _, l := range layers {
		s.layer(l)
	}
	if len(s.months) > 0 {
		s.harderService()
		p.shortened = s.months
	}
	return p, s.overrides, s.problems
}

// shortening goes through configurations.
type shortening struct {
	profile   Profile
	months    map[ofKind]int // those that are set
	overrides []Override
	problems  Problems
}

// is gives the interval in force so far, in months.
func (s *shortening) is(of ofKind) (int, bool) {
	if m, ok := s.months[of]; ok {
		return m, true
	}
	return s.profile.IntervalMonths(of.kind, of.service)
}

// layer takes the entries of one configuration: those for all gear first, which those
// for some kinds may shorten further, wherever they stand.
func (s *shortening) layer(l Layer) {
	for _, forAll := range []bool{true, false} {
		seen := map[ofKind]bool{}
		for i, x := range l.Intervals {
			if (x.Kinds == nil) == forAll {
				s.entry(l, i, x, seen)
			}
		}
	}
}

func (s *shortening) entry(l Layer, i int, x Interval, seen map[ofKind]bool) {
	at := fmt.Sprintf("/inspection_intervals/%d", i)
	changed := map[int][]string{} // kinds by their months before
	alike, longest := false, 0
	for _, of := range s.concerned(l, at, x) {
		was, given := s.is(of)
		if given {
			longest = max(longest, was)
		}
		switch {
		case seen[of]:
			s.problems.Add(l.problem(at, "%s in %s service has an interval here already", of.kind, of.service))
		case !given && x.Kinds != nil:
			s.problems.Add(l.problem(at+"/kinds", "profile %s gives no interval for %s in %s service, where the day counts that the inspector sets", s.profile.Name, of.kind, of.service))
		case given && was < x.Months && x.Kinds != nil:
			s.problems.Add(l.problem(at+"/months", "%s in %s service is inspected every %s already: a configuration can only shorten that", of.kind, of.service, monthsWords(was)))
		case given && was > x.Months:
			s.months[of] = x.Months
			changed[was] = append(changed[was], of.kind)
		}
		alike = alike || given && was == x.Months || seen[of]
		seen[of] = true
	}
	switch {
	case x.Kinds != nil || alike || len(changed) > 0:
	case longest == 0:
		s.problems.Add(l.problem(at, "profile %s gives no interval in %s service, where the day counts that the inspector sets", s.profile.Name, x.Service))
	default:
		s.problems.Add(l.problem(at+"/months", "gear in %s service is inspected every %s already, at the least: a configuration can only shorten that", x.Service, monthsWords(longest)))
	}
	s.note(l, x, changed)
}

// concerned are the kinds that an entry is about, all where it names none.
func (s *shortening) concerned(l Layer, at string, x Interval) []ofKind {
	known := newShape().words("gear", "kind")
	kinds := x.Kinds
	if kinds == nil {
		kinds = known
	}
	var list []ofKind
	for k, kind := range kinds {
		if !slices.Contains(known, kind) {
			s.problems.Add(l.problem(fmt.Sprintf("%s/kinds/%d", at, k), "%q is no kind of gear%s", kind, nearest.Hint(kind, known)))
			continue
		}
		list = append(list, ofKind{kind, x.Service})
	}
	return list
}

// note tells of what an entry has changed, the longest intervals first.
func (s *shortening) note(l Layer, x Interval, changed map[int][]string) {
	months := sortedInts(changed)
	slices.Reverse(months)
	for _, was := range months {
		kinds := "of " + strings.Join(changed[was], ", ")
		if x.Kinds == nil && len(changed) == 1 {
			kinds = "of all gear"
		}
		is := monthsWords(x.Months)
		if len(x.Citations) > 0 {
			var words []string
			for _, c := range x.Citations {
				words = append(words, c.String())
			}
			is += ", by " + strings.Join(words, "; ")
		}
		s.overrides = append(s.overrides, Override{intervalRule, "interval in " + x.Service + " service " + kinds, l.Name, monthsWords(was), is})
	}
}

func sortedInts(m map[int][]string) []int {
	var keys []int
	for k := range m {
		keys = append(keys, k)
	}
	slices.Sort(keys)
	return keys
}

// harderService lets no harder service go longer than normal service of the kind.
func (s *shortening) harderService() {
	for _, kind := range newShape().words("gear", "kind") {
		normal, ok := s.is(ofKind{kind, normalService})
		for _, service := range []string{"severe", "special"} {
			if m, given := s.is(ofKind{kind, service}); ok && given && m > normal {
				s.months[ofKind{kind, service}] = normal
			}
		}
	}
}

func monthsWords(n int) string {
	if n == 1 {
		return "1 month"
	}
	return fmt.Sprintf("%d months", n)
}

// intervals tells of the intervals that configurations set with the rule that goes
// by them.
func (l *loader) intervals() {
	_, overrides, problems := l.options.Profile.Shortened(l.options.Layers)
	l.problems = append(l.problems, problems...)
	for _, r := range l.rules {
		if r.ID == intervalRule {
			r.Overrides = append(r.Overrides, overrides...)
		}
	}
}

// IntervalFile is an interval as files write it.
type IntervalFile struct {
	Kinds   []string           `json:"kinds"`
	Service string             `json:"service"`
	Months  int                `json:"months"`
	Note    string             `json:"note"`
	Cite    []finding.Citation `json:"cite"`
}

// Interval is the entry; service is normal where none is named.
func (f IntervalFile) Interval() Interval {
	if f.Service == "" {
		f.Service = normalService
	}
	return Interval{f.Kinds, f.Service, f.Months, f.Note, f.Cite}
}

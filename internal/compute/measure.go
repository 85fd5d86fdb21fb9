package compute

import (
	"slices"
	"strings"

	"liftlint/internal/facts"
	"liftlint/internal/quantity"
)

// measure is a length that a part has, or why it is not known.
type measure struct {
	m       *float64
	needs   []facts.Input
	why     facts.Reason // where no input would help
	at      string       // pointer of where it stands
	caption string       // what stands there
}

// given is a measure that stands in a field of the plan.
func given(v *quantity.Length, pointer, field, label, caption string) measure {
	if v == nil {
		return measure{needs: []facts.Input{input(pointer, field, label)}}
	}
	return measure{m: number(v), at: pointer + "/" + slashed(field), caption: caption}
}

// times is a measure as many times as thick.
func (m measure) times(factor float64) measure {
	if m.m != nil {
		m.m = ptr(*m.m * factor)
	}
	return m
}

// plus is the width of two things side by side; nothing unless both are known.
func (m measure) plus(other measure) measure {
	m.needs = append(slices.Clone(m.needs), other.needs...)
	if m.why.Text == "" {
		m.why = other.why
	}
	if m.m == nil || other.m == nil {
		m.m = nil
	} else {
		m.m = ptr(*m.m + *other.m)
	}
	return m
}

func slashed(dotted string) string { return strings.ReplaceAll(dotted, ".", "/") }

// take reads a measure for a record that stands at a pointer; where it is not
// known, the fields named wait for it.
func (w *work) take(key, at string, m measure, fields ...string) *float64 {
	if m.m == nil {
		w.wait(key, m.needs, fields...)
		if m.why.Text != "" {
			w.explain(key, m.why, fields...)
		}
		return nil
	}
	if m.at != at && !strings.HasPrefix(m.at, at+"/") {
		w.relate(key, m.at, m.caption)
	}
	return ptr(*m.m)
}

// ratio is one measure over another; nil where one is not known.
func ratio(a, b *float64) *float64 {
	if a == nil || b == nil {
		return nil
	}
	return ptr(*a / *b)
}

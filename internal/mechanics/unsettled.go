package mechanics

import (
	"fmt"
	"math"
	"strings"
)

const (
	// freeBelow is the force per meter, over the weight, that is as good as none:
	// a ring of a kilogram below a hundred tonnes still has a thousand times that.
	freeBelow = 1e-9
	// nearlyBalanced is the share of the weight up to which what is left over is the
	// arithmetic's fault rather than the arrangement's.
	nearlyBalanced = 1e-4
)

// unsettled says why there is no rest to rely on at st, where the search ended.
func (s *system) unsettled(st []pose) Result {
	s.derive(st, s.grad, nil, false)
	left := norm(s.grad)
	r := Reason{Cause: Unsettled, Body: World, Measured: left / s.weight, Limit: maxOutOfBalance}
	if !finite(left) || left > nearlyBalanced*s.weight+100*s.noise() {
		s.noPlace(&r)
		return Result{Verdict: NoBalance, Why: []Reason{r}}
	}
	if free, ok := s.leftFree(st, s.tensions(st)); ok {
		return Result{Verdict: NoBalance, Why: []Reason{free}}
	}
	r.Lines = s.stiffestLines()
	r.Text = fmt.Sprintf("no reliable position of balance was found: stiffness and weight differ too much to compute with (%.2g of the weight is out of balance; stiffest: %s)",
		r.Measured, s.names(r.Lines))
	return Result{Verdict: NoBalance, Why: []Reason{r}}
}

// noPlace words that the search ended where forces, in grad, do not balance, and
// names the body on which most is left over.
func (s *system) noPlace(r *Reason) {
	most := -1.0
	for b := range s.masses {
		end := s.n
		if b+1 < len(s.masses) {
			end = s.masses[b+1].o
		}
		if left := norm(s.grad[s.masses[b].o:end]); left > most {
			r.Body, most = b, left
		}
	}
	if r.Body == World { // not a number anywhere
		r.Text = "no position of balance was found: the search left what can be computed"
		return
	}
	r.Lines = s.linesAt(r.Body)
	r.Text = fmt.Sprintf("no position of balance was found: %s is drawn on without coming to rest (%.2g of the weight is out of balance; at it: %s)",
		bodyName(s.model, r.Body), r.Measured, s.names(r.Lines))
}

// leftFree looks for a displacement, all attitudes held, that next to nothing
// resists, and names the body that moves most in it.
func (s *system) leftFree(st []pose, tension []float64) (Reason, bool) {
	s.stiffness(st, tension)
	t := len(s.shifts)
	a, v := make([]float64, t*t), make([]float64, t*t)
	scale := 0.0
	for i, o := range s.shifts {
		for j, p := range s.shifts {
			a[i*t+j] = s.hess[o*s.n+p]
		}
		scale = math.Max(scale, a[i*t+i])
	}
	eigen(a, v, t)
	low := 0
	for i := range t {
		if a[i*t+i] < a[low*t+low] {
			low = i
		}
	}
	k := a[low*t+low]
	r := Reason{Cause: LeftFree, Measured: math.Max(0, k/s.weight), Limit: math.Max(freeBelow, 1e-13*scale/s.weight)}
	u := column(v, t, low)
	for b := range s.masses {
		if norm(u[3*b:3*b+3]) > norm(u[3*r.Body:3*r.Body+3])+1e-9 {
			r.Body = b
		}
	}
	r.Lines = s.linesAt(r.Body)
	r.Text = fmt.Sprintf("%s is left free: no line and no weight holds it in one place (%s can give way without bringing it back)",
		bodyName(s.model, r.Body), s.names(r.Lines))
	return r, k <= r.Limit*s.weight
}

// linesAt lists the lines that end at a body.
func (s *system) linesAt(body int) []int {
	var out []int
	for i := range s.model.Lines {
		l := &s.model.Lines[i]
		for j := range l.runs() {
			if r := l.run(j); r.From.Body == body || r.To.Body == body {
				out = append(out, i)
				break
			}
		}
	}
	return out
}

func (s *system) stiffestLines() []int {
	top := 0.0
	for i := range s.model.Lines {
		top = math.Max(top, s.model.Lines[i].StiffnessN/s.model.Lines[i].LengthM)
	}
	var out []int
	for i := range s.model.Lines {
		if s.model.Lines[i].StiffnessN/s.model.Lines[i].LengthM >= 0.99*top {
			out = append(out, i)
		}
	}
	return out
}

func (s *system) names(lines []int) string {
	var names []string
	for _, i := range lines {
		names = append(names, lineName(s.model, i))
	}
	return strings.Join(names, ", ")
}

package mechanics

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"strings"

	"gonum.org/v1/gonum/num/quat"
	"gonum.org/v1/gonum/spatial/r3"
)

// ErrModel is wrapped by every error that Solve returns: the model says nothing
// that could hang.
var ErrModel = errors.New("no model to solve")

// Ranges outside which a value is a slip of unit rather than a lift. They also
// keep the arithmetic within its accuracy.
const (
	maxMassKg   = 1e8
	minMassKg   = 1e-3
	maxLengthM  = 1e4
	minLengthM  = 1e-3
	maxStiffN   = 1e13
	minStiffN   = 1.0
	maxCoordM   = 1e4
	unitQuatTol = 1e-6
)

func refuse(format string, a ...any) error {
	return fmt.Errorf("%w: %s", ErrModel, fmt.Sprintf(format, a...))
}

// check refuses models without a meaning, one clear error at a time.
func check(m Model, o Options) error {
	if err := checkOptions(o); err != nil {
		return err
	}
	if len(m.Bodies) == 0 {
		return refuse("there is no body")
	}
	if len(m.Lines) == 0 {
		return refuse("there is no line")
	}
	for i := range m.Bodies {
		if err := checkBody(m, i); err != nil {
			return err
		}
	}
	for i := range m.Lines {
		if err := checkLine(m, i); err != nil {
			return err
		}
	}
	for _, group := range m.Together {
		if err := checkTogether(m, group); err != nil {
			return err
		}
	}
	return checkHung(m)
}

func checkOptions(o Options) error {
	if !finite(o.MaxTiltDeg, o.MaxStrain, o.GravityMS2) {
		return refuse("an option is not a number")
	}
	if o.MaxTiltDeg < 0 || o.MaxTiltDeg > 90 {
		return refuse("the tilt limit is %g deg; it lies between 0 and 90", o.MaxTiltDeg)
	}
	if o.MaxStrain < 0 || o.MaxStrain > 1 {
		return refuse("the strain limit is %g; it lies between 0 and 1", o.MaxStrain)
	}
	if o.GravityMS2 < 0.1 || o.GravityMS2 > 100 {
		return refuse("gravity is %g m/s2; it lies between 0.1 and 100", o.GravityMS2)
	}
	return nil
}

func checkBody(m Model, i int) error {
	b, name := m.Bodies[i], bodyName(m, i)
	if !finite(b.MassKg) || b.MassKg < minMassKg || b.MassKg > maxMassKg {
		return refuse("the mass of %s is %g kg; it lies between %g and %g", name, b.MassKg, minMassKg, maxMassKg)
	}
	if !finiteVec(b.CenterOfGravity) || farthest(b.CenterOfGravity.X, b.CenterOfGravity.Y, b.CenterOfGravity.Z) > maxCoordM {
		return refuse("the center of gravity of %s is not a point within %g m", name, maxCoordM)
	}
	q := quat.Number(b.Intended)
	if b.Intended != (Attitude{}) && !(math.Abs(quat.Abs(q)-1) <= unitQuatTol) {
		return refuse("the intended attitude of %s is not a rotation", name)
	}
	if b.Point && (b.CenterOfGravity != (r3.Vec{}) || b.Intended != (Attitude{})) {
		return refuse("%s is a point: its center of gravity is its origin, and it has no attitude", name)
	}
	return nil
}

func checkLine(m Model, i int) error {
	l, name := m.Lines[i], lineName(m, i)
	if !finite(l.LengthM) || l.LengthM < minLengthM || l.LengthM > maxLengthM {
		return refuse("the length of %s is %g m; it lies between %g and %g", name, l.LengthM, minLengthM, maxLengthM)
	}
	if !finite(l.StiffnessN) || l.StiffnessN < minStiffN || l.StiffnessN > maxStiffN {
		return refuse("the stiffness EA of %s is %g N; it lies between %g and %g", name, l.StiffnessN, minStiffN, maxStiffN)
	}
	for j := range l.runs() {
		if err := checkRun(m, l.run(j), runName(m, i, j)); err != nil {
			return err
		}
	}
	return nil
}

func checkRun(m Model, r Run, name string) error {
	for _, a := range []Anchor{r.From, r.To} {
		if a.Body < World || a.Body >= len(m.Bodies) {
			return refuse("%s ends at body number %d, which does not exist", name, a.Body)
		}
		if !finiteVec(a.At) || farthest(a.At.X, a.At.Y, a.At.Z) > maxCoordM {
			return refuse("an end of %s is not a point within %g m", name, maxCoordM)
		}
		if a.Body != World && m.Bodies[a.Body].Point && a.At != (r3.Vec{}) {
			return refuse("%s ends beside %s, which is a point: lines end at its origin", name, bodyName(m, a.Body))
		}
	}
	if r.From.Body == r.To.Body {
		if r.From.Body == World {
			return refuse("%s runs from hook to hook and carries nothing", name)
		}
		return refuse("%s runs from %s to itself and carries nothing", name, bodyName(m, r.From.Body))
	}
	return nil
}

func checkTogether(m Model, group []int) error {
	if len(group) == 0 {
		return refuse("a group of lines to take together is empty")
	}
	var names []string
	for k, i := range group {
		if i < 0 || i >= len(m.Lines) {
			return refuse("line number %d is to be taken together with others and does not exist", i)
		}
		if slices.Contains(group[:k], i) {
			return refuse("%s is named twice among lines to take together", lineName(m, i))
		}
		names = append(names, lineName(m, i))
	}
	if _, ok := meeting(m, group); !ok {
		return refuse("%s are to be taken together and do not end at one point", strings.Join(names, ", "))
	}
	return nil
}

func farthest(v ...float64) float64 {
	far := 0.0
	for _, x := range v {
		far = math.Max(far, math.Abs(x))
	}
	return far
}

// checkHung refuses a body that no chain of lines joins to a hook.
func checkHung(m Model) error {
	hung := make([]bool, len(m.Bodies))
	joined := func(a Anchor) bool { return a.Body == World || hung[a.Body] }
	for range m.Bodies {
		for i := range m.Lines {
			for j := range m.Lines[i].runs() {
				r := m.Lines[i].run(j)
				if joined(r.From) && !joined(r.To) {
					hung[r.To.Body] = true
				}
				if joined(r.To) && !joined(r.From) {
					hung[r.From.Body] = true
				}
			}
		}
	}
	for i, ok := range hung {
		if !ok {
			return refuse("no line joins %s to a hook", bodyName(m, i))
		}
	}
	return nil
}

func bodyName(m Model, i int) string {
	if n := m.Bodies[i].Name; n != "" {
		return n
	}
	return fmt.Sprintf("body %d", i+1)
}

// runName names a run of a line; the first goes by the name of the line.
func runName(m Model, i, j int) string {
	if j == 0 {
		return lineName(m, i)
	}
	return fmt.Sprintf("run %d of %s", j+1, lineName(m, i))
}

func lineName(m Model, i int) string {
	if n := m.Lines[i].Name; n != "" {
		return n
	}
	return fmt.Sprintf("line %d", i+1)
}

package mechanics

import (
	"math"

	"gonum.org/v1/gonum/num/quat"
	"gonum.org/v1/gonum/spatial/r3"
)

// up is against gravity.
func up() r3.Vec { return r3.Vec{Z: 1} }

// turn rotates v by the unit quaternion q.
func turn(q quat.Number, v r3.Vec) r3.Vec {
	u := r3.Vec{X: q.Imag, Y: q.Jmag, Z: q.Kmag}
	t := r3.Scale(2, r3.Cross(u, v))
	return r3.Add(v, r3.Add(r3.Scale(q.Real, t), r3.Cross(u, t)))
}

// turnBy is the unit quaternion of the rotation vector w (axis times radians).
func turnBy(w r3.Vec) quat.Number {
	half := r3.Norm(w) / 2
	f := 0.5 // sin(half)/(2 half) as half goes to zero
	if half > 1e-8 {
		f = math.Sin(half) / (2 * half)
	}
	return quat.Number{Real: math.Cos(half), Imag: f * w.X, Jmag: f * w.Y, Kmag: f * w.Z}
}

// then is the turn q followed by the turn w (world axes), kept at unit length.
func then(q quat.Number, w r3.Vec) quat.Number {
	p := quat.Mul(turnBy(w), q)
	return quat.Scale(1/quat.Abs(p), p)
}

// tiltAndHeading splits the turn from one attitude to another: tilt, about some
// horizontal axis, and heading, about the vertical (counterclockwise from
// above), in degrees.
func tiltAndHeading(from, to quat.Number) (tilt, heading float64) {
	d := quat.Mul(to, quat.Conj(from))
	z := turn(d, up())
	tilt = math.Atan2(math.Hypot(z.X, z.Y), z.Z)
	heading = math.Remainder(2*math.Atan2(d.Kmag, d.Real), 2*math.Pi)
	return degrees(tilt), degrees(heading)
}

func degrees(rad float64) float64 { return rad * 180 / math.Pi }

func finite(v ...float64) bool {
	for _, x := range v {
		if math.IsNaN(x) || math.IsInf(x, 0) {
			return false
		}
	}
	return true
}

func finiteVec(v r3.Vec) bool { return finite(v.X, v.Y, v.Z) }

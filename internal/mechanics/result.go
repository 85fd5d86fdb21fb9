package mechanics

import "gonum.org/v1/gonum/spatial/r3"

// Verdict says what became of the load.
type Verdict string

const (
	// Steady: at rest near the intended attitude, pushed back when disturbed,
	// forces and moments in balance. Says nothing of strength.
	Steady Verdict = "steady"
	// Overturns: does not stay near the intended attitude.
	Overturns Verdict = "overturns"
	// OutOfReach: the lines named would have to stretch beyond what a line
	// bears; they are too short for their places, or far too soft.
	OutOfReach Verdict = "out of reach"
	// NoBalance: no rest was found that could be relied on.
	NoBalance Verdict = "no balance"
)

// Result of Solve. Balance is nil unless the verdict is Steady: the tensions of
// a load that has rolled over describe nothing that is meant to happen.
type Result struct {
	Verdict Verdict
	// Why is empty only when the verdict is Steady.
	Why     []Reason
	Balance *Balance
}

// Cause of a verdict other than Steady.
type Cause string

const (
	// PointsBelow: all attachment points of a body lie on one line (or are one
	// point) and its center of gravity stands above it. Measured, meters: how
	// far above. It rolls over, however high the hook.
	PointsBelow Cause = "center of gravity above the line of attachment"
	// UnsteadyAsIntended: at the intended attitude, with lengths that fit it,
	// a disturbance grows. Measured, meters: see Balance.RightingM.
	UnsteadyAsIntended Cause = "unsteady at the intended attitude"
	// UnsteadyAtRest: forces balance where the search ended, but a disturbance
	// grows. Measured as above.
	UnsteadyAtRest Cause = "unsteady where it balances"
	// Turned: Measured and Limit are degrees about horizontal axes from the
	// intended attitude.
	Turned Cause = "turned too far"
	// TooShort: Measured and Limit are strains; Lines names the lines.
	TooShort Cause = "lines too short"
	// Unsettled: the search for a rest did not end, or not closely enough; Body is
	// the one on which most is left over, Lines are the stiffest where stiffness
	// and weight differ too much to compute with. Measured and Limit are forces
	// out of balance over weight.
	Unsettled Cause = "not settled"
	// LeftFree: no line and no weight holds Body in one place; Lines are those that
	// end at it. Measured and Limit are the force that brings it back, per meter,
	// over the total weight.
	LeftFree Cause = "left free"
)

// Reason explains a verdict.
type Reason struct {
	Cause Cause
	// Body is the number of the body meant, or World when none is singled out.
	Body int
	// Lines are the numbers of the lines meant.
	Lines           []int
	Measured, Limit float64
	// Text says it in plain words, with names.
	Text string
}

// Balance is the rest that was found. Slices run parallel to the model's.
type Balance struct {
	Lines  []LineState
	Bodies []BodyState
	// Hooks are the fixed points, in the order the lines first name them.
	Hooks []HookState
	// Together runs parallel to Model.Together.
	Together []Joint
	// RightingM is the least moment that pushes a body back, per radian of
	// turn, over the total weight: the length of a pendulum equally steady.
	// Meters, at the converged rest and, where it exists, at the intended
	// attitude: the lesser of the two. +Inf where only point bodies hang.
	RightingM float64
	// Rocks: within small angles nothing rights the load, until slack lines
	// catch it. RightingM is then 0, or next to nothing.
	Rocks bool
	// IntendedBalances: some line lengths would hold all bodies at the intended
	// attitude. When false, only the converged rest was tested for steadiness.
	IntendedBalances bool
	// Rests is 1, or 2 where the load can settle to either side of a position
	// in which it cannot stay; the figures are those of the side with the
	// greater tension.
	Rests int
	// OutOfBalance is the largest force on a body, or moment over its size, left
	// over, as a share of the total weight.
	OutOfBalance float64
}

// LineState is what a line does at rest. Of a line with further runs, TensionN is
// the largest of them and Slack says that all are; the rest is that of its first
// run, the strain of a rope that runs freely that of the whole.
type LineState struct {
	TensionN float64
	// Slack lines carry nothing; direction and angles are then those of the
	// straight way between the ends.
	Slack bool
	// Strain is stretch over length; negative for slack: the share of the
	// length that hangs loose.
	Strain float64
	// Direction is the unit vector from From to To in world axes.
	Direction r3.Vec
	// FromPull and ToPull are the unit vectors along which the line pulls at
	// each end, in that end's own axes: the body's, or the world's for a hook.
	FromPull, ToPull       r3.Vec
	AngleFromHorizontalDeg float64 // 0 to 90
	AngleFromVerticalDeg   float64 // 0 to 90
	Bound                  Bound
	// Runs are the straight parts of the line, the one from From to To first;
	// every line has at least that one.
	Runs []RunState
}

// RunState is what one straight part of a line does at rest; fields as those of
// LineState.
type RunState struct {
	TensionN               float64
	Direction              r3.Vec
	FromPull, ToPull       r3.Vec
	AngleFromHorizontalDeg float64 // 0 to 90
	AngleFromVerticalDeg   float64 // 0 to 90
	Slack                  bool
}

// Bound is the largest tension that equilibrium alone allows at this rest, with
// no line in compression: what the line carries if lengths and stiffnesses
// differ as badly as they can. For legs that meet in one point it is the largest
// over all sets of three legs (or fewer) that balance the load. A rope that runs
// freely has one tension in all splits; so has one that grips, where such splits
// balance the load at this rest, else its bound is that of its most loaded run.
type Bound struct {
	TensionN float64
	Meaning  BoundMeaning
}

// BoundMeaning says how to read a Bound.
type BoundMeaning string

const (
	// Determinate: equilibrium leaves one tension; the bound is the tension.
	Determinate BoundMeaning = "determinate"
	// AnySplit: the tension depends on stiffness and on small differences of
	// length; the bound is the worst that balances.
	AnySplit BoundMeaning = "any split that balances"
	// Unbounded: lines can pull against each other without end; TensionN is
	// +Inf.
	Unbounded BoundMeaning = "unbounded"
	// Unknown: could not be computed; TensionN is +Inf.
	Unknown BoundMeaning = "unknown"
	// Skipped: was not asked for; TensionN is +Inf.
	Skipped BoundMeaning = "skipped"
)

// Joint is what lines taken together do to the thing they meet at.
type Joint struct {
	// At is the anchor they share. Where they share both ends it is the first
	// line's From.
	At Anchor
	// ForceN is the vector sum of their pulls on that anchor, newtons, world
	// axes, split as computed: down on a hook or link that carries legs, up on
	// an attachment that hangs from them.
	ForceN r3.Vec
	// MagnitudeN of ForceN, newtons.
	MagnitudeN float64
	// Bound is the largest magnitude of the sum, in TensionN, over all splits
	// that balance at this rest with no line in compression. It can be less than
	// the lines' own bounds added up, which no one split reaches at once. Its
	// meaning is that of the sum: Determinate where no split changes the sum,
	// even if it changes the tensions; Unbounded only where the sum grows
	// without end; Unknown (+Inf, as ever) where equilibrium leaves two or more
	// tensions open and more than eight lines take part in that, or where the
	// search for the worst split contradicts the lines' own bounds.
	Bound Bound
}

// BodyState is where a body comes to rest.
type BodyState struct {
	// Origin of the body axes in the world, meters, and their attitude. A
	// single hook leaves the turn about the vertical free; it stays near the
	// intended one.
	Origin   r3.Vec
	Attitude Attitude
	// CenterOfGravity in the world, meters.
	CenterOfGravity r3.Vec
	// TiltDeg is the turn about a horizontal axis from the intended attitude.
	TiltDeg float64
	// HeadingDeg is the turn about the vertical, counterclockwise from above.
	HeadingDeg float64
	// RollsFreely: the center of gravity lies on the line of all its attachment
	// points, so nothing keeps the body from rolling about that line.
	RollsFreely bool
	// HookOffset is where the hook stands from plumb over the center of
	// gravity, horizontally, world axes, meters, were the body held at its
	// intended attitude with these lines. Known only if HasHookOffset: the body
	// hangs from one hook and nothing else, directly or by rings that everything
	// hangs through.
	HookOffset    r3.Vec
	HasHookOffset bool
	// MayRiseM is how far the center of gravity of this body alone may rise, at
	// rest, before the load no longer rights itself: the largest d for which the
	// stiffness against turning stays positive with W d taken off this body's
	// turns about horizontal axes, W its weight. Meters; exact for small turns.
	// The lesser of rest and, where it exists, intended attitude. 0 where nothing
	// is to spare, +Inf where its rise changes nothing.
	MayRiseM float64
	// DropM is by how much the center of gravity comes to rest lower than it hangs
	// with all bodies held at their intended attitudes; negative: higher. SwingM
	// is its horizontal way from there to its rest, hooks fixed. Meters; both +Inf
	// where the held bodies found no place to hang.
	DropM, SwingM float64
}

// HookState is a fixed point and what pulls on it.
type HookState struct {
	At r3.Vec
	// LoadN is the force of the lines on the hook, newtons, world axes.
	LoadN r3.Vec
}

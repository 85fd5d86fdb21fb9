// Package hang joins a plan's rigging with mechanics: it makes the model of the
// lift, finds where the load comes to rest in each phase and at the corners of
// what the plan gives tolerances of, and keeps what every leg does there. It
// knows nothing of ratings and rules.
//
// Axes. A lift is laid out with the load at its intended attitude and its
// center of gravity at the origin, z up. A single hook stands plumb over it;
// several stand where the plan has them, or plumb over what they hold, at such
// heights that the load hangs as intended: a crane's operator sees to that.
package hang

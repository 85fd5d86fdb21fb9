// Package mechanics finds how a load truly hangs: where it comes to rest, what
// every line carries there, and whether that rest can be trusted.
//
// A model is a set of rigid bodies, and of points that only gather lines, joined to
// each other and to fixed hooks by straight lines (slings, chains, rods) that pull
// and never push. A line may run on over sheaves and through rings at one tension,
// or grip the body it lies round and carry one tension a side. The package
// knows nothing of plans, ratings or files: meters, kilograms, newtons and
// world axes with z up.
//
// Method. Each body has six freedoms, a point three. The rest is a minimum of gravity plus
// stretch energy, found by damped Newton steps on exact second derivatives,
// with rotations through the exponential map. A minimum alone proves little: a
// minimizer rolls an unstable load over and ends at a healthy minimum upside
// down. So three questions are asked, and one bad answer is enough:
//
//   - does the load stand at the attitude it is meant to hang at, with line
//     lengths that fit there (eigenvalues of the rotational stiffness);
//   - does it stand where it came to rest;
//   - how far has it turned to get there.
//
// Only a load that passes all three, whose forces and moments balance, and
// whose lines are not stretched beyond belief gets figures. Everything else
// gets a verdict with reasons and no figures to be misread.
//
// Lengths are never known to the millimeter. So each line, and each group of
// lines taken together, also gets the worst that balances: the largest force over
// all splits of the load with no line in compression.
//
// The results are statics of an ideal model: no wind, no dynamics, no flexible
// load, and friction only where a sling is said to grip. They support a qualified
// person's judgment and replace none of it.
package mechanics

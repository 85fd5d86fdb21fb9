package report

// Caution is printed once in every report for people; NotLookedAt after it.
const Caution = "This report is an aid to a qualified person's review and no approval to lift. " +
	"It speaks only of what it names as checked. The maker's tag and manual, the crane's load chart " +
	"and local law prevail. Take damaged or untagged gear out of service. Nobody is under the load or where " +
	"it could fall; raise it just clear and look again before going on; anyone may call stop. " + NotLookedAt

// NotLookedAt names what it is not for, and what no check here speaks of.
const NotLookedAt = "Not for lifting people, nor from or to a vessel afloat. Nothing is allowed for wind, snatching " +
	"or shock. Not looked at: the crane's capacity, radius and setup, headroom and clearances, the ground, " +
	"power lines, weather, the crew and its signals, and who stands near."

package report

// Caution is printed once in every report for people; NotLookedAt after it.
const Caution = "This report is an aid to a qualified person's review and no approval to lift. " +
	"It speaks only of what it names as checked. The maker's tag and manual, the crane's load chart " +
	"and local law prevail. Take damaged or untagged gear out of service. " + NotLookedAt

// NotLookedAt names what no check here speaks of.
const NotLookedAt = "Not looked at: the crane's capacity and radius, headroom and clearances, the ground, " +
	"power lines, wind and weather, and the people."

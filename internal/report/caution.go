package report

// Caution is printed once in every report for people.
const Caution = "This report is an aid to a qualified person's review and no approval to lift. " +
	"It speaks only of what it names as checked. The maker's tag and manual, the crane's load chart " +
	"and local law prevail. Take damaged or untagged gear out of service."

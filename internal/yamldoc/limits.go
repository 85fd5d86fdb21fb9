package yamldoc

// Limits of a file. They lie far above what a person writes and low enough
// that reading any file ends soon.
const (
	maxBytes    = 1 << 20
	maxDepth    = 64
	maxKeys     = 5000
	maxNodes    = 100_000
	maxScalar   = 64 << 10
	maxKeyBytes = 1024 // YAML 1.2.2, 7.4.2: an implicit key has at most 1024 characters
	maxPointers = 16 << 20
	maxFaults   = 100
)

// Limits are those of one type of file.
type Limits struct {
	Bytes    int
	Nodes    int // keys do not count, their values do
	Pointers int // bytes of the JSON pointers of all nodes
}

// PlanLimits are for what one person writes and another reads through.
func PlanLimits() Limits { return Limits{Bytes: maxBytes, Nodes: maxNodes, Pointers: maxPointers} }

// RegisterLimits are for lists of gear, which programs write too: about ten
// thousand items with their inspections.
func RegisterLimits() Limits { return Limits{Bytes: 8 << 20, Nodes: 500_000, Pointers: 64 << 20} }

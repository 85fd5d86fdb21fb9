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

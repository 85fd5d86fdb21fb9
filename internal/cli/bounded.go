package cli

import "io"

// readBounded reads at most a little more than a plan may have; what is longer
// is then refused by its size.
func readBounded(r io.Reader) ([]byte, error) { return io.ReadAll(io.LimitReader(r, mostBytes)) }

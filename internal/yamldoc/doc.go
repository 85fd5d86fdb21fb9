// Package yamldoc reads YAML files that people write, and knows for every
// value where it stands.
//
// It reads a guarded part of YAML: one document of mappings with text keys,
// lists and scalars. What makes a file mean something else than it seems to
// (anchors, merge keys, tags, scalars that YAML 1.1 and 1.2 read differently,
// invisible characters) is refused with a fault at its place, and so is
// whatever would cost unbounded time or memory.
//
// A file is read in steps: clean (bytes), scan (tokens, all limits), compose
// (tree), and a second, independent reading by github.com/goccy/go-yaml that
// must find the same tree. That library takes quadratic time and exhausts
// memory on some inputs, and has no end positions, so it sees a text only
// after every limit has been checked.
package yamldoc

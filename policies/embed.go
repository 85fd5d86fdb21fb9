// Package policies carries the rules and profiles that come with liftlint.
package policies

import (
	"embed"
	"io/fs"
)

//go:embed */*/*.rego
var rules embed.FS

//go:embed profiles/*.yaml
var profiles embed.FS

//go:embed */*/examples.yaml bases/*.yaml
var examples embed.FS

// Examples holds the two examples of each rule, TOPIC/RULE/examples.yaml, and
// the plans that they change.
func Examples() fs.FS { return examples }

// Rules holds each rule in TOPIC/RULE/rule.rego, its tests beside it.
func Rules() fs.FS { return rules }

// Profiles holds each profile in NAME.yaml.
func Profiles() (fs.FS, error) { return fs.Sub(profiles, "profiles") }

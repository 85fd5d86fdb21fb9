// Package builtin is the catalog of the checks that liftlint makes itself,
// before and around the rules: whether a file can be read, whether it is a
// plan, whether the lift can be computed, whether all could be judged. They
// can be neither turned off nor lowered.
package builtin

import (
	_ "embed"
	"fmt"
	"sync"

	"github.com/goccy/go-yaml"

	"liftlint/internal/finding"
	"liftlint/internal/source"
)

// Check is one entry of the catalog.
type Check struct {
	ID          string           `yaml:"id"`
	Title       string           `yaml:"title"`
	Severity    finding.Severity `yaml:"severity"`
	Description string           `yaml:"description"`
}

// Citation is the authority of every built-in check: the format itself.
func (c Check) Citation() finding.Citation {
	return finding.Citation{Document: "liftlint", Clause: c.ID, Basis: finding.Format}
}

//go:embed checks.yaml
var catalog []byte

var load = sync.OnceValues(func() ([]Check, error) {
	var checks []Check
	if err := yaml.UnmarshalWithOptions(catalog, &checks, yaml.Strict()); err != nil {
		return nil, fmt.Errorf("builtin: checks.yaml: %w", err)
	}
	return checks, nil
})

// All lists the catalog in its order.
func All() ([]Check, error) { return load() }

// IDs lists the ids of the catalog in its order.
func IDs() []string {
	checks, err := load()
	if err != nil {
		return nil
	}
	ids := make([]string, len(checks))
	for i, c := range checks {
		ids[i] = c.ID
	}
	return ids
}

// Lookup returns the check with that id.
func Lookup(id string) (Check, bool) {
	checks, err := load()
	if err != nil {
		return Check{}, false
	}
	for _, c := range checks {
		if c.ID == id {
			return c, true
		}
	}
	return Check{}, false
}

// Finding is a finding of a check of the catalog. An id that is not in it is an
// error all the same.
func Finding(id, message, key string, place source.Location, related []finding.Related) finding.Finding {
	c, ok := Lookup(id)
	if !ok {
		c = Check{ID: id, Title: id, Severity: finding.Error}
	}
	return finding.Finding{
		Rule:      c.ID,
		Title:     c.Title,
		Severity:  c.Severity,
		Key:       key,
		Message:   message,
		Place:     place,
		Related:   related,
		Citations: []finding.Citation{c.Citation()},
	}
}

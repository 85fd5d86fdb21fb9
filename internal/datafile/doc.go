// Package datafile reads the YAML files that are no plans: profiles,
// configuration, the METADATA of rules. It refuses what plain data does not
// need, keeps the place of each key, and words what a JSON Schema finds wrong.
package datafile

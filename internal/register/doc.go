// Package register reads gear registers: slings and fittings with their serial
// numbers, certificates and inspections, from *.gear.yaml files and from tables
// in CSV with a file that says what their columns are.
//
// A row of a table becomes the same tree of values as an item in YAML, is held
// against the same schemas and decoded by the same code. What a plan says of a
// piece of gear has the same fields here, and package plan reads them.
//
// A register with any fault is not given out: an item left out for its faults
// would look like one that is not on file.
package register

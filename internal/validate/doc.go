// Package validate says whether a document is a well-formed lift plan, and if
// not, what to write instead and where.
//
// The schemas are split: plan.schema.json for the whole, and one file for each
// kind of gear, attachment and end of a leg. Which file an object is held
// against is decided here by its `kind`, so that one mistake gives one message
// and only the kinds in use are compiled.
//
// The schema library decides what is valid; this package only words what the
// library found. Whatever it finds without words of its own here still comes
// out as a fault.
package validate

// Package onfile takes the gear of a plan that a register tells of from there:
// an entry of kind register becomes one of the item's own kind, with all that
// the register says of it, before the plan is held against its schemas.
//
// All values keep pointers in the plan, so that whatever computes with them need
// not know where they are from; At leads from there into the register.
package onfile

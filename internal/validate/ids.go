package validate

import "slices"

// The stable identifiers of what can be wrong with a plan's form.
const (
	BadDate    = "plan/bad_date"
	BadID      = "plan/bad_id"
	BadText    = "plan/bad_text"
	ListLength = "plan/list_length"
	MissingKey = "plan/missing_key"
	NotAllowed = "plan/not_allowed"
	NotValid   = "plan/not_valid"
	OutOfRange = "plan/out_of_range"
	Unit       = "plan/unit"
	UnknownKey = "plan/unknown_key"
	Version    = "plan/version"
	WrongType  = "plan/wrong_type"
)

// FaultIDs lists, sorted, every identifier that a fault of this package can
// carry. A list of faults cut short ends with yamldoc.TooManyFaults as well.
func FaultIDs() []string {
	ids := []string{
		BadDate, BadID, BadText, ListLength, MissingKey, NotAllowed, NotValid,
		OutOfRange, Unit, UnknownKey, Version, WrongType,
	}
	slices.Sort(ids)
	return ids
}

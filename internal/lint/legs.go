package lint

// Stable is the key of a record by which it is known again when legs change places:
// a leg without an id of its own is called by what it goes to instead of its number.
func (r *Result) Stable(key string) string { return r.legs.Of(key) }

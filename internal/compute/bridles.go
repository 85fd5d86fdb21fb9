package compute

// bridles compares the parts of each bridle in use with one another.
func (w *work) bridles() {}

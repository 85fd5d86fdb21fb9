package compute

// gathers lists the places where legs come together.
func (w *work) gathers() {}

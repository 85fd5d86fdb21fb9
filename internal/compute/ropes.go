package compute

// ropes describes the rope of each sling in use.
func (w *work) ropes() {}

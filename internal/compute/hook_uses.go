package compute

// hookUses lists the hooks with what hangs in them.
func (w *work) hookUses() {}

package register

// FoldedSerial is what a serial number, or the name of a maker, is known again by: by
// no capitals and no blanks, which people read over.
func FoldedSerial(text string) string { return folded(text) }

// SameSerial reports whether two serial numbers, or two makers, are one as the register
// tells them apart. It holds of two that are empty too.
func SameSerial(a, b string) bool { return FoldedSerial(a) == FoldedSerial(b) }

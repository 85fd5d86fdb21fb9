// Package quantity reads and prints physical values the way riggers write
// them: a number and a unit in one text, such as `8650 kg` or `12 ft 6 in`.
//
// # What is read
//
//	value    = [sign] number unit | [sign] whole "ft" inches "in"
//	number   = whole | decimal | fraction | whole ("-" | space) fraction
//	sign     = "-" | "+", right before the number
//
// Spaces between number and unit may be left out: `12t` and `12ft6in` are
// read, and so are `12 t` and `12 ft 6 in`; those inside a unit, as in `12 kN m`,
// may not. Fractions go with every unit.
// The sign counts for the whole value: `-1 ft 6 in` is minus 18 in. After
// feet, inches run from 0 to under 12, and the feet are whole.
//
// Everything else is refused with an [Error] that says what to write: bare
// numbers, thousands separators, decimal commas, exponents, marks for feet
// and inches, units in the wrong letters. Nothing is guessed: where a text can
// be read in two ways, as `1,500 kg` or any of the three tons, the message
// names them all.
//
// # Exactness
//
// The number is held exactly and rounded once to float64 after conversion, by
// exact factors. So `0.4536 t` and `453.6 kg` give the same bits on every
// machine, and the In methods can always find a text that reads back as the
// same value. Nonzero values beyond 1e9 or below 1e-9 SI units are refused:
// on a lift they are typing errors.
//
// # What is printed
//
// In gives the shortest exact text in a unit; Format gives what people want to
// read; [FormatPair] prints a value beside its limit so that rounding cannot
// hide on which side it lies. No output depends on locale or map order.
package quantity

package datafile

import (
	"errors"
	"io/fs"
)

// Cause is what kept a file from being read, without its path, which messages give
// themselves.
func Cause(err error) error {
	var p *fs.PathError
	if errors.As(err, &p) {
		return p.Err
	}
	return err
}

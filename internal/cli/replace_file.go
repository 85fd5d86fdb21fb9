package cli

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
)

// replaceFile writes a file whole or not at all: what was there stays until all of
// the new text is on its way, and a failure leaves nothing behind.
func replaceFile(path string, text []byte, mode fs.FileMode) (err error) {
	f, err := os.CreateTemp(filepath.Dir(path), ".liftlint-*")
	if err != nil {
		return err
	}
	defer func() {
		if err != nil {
			err = errors.Join(err, os.Remove(f.Name()))
		}
	}()
	_, err = f.Write(text)
	if err = errors.Join(err, f.Chmod(mode), f.Close()); err != nil {
		return err
	}
	return os.Rename(f.Name(), path)
}

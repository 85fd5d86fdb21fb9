package yamldoc

import (
	"errors"

	"github.com/goccy/go-yaml"
)

// errorLine gives the line that an error of goccy/go-yaml speaks of, or 1.
// The library's own message shows several lines and is not passed on.
func errorLine(err error) int {
	var e yaml.Error
	if errors.As(err, &e) && e.GetToken() != nil && e.GetToken().Position != nil {
		return e.GetToken().Position.Line
	}
	return 1
}

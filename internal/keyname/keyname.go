// Package keyname calls legs in the keys of records by another name than their id.
package keyname

import (
	"regexp"
	"slices"
	"strings"
)

// Legs are names of legs by their ids. The zero value names none.
type Legs struct {
	pattern *regexp.Regexp // an id as a part of a key; nil where there is none
	by      map[string]string
}

// New takes the names by ids such as hook/1.
func New(by map[string]string) Legs {
	l := Legs{by: by}
	var ids []string
	for id := range by {
		ids = append(ids, regexp.QuoteMeta(id))
	}
	if len(ids) > 0 {
		slices.SortFunc(ids, func(a, b string) int { return len(b) - len(a) }) // hook/12 before hook/1
		l.pattern = regexp.MustCompile(`(^|[/ ])(` + strings.Join(ids, "|") + `)($|[/. ,])`)
	}
	return l
}

// Of gives a key with its leg called so.
func (l Legs) Of(key string) string {
	if l.pattern == nil {
		return key
	}
	for { // one at a time: what ends one may begin the next
		m := l.pattern.FindStringSubmatchIndex(key)
		if m == nil {
			return key
		}
		key = key[:m[4]] + l.by[key[m[4]:m[5]]] + key[m[5]:]
	}
}

// Package schema carries the JSON Schemas of liftlint's files.
package schema

import "embed"

// Files holds every schema by its path below this folder.
//
//go:embed *.json plan/*.json plan/*/*.json register/*.json register/*/*.json
var Files embed.FS

// Package rulesets holds the vocabularies and rulesets that come with the program, each a folder of
// .hcl files.
package rulesets

import "embed"

// FS has one folder for each vocabulary and ruleset at its root. It is only read.
//
//go:embed */*.hcl
var FS embed.FS

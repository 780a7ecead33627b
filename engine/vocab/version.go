package vocab

import (
	"regexp"
	"strings"
)

// version is the form of a semantic version without build or pre-release parts.
var version = regexp.MustCompile(`^(0|[1-9][0-9]*)\.(0|[1-9][0-9]*)\.(0|[1-9][0-9]*)$`)

// wanted is the form of what can be asked for.
var wanted = regexp.MustCompile(`^(0|[1-9][0-9]*)(\.(0|[1-9][0-9]*)){0,2}$`)

// IsWanted reports whether a name that stands before an @ can be asked for with what stands behind it:
// "1", "1.2" or "1.2.0". A name without an @ can.
func IsWanted(name string) bool {
	_, want, asked := strings.Cut(name, "@")
	return !asked || wanted.MatchString(want)
}

// IsVersion reports whether s is a version such as 1.2.0.
func IsVersion(s string) bool { return version.MatchString(s) }

// Accepts reports whether a version satisfies what is asked for: "" anything, "1" any 1.x.y,
// "1.2" any 1.2.y, "1.2.0" itself.
func Accepts(want, version string) bool {
	return want == "" || version == want || strings.HasPrefix(version, want+".")
}

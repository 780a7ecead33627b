package main

import (
	"slices"

	"crus/engine/assess"
	"crus/engine/source"
)

// sides warns where a limb is to get a device of which nothing was recorded while the other, which
// gets none, was examined: most likely left and right were taken for each other.
func sides(x *assess.Assessment) source.Diagnostics {
	var out source.Diagnostics
	for _, s := range x.DeviceFor {
		other := s.Opposite()
		if !examined(x, s) && examined(x, other) && !slices.Contains(x.DeviceFor, other) {
			out = append(out, source.Warnf(x.Where, "sides", "A device is wanted on the %s, and only the %s leg was examined.", s, other).
				Hinting("Look whether left and right were swapped: the limb that gets the device is the one that its measures belong under."))
		}
	}
	return out
}

// examined reports whether any measure of a limb has a value.
func examined(x *assess.Assessment, s assess.Side) bool {
	for _, e := range x.Limb(s) {
		if e.Value != nil {
			return true
		}
	}
	return false
}

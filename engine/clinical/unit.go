package clinical

// Unit is a UCUM unit.
type Unit struct {
	Code, Symbol string
	Dimension    Dimension
	num, den     float64
	literal      string
}

var units = []Unit{
	{"deg", "°", Angle, 1, 1, "deg"}, {"rad", "rad", Angle, 57.29577951308232, 1, "rad"},
	{"mm", "mm", Length, 1, 1, "mm"}, {"cm", "cm", Length, 10, 1, "cm"}, {"m", "m", Length, 1000, 1, "m"}, {"[in_i]", "in", Length, 25.4, 1, "inch"},
	{"kg", "kg", Mass, 1, 1, "kg"}, {"g", "g", Mass, 1, 1000, "g"}, {"[lb_av]", "lb", Mass, 0.45359237, 1, "lb"},
	{"N", "N", Force, 1, 1, "N"}, {"N.m", "N·m", Moment, 1, 1, "Nm"},
	{"N.m/deg", "N·m/°", Stiffness, 1, 1, "Nm_per_deg"}, {"N.m/rad", "N·m/rad", Stiffness, 1, 57.29577951308232, ""},
	{"kPa", "kPa", Pressure, 1, 1, "kPa"}, {"Pa", "Pa", Pressure, 1, 1000, ""}, {"mm[Hg]", "mmHg", Pressure, 0.133322, 1, "mmHg"},
	{"mm2", "mm²", Area, 1, 1, "mm2"}, {"cm2", "cm²", Area, 100, 1, "cm2"}, {"m2", "m²", Area, 1e6, 1, ""},
	{"m/s", "m/s", Speed, 1, 1, "m_per_s"}, {"km/h", "km/h", Speed, 1, 3.6, "km_per_h"},
	{"s", "s", Time, 1, 1, "s"}, {"min", "min", Time, 60, 1, "minutes"}, {"h", "h", Time, 3600, 1, "hours"}, {"d", "days", Time, 86400, 1, "days"},
	{"wk", "weeks", Time, 604800, 1, "weeks"}, {"mo", "months", Time, 2629800, 1, "months"}, {"a", "years", Time, 31557600, 1, "years"},
	{"1", "", Ratio, 1, 1, "ratio"}, {"%", "%", Ratio, 1, 100, "percent"},
}

// Units lists the units.
func Units() []Unit { return append([]Unit(nil), units...) }

// UnitByCode finds one.
func UnitByCode(code string) (Unit, bool) {
	for _, u := range units {
		if u.Code == code {
			return u, true
		}
	}
	return Unit{}, false
}

// LiteralFor names the function that writes it.
func LiteralFor(u Unit) string { return u.literal }

package biomech

// Heights and lengths of an adult's body as parts of the stature. Second-hand: Drillis and Contini, in
// several transcriptions of Winter's table. They are means of groups of adults: no measure of a person, and
// not of a young child or a deformed foot.
const (
	FootLengthOfStature  = 0.152
	FootBreadthOfStature = 0.055
	AnkleHeightOfStature = 0.039
	ShankOfStature       = 0.246
	ThighOfStature       = 0.245
	KneeHeightOfStature  = 0.285
	HipHeightOfStature   = 0.530
)

// OfStature is a length of an adult's body estimated from the stature:
//
//	l = part · H
//
// part is one of the constants, H and l are in one unit. Holds for 0 < part ≤ 1 and a positive H. Second-hand, as
// the constants are.
func OfStature(part, stature float64) (float64, error) {
	if err := first(positive("part of the stature", part, ""), between("part of the stature", part, 0, 1, ""), positive("stature", stature, "")); err != nil {
		return 0, err
	}
	return part * stature, nil
}

// Segment is a part of an adult's body: its mass as a part of the body's, and where its mass lies as a part of its
// own length. Read: the table of Dempster and Winter 1990.
type Segment struct {
	Mass     float64 // kg for each kilogram of the body
	Centre   float64 // centre of mass, from the proximal end
	Gyration float64 // radius of gyration about the centre of mass
}

// Foot is the segment from the lateral malleolus to the head of the second metatarsal, not the length of the foot.
func Foot() Segment { return Segment{footShare, 0.5, 0.475} }

// Shank is the segment from knee to ankle.
func Shank() Segment { return Segment{0.0465, 0.433, 0.302} }

// Thigh is the segment from hip to knee.
func Thigh() Segment { return Segment{0.1, 0.433, 0.323} }

// Inertia is the moment of inertia of the segment about its own centre of mass, for turning in the sagittal plane:
//
//	I = Mass · m · (Gyration · l)²
//
// m is the mass of the body, kg, l the segment's length, mm; I in kg·m². Holds for positive m and l. Read: the ratios.
func (s Segment) Inertia(bodyMass, length float64) (float64, error) {
	if err := first(positive("body mass", bodyMass, "kg"), positive("length of the segment", length, "mm")); err != nil {
		return 0, err
	}
	radius := s.Gyration * length / 1000
	return s.Mass * bodyMass * radius * radius, nil
}

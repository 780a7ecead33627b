// Package assess is one assessment: read from JSON, HCL, CSV or JSON lines, checked against a
// vocabulary, with units converted and what is missing kept with its reason.
//
//	list, diags := assess.Read(source.NewFile("demo.json", src), v)
//	if diags.HasErrors() {
//		fmt.Print(diags.Text())
//	}
//
// Every format is first turned into one tree of source values with their places; that tree is
// checked in one way. Nothing is guessed: what is not exactly right is refused, with its place and
// the way out, and all errors of an assessment come in one go.
package assess

import (
	"path"
	"strings"

	"github.com/google/cel-go/common/types/ref"

	"crus/engine/source"
	"crus/engine/vocab"
)

// Format is what an assessment's field format says.
const Format = "crus-assessment/1"

// The limits of what is read. A full assessment has some kilobytes; what is larger is a slip, and
// would cost time and memory before anyone is told.
const (
	MaxFileSize = 4 << 20 // bytes of a JSON or CSV file; an HCL file may have source.MaxFileSize
	MaxLineSize = 1 << 20 // bytes of one line of JSON lines, or of a table
	maxDepth    = 8       // groups and lists inside each other
	maxValues   = 20_000  // values in one assessment
	maxErrors   = 100     // errors that are shown of one assessment
)

// Side is a limb.
type Side string

// The two limbs.
const (
	Left  Side = "left"
	Right Side = "right"
)

// Sides lists both limbs, left first.
func Sides() []Side { return []Side{Left, Right} }

// Opposite gives the other limb.
func (s Side) Opposite() Side {
	if s == Left {
		return Right
	}
	return Left
}

// Assessment is a checked assessment. It is not changed after reading.
type Assessment struct {
	ID         string // empty in the given block of a worked case, unless it is written
	Vocabulary string // as written, "lower_limb@1"; from a table or a worked case: name and first number of the version
	Date       string // YYYY-MM-DD, or "" where it is not recorded
	Assessor   string // role or initials; may be empty
	DeviceFor  []Side // left before right
	Person     map[string]*Entry
	Left       map[string]*Entry
	Right      map[string]*Entry
	Where      source.Range // the id, or the given block
}

// Entry is one measure as it was recorded. A measure that nobody mentioned has no entry.
//
// Its Value is, by the kind of the measure: Quantity: clinical.Quantity in the measure's own unit;
// Grade: clinical.Grade; Option and Text: types.String; YesNo: types.Bool; Count: types.Int; Date:
// clinical.Date that knows the assessment's date, if there is one, or clinical.Never.
type Entry struct {
	Measure     *vocab.Measure
	Value       ref.Val      // nil: not recorded
	NotRecorded string       // the reason, where Value is nil
	Confirmed   bool         // it was said to be right, which a value beyond the plausible range needs
	Where       source.Range // of what was written as its value
}

// Limb gives the entries of one limb.
func (a *Assessment) Limb(s Side) map[string]*Entry {
	if s == Left {
		return a.Left
	}
	return a.Right
}

// Read reads the assessments in a file, by the ending of its name: .json and .hcl hold one, .csv
// and .jsonl any number. An assessment with an error is left out, and diags says what is wrong.
func Read(f *source.File, v *vocab.Vocabulary) ([]*Assessment, source.Diagnostics) {
	one := func(a *Assessment, diags source.Diagnostics) ([]*Assessment, source.Diagnostics) {
		if a == nil {
			return nil, diags
		}
		return []*Assessment{a}, diags
	}
	switch strings.ToLower(path.Ext(f.Name)) {
	case ".json":
		return one(ReadJSON(f, v))
	case ".hcl":
		return one(ReadHCL(f, v))
	case ".csv":
		return ReadCSV(f, v)
	case ".jsonl":
		return readLines(f, v)
	}
	return nil, source.Diagnostics{source.Errorf(source.Range{}, "file", "%s does not say by its name how it is written.", f.Name).
		Hinting("The name of a file of assessments ends in .json, .hcl, .csv, or .jsonl for one JSON assessment a line.")}
}

// whole refuses a file that is too large, not UTF-8, or empty, and gives where its text begins:
// after a byte order mark, if there is one.
func whole(f *source.File, limit int) (start int, diags source.Diagnostics) {
	if len(f.Src) > limit {
		return 0, source.Diagnostics{source.Errorf(source.Range{File: f}, "too_large", "The file has %d bytes; more than %d are not read.", len(f.Src), limit).
			Hinting("Divide it into several files, or give many assessments as JSON lines: one a line, in a file whose name ends in .jsonl.")}
	}
	return text(f, 0, len(f.Src))
}

package reason

import (
	"bytes"
	"encoding/json"
	"math"

	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"

	"crus/engine/clinical"
)

// Format names the form of an outcome in JSON.
const Format = "crus-outcome/1"

// Outcome is what a ruleset says of one assessment: data first, from which text, pages and pictures
// are drawn. Its JSON names are stable.
type Outcome struct {
	Format     string             `json:"format"`
	Ruleset    Version            `json:"ruleset"`
	BuildsOn   []Version          `json:"builds_on,omitempty"`
	Vocabulary Version            `json:"vocabulary"`
	Assessment About              `json:"assessment"`
	Applies    string             `json:"applies"` // yes | no | unknown
	Scope      *Trace             `json:"applies_trace,omitempty"`
	WaitsFor   []string           `json:"applies_waits_for,omitempty"` // where applies is unknown
	Person     *Result            `json:"person,omitempty"`
	Limbs      map[string]*Result `json:"limbs,omitempty"`                  // left, right
	Instead    []*Instead         `json:"instead,omitempty"`                // what was asked about
	NotLooked  []string           `json:"boundary_not_looked_at,omitempty"` // recorded measures that state no error, as person.x, left.x or right.x
	Notices    []string           `json:"notices"`
}

// Version names a ruleset or vocabulary exactly.
type Version struct {
	Name    string `json:"name"`
	Title   string `json:"title"`
	Version string `json:"version"`
	Status  string `json:"status,omitempty"`
	Digest  string `json:"digest"`
}

// About says which assessment it was.
type About struct {
	ID        string   `json:"id"`
	Date      string   `json:"date,omitempty"`
	Assessor  string   `json:"assessor,omitempty"`
	DeviceFor []string `json:"device_for"`
}

// Result is what was found and advised for one limb, or for the person.
type Result struct {
	Choices    map[string]*Choice   `json:"choices"`
	Cautions   []*Caution           `json:"cautions"`   // fired and pending, gravest first
	Findings   map[string]*bool     `json:"findings"`   // nil: unknown
	Quantities map[string]*Measured `json:"quantities"` // nil: unknown
	Rules      map[string]*Rule     `json:"rules"`
	Missing    []*Missing           `json:"missing"`              // the one to take first comes first
	Immaterial []string             `json:"immaterial,omitempty"` // missing, and no value of it changes anything
	Boundaries []*Near              `json:"boundaries,omitempty"` // results that another value within measurement error would change
	Traces     map[string]*Trace    `json:"traces"`               // finding.x, quantity.x, and caution.x where it did not fire
}

// Measured is a number with its unit (a UCUM code), and how far it could be off.
type Measured struct {
	Value     float64  `json:"value"`
	Unit      string   `json:"unit"`
	PlusMinus *float64 `json:"plus_minus,omitempty"` // half-width of a band of about 95 %; nil: not known
}

// The statuses of a choice.
const (
	Settled         = "settled"
	IsOpen          = "open"
	Default         = "default"
	LeftToClinician = "left_to_clinician"
	Unanswered      = "unanswered"
	Conflict        = "conflict"
)

// Choice is what is advised of one feature of the device.
type Choice struct {
	Status       string      `json:"status"`
	Value        any         `json:"value"`                // an option, a number, or nil where nothing is picked
	Unit         string      `json:"unit,omitempty"`       // UCUM code of a number
	PlusMinus    *float64    `json:"plus_minus,omitempty"` // of a settled number: the widest of the aims that decide, or of the limit that moved them
	Among        []string    `json:"among,omitempty"`      // options that are level
	Interval     *[2]float64 `json:"interval,omitempty"`   // of a number: what the limits leave
	Range        *[2]float64 `json:"range,omitempty"`      // of an open number: from the lowest to the highest aim
	Provisional  bool        `json:"provisional"`
	Whatever     bool        `json:"whatever_is_missing,omitempty"` // pending rules bear on it, and all completions agree
	NearBoundary *bool       `json:"near_boundary"`                 // nil: not looked at
	Options      []Option    `json:"options,omitempty"`
	Numbers      []Number    `json:"numbers,omitempty"`  // of a number: every limit and aim
	Conflict     []string    `json:"conflict,omitempty"` // a smallest set of rules that cannot all hold
	CouldBecome  []Could     `json:"could_become,omitempty"`
	Explored     *Explored   `json:"explored,omitempty"`
	Failed       []Failure   `json:"failed,omitempty"`   // rules that bear on it and can't be worked out
	Because      string      `json:"because,omitempty"`  // why it is left to the clinician
	Consider     []string    `json:"consider,omitempty"` // what the clinician weighs
}

// Failure says why a rule can't be worked out.
type Failure struct {
	Rule string `json:"rule"`
	Why  string `json:"why"` // a sentence
}

// The states of an option.
const (
	Picked     = "picked"
	Level      = "level"
	Outweighed = "outweighed"
	Removed    = "removed"
)

// Option is one option of a choice and why it was or was not picked.
type Option struct {
	Option   string   `json:"option"`
	State    string   `json:"state"`              // picked | level | outweighed | removed
	By       []string `json:"by"`                 // the rules that removed it, or else that favour it
	Favoured []string `json:"favoured,omitempty"` // of a removed option: the rules that favour it all the same
	Why      string   `json:"why"`                // the same in a sentence
}

// Number is one limit or aim on a number.
type Number struct {
	Rule     string       `json:"rule"`
	Verb     string       `json:"verb"` // at_least | at_most | aim
	Value    float64      `json:"value"`
	Strength string       `json:"strength"`
	Off      *Uncertainty `json:"uncertainty,omitempty"`
	Moved    *float64     `json:"moved_to,omitempty"` // an aim outside of the interval, moved to its nearest end
	State    string       `json:"state"`              // limit | decides | outweighed
}

// Could is a result that completing the assessment could bring instead.
type Could struct {
	Status    string `json:"status"`
	Value     any    `json:"value"`
	If        string `json:"if"`         // for people
	When      []Cell `json:"when"`       // the same as data: all of these together
	OtherWays bool   `json:"other_ways"` // other values bring it about too
}

// Cell is a part of a measure's range within which every rule behaves the same.
type Cell struct {
	Measure string `json:"measure"`
	Is      string `json:"is"` // "≤ 5°", "2 or more", "broken"
}

// Explored says how far the completions of missing measures were tried. Complete: all are accounted for, though those that
// come to the same were looked at together.
type Explored struct {
	Tried    int      `json:"tried"`
	Of       string   `json:"of"` // how many there are; a number as text, for it can be very large
	Complete bool     `json:"complete"`
	Open     []string `json:"open,omitempty"` // the formulas because of which it is not
}

// The states of a rule.
const (
	Fired      = "fired"
	DidNotFire = "did_not_fire"
	Pending    = "pending"
	SetAside   = "set_aside"
)

// Rule is what became of a rule.
type Rule struct {
	State      string   `json:"state"`
	WaitsFor   []string `json:"waits_for"`
	SetAsideBy []string `json:"set_aside_by"`
	Strength   string   `json:"strength"`
	Basis      string   `json:"basis"`
	Cites      []string `json:"cites"`
	Because    string   `json:"because"`
	Failed     string   `json:"failed,omitempty"` // why its condition or a number can't be worked out
	Trace      *Trace   `json:"trace"`
}

// Caution is a caution that fired, or that would with certain values of what is missing.
type Caution struct {
	Name         string    `json:"name"`
	Level        string    `json:"level"`
	State        string    `json:"state"` // fired | pending
	Provisional  bool      `json:"provisional"`
	Says         string    `json:"says"`
	Act          string    `json:"act"`
	Basis        string    `json:"basis"`
	Cites        []string  `json:"cites"`
	WaitsFor     []string  `json:"waits_for"`
	CouldBecome  []Could   `json:"could_become,omitempty"`
	Explored     *Explored `json:"explored,omitempty"`
	Failed       string    `json:"failed,omitempty"` // why its condition can't be worked out
	NearBoundary *bool     `json:"near_boundary"`    // nil: not looked at
	Trace        *Trace    `json:"trace"`
}

// Near is one result that another value of one measure, within its measurement error, would change.
type Near struct {
	Result   string  `json:"result"`  // a choice, caution.x, which may be silent now, or applies
	Measure  string  `json:"measure"` // limb.x, person.x or other.x
	Label    string  `json:"label"`
	Value    string  `json:"value"`          // as recorded, in words
	Error    float64 `json:"error"`          // half-width of a band of about 95 %, in the unit, in grades or counts
	Unit     string  `json:"unit,omitempty"` // UCUM code
	Boundary string  `json:"boundary"`       // "5°", "between 1 and 1+"
	Here     Beside  `json:"here"`           // the side on which the recorded value lies
	There    Beside  `json:"there"`
}

// What was found of another result that was asked about.
const (
	InsteadAlready  = "already"   // it is advised as it is
	InsteadFound    = "found"     // there are ways to it
	InsteadNever    = "never"     // however the limbs were, it does not come about
	InsteadNotFound = "not_found" // no way to it was found, which does not show that there is none
)

// Instead is what would bring another result of a choice about: the fewest, then the smallest changes of measures of the
// limbs, all of the person staying as it is.
type Instead struct {
	Choice   string  `json:"choice"`
	Side     string  `json:"side,omitempty"` // left, right; none for the person
	Wanted   any     `json:"wanted"`         // an option, or a number
	Unit     string  `json:"unit,omitempty"`
	Found    string  `json:"found"`
	Ways     []*Way  `json:"ways,omitempty"`     // as few changes each
	Limits   []Limit `json:"limits,omitempty"`   // that take the option away
	Always   bool    `json:"always,omitempty"`   // the limits hold however the limbs are; else as things stand
	Favoured bool    `json:"favoured,omitempty"` // some rule that could hold favours the option
}

// Way is some changes that together bring a result about, carried out.
type Way struct {
	Changes     []Change `json:"changes"`
	Distance    float64  `json:"distance"` // the sum of the changes, each in units of its measure's error, or else of a twentieth of its range
	Provisional bool     `json:"provisional"`
}

// Change is one measure with another value.
type Change struct {
	Measure string `json:"measure"` // limb.x or other.x; left.x or right.x of a choice of the person
	Label   string `json:"label"`
	From    string `json:"from,omitempty"` // as recorded; none where it is not
	To      string `json:"to"`             // a value that does, near the recorded one
	Is      string `json:"is"`             // what it would have to be: "5° or less"
}

// Limit is a rule that takes an option away.
type Limit struct {
	Rule    string   `json:"rule"`
	Verb    string   `json:"verb"`
	Options []string `json:"options"`
}

// Beside is one side of a boundary, and what it gives.
type Beside struct {
	Is     string `json:"is"`     // "5° or less"
	Status string `json:"status"` // of a choice; fired, did_not_fire or pending of a caution; yes, no or unknown
	Value  any    `json:"value"`
}

// Missing is a measure that is not recorded and that decides something.
type Missing struct {
	Measure string   `json:"measure"` // limb.x, person.x or other.x
	Label   string   `json:"label"`
	Taken   string   `json:"taken,omitempty"`
	Reason  string   `json:"reason,omitempty"` // why it was not recorded, as written
	Decides []string `json:"decides"`          // choices, and caution.x
	Settles int      `json:"settles"`          // how many of them it settles alone, whatever its value
}

// Trace shows how something was worked out.
type Trace struct {
	Place   string       `json:"place"`             // file:line:column of the block
	Applies *Step        `json:"applies,omitempty"` // of the ruleset that a built-on rule comes from
	When    *Step        `json:"when,omitempty"`    // the condition, or the formula of a quantity
	Unless  *Step        `json:"unless,omitempty"`
	Advises []Effect     `json:"advises,omitempty"`
	Because string       `json:"because,omitempty"`
	Cites   []string     `json:"cites,omitempty"`
	Off     *Uncertainty `json:"uncertainty,omitempty"` // of a quantity
}

// Effect is what a rule says of one choice, and what that did.
type Effect struct {
	Choice  string   `json:"choice"`
	Verb    string   `json:"verb"`
	Options []string `json:"options,omitempty"`
	Formula *Step    `json:"formula,omitempty"`
	Did     string   `json:"did"` // in a sentence
}

// failure gives why something in a trace can't be worked out, or "".
func (t *Trace) failure() string {
	steps := []*Step{t.Applies, t.When, t.Unless}
	for _, e := range t.Advises {
		steps = append(steps, e.Formula)
	}
	for _, s := range steps {
		if why := s.failure(); why != "" {
			return why
		}
	}
	return ""
}

func (s *Step) failure() string {
	if s == nil {
		return ""
	}
	for _, k := range s.Steps { // the innermost is where it began
		if why := k.failure(); why != "" {
			return why
		}
	}
	return s.Value.Failed()
}

// Step is one sub-expression with its value.
type Step struct {
	*Written
	Value Value   `json:"value"`
	Steps []*Step `json:"steps,omitempty"`
}

// Written is where a sub-expression stands; every run shares it.
type Written struct {
	Text  string `json:"text"`
	Place string `json:"place"` // file:line:column
}

// Value is the value of a step. As JSON: true or false, null for unknown, {"value", "unit"} for a
// quantity, the label of a grade, {"failed": "..."} where it could not be worked out.
type Value struct{ V ref.Val }

// Known reports whether the value could be worked out.
func (v Value) Known() bool { return v.V != nil && !types.IsUnknownOrError(v.V) }

// Failed says why the value could not be worked out, or "" where nothing failed.
func (v Value) Failed() string {
	if e, ok := v.V.(*types.Err); ok {
		return e.Error()
	}
	return ""
}

// String is the value as people read it: "yes", "no", "unknown", "−5°", "1+".
func (v Value) String() string {
	switch x := v.V.(type) {
	case nil, *types.Unknown:
		return "unknown"
	case *types.Err:
		return "can't be worked out"
	case types.Bool:
		if x {
			return "yes"
		}
		return "no"
	case types.String:
		return words(string(x))
	case types.Int:
		return trimNumber(float64(x))
	case types.Double:
		return trimNumber(float64(x))
	case clinical.Quantity:
		return x.Short()
	case interface{ String() string }:
		return x.String()
	default:
		b, _ := json.Marshal(x.Value())
		return string(b)
	}
}

// MarshalJSON writes the form that Value documents.
func (v Value) MarshalJSON() ([]byte, error) {
	switch x := v.V.(type) {
	case nil, *types.Unknown:
		return []byte("null"), nil
	case *types.Err:
		return plainJSON(map[string]string{"failed": x.Error()})
	case clinical.Quantity:
		at, _ := x.In(x.Unit())
		return json.Marshal(Measured{Value: tidy(at), Unit: x.Unit().Code})
	case clinical.Grade:
		return json.Marshal(x.String())
	case clinical.Date:
		return json.Marshal(x.String())
	case types.Double:
		if math.IsInf(float64(x), 0) || math.IsNaN(float64(x)) { // JSON has no such numbers
			return json.Marshal(v.String())
		}
		return json.Marshal(float64(x))
	case types.Bool, types.String, types.Int, types.Uint:
		return json.Marshal(x.Value())
	default:
		return plainJSON(v.String())
	}
}

// plainJSON writes < and > as they are.
func plainJSON(x any) ([]byte, error) {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	err := e.Encode(x)
	return bytes.TrimRight(b.Bytes(), "\n"), err
}

package main

import (
	"strings"

	"crus/engine/source"
)

// checkJSON is what crus check --json writes.
type checkJSON struct {
	Format      string           `json:"format"` // crus-check/1
	Kind        string           `json:"kind"`   // ruleset | vocabulary
	Name        string           `json:"name"`   // with errors: as it was named on the command line
	Version     string           `json:"version,omitempty"`
	Digest      string           `json:"digest,omitempty"`
	Read        map[string]int   `json:"read"` // how many rules, cautions, ... are in force
	Errors      int              `json:"errors"`
	Warnings    int              `json:"warnings"`
	Diagnostics []diagnosticJSON `json:"diagnostics"`
	Unclear     []unclearJSON    `json:"unclear,omitempty"` // what crus prove can't look inside
}

// unclearJSON is a part of a condition or formula that no cells can express.
type unclearJSON struct {
	Text string `json:"text"`
	placeJSON
}

// diagnosticJSON is one thing that is wrong. Lines and columns count from 1, columns in characters;
// the end is just behind the last one.
type diagnosticJSON struct {
	Severity string        `json:"severity"` // error | warning
	Code     string        `json:"code"`
	Message  string        `json:"message"`
	Hint     string        `json:"hint"`
	Related  []relatedJSON `json:"related,omitempty"`
	placeJSON
}

type relatedJSON struct {
	Message string `json:"message"`
	placeJSON
}

type placeJSON struct {
	File      string `json:"file"`
	Line      int    `json:"line"`
	Column    int    `json:"column"`
	EndLine   int    `json:"end_line"`
	EndColumn int    `json:"end_column"`
}

func place(r source.Range) placeJSON {
	if !r.Known() {
		return placeJSON{}
	}
	p := placeJSON{File: r.File.Name}
	p.Line, p.Column = r.File.Position(r.Start)
	p.EndLine, p.EndColumn = r.File.Position(r.End)
	return p
}

func (r checkResult) json() checkJSON {
	out := checkJSON{Format: "crus-check/1", Kind: r.kind, Name: r.name, Read: map[string]int{}, Errors: r.diags.Errors(), Diagnostics: []diagnosticJSON{}}
	out.Warnings = len(r.diags) - out.Errors
	switch {
	case r.ruleset != nil:
		out.Name, out.Version, out.Digest = r.ruleset.Name, r.ruleset.Version, r.ruleset.Digest
		for _, n := range r.read() {
			out.Read[key(n.what)] = n.n
		}
	case r.vocabulary != nil:
		v := r.vocabulary
		out.Name, out.Version, out.Digest = v.Name, v.Version, v.Digest
		out.Read["measures"], out.Read["choices"], out.Read["scales"] = len(v.Measures), len(v.Choices), len(v.Scales)
	}
	for _, u := range r.unclear {
		out.Unclear = append(out.Unclear, unclearJSON{u.Expr.Written(u.ID), place(u.Expr.Where(u.ID))})
	}
	for _, d := range r.diags {
		j := diagnosticJSON{Severity: d.Severity.String(), Code: d.Code, Message: d.Message, Hint: d.Hint, placeJSON: place(d.Where)}
		for _, rel := range d.Related {
			j.Related = append(j.Related, relatedJSON{rel.Message, place(rel.Where)})
		}
		out.Diagnostics = append(out.Diagnostics, j)
	}
	return out
}

// key is the JSON name of what is counted: "worked_cases".
func key(what string) string {
	_, plural, _ := strings.Cut(count(2, what), " ")
	return strings.ReplaceAll(plural, " ", "_")
}

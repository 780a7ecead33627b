package main

import (
	"io"
	"iter"
	"os"
	"path/filepath"
	"strings"

	"crus/engine/assess"
	"crus/engine/reason"
	"crus/engine/source"
	"crus/engine/vocab"
)

// assessments is what a file holds, read one by one where the format allows. A nil assessment comes
// with the errors that it has.
type assessments struct {
	kind  string // json | hcl | csv | jsonl
	many  bool   // more than one, or not to be known beforehand
	each  iter.Seq2[*assess.Assessment, source.Diagnostics]
	close func()
}

// assessments opens a file of assessments, or the standard input for "-".
func (a *app) assessments(path string, v *vocab.Vocabulary) (assessments, error) {
	if path == "-" {
		f, err := readFile(a.in, "standard input")
		if err != nil {
			return assessments{}, err
		}
		x, diags := assess.ReadJSON(f, v)
		return assessments{"json", false, func(yield func(*assess.Assessment, source.Diagnostics) bool) { yield(x, diags) }, func() {}}, nil
	}
	file, err := os.Open(path)
	if err != nil {
		return assessments{}, refusal{path + " can't be read: " + plainError(err) + ".", "Check the path of the assessment."}
	}
	done := func() { _ = file.Close() } // it was only read
	kind := strings.TrimPrefix(strings.ToLower(filepath.Ext(path)), ".")
	if kind == "jsonl" {
		return assessments{kind, true, assess.Lines(file, filepath.ToSlash(path), v), done}, nil
	}
	defer done()
	f, err := readFile(file, filepath.ToSlash(path))
	if err != nil {
		return assessments{}, err
	}
	list, diags := assess.Read(f, v)
	return assessments{kind, kind == "csv" && len(list) != 1, func(yield func(*assess.Assessment, source.Diagnostics) bool) {
		if diags.HasErrors() && !yield(nil, diags) {
			return
		}
		for _, x := range list {
			if !yield(x, nil) {
				return
			}
		}
	}, func() {}}, nil
}

// one reads the assessment of a file that must hold just one.
func (a *app) one(e *reason.Engine, path string) (*assess.Assessment, error) {
	in, err := a.assessments(path, e.Ruleset().Vocabulary)
	if err != nil {
		return nil, err
	}
	defer in.close()
	if in.many {
		return nil, refusal{"This takes one assessment, and " + path + " holds several.", "Give them one by one."}
	}
	w := &outcomeWriter{app: a, engine: e}
	for x, diags := range in.each {
		if err := w.report(diags); err != nil {
			return nil, err
		}
		if x == nil {
			return nil, errSaid
		}
		return x, w.report(sides(x))
	}
	return nil, refusal{path + " holds no assessment.", "crus form writes a blank one."}
}

// readFile reads a text of limited size; a longer one is cut just where its reader refuses it.
func readFile(r io.Reader, name string) (*source.File, error) {
	src, err := io.ReadAll(io.LimitReader(r, assess.MaxFileSize+1))
	if err != nil {
		return nil, refusal{name + " can't be read: " + plainError(err) + ".", "An assessment is a plain file."}
	}
	return source.NewFile(name, src), nil
}

package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"strings"

	"crus/engine/reason"
	"crus/engine/render"
	"crus/engine/source"
)

// progressEvery is after how many assessments the count on the screen changes.
const progressEvery = 100

// outcomeWriter writes outcomes one after the other as they were asked for: text with a line
// between two, or JSON as one object, a list (for a table), or one object a line (for JSON lines).
type outcomeWriter struct {
	app      *app
	engine   *reason.Engine
	options  adviseOptions
	kind     string // of the assessments
	written  int
	progress bool // a count stands on the screen
}

// report says what is wrong with an assessment.
func (w *outcomeWriter) report(diags source.Diagnostics) error {
	if len(diags) == 0 {
		return nil
	}
	w.clear()
	return render.Diagnostics(w.app.errors, diags, w.app.styleFor(w.app.errTerminal))
}

func (w *outcomeWriter) write(o *reason.Outcome) error {
	w.written++
	w.count()
	out, rs := w.app.out, w.engine.Ruleset()
	switch {
	case !w.options.asJSON:
		if w.written > 1 {
			fmt.Fprintf(out, "\n%s\n\n", strings.Repeat("=", render.Columns))
		}
		return render.Text(out, o, rs.Vocabulary, w.app.style(), render.TextOptions{Full: w.options.full, Cites: render.Citations(rs)})
	case w.kind == "jsonl":
		e := json.NewEncoder(out)
		e.SetEscapeHTML(false)
		return e.Encode(o)
	case w.kind == "csv":
		var b bytes.Buffer
		if err := render.JSON(&b, o); err != nil {
			return err
		}
		before := map[bool]string{true: "[\n", false: ",\n"}[w.written == 1]
		_, err := out.WriteString(before + strings.TrimSuffix(b.String(), "\n"))
		return err
	}
	return render.JSON(out, o)
}

// end closes the list of a table.
func (w *outcomeWriter) end() error {
	w.clear()
	if !w.options.asJSON || w.kind != "csv" {
		return nil
	}
	closing := map[bool]string{true: "[]\n", false: "\n]\n"}[w.written == 0]
	_, err := w.app.out.WriteString(closing)
	return err
}

// count shows a person at a terminal how far a long stream has come, unless the outcomes stand there.
func (w *outcomeWriter) count() {
	if w.app.errTerminal && !w.app.outTerminal && w.written%progressEvery == 0 {
		fmt.Fprintf(w.app.errors, "\r%d assessments", w.written)
		w.progress = true
	}
}

func (w *outcomeWriter) clear() {
	if w.progress {
		fmt.Fprint(w.app.errors, "\r\x1b[K")
		w.progress = false
	}
}

// were writes "1 was", "2 were".
func were(n int) string {
	if n == 1 {
		return "1 was"
	}
	return fmt.Sprintf("%d were", n)
}

// Package render shows what the engine says: to a person in a terminal or on a page, and to a
// program as JSON. Text and page are drawn from one sheet, which holds every word, so that they
// never differ.
//
//	err := render.Text(os.Stdout, outcome, vocabulary, render.Plain, render.TextOptions{})
//	err := render.HTML(file, outcome, vocabulary, render.HTMLOptions{})
//	err := render.JSON(os.Stdout, outcome)
package render

import (
	"fmt"
	"io"
	"strings"

	"crus/engine/source"
)

// Style says whether a terminal shows colour. The caller decides: there is a terminal, NO_COLOR is
// not set, TERM is not "dumb", or the user asked. Colour is never the only sign of anything.
type Style struct{ colour bool }

// Plain is the style without colour.
var Plain = Style{}

// Coloured is the style for a terminal that shows colour. It uses the sixteen basic colours, which
// follow the user's own light or dark theme.
func Coloured() Style { return Style{colour: true} }

// tone is a manner of showing a piece of text.
type tone string

// The tones, as codes of ECMA-48 (select graphic rendition).
const (
	usual   tone = ""
	strong  tone = "1"
	faint   tone = "2"
	sure    tone = "36" // settled: teal
	unsure  tone = "33" // open, provisional, precaution
	alarm   tone = "31" // conflict
	gravest tone = "1;31"
)

// in shows text in a tone. Text must be one line.
func (s Style) in(t tone, text string) string {
	if !s.colour || t == usual || strings.TrimSpace(text) == "" {
		return text
	}
	return "\x1b[" + string(t) + "m" + text + "\x1b[0m"
}

func (s Style) as(t tone) func(string) string {
	return func(text string) string { return s.in(t, text) }
}

// Diagnostics writes everything that is wrong with what somebody wrote, in the order of files and
// places, and a last line that counts it. It writes nothing where there is nothing to say.
func Diagnostics(w io.Writer, ds source.Diagnostics, st Style) error {
	ds = ds.Sorted()
	if len(ds) == 0 {
		return nil
	}
	text := ds.Render(source.Style{Error: st.as(gravest), Warning: st.as(unsure), Mark: st.as(alarm), Faint: st.as(faint)})
	errors := ds.Errors()
	var counts []string
	if errors > 0 {
		counts = append(counts, count(errors, "error"))
	}
	if warnings := len(ds) - errors; warnings > 0 {
		counts = append(counts, count(warnings, "warning"))
	}
	_, err := fmt.Fprintf(w, "%s\n%s\n", text, st.in(strong, strings.Join(counts, ", ")))
	return err
}

// count writes "1 error", "3 errors".
func count(n int, thing string) string {
	if n == 1 {
		return "1 " + thing
	}
	return fmt.Sprintf("%d %ss", n, thing)
}

package main

import (
	"fmt"
	"io"
	"strings"

	"github.com/sergi/go-diff/diffmatchpatch"
)

// around is how many unchanged lines are shown around a change.
const around = 2

// diffLine is one line of a comparison: ' ' in both, '-' before only, '+' after only.
type diffLine struct {
	sign   byte
	text   string
	number int // in the text before
}

// writeDiff shows the lines of a file that change, with what stands around them.
func writeDiff(w io.Writer, t tidiedFile) {
	lines := diffLines(string(t.before), string(t.after))
	shown := make([]bool, len(lines))
	for i, l := range lines {
		if l.sign != ' ' {
			for j := max(0, i-around); j < min(len(lines), i+around+1); j++ {
				shown[j] = true
			}
		}
	}
	for i, l := range lines {
		if !shown[i] {
			continue
		}
		if i == 0 || !shown[i-1] {
			fmt.Fprintf(w, "%s:%d\n", t.File, l.number)
		}
		fmt.Fprintf(w, "%c %s\n", l.sign, visible(l.text))
	}
	fmt.Fprintln(w)
}

// diffLines compares two texts line by line.
func diffLines(before, after string) []diffLine {
	d := diffmatchpatch.New()
	a, b, texts := d.DiffLinesToRunes(before, after)
	var out []diffLine
	number := 1
	for _, part := range d.DiffCharsToLines(d.DiffMainRunes(a, b, false), texts) {
		sign := map[diffmatchpatch.Operation]byte{diffmatchpatch.DiffEqual: ' ', diffmatchpatch.DiffDelete: '-', diffmatchpatch.DiffInsert: '+'}[part.Type]
		for _, text := range strings.SplitAfter(part.Text, "\n") {
			if text == "" {
				continue
			}
			out = append(out, diffLine{sign, text, number})
			if sign != '+' {
				number++
			}
		}
	}
	return out
}

// visible shows what a change of blanks and line ends is about: a dot for each blank at the end of a
// line, an arrow for a tab, and a word where the line end is missing or of the other kind.
func visible(line string) string {
	text, ended := strings.CutSuffix(line, "\n")
	text, windows := strings.CutSuffix(text, "\r")
	body := strings.TrimRight(text, " \t")
	end := strings.ReplaceAll(text[len(body):], " ", "·")
	text = strings.ReplaceAll(body+end, "\t", "→")
	switch {
	case windows:
		text += " [line end CR LF]"
	case !ended:
		text += " [no line end]"
	}
	return strings.TrimPrefix(text, "\uFEFF")
}

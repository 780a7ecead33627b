package main

import (
	"strings"
	"time"

	"github.com/spf13/cobra"

	"crus/engine/source"
)

// word is an option that takes one of a few words.
type word struct {
	value string
	words []string
}

// oneOf makes a word option; the first word is its default.
func oneOf(words ...string) word { return word{words[0], words} }

// String is the word, as pflag.Value has it.
func (w *word) String() string { return w.value }

// Type names what the option takes in the help.
func (w *word) Type() string { return strings.Join(w.words, "|") }

// Set takes the word if it is one of the words.
func (w *word) Set(s string) error {
	for _, x := range w.words {
		if s == x {
			w.value = s
			return nil
		}
	}
	return refusal{"It can be " + source.Or(w.words) + ".", ""}
}

// complete lists the words for the shell.
func (w *word) complete(*cobra.Command, []string, string) ([]string, cobra.ShellCompDirective) {
	return w.words, cobra.ShellCompDirectiveNoFileComp
}

// day is an option that takes a date.
type day struct{ time.Time }

// String is the date, or "" where none was given.
func (d *day) String() string {
	if d.IsZero() {
		return ""
	}
	return d.Format(time.DateOnly)
}

// Type names what the option takes in the help.
func (d *day) Type() string { return "YYYY-MM-DD" }

// Set takes a date.
func (d *day) Set(s string) error {
	t, err := time.Parse(time.DateOnly, s)
	if err != nil {
		return refusal{"A date is written 2027-01-31: year, month, day.", ""}
	}
	d.Time = t
	return nil
}

// or gives the day if the user named one, else the date of an assessment, else today.
func (d *day) or(date string) time.Time {
	if !d.IsZero() {
		return d.Time
	}
	if t, err := time.Parse(time.DateOnly, date); err == nil {
		return t
	}
	y, m, dd := time.Now().Date()
	return time.Date(y, m, dd, 0, 0, 0, 0, time.UTC)
}

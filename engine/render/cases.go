package render

import (
	"fmt"
	"io"
	"strings"

	"crus/engine/cases"
	"crus/engine/source"
)

// CasesOptions says how much of a report on worked cases is written.
type CasesOptions struct {
	All bool // everything that no case has shown, and the cases that passed
}

// maxUnshown is how many conditions, and how many boundaries, are listed without being asked for all.
const maxUnshown = 12

// Cases writes what running the worked cases gave: failures first, each with its place; then the
// conditions that no case has shown both ways, and the boundaries on or beside which no case stands.
func Cases(w io.Writer, r *cases.Report, st Style, opt CasesOptions) error {
	var b strings.Builder
	fmt.Fprintf(&b, "%s %s\n", st.in(strong, r.Ruleset), r.Version)
	for _, c := range r.Cases {
		if c.Passed {
			if opt.All {
				fmt.Fprintf(&b, "  %s passed  %s\n", st.in(sure, "✓"), c.Name)
			}
			continue
		}
		fmt.Fprintf(&b, "\n  %s failed  %s\n", st.in(alarm, "✗"), st.in(strong, c.Name))
		for _, f := range c.Failures {
			fmt.Fprintf(&b, "    %s: %s, %s\n", f.Place, f.Of, f.What)
			for _, line := range strings.Split(strings.TrimRight(f.Excerpt, "\n"), "\n") {
				fmt.Fprintf(&b, "   %s\n", st.in(faint, line))
			}
			for _, line := range source.Wrap("expected "+f.Expected, 70) {
				fmt.Fprintf(&b, "      %s\n", line)
			}
			for _, line := range source.Wrap("got      "+f.Got, 70) {
				fmt.Fprintf(&b, "      %s\n", line)
			}
		}
	}
	summary := fmt.Sprintf("%d passed, %d failed", r.Passed, r.Failed)
	if r.Passed+r.Failed == 0 {
		summary = "The ruleset has no worked cases."
	}
	fmt.Fprintf(&b, "\n%s\n", st.in(strong, summary))
	unshown(&b, r, st, opt)
	boundaries(&b, r, opt)
	questions(&b, r, st, opt)
	_, err := io.WriteString(w, b.String())
	return err
}

// unshown lists the conditions that no case has shown both ways, by what they belong to.
func unshown(b *strings.Builder, r *cases.Report, st Style, opt CasesOptions) {
	total := r.Shown + len(r.Unshown)
	if total == 0 {
		return
	}
	fmt.Fprintf(b, "%d of %d conditions were shown both true and false by some case.\n", r.Shown, total)
	if len(r.Unshown) == 0 {
		return
	}
	b.WriteString("Not shown both ways:\n")
	of := ""
	for i, c := range r.Unshown {
		if !opt.All && i == maxUnshown {
			fmt.Fprintf(b, "  … and %d more; --all lists them.\n", len(r.Unshown)-i)
			break
		}
		if c.Of != of {
			of = c.Of
			fmt.Fprintf(b, "  %s\n", st.in(strong, of))
		}
		lines := source.Wrap(c.Text, 56)
		fmt.Fprintf(b, "    %s  %s\n", st.in(unsure, fmt.Sprintf("%-11s", shownWord(c))), lines[0])
		for _, line := range lines[1:] {
			fmt.Fprintf(b, "                 %s\n", line)
		}
	}
}

// boundaries lists the boundaries on or beside which no case stands, a sentence for each.
func boundaries(b *strings.Builder, r *cases.Report, opt CasesOptions) {
	total := r.BoundariesShown + len(r.Boundaries)
	if total == 0 {
		return
	}
	fmt.Fprintf(b, "%d of %d boundaries have a case on them and on either side.\n", r.BoundariesShown, total)
	for i, x := range r.Boundaries {
		if !opt.All && i == maxUnshown {
			fmt.Fprintf(b, "  … and %d more; --all lists them.\n", len(r.Boundaries)-i)
			break
		}
		for j, line := range source.Wrap(x.String(), 74) {
			fmt.Fprintf(b, "  %s%s\n", strings.Repeat("  ", min(j, 1)), line)
		}
	}
}

// questions lists the questions that no pair of cases has shown to decide their condition, by what they belong to.
func questions(b *strings.Builder, r *cases.Report, st Style, opt CasesOptions) {
	c := r.Coverage
	if c == nil || c.Questions == 0 {
		return
	}
	with := ""
	if n := len(c.Masking) + len(c.Unsure); n > 0 {
		with = fmt.Sprintf(", %d of them only together with others", n)
	}
	for _, line := range source.Wrap(fmt.Sprintf("%d of %d questions were shown to decide their condition both ways%s.", c.Unique+len(c.Masking)+len(c.Unsure), c.Questions, with), Columns) {
		fmt.Fprintln(b, line)
	}
	list := func(title string, of []cases.Question, word func(cases.Question) string) {
		if len(of) == 0 {
			return
		}
		b.WriteString(title + "\n")
		last := ""
		for i, q := range of {
			if !opt.All && i == maxUnshown {
				fmt.Fprintf(b, "  … and %d more; --all lists them.\n", len(of)-i)
				break
			}
			of := q.Of
			if q.Field == "unless" {
				of += ", unless"
			}
			if of != last {
				last = of
				fmt.Fprintf(b, "  %s\n", st.in(strong, of))
			}
			for j, line := range source.Wrap(strings.Join(strings.Fields(q.Text), " "), 56) {
				lead := strings.Repeat(" ", 17)
				if j == 0 {
					lead = "    " + st.in(unsure, fmt.Sprintf("%-11s", word(q))) + "  "
				}
				fmt.Fprintf(b, "%s%s\n", lead, line)
			}
			if q.Note != "" {
				fmt.Fprintf(b, "                 %s\n", st.in(faint, q.Note))
			}
		}
	}
	if opt.All {
		list("Shown together with others, since they hang together:", c.Masking, func(cases.Question) string { return "together" })
		list("Shown together with others; whether it could be alone is not certain:", c.Unsure, func(cases.Question) string { return "together" })
	}
	list("Can't decide:", c.Never, func(cases.Question) string { return "never" })
	list("Not shown to decide:", c.Unshown, func(q cases.Question) string {
		return map[string]string{"yes": "with yes", "no": "with no", "both": "either way", "pair": "by itself"}[q.Lacks]
	})
	ready := 0
	for _, q := range c.Unshown {
		if q.Ready != "" {
			ready++
		}
	}
	if ready > 0 {
		for _, line := range source.Wrap(fmt.Sprintf("crus cases %s --ready writes worked cases that show %d of these, to confirm and paste.", r.Ruleset, ready), Columns) {
			fmt.Fprintln(b, line)
		}
	}
}

// Ready writes the worked cases that show what is not shown yet, as HCL blocks.
func Ready(w io.Writer, r *cases.Report) error {
	var blocks []string
	for _, q := range r.Coverage.Unshown {
		if q.Ready != "" {
			blocks = append(blocks, q.Ready)
		}
	}
	_, err := io.WriteString(w, strings.Join(blocks, "\n"))
	return err
}

func shownWord(c cases.Condition) string {
	switch {
	case c.True:
		return "never false"
	case c.False:
		return "never true"
	}
	return "neither"
}

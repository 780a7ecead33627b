package render

import (
	"cmp"
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/rivo/uniseg"

	"crus/engine/reason"
	"crus/engine/replay"
)

// TallyOptions says how much of a tally is written.
type TallyOptions struct {
	All bool // the rules and cautions that never fired, and every number that was advised
}

// maxValues is how many of the numbers advised of a choice are listed without being asked for all.
const maxValues = 8

// barWidth is how many columns a bar has.
const barWidth = 16

// Tally writes what was counted over many assessments: the choices with what was advised, then the cautions, then the
// rules.
func Tally(w io.Writer, r *replay.Report, st Style, opt TallyOptions) error {
	p := &printer{st: st}
	p.write(0, st.in(strong, r.Ruleset.Name)+" "+r.Ruleset.Version+" over "+counted(r.Cases, "assessment")+", "+counted(r.Limbs, "limb"))
	if r.Partial {
		p.hang(0, st.in(alarm, "Stopped before the end:"), usual, "only these assessments were counted.", usual)
	}
	for _, x := range []struct {
		n    int64
		text string
	}{
		{r.Refused, "could not be read and not counted"},
		{r.Outside, "of persons to whom the ruleset does not apply"},
		{r.Unsure, "of persons of whom it is not known whether it applies: all is provisional there"},
	} {
		if x.n > 0 {
			p.hang(0, "", usual, counted(x.n, "assessment")+" "+x.text+".", unsure)
		}
	}
	p.heading("Choices")
	silent := 0
	for i := range r.Choices {
		if c := &r.Choices[i]; c.Status[reason.Unanswered] == c.Of && !opt.All {
			silent++
		} else {
			p.tallied(c, opt)
		}
	}
	if silent > 0 {
		p.write(2, p.st.in(faint, counted(int64(silent), "choice")+" always unanswered; --all lists them."))
	}
	p.cautionCounts(r.Cautions, opt)
	p.ruleCounts(r.Rules, opt)
	_, err := io.WriteString(w, p.b.String())
	return err
}

// counted writes "1 limb", "12,345 limbs".
func counted(n int64, what string) string {
	if n == 1 {
		return "1 " + what
	}
	return grouped(fmt.Sprint(n)) + " " + what + "s"
}

// percent writes a share.
func percent(n, of int64) string {
	if of == 0 {
		return ""
	}
	x := 100 * float64(n) / float64(of)
	if n > 0 && x < 0.1 {
		return "<0.1 %"
	}
	return fmt.Sprintf("%.1f %%", x)
}

// bar draws a share in eighths of a column.
func bar(n, of int64) string {
	if of == 0 {
		return ""
	}
	eighths := int((n*barWidth*8 + of - 1) / of) // what is there at all is to be seen
	text := strings.Repeat("█", eighths/8)
	if rest := eighths % 8; rest > 0 {
		text += string([]rune("▏▎▍▌▋▊▉")[rest-1])
	}
	return text
}

// nameWidth is how wide the name of a row can be; a longer one has a line to itself.
const nameWidth = 36

// row writes a name, the bar of its count, and figures in columns of their own.
func (p *printer) row(indent int, name string, t tone, n, of int64, figures ...string) {
	width := nameWidth - indent
	if uniseg.StringWidth(name) > width {
		p.write(indent, p.st.in(t, name))
		name = ""
	}
	line := p.st.in(t, pad(name, width)) + " " + p.st.in(faint, pad(bar(n, of), barWidth))
	for _, f := range figures {
		line += strings.Repeat(" ", max(1, 9-uniseg.StringWidth(f))) + f
	}
	p.write(indent, line)
}

// share writes one row of a choice: what, a bar, the share and the count.
func (p *printer) share(what string, n, of int64, t tone) {
	p.row(4, what, t, n, of, percent(n, of), grouped(fmt.Sprint(n)))
}

// tallied writes what became of a choice.
func (p *printer) tallied(c *replay.ChoiceReport, opt TallyOptions) {
	text := "· " + counted(c.Of, c.Per)
	if c.Provisional > 0 {
		text += "; " + percent(c.Provisional, c.Of) + " provisional"
	}
	if c.Whatever > 0 {
		text += "; " + percent(c.Whatever, c.Of) + " stand whatever is missing"
	}
	p.run(2, c.Label, strong, text)
	for _, o := range c.Options {
		if o.Picked > 0 {
			p.share(plain(o.Option), o.Picked, c.Of, usual)
		}
	}
	left := int64(0) // values that are not listed
	for _, v := range c.Values {
		if opt.All || often(c.Values, v) {
			p.share(number(v.Value, c.Unit), v.Count, c.Of, usual)
		} else {
			left += v.Count
		}
	}
	if left > 0 {
		p.share("other numbers", left, c.Of, usual)
	}
	for _, s := range []struct {
		status, text string
		t            tone
	}{
		{reason.IsOpen, "open between several", unsure},
		{reason.LeftToClinician, "left to the clinician", usual},
		{reason.Unanswered, "unanswered", unsure},
		{reason.Conflict, "conflict: limits leave nothing", alarm},
	} {
		if n := c.Status[s.status]; n > 0 {
			p.share(s.text, n, c.Of, s.t)
		}
	}
}

// often reports whether a number is one of those advised most often.
func often(all []replay.ValueReport, v replay.ValueReport) bool {
	more := 0
	for _, x := range all {
		if x.Count > v.Count || x.Count == v.Count && x.Value < v.Value {
			more++
		}
	}
	return more < maxValues
}

// countsHead writes what stands in the columns of counts.
func (p *printer) countsHead(titles ...string) {
	p.row(2, "", usual, 0, 0, titles...)
}

func (p *printer) cautionCounts(all []replay.CautionReport, opt TallyOptions) {
	if len(all) == 0 {
		return
	}
	p.heading("Cautions")
	p.countsHead("fired", "waiting")
	silent := 0
	for _, level := range []string{"contraindication", "precaution", "note"} {
		said := false
		for _, c := range all {
			switch {
			case c.Level != level:
				continue
			case c.Fired+c.Pending == 0 && !opt.All:
				silent++
				continue
			case !said:
				said = true
				p.write(2, p.st.in(faint, level+"s"))
			}
			p.row(4, c.Name, usual, c.Fired, c.Of, percent(c.Fired, c.Of), percent(c.Pending, c.Of))
		}
	}
	p.unlisted(silent, "caution")
}

func (p *printer) ruleCounts(all []replay.RuleReport, opt TallyOptions) {
	if len(all) == 0 {
		return
	}
	p.heading("Rules")
	p.countsHead("fired", "aside", "waiting")
	sorted := slices.Clone(all)
	slices.SortStableFunc(sorted, func(a, b replay.RuleReport) int { // by the share, without dividing
		return cmp.Compare(b.Fired*a.Of, a.Fired*b.Of)
	})
	silent := 0
	for _, x := range sorted {
		if x.Fired == 0 && !opt.All {
			silent++
			continue
		}
		p.row(2, x.Name, usual, x.Fired, x.Of, percent(x.Fired, x.Of), percent(x.SetAside, x.Of), percent(x.Pending, x.Of))
	}
	p.unlisted(silent, "rule")
}

// unlisted says how many never fired and are not listed.
func (p *printer) unlisted(n int, what string) {
	if n > 0 {
		p.write(2, p.st.in(faint, counted(int64(n), what)+" never fired; --all lists them."))
	}
}

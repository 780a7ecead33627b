package render

import (
	"strings"

	"github.com/rivo/uniseg"
)

// printer writes lines of at most Columns.
type printer struct {
	b  strings.Builder
	st Style
}

// write writes one line, already of the right width.
func (p *printer) write(indent int, line string) {
	p.b.WriteString(strings.TrimRight(strings.Repeat(" ", indent)+line, " "))
	p.b.WriteByte('\n')
}

// heading begins a section: a blank line, then the title with a hairline up to the margin.
func (p *printer) heading(title string) {
	line := strings.Repeat("─", max(0, Columns-uniseg.StringWidth(title)-1))
	p.b.WriteByte('\n')
	p.write(0, p.st.in(strong, title)+" "+p.st.in(faint, line))
}

// hang writes a paragraph after a lead, further lines under the paragraph's first. It writes nothing
// where there is no text.
func (p *printer) hang(indent int, lead string, leadTone tone, text string, t tone) {
	if strings.TrimSpace(text) == "" {
		return
	}
	if uniseg.StringWidth(lead) > 24 { // a lead that is a sentence runs on into the text
		text, lead = lead+" "+text, ""
	}
	in := indent
	if lead != "" {
		in += uniseg.StringWidth(lead) + 1
	}
	for i, line := range Wrap(text, Columns-in) {
		line = p.st.in(t, line)
		if i == 0 && lead != "" {
			p.write(indent, p.st.in(leadTone, lead)+" "+line)
			continue
		}
		p.write(in, line)
	}
}

// facts writes a paragraph after a lead in a column of its own, so that several stand in line.
func (p *printer) facts(indent int, lead, text string) {
	p.hang(indent, pad(lead, 9), faint, text, usual)
}

// notes writes the notes of a row or caution.
func (p *printer) notes(indent int, ns []note) {
	for _, n := range ns {
		if n.Mark.Sign != "" {
			p.run(indent, n.Mark.Sign+" "+n.Lead, n.Mark.tone, n.Text)
		} else {
			p.run(indent+2, n.Lead, faint, n.Text)
		}
	}
}

// run writes a lead that runs on into a paragraph, further lines two columns in. The lead must fit
// into a line.
func (p *printer) run(indent int, lead string, t tone, text string) {
	lines := Wrap(lead+" "+text, Columns-indent-2)
	for i, line := range lines {
		if rest, ok := strings.CutPrefix(line, lead); ok && i == 0 {
			line = p.st.in(t, lead) + rest
		}
		p.write(indent+2*min(i, 1), line)
	}
}

// column is a cell of a row: its text is wrapped to its width.
type column struct {
	width int
	text  string
	tone  tone
}

// columns writes cells beside each other, one space between the first two and two between others.
func (p *printer) columns(indent int, cs ...column) {
	lines := make([][]string, len(cs))
	height := 1
	for i, c := range cs {
		lines[i] = Wrap(c.text, c.width)
		height = max(height, len(lines[i]))
	}
	for y := range height {
		var b strings.Builder
		for i, c := range cs {
			text := ""
			if y < len(lines[i]) {
				text = lines[i][y]
			}
			b.WriteString(p.st.in(c.tone, text))
			if i < len(cs)-1 {
				b.WriteString(strings.Repeat(" ", c.width-uniseg.StringWidth(text)+1+min(i, 1)))
			}
		}
		p.write(indent, b.String())
	}
}

// pairs writes labels with their values: "Calf tone: 2; Age: 61 years".
func pairs(ps []pair) string {
	out := make([]string, len(ps))
	for i, p := range ps {
		out[i] = p.Label + ": " + p.Value
	}
	return strings.Join(out, "; ")
}

func nonEmpty(texts ...string) []string {
	var out []string
	for _, t := range texts {
		if strings.TrimSpace(t) != "" {
			out = append(out, t)
		}
	}
	return out
}

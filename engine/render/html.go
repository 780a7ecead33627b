package render

import (
	"bytes"
	_ "embed"
	"html/template"
	"io"
	"slices"
	"strings"

	"crus/engine/reason"
	"crus/engine/vocab"
)

// HTMLOptions says what a page needs beside the outcome.
type HTMLOptions struct {
	Cites map[string]*vocab.Citation // the sources, as Citations gives them
}

//go:embed page.html
var pageSource string

//go:embed page.css
var pageStyle string

// HTML writes an outcome as one page that needs nothing else: no script, no file, no network. It
// prints on A4. v is the vocabulary of the outcome. The error is that of w.
func HTML(w io.Writer, o *reason.Outcome, v *vocab.Vocabulary, opt HTMLOptions) error {
	t, err := template.New("page").Funcs(template.FuncMap{
		"join": strings.Join, "sentence": sentence, "provisionalMark": provisionalMark,
	}).Parse(pageSource)
	if err != nil {
		return err
	}
	s := draw(o, v, opt.Cites, false)
	var b bytes.Buffer
	err = t.Execute(&b, map[string]any{"Sheet": s, "Tables": tables(s.Advice), "Style": template.CSS(pageStyle), "Decides": decides})
	if err != nil {
		return err
	}
	_, err = io.WriteString(w, clean(b.String()))
	return err
}

// table is the advice for both limbs beside each other, or for the person.
type table struct {
	Key        string // limbs | person
	Sides      []string
	Groups     []tableGroup
	Unanswered []string // on every side
}

type tableGroup struct {
	Title string
	Lines []line
}

// line is one choice with its cell for each side.
type line struct {
	row
	Cells []cell
}

// cell is one choice on one side; without a row it is not decided there.
type cell struct {
	Side string
	Row  *row
}

// tables sets the advice for the limbs beside each other, then that for the person.
func tables(as []advice) []table {
	var limbs, person []advice
	for _, a := range as {
		if a.Key == "person" {
			person = append(person, a)
		} else {
			limbs = append(limbs, a)
		}
	}
	var out []table
	for _, t := range []table{beside("limbs", limbs), beside("person", person)} {
		if t.Sides != nil {
			out = append(out, t)
		}
	}
	return out
}

// beside joins the rows of each choice. A choice that is unanswered on every side is only named.
func beside(key string, as []advice) table {
	t := table{Key: key}
	rows := map[string][]*row{} // by choice, one for each side
	var order []row
	put := func(side int, r row) {
		if rows[r.Name] == nil {
			rows[r.Name] = make([]*row, len(as))
			order = append(order, r)
		}
		rows[r.Name][side] = &r
	}
	answered := map[string]bool{}
	for i, a := range as {
		t.Sides = append(t.Sides, a.Title)
		for _, g := range a.Groups {
			for _, r := range g.Rows {
				answered[r.Name] = true
				put(i, r)
			}
		}
		for _, r := range a.Unanswered {
			put(i, r)
		}
	}
	slices.SortStableFunc(order, func(a, b row) int { return a.place - b.place })
	for _, r := range order {
		if !answered[r.Name] {
			t.Unanswered = append(t.Unanswered, r.Label)
			continue
		}
		if n := len(t.Groups); n == 0 || t.Groups[n-1].Title != r.Group {
			t.Groups = append(t.Groups, tableGroup{Title: r.Group})
		}
		l := line{row: r}
		for i, x := range rows[r.Name] {
			if x != nil && x.AsLeft {
				l.Cells = []cell{{strings.Join(t.Sides, ", "), x}}
				break
			}
			l.Cells = append(l.Cells, cell{t.Sides[i], x})
		}
		g := &t.Groups[len(t.Groups)-1]
		g.Lines = append(g.Lines, l)
	}
	return t
}

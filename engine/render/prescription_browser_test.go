package render

import (
	"context"
	"fmt"
	"net/url"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"pgregory.net/rapid"

	"crus/engine/figure"
)

// sheets is what the browser makes of a page of prescriptions, as it would be printed.
type sheets struct {
	Heights []float64 // of each leg's sheet, mm
	Letters float64   // the smallest, points
	Small   string    // what is written so
	Over    []string  // what reaches over the edge of its sheet, or out of its drawing
}

const measureSheets = `(() => {
  document.documentElement.style.overflow = 'hidden'; // paper has no scroll bar
  const mm = 25.4 / 96, out = {Heights: [], Letters: 99, Small: '', Over: []};
  document.querySelectorAll('article').forEach(a => {
    const edge = a.getBoundingClientRect();
    out.Heights.push(edge.height * mm);
    const walk = document.createTreeWalker(a, NodeFilter.SHOW_TEXT);
    for (let n; n = walk.nextNode();) {
      const e = n.parentElement;
      if (!n.data.trim() || e.tagName.toLowerCase() === 'style') continue;
      const range = document.createRange(); range.selectNodeContents(n);
      const svg = e.closest('svg'), within = svg ? svg.getBoundingClientRect() : edge;
      const zoom = svg ? within.width / svg.viewBox.baseVal.width : 1;
      const points = parseFloat(getComputedStyle(e).fontSize) * zoom * 0.75;
      if (points < out.Letters) { out.Letters = points; out.Small = n.data; }
      for (const box of range.getClientRects())
        if (box.left < within.left - 1 || box.right > within.right + 1 || box.bottom > within.bottom + 1 || svg && box.top < within.top - 1) out.Over.push(n.data);
    }
    a.querySelectorAll('svg').forEach(s => { if (s.getBoundingClientRect().width > edge.width + 1) out.Over.push('the drawing'); });
  });
  return out;
})()`

// openSheets shows prescriptions as they would be printed.
func openSheets(t *testing.T, ctx context.Context, ps []*Prescription) {
	t.Helper()
	file := filepath.Join(t.TempDir(), "sheet.html")
	if err := os.WriteFile(file, pageOf(t, ps), 0o600); err != nil {
		t.Fatal(err)
	}
	media(t, ctx, "print", "dark")
	const paper = 703 // px: 186 mm, what the margins leave of A4
	if err := chromedp.Do(ctx, chromedp.EmulateViewport(paper, 1000), chromedp.Navigate((&url.URL{Scheme: "file", Path: file}).String())); err != nil {
		t.Fatal(err)
	}
}

func measuredSheets(t *testing.T, ctx context.Context) sheets {
	t.Helper()
	got, err := chromedp.Run(ctx, chromedp.Evaluate[sheets](measureSheets))
	if err != nil {
		t.Fatal(err)
	}
	return got
}

var mediaBox = regexp.MustCompile(`/MediaBox ?\[0 0 ([0-9.]+) ([0-9.]+)\]`)

// printed prints what is open, and gives the PDF and its number of sheets, which must be A4.
func printed(t *testing.T, ctx context.Context) ([]byte, int) {
	t.Helper()
	pdf, err := chromedp.Run(ctx, chromedp.PrintToPDF(chromedp.PDFPreferCSSPageSize()))
	if err != nil {
		t.Fatal(err)
	}
	boxes := mediaBox.FindAllSubmatch(pdf, -1)
	for _, b := range boxes {
		w, _ := strconv.ParseFloat(string(b[1]), 64)
		h, _ := strconv.ParseFloat(string(b[2]), 64)
		if w < 594 || w > 596 || h < 841 || h > 843 { // ISO 216
			t.Errorf("a sheet of %g by %g points is not A4", w, h)
		}
	}
	return pdf, len(boxes)
}

// legibleSheets demands what every sheet must be like, however much is on it.
func legibleSheets(t *testing.T, name string, got sheets) {
	t.Helper()
	if len(got.Over) > 0 {
		t.Errorf("%s: over the edge: %s", name, strings.Join(got.Over, " | "))
	}
	if got.Letters < 6.5 {
		t.Errorf("%s: letters of %.2f points: %s", name, got.Letters, got.Small)
	}
}

// Each leg has one sheet of A4, whichever assessment of testdata it is of.
func TestPrescriptionInBrowser(t *testing.T) {
	ctx := browser(t)
	for _, test := range []struct {
		ruleset  string
		patterns []string
	}{
		{"demo_clinic", []string{"*.json", "*.hcl"}},
		{"composite_design", []string{"design_*.json", "spastic_equinovarus.json", "calf_weakness.json"}},
	} {
		e := engineOf(t, test.ruleset)
		var ps []*Prescription
		for _, path := range assessmentsOf(t, test.patterns...) {
			legs := prescriptions(t, e, path)
			if len(legs) == 0 {
				t.Errorf("%s prescribes nothing for %s", test.ruleset, path)
			}
			ps = append(ps, legs...)
		}
		openSheets(t, ctx, ps)
		got := measuredSheets(t, ctx)
		legibleSheets(t, test.ruleset, got)
		for i, height := range got.Heights {
			if height > pageHeight {
				t.Errorf("%s, %s %s: %.1f mm high", test.ruleset, ps[i].About(), ps[i].Side, height)
			}
		}
		page, err := chromedp.Run(ctx, chromedp.Evaluate[seen](measure))
		if err != nil {
			t.Fatal(err)
		}
		for what, found := range map[string][]string{"too little contrast": page.Contrast, "loaded": page.Loads, "wider than the page": page.Wide} {
			if len(found) > 0 {
				t.Errorf("%s: %s: %s", test.ruleset, what, strings.Join(found, " | "))
			}
		}
		if _, n := printed(t, ctx); n != len(ps) {
			t.Errorf("%s: %d legs are printed on %d sheets", test.ruleset, len(ps), n)
		}
	}
}

// invented makes a prescription of made-up words, with so many rows and cautions.
func invented(t *rapid.T, rows, cautions int) *Prescription {
	word := rapid.SampledFrom(strings.Fields("Stiffness about the ankle in cast WWW MMM shell of shank and foot device, plantarflexion; malleoli iii lll 12.5 N·m/° ± 3 upper edge hindfoot forefoot-posting corrected"))
	words := func(name string, least, most int) string {
		return strings.Join(rapid.SliceOfN(word, least, most).Draw(t, name), " ")
	}
	p := &Prescription{Side: rapid.SampledFrom([]string{"left", "right"}).Draw(t, "side"), Ruleset: words("ruleset", 1, 4), Digest: "sha256:012345678901",
		Assessment: []prescribedField{{"Assessment", words("assessment", 1, 5)}}, Usual: []string{words("usual", 10, 25)}, Assumed: []string{words("assumed", 1, 6)}}
	for i := 0; i < rows; {
		g := prescribedGroup{Title: words("group", 1, 2)}
		for range rapid.IntRange(1, 12).Draw(t, "rows") {
			firm := rapid.Bool().Draw(t, "firm")
			g.Rows = append(g.Rows, prescribedRow{Label: words("label", 1, 7), Value: words("value", 1, 4), Firm: firm, Status: "open, provisional", Mark: provisionalMark()})
			i++
		}
		p.Groups = append(p.Groups, g)
	}
	for i := range cautions {
		p.Cautions = append(p.Cautions, prescribedCaution{"precaution", fmt.Sprintf("Caution%d", i), words("act", 5, 22), levelMark("precaution")})
	}
	p.Open, p.Unspoken = []string{"x"}, rapid.SliceOfN(word, 0, 12).Draw(t, "unspoken")
	p.Notes, p.Alerts = rapid.SliceOfN(word, 0, 8).Draw(t, "notes"), rapid.SliceOfN(word, 0, 2).Draw(t, "alerts")
	lean := 11.0
	d := figure.Drawing{Leg: figure.Leg{}.Complete(rapid.Float64Range(900, 2000).Draw(t, "height")), Side: []figure.View{{Title: "In the cast", Angle: -5}, {Title: "In shoe and device", Angle: -5, Lean: &lean,
		Forces: []figure.Force{{At: figure.Calf, Newtons: 146, PlusMinus: 70}, {At: figure.Instep, Newtons: 313, PlusMinus: 151}, {At: figure.Forefoot, Newtons: 277, PlusMinus: 134}}}}}
	p.Drawing = d.SVG(p.fit(d))
	return p
}

// A sheet with no more on it than most designs is one sheet of A4, whatever is written.
func TestPrescriptionFits(t *testing.T) {
	ctx := browser(t)
	var ps []*Prescription
	for i := range 40 {
		ps = append(ps, rapid.Custom(func(t *rapid.T) *Prescription {
			return invented(t, rapid.IntRange(0, 24).Draw(t, "rows"), rapid.IntRange(0, 5).Draw(t, "cautions"))
		}).Example(i))
	}
	openSheets(t, ctx, ps)
	got := measuredSheets(t, ctx)
	legibleSheets(t, "invented", got)
	asWorkedOut(t, ps, got)
	for i, height := range got.Heights {
		if height > pageHeight {
			t.Errorf("sheet %d (%s) is %.1f mm high", i, ps[i].Size, height)
		}
	}
	if _, n := printed(t, ctx); n != len(ps) {
		t.Errorf("%d sheets for %d legs", n, len(ps))
	}
}

// asWorkedOut demands that no sheet is higher than was worked out.
func asWorkedOut(t *testing.T, ps []*Prescription, got sheets) (sizes map[string]int) {
	t.Helper()
	sizes = map[string]int{}
	for i, height := range got.Heights {
		p := ps[i]
		set := settings[slices.IndexFunc(settings, func(s setting) bool { return s.name == p.Size })]
		drawing, err := strconv.ParseFloat(between(p.Drawing, `height="`, `mm"`), 64)
		if err != nil {
			t.Fatal(err)
		}
		worked := p.height(set) + drawing
		if height > worked+spare {
			t.Errorf("sheet %d (%s) is %.1f mm high, and was worked out to be %.1f mm", i, p.Size, height, worked)
		}
		if worked+spare <= pageHeight {
			sizes[p.Size]++
		}
	}
	return sizes
}

// With more on it the letters stand closer, and beyond that it runs on over further sheets; nothing is lost.
func TestPrescriptionWithMuch(t *testing.T) {
	ctx := browser(t)
	var ps []*Prescription
	for i := range 40 {
		ps = append(ps, rapid.Custom(func(t *rapid.T) *Prescription {
			return invented(t, rapid.IntRange(20, 36).Draw(t, "rows"), rapid.IntRange(3, 9).Draw(t, "cautions"))
		}).Example(i))
	}
	openSheets(t, ctx, ps)
	got := measuredSheets(t, ctx)
	legibleSheets(t, "much", got)
	sizes := asWorkedOut(t, ps, got)
	for _, s := range settings[1:] {
		if sizes[s.name] == 0 {
			t.Errorf("no sheet was set %s: %v", s.name, sizes)
		}
	}

	long := rapid.Custom(func(t *rapid.T) *Prescription { return invented(t, 80, 70) }).Example(1)
	openSheets(t, ctx, []*Prescription{long})
	legibleSheets(t, "long", measuredSheets(t, ctx))
	pdf, n := printed(t, ctx)
	if n < 2 {
		t.Errorf("what needs more than a sheet is printed on %d", n)
	}
	text := pdfText(t, pdf)
	for _, want := range []string{"Caution0.", "Caution69.", "Prescriber, signature", "Fitted and skin seen", long.Groups[len(long.Groups)-1].Title} {
		if !strings.Contains(text, want) {
			t.Errorf("the print lacks %q", want)
		}
	}
}

func pdfText(t *testing.T, pdf []byte) string {
	t.Helper()
	file := filepath.Join(t.TempDir(), "sheet.pdf")
	if err := os.WriteFile(file, pdf, 0o600); err != nil {
		t.Fatal(err)
	}
	out, err := exec.Command("pdftotext", file, "-").Output()
	if err != nil {
		t.Fatalf("pdftotext, of poppler-utils: %v", err)
	}
	return string(out)
}

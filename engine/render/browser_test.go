package render

import (
	"bytes"
	"context"
	"net/url"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
)

// browser starts a browser of its own, with no settings of anybody.
func browser(t *testing.T) context.Context {
	t.Helper()
	path, err := exec.LookPath("chromium")
	if err != nil {
		t.Fatal("This test looks at the page in a browser, and chromium is not there. Install it: apt-get install chromium")
	}
	options := []chromedp.ExecAllocatorOption{chromedp.ExecPath(path), chromedp.UserDataDir(t.TempDir()), chromedp.WSURLReadTimeout(40 * time.Second)}
	for _, f := range []string{"headless", "no-sandbox", "disable-gpu", "disable-quic", "no-first-run", "disable-background-networking", "disable-component-update", "disable-sync"} {
		options = append(options, chromedp.Flag(f, true))
	}
	ctx, cancel := context.WithTimeout(t.Context(), 50*time.Second)
	t.Cleanup(cancel)
	ctx, cancel = chromedp.NewExecAllocator(ctx, options...)
	t.Cleanup(cancel)
	ctx, cancel = chromedp.NewContext(ctx)
	t.Cleanup(func() {
		_ = chromedp.Cancel(ctx) // waits until the browser is gone, so that its folder can be removed
		cancel()
	})
	return ctx
}

// seen is what the page's own measurements give.
type seen struct {
	Wide     []string // elements that reach over the edge
	Contrast []string // texts with a contrast below 7
	Small    []string // texts under 13 px, values under 20 px
	Headings []int
	Loads    []string // what the page asked the network for
	Texts    int
}

// measure looks at every text that is shown. Contrast is the ratio of relative luminances of WCAG
// 2.2 (success criterion 1.4.6 asks for 7).
const measure = `(() => {
  const rgb = s => s.match(/[\d.]+/g).map(Number);
  const lum = c => { const [r,g,b] = c.slice(0,3).map(x => { x /= 255; return x <= 0.04045 ? x/12.92 : ((x+0.055)/1.055)**2.4 }); return 0.2126*r+0.7152*g+0.0722*b };
  const ground = e => { for (; e; e = e.parentElement) { const c = rgb(getComputedStyle(e).backgroundColor); if (c.length < 4 || c[3] > 0) return c } return [255,255,255] };
  document.querySelectorAll('details').forEach(d => d.open = true);
  const out = {Wide: [], Contrast: [], Small: [], Headings: [], Loads: performance.getEntriesByType('resource').map(x => x.name), Texts: 0};
  if (document.documentElement.scrollWidth > innerWidth) out.Wide.push('page ' + document.documentElement.scrollWidth);
  const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let n; n = walk.nextNode();) {
    const e = n.parentElement, text = n.data.trim();
    if (!text || !e.checkVisibility() || e.closest('svg')) continue;
    const range = document.createRange(); range.selectNodeContents(n);
    const box = range.getBoundingClientRect();
    if (!box.width) continue;
    out.Texts++;
    if (box.right > innerWidth + 1) out.Wide.push(text);
    const style = getComputedStyle(e), a = lum(rgb(style.color)), b = lum(ground(e));
    const ratio = (Math.max(a,b)+0.05)/(Math.min(a,b)+0.05), px = parseFloat(style.fontSize);
    if (ratio < 7) out.Contrast.push(ratio.toFixed(2) + ' ' + text);
    if (px < 13 || px < 20 && e.closest('.value')) out.Small.push(px + ' ' + text);
  }
  document.querySelectorAll('h1,h2,h3,h4,h5,h6').forEach(h => out.Headings.push(+h.tagName[1]));
  return out;
})()`

// media makes the page think of a medium ("" is the screen) and of a preferred theme.
func media(t *testing.T, ctx context.Context, medium, theme string) {
	t.Helper()
	_, err := chromedp.Call(ctx, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Media: medium,
		Features: []*emulation.MediaFeature{{Name: "prefers-color-scheme", Value: theme}}})
	if err != nil {
		t.Fatal(err)
	}
}

func TestPageInBrowser(t *testing.T) {
	ctx := browser(t)
	v := small(t)
	for name, o := range outcomes(t, v) {
		var b bytes.Buffer
		if err := HTML(&b, o, v, HTMLOptions{Cites: citations()}); err != nil {
			t.Fatal(err)
		}
		file := filepath.Join(t.TempDir(), "page.html")
		if err := os.WriteFile(file, b.Bytes(), 0o600); err != nil {
			t.Fatal(err)
		}
		at := (&url.URL{Scheme: "file", Path: file}).String()
		for _, width := range []int64{360, 1280} {
			for _, theme := range []string{"light", "dark"} {
				media(t, ctx, "", theme)
				if err := chromedp.Do(ctx, chromedp.EmulateViewport(width, 900), chromedp.Navigate(at)); err != nil {
					t.Fatal(err)
				}
				got, err := chromedp.Run(ctx, chromedp.Evaluate[seen](measure))
				if err != nil {
					t.Fatal(err)
				}
				where := name + ", " + strconv.FormatInt(width, 10) + " px, " + theme
				if got.Texts < 10 {
					t.Errorf("%s: only %d texts are shown", where, got.Texts)
				}
				for what, found := range map[string][]string{"wider than the page": got.Wide, "too little contrast": got.Contrast, "too small": got.Small, "loaded": got.Loads} {
					if len(found) > 0 {
						t.Errorf("%s: %s: %s", where, what, strings.Join(found, " | "))
					}
				}
				for i, level := range got.Headings {
					if i == 0 && level != 1 || i > 0 && (level == 1 || level > got.Headings[i-1]+1) {
						t.Errorf("%s: headings are out of order: %v", where, got.Headings)
						break
					}
				}
			}
		}
		checkPrint(t, ctx, name)
	}
}

// onPaper gives the height on paper of what must be there, with every fold closed.
const onPaper = `(() => {
  document.querySelectorAll('details').forEach(d => d.open = false);
  return [...document.querySelectorAll('.advice, .caution, .missing, .reason .facts, .sign, .versions')]
    .filter(e => !e.checkVisibility({contentVisibilityAuto: true}) || !e.getBoundingClientRect().height).map(e => e.className)
})()`

// checkPrint prints the page that is open: on A4, as the page itself asks, with reasons that were
// folded away shown all the same.
func checkPrint(t *testing.T, ctx context.Context, name string) {
	t.Helper()
	media(t, ctx, "print", "dark")
	hidden, err := chromedp.Run(ctx, chromedp.Evaluate[[]string](onPaper))
	if err != nil {
		t.Fatal(err)
	}
	if len(hidden) > 0 {
		t.Errorf("%s: not on paper: %v", name, hidden)
	}
	pdf, err := chromedp.Run(ctx, chromedp.PrintToPDF(chromedp.PDFPreferCSSPageSize()))
	if err != nil {
		t.Fatal(err)
	}
	sheets := regexp.MustCompile(`/MediaBox ?\[0 0 ([0-9.]+) ([0-9.]+)\]`).FindAllSubmatch(pdf, -1)
	if len(sheets) < 1 {
		t.Errorf("%s: the print has no page", name)
	}
	for _, s := range sheets {
		w, _ := strconv.ParseFloat(string(s[1]), 64)
		h, _ := strconv.ParseFloat(string(s[2]), 64)
		if w < 594 || w > 596 || h < 841 || h > 843 { // ISO 216: A4 is 210 by 297 mm, 595.3 by 841.9 points
			t.Errorf("%s: a sheet of %g by %g points is not A4", name, w, h)
		}
	}
}

package render

import (
	"bytes"
	"strings"
	"testing"
)

func TestHTMLGolden(t *testing.T) {
	v := small(t)
	for name, o := range outcomes(t, v) {
		var b bytes.Buffer
		if err := HTML(&b, o, v, HTMLOptions{Cites: citations()}); err != nil {
			t.Fatal(err)
		}
		golden(t, name+".html", b.Bytes())
	}
}

// What somebody wrote stays text, and a link that is not one of the web is not made.
func TestHTMLEscapes(t *testing.T) {
	v := small(t)
	o := everyStatus(t, v)
	o.Ruleset.Title = `<script>alert("x")</script>`
	o.Limbs["right"].Cautions[0].Says = "</style>\x1b[2J<img src=x onerror=y>\u202egnp"
	cites := citations()
	cites["author_2002"].URL = "javascript:alert(1)"
	var b bytes.Buffer
	if err := HTML(&b, o, v, HTMLOptions{Cites: cites}); err != nil {
		t.Fatal(err)
	}
	got := b.String()
	for _, bad := range []string{"<script", "<img", "\x1b", "\u202e", "javascript:"} {
		if strings.Contains(got, bad) {
			t.Errorf("the page contains %q", bad)
		}
	}
	for _, good := range []string{"&lt;script&gt;", "&lt;img src=x onerror=y&gt;"} {
		if !strings.Contains(got, good) {
			t.Errorf("the page lacks %q", good)
		}
	}
}

package source

import (
	"strings"
	"testing"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
	"golang.org/x/text/unicode/norm"
	"pgregory.net/rapid"
)

// attr reads one file with one attribute and gives its text.
func attr(t interface{ Fatalf(string, ...any) }, src string) (Text, bool) {
	root, diags := ReadHCL(NewFile("r.hcl", []byte(src)))
	if diags.HasErrors() {
		return Text{}, false
	}
	a, ok := root.Attr("when")
	if !ok || a.Value.Kind != TextKind {
		return Text{}, false
	}
	return a.Value.Text, true
}

// agrees checks a decoded text against HCL's own value, the outside oracle.
func agrees(t interface {
	Fatalf(string, ...any)
	Errorf(string, ...any)
}, src string) {
	text, ok := attr(t, src)
	if !ok || len(text.Refs) > 0 {
		return
	}
	f, diags := hclsyntax.ParseConfig([]byte(src), "r.hcl", hcl.InitialPos)
	if diags.HasErrors() {
		t.Fatalf("%q: accepted what HCL refuses: %v", src, diags)
	}
	attrs, _ := f.Body.JustAttributes()
	v, _ := attrs["when"].Expr.Value(nil)
	if got, want := norm.NFC.String(text.S), v.AsString(); got != want {
		t.Errorf("%q\n got %q\nwant %q", src, got, want)
	}
	if len(text.At) != len(text.S)+1 {
		t.Fatalf("%q: %d places for %d bytes", src, len(text.At), len(text.S))
	}
	for i := range text.S {
		if i > 0 && text.At[i] < text.At[i-1] {
			t.Fatalf("%q: places go back at %d", src, i)
		}
		if c := text.S[i]; c >= 'a' && c <= 'z' && src[text.At[i]] != c && src[text.At[i]] != '\\' {
			t.Errorf("%q: byte %d %q is placed at %q", src, i, c, src[text.At[i]])
		}
	}
}

func TestTextAgreesWithHCL(t *testing.T) {
	for _, src := range []string{
		"when = \"age > 12\"\n", "when = \"d == \\\"cva\\\" && x\"\n", "when = \"a\\n&& b \\u00e9 \\U0001F600 $${x} %%{y}\"\n",
		"when = <<EOT\n  age > 12 &&\n    w < 3 $${x}\nEOT\n", "when = <<-EOT\n    age > 12 &&\n      w < 3\n\n    && z\n    EOT\n",
		"x = 1\nwhen = <<-EOT\n\tage\n\t  b\n\tEOT\n", "when = \"é == 'é' && x\"\n", "when = <<EOT\n\\n é\nEOT\n", "when = \"\"\n",
		"when = <<-EOT\n    age > 1\n  b\n        EOT\n", "when = <<-EOT\n   a\r\n    b\r\n   EOT\n",
	} {
		if _, ok := attr(t, src); !ok && src != "when = \"\"\n" {
			t.Errorf("%q is not read", src)
		}
		agrees(t, src)
	}
}

func TestTextAgreesWithHCLAtRandom(t *testing.T) {
	quoted := []string{"a", "b", " ", "\\\"", "\\\\", "\\n", "\\t", "é", "$${", "%%{", "$", "%", "'", "\\u00e9", "{", "}", "日本", "é"}
	long := []string{"a", "b", " ", "\"", "\\", "\n", "é", "$${", "%%{", "$", "%", "'", "  x", "日本", "\n   "}
	rapid.Check(t, func(t *rapid.T) {
		agrees(t, "when = \""+strings.Join(rapid.SliceOfN(rapid.SampledFrom(quoted), 0, 12).Draw(t, "quoted"), "")+"\"\n")
		mark := rapid.SampledFrom([]string{"", "-"}).Draw(t, "mark")
		indent := strings.Repeat(" ", rapid.IntRange(0, 3).Draw(t, "indent"))
		agrees(t, "when = <<"+mark+"EOT\n"+strings.Join(rapid.SliceOfN(rapid.SampledFrom(long), 0, 14).Draw(t, "long"), "")+"\n"+indent+"EOT\n")
	})
}

func TestNamesInText(t *testing.T) {
	text, ok := attr(t, "when = \"Tone of ${limb.tone} with ${ finding.x }.\"\n")
	if !ok || len(text.Refs) != 2 || text.Refs[0].Name != "limb.tone" || text.Refs[1].Name != "finding.x" {
		t.Fatalf("%+v", text)
	}
	r := text.Refs[0]
	if got := text.Range(r.Start, r.End).Text(); got != "${limb.tone}" {
		t.Errorf("its place is %q", got)
	}
}

func FuzzReadHCL(f *testing.F) {
	for _, s := range []string{"rule \"a\" {\n when = \"x\"\n}\n", "a = [1, {b = \"c\"}]\n", "a = <<-E\n ${x.y}\nE\n", "a = -1.5e3", "((((", "a = !!!!1", "é = \"\xff\""} {
		f.Add([]byte(s))
	}
	f.Fuzz(func(t *testing.T, src []byte) {
		root, diags := ReadHCL(NewFile("f.hcl", src))
		if root == nil && !diags.HasErrors() {
			t.Fatal("nothing read and nothing said")
		}
		_ = diags.Text()
	})
}

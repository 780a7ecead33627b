package ruleset

import (
	"bytes"
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
	"pgregory.net/rapid"

	"crus/engine/source"
)

var update = flag.Bool("update", false, "write the golden files anew")

// Each testdata/tidy/NAME.hcl is laid out as NAME.golden.
func TestTidyGolden(t *testing.T) {
	inputs, err := filepath.Glob("testdata/tidy/*.hcl")
	if err != nil || len(inputs) < 4 {
		t.Fatalf("inputs %v, error %v", inputs, err)
	}
	for _, in := range inputs {
		t.Run(filepath.Base(in), func(t *testing.T) {
			src, err := os.ReadFile(in)
			if err != nil {
				t.Fatal(err)
			}
			got, diags := Tidy(source.NewFile(in, src))
			if diags != nil {
				t.Fatal(diags)
			}
			golden := strings.TrimSuffix(in, ".hcl") + ".golden"
			if *update {
				if err := os.WriteFile(golden, got, 0o644); err != nil {
					t.Fatal(err)
				}
			}
			want, err := os.ReadFile(golden)
			if err != nil {
				t.Fatal(err)
			}
			if diff := cmp.Diff(string(want), string(got)); diff != "" {
				t.Error(diff)
			}
		})
	}
}

func TestTidyRefuses(t *testing.T) {
	for _, test := range []struct{ name, src, want string }{
		{"not closed", "rule \"a\" {\n", "syntax"},
		{"not text", "a = \"\xff\"\n", "not_utf8"},
		{"an expression", "a = 1 + 1\n", "expression"},
		{"too large", strings.Repeat("# many\n", 200_000), "too_large"},
	} {
		t.Run(test.name, func(t *testing.T) {
			got, diags := Tidy(source.NewFile("x.hcl", []byte(test.src)))
			if got != nil || len(diags) != 1 || diags[0].Code != test.want {
				t.Errorf("text %q, diagnostics %v", got, diags)
			}
		})
	}
}

func TestTidyLeavesItsInputAlone(t *testing.T) {
	src := "rule \"a\" {\r\n  because = <<EOT\r\n  text  \r\nEOT\r\n}\r\n"
	f := source.NewFile("x.hcl", []byte(src))
	if _, diags := Tidy(f); diags != nil {
		t.Fatal(diags)
	}
	if string(f.Src) != src {
		t.Errorf("the source became %q", f.Src)
	}
}

// What Tidy compares before it gives a text out must see every change that matters.
func TestSameWords(t *testing.T) {
	const base = "rule \"a\" { # note\n  x = \"b  c\"\n}\n"
	for _, test := range []struct {
		name, other string
		want        bool
	}{
		{"itself", base, true},
		{"other blanks", "\n\nrule   \"a\" {   # note  \n\n x=\"b  c\" \n}", true},
		{"a blank in quotes", strings.Replace(base, "b  c", "b c", 1), false},
		{"a comment changed", strings.Replace(base, "note", "not", 1), false},
		{"a comment lost", strings.Replace(base, " # note", "", 1), false},
		{"a name changed", strings.Replace(base, "x", "y", 1), false},
		{"a line more", base + "z = 1\n", false},
	} {
		if got := sameWords(lex([]byte(base)), lex([]byte(test.other))); got != test.want {
			t.Errorf("%s: %v", test.name, got)
		}
	}
}

// checkTidy holds what must be true of any file that can be read.
func checkTidy(t interface {
	Helper()
	Fatalf(string, ...any)
}, src []byte) {
	t.Helper()
	before, diags := source.ReadHCL(source.NewFile("x.hcl", src))
	out, refused := Tidy(source.NewFile("x.hcl", src))
	if diags.HasErrors() != (refused != nil) || refused != nil && out != nil {
		t.Fatalf("read: %v\ntidy: %v\n%q", diags, refused, src)
	}
	if refused != nil {
		return
	}
	after, diags := source.ReadHCL(source.NewFile("x.hcl", out))
	if diags.HasErrors() {
		t.Fatalf("can't be read any more: %v\n%q\n%q", diags, src, out)
	}
	meaning := cmp.Options{
		cmpopts.IgnoreTypes(source.Range{}),
		cmpopts.IgnoreFields(source.Text{}, "File", "At"),
		cmpopts.EquateEmpty(),
	}
	if diff := cmp.Diff(before, after, meaning); diff != "" {
		t.Fatalf("says something else: %s\n%q\n%q", diff, src, out)
	}
	if again, diags := Tidy(source.NewFile("x.hcl", out)); diags != nil || !bytes.Equal(again, out) {
		t.Fatalf("a second time gives something else: %v\n%q\n%q", diags, out, again)
	}
	checkLines(t, out)
}

// checkLines holds the rules of the layout that can be seen line by line, in a file without
// heredocs and comments of several lines.
func checkLines(t interface {
	Helper()
	Fatalf(string, ...any)
}, out []byte) {
	t.Helper()
	text := string(out)
	if strings.Contains(text, "<<") || strings.Contains(text, "/*") {
		return
	}
	if text != "" && !strings.HasSuffix(text, "\n") || strings.HasPrefix(text, "\n") || strings.Contains(text, "\r\n") ||
		strings.Contains(text, "\n\n\n") || strings.HasSuffix(text, "\n\n") || strings.Contains(text, "{\n\n") || strings.Contains(text, "[\n\n") {
		t.Fatalf("line ends: %q", text)
	}
	lines := strings.Split(text, "\n")
	for i, line := range lines {
		if strings.TrimRight(line, " \t") != line {
			t.Fatalf("blanks at the end of line %d: %q", i+1, text)
		}
		if line == "}" && i+2 < len(lines) && lines[i+1] != "" {
			t.Fatalf("no blank line after line %d: %q", i+1, text)
		}
	}
}

// genFile draws files that can mostly be read, laid out as badly as the language allows.
func genFile() *rapid.Generator[string] {
	space := rapid.SampledFrom([]string{"", " ", "  ", "\t", "     "})
	end := rapid.SampledFrom([]string{"\n", "\n", "\r\n", "\n\n", "\n\n\n\n", "  \n", " # note\n", " // note  \r\n", " # é –\n\n"})
	name := rapid.SampledFrom([]string{"when", "x", "a_long_name", "cites"})
	value := rapid.SampledFrom([]string{
		`"text"`, `"a  b"`, `"limb.x < deg(5)  &&  y"`, `"${limb.x}  of"`, `"${  limb.x }"`, `"\"q\" \\"`, `"é{}[]#//"`, "-5", "1.50", "true", "null", "[]", "{}",
		`[ "a","b" ]`, "[\n\n\"a\",\n # why\n   \"b\",\n\n]", "{ a=\"1\",  b = 2 }", "{\n\na = \"1\"\n\n\n  bb=2 # note\n}",
		"<<EOT\n  text  \n\n\n   ${limb.x}\nEOT", "<<-EOT\n      one\n    two\n    EOT", "<<EOT\r\na\r\nEOT",
	})
	return rapid.Custom(func(t *rapid.T) string {
		var b strings.Builder
		draw := func(g *rapid.Generator[string]) { b.WriteString(g.Draw(t, "part")) }
		var body func(depth int)
		body = func(depth int) {
			used := map[string]bool{}
			for range rapid.IntRange(0, 4).Draw(t, "items") {
				draw(space)
				switch kind := rapid.IntRange(0, 4).Draw(t, "kind"); {
				case kind == 0:
					b.WriteString(rapid.SampledFrom([]string{"# note", "// note", "/* a\n   b */", "/**/"}).Draw(t, "comment"))
					b.WriteString(rapid.SampledFrom([]string{"\n", "  \n", "\r\n", "\n\n\n"}).Draw(t, "end"))
				case kind == 1 && depth < 3:
					b.WriteString("advise")
					draw(space)
					b.WriteString(`"x"`)
					draw(space)
					b.WriteString("{")
					draw(end)
					body(depth + 1)
					draw(space)
					b.WriteString("}")
					draw(end)
				case kind == 2 && depth < 3:
					b.WriteString(`b {x=1}`)
					draw(end)
				default:
					n := name.Draw(t, "name")
					if used[n] {
						b.WriteString("\n")
						continue
					}
					used[n] = true
					b.WriteString(n)
					draw(space)
					b.WriteString("=")
					draw(space)
					v := value.Draw(t, "value")
					b.WriteString(v)
					if strings.HasPrefix(v, "<<") {
						b.WriteString("\n")
					} else {
						draw(end)
					}
				}
			}
		}
		draw(rapid.SampledFrom([]string{"", "\uFEFF", "\n\n"}))
		body(0)
		return b.String()
	})
}

func TestTidyKeepsTheMeaning(t *testing.T) {
	read := 0
	rapid.Check(t, func(t *rapid.T) {
		src := []byte(genFile().Draw(t, "file"))
		if _, diags := source.ReadHCL(source.NewFile("x.hcl", src)); !diags.HasErrors() {
			read++
		}
		checkTidy(t, src)
	})
	if read < 20 {
		t.Errorf("only %d of the drawn files could be read", read)
	}
}

func FuzzTidy(f *testing.F) {
	for _, seed := range []string{
		"", "\n", "rule \"a\" {\n}\n", "rule \"a\" {\n\n  when = \"x\"   # why\n\n\n}\ncaution \"b\" {\n}\n",
		"a = <<EOT\n  x  \n\n\nEOT\n", "a = [\n\n1,\n2]\n", "/* a\n b */\nx = {}\n", "\uFEFFa = \"${ limb.x }\"\r\n",
	} {
		f.Add([]byte(seed))
	}
	f.Fuzz(func(t *testing.T, src []byte) { checkTidy(t, src) })
}

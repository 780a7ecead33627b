package ruleset

import (
	"fmt"
	"strings"
	"testing"

	"github.com/google/cel-go/cel"
	"github.com/google/cel-go/common/ast"
	"github.com/google/cel-go/parser"
	"pgregory.net/rapid"

	"crus/engine/source"
)

// celText draws CEL texts of every shape that parses; whether they mean anything does not matter here.
func celText(t *rapid.T, depth int) string {
	pick := func(options ...string) string { return rapid.SampledFrom(options).Draw(t, "pick") }
	space := func() string { return pick("", " ", "  ", "\n    ", " // größer, 日本\n  ") }
	sub := func() string { return celText(t, depth-1) }
	if depth == 0 || rapid.IntRange(0, 3).Draw(t, "leaf") == 0 {
		return pick("limb.knee_extension", "person.age", "finding.safety.fragile", "x", "true", "5", "-5", "2.5e3", "-0.5", "'é'", `"a\"b"`, `'日本'`, `r'\d'`,
			"recorded(limb.knee_extension)", "recorded( person.age )", "deg( -5 )", "muscle_power('3+')", "[]", "a.b.c", "'''a'b'''", "1u", "b'ab'", "has(a.b)", "null")
	}
	switch rapid.IntRange(0, 13).Draw(t, "shape") {
	case 0:
		return "(" + space() + sub() + space() + ")"
	case 1:
		return "((" + sub() + "))"
	case 2:
		return sub() + space() + pick("&&", "||") + space() + sub()
	case 3:
		return "(" + sub() + ")" + space() + pick("<", "<=", ">", ">=", "==", "!=", "in") + " (" + sub() + ")"
	case 4:
		return "(" + sub() + ")" + space() + pick("+", "-", "*", "/", "%") + space() + "(" + sub() + ")"
	case 5:
		return "!(" + sub() + ")"
	case 6:
		return "-(" + sub() + ")"
	case 7:
		return "(" + sub() + ")" + space() + "?" + space() + "(" + sub() + ")" + " : " + sub()
	case 8:
		return "[" + sub() + "," + space() + sub() + "]"
	case 9:
		return "{'k': " + sub() + ", 'l':" + space() + sub() + "}"
	case 10:
		return "(" + sub() + ")" + pick(".exists(x, ", ".all( x , ", ".exists_one(x,", ".filter(x, ", ".map(x, ") + sub() + space() + ")"
	case 11:
		return "greatest(" + sub() + "," + space() + sub() + ")"
	case 12:
		return "(" + sub() + ")" + pick(".size()", ".startsWith('é')", ".f("+sub()+")", ".g", "[0]", "['ké']")
	}
	return "size(" + space() + sub() + ")"
}

func spansEnv(t testing.TB) *cel.Env {
	t.Helper()
	env, err := cel.NewEnv(cel.Macros(append(cel.StandardMacros, recordedMacro())...), cel.EnableMacroCallTracking())
	if err != nil {
		t.Fatal(err)
	}
	return env
}

// The text of every node, parsed by itself, is that node again: cel-go is the oracle.
func TestSpansAreThoseOfTheNodes(t *testing.T) {
	env := spansEnv(t)
	nodes := 0
	rapid.Check(t, func(t *rapid.T) {
		text := celText(t, rapid.IntRange(1, 4).Draw(t, "depth"))
		parsed, iss := env.Parse(text)
		if iss.Err() != nil {
			return
		}
		native, runes := parsed.NativeRep(), []rune(text)
		byID := map[int64]ast.Expr{}
		ast.PreOrderVisit(native.Expr(), ast.NewExprVisitor(func(e ast.Expr) { byID[e.ID()] = e }))
		for id, s := range spans(text, native) {
			node, ok := byID[id]
			if !ok { // inside what a macro took
				continue
			}
			nodes++
			want, err := parser.Unparse(node, native.SourceInfo())
			if err != nil {
				t.Fatalf("%q: %v", text, err)
			}
			slice := string(runes[s.start:s.end])
			again, iss := env.Parse(slice)
			if iss.Err() != nil {
				t.Fatalf("%q: the node %q has the text %q, which can't be parsed", text, want, slice)
			}
			if got, err := cel.AstToString(again); err != nil || got != want {
				t.Fatalf("%q: the node %q has the text %q", text, want, slice)
			}
		}
	})
	if nodes < 300 {
		t.Errorf("only %d nodes were looked at", nodes)
	}
}

func TestSpansOfSomeTexts(t *testing.T) {
	env := spansEnv(t)
	for _, test := range []struct {
		text string
		want []string // the texts of the nodes, in the order of cel-go's walk
	}{
		{"limb.a < deg(-5)", []string{"limb.a < deg(-5)", "limb.a", "limb", "deg(-5)", "-5"}},
		{"( limb.a )  &&  (b)", []string{"( limb.a )  &&  (b)", "limb.a", "limb", "b"}},
		{"- a + 1", []string{"- a + 1", "- a", "a", "1"}},
		{"recorded( limb.a ) || b", []string{"recorded( limb.a ) || b", "recorded( limb.a )", "b"}},
		{"'é日' == x // é", []string{"'é日' == x", "'é日'", "x"}},
	} {
		parsed, iss := env.Parse(test.text)
		if iss.Err() != nil {
			t.Fatal(iss.Err())
		}
		all, runes := spans(test.text, parsed.NativeRep()), []rune(test.text)
		var got []string
		ast.PreOrderVisit(parsed.NativeRep().Expr(), ast.NewExprVisitor(func(e ast.Expr) {
			s := all[e.ID()]
			got = append(got, string(runes[s.start:s.end]))
		}))
		if fmt.Sprintf("%q", got) != fmt.Sprintf("%q", test.want) {
			t.Errorf("%q:\n got %q\nwant %q", test.text, got, test.want)
		}
	}
}

// The place of a node in the file, its escapes undone, is the text of the node.
func TestWhereIsWritten(t *testing.T) {
	scope, diags := tinyScope(t)
	conditions := []string{
		`limb.knee_extension < deg(0) && limb.malleolar_skin == "broken"`,
		"'é日\\\\' == '日' || person.age > years(16)",
		"limb.malleolar_skin in ['intact', \"broken\"] && !(limb.knee_extension > deg(-5))",
		"[deg(0), deg(5)].exists(x, limb.knee_extension < x) && recorded(limb.leg_length)",
	}
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.SampledFrom(conditions).Draw(t, "condition")
		file := "# é\nwhen = \"" + strings.NewReplacer(`\`, `\\`, `"`, `\"`).Replace(text) + "\"\n"
		heredoc := rapid.Bool().Draw(t, "heredoc")
		if heredoc {
			indent := strings.Repeat(" ", rapid.IntRange(0, 6).Draw(t, "indent"))
			file = "# é\nwhen = <<-EOT\n" + indent + "  " + strings.Replace(text, " && ", "\n"+indent+"    && ", 1) + "\n" + indent + "  EOT\n"
		}
		root, ds := source.ReadHCL(source.NewFile("r.hcl", []byte(file)))
		if ds.HasErrors() {
			t.Fatalf("%q: %s", file, ds.Text())
		}
		when, _ := root.Attr("when")
		e := scope.condition(when.Value.Text)
		if e == nil {
			t.Fatalf("%q: %s", file, diags.Text())
		}
		ast.PreOrderVisit(e.AST.NativeRep().Expr(), ast.NewExprVisitor(func(x ast.Expr) {
			got, written := e.Where(x.ID()).Text(), e.Written(x.ID())
			if written == "" {
				return
			}
			if heredoc {
				got, written = strings.Join(strings.Fields(got), " "), strings.Join(strings.Fields(written), " ")
			} else {
				got = strings.NewReplacer(`\\`, `\`, `\"`, `"`).Replace(got)
			}
			if got != written {
				t.Fatalf("%q: the place of %q is %q", file, written, got)
			}
		}))
	})
}

// tinyScope gives a scope over the small vocabulary of testdata, without facts.
func tinyScope(t testing.TB) (*scope, *source.Diagnostics) {
	t.Helper()
	v, diags := Library{Dirs: []string{"testdata/library"}}.Vocabulary("tiny")
	if v == nil {
		t.Fatal(diags.Text())
	}
	found := &source.Diagnostics{}
	s, err := newScope(&Part{}, v, nil, nil, found)
	if err != nil {
		t.Fatal(err)
	}
	return s, found
}

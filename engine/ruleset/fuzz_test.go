package ruleset

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"github.com/google/cel-go/cel"
	"github.com/google/cel-go/common/ast"
	"github.com/google/cel-go/common/types"

	"crus/engine/clinical"
	"crus/engine/source"
	"crus/engine/source/sourcetest"
	"crus/engine/vocab"
)

// FuzzRuleset reads a ruleset of two files over the small vocabulary.
func FuzzRuleset(f *testing.F) {
	for _, dir := range []string{"testdata/bad", "testdata/lint"} {
		for _, files := range sourcetest.Seeds(f, dir) {
			for _, file := range files {
				f.Add([]byte(header), file.Data)
				f.Add(file.Data, []byte(""))
			}
		}
	}
	real, err := filepath.Glob("../../rulesets/demo_*/*.hcl")
	if err != nil || len(real) == 0 {
		f.Fatalf("rulesets %v, error %v", real, err)
	}
	for _, name := range real {
		src, err := os.ReadFile(name)
		if err != nil {
			f.Fatal(err)
		}
		f.Add([]byte(header), src)
	}
	library := withLibrary(f, fstest.MapFS{})
	f.Fuzz(func(t *testing.T, a, b []byte) {
		files := fstest.MapFS{"bad/a.hcl": {Data: a}, "bad/b.hcl": {Data: b}}
		for name, file := range library {
			files[name] = file
		}
		rs, diags := Library{Embedded: files}.Ruleset("bad")
		if (rs == nil) != diags.HasErrors() {
			t.Fatalf("a ruleset %v with %s", rs != nil, diags.Text())
		}
		sourcetest.Sound(t, diags)
		if rs != nil {
			sourcetest.Sound(t, Lint(rs, time.Date(2026, 11, 25, 0, 0, 0, 0, time.UTC)))
		}
	})
}

// FuzzCondition compiles a condition that stands in a quoted text, and carries out what compiles.
func FuzzCondition(f *testing.F) {
	for _, text := range []string{
		"limb.knee_extension < deg(0) && !(person.age >= years(16)) || finding.bent",
		"limb.malleolar_skin in ['fragile', 'broken'] && recorded(other.leg_length)",
		"limb.plantarflexor_power >= muscle_power('3+') || limb.plantarflexor_tone != modified_ashworth('1+')",
		"[deg(0), deg(5)].exists(x, limb.knee_extension + x * 2 > quantity.pitch / 3)",
		"since(person.last_injection) < weeks(12) ? true : person.falls > 2",
		"greatest(limb.leg_length, other.leg_length) - least(limb.leg_length, mm(5)) > cm(1.5) // note",
		"'aé'.size() > 1 && 'x'.matches('[a-z]+') && 'abc'.startsWith(\"a\") && \"日本\".contains('本')",
		"[1, 2, 3].map(x, x * 2).filter(x, x > 2).all(x, x in [4, 6])",
		"limb.knee_extension = 5", "0 < x < 5", "'", "((", "a.b.c[0].d()", "{'a': 1}.a == 1", "r'\\d' == '''a''' || b'x' == b'y'", "1u + 2u == 3u", "-9223372036854775808 < -1", "duration('1h') > duration('2m')",
	} {
		f.Add(text)
	}
	for _, files := range sourcetest.Seeds(f, "testdata/bad") {
		for _, file := range files {
			for line := range strings.Lines(string(file.Data)) {
				if holds, ok := strings.CutPrefix(strings.TrimSpace(line), "holds = \""); ok {
					f.Add(strings.TrimSuffix(holds, `"`))
				}
			}
		}
	}
	v, diags := Library{Dirs: []string{"testdata/library"}}.Vocabulary("tiny")
	if v == nil {
		f.Fatal(diags.Text())
	}
	degrees, _ := clinical.UnitByCode("deg")
	found := &source.Diagnostics{}
	scope, err := newScope(&Part{}, v, map[string]*Fact{"finding.bent": {Name: "bent"}, "quantity.pitch": {Name: "pitch", Quantity: &degrees}}, nil, found)
	if err != nil {
		f.Fatal(err)
	}
	values := lowest(f, v)
	f.Fuzz(func(t *testing.T, text string) {
		*found = nil
		file := "when = \"" + strings.NewReplacer(`\`, `\\`, `"`, `\"`, "\n", `\n`, "\r", `\r`, "${", "$${", "%{", "%%{").Replace(text) + "\"\n"
		root, diags := source.ReadHCL(source.NewFile("r.hcl", []byte(file)))
		sourcetest.Sound(t, diags)
		if root == nil {
			return
		}
		when, _ := root.Attr("when")
		began := time.Now()
		e := scope.condition(when.Value.Text)
		sourcetest.Sound(t, *found)
		if (e == nil) != found.HasErrors() {
			t.Fatalf("compiled %v, and %s", e != nil, found.Text())
		}
		if e == nil {
			return
		}
		ast.PreOrderVisit(e.AST.NativeRep().Expr(), ast.NewExprVisitor(func(x ast.Expr) {
			if r := e.Where(x.ID()); r.End > len(r.File.Src) {
				t.Fatalf("a place outside of the file")
			}
		}))
		program, err := e.Env.Program(e.AST, cel.EvalOptions(cel.OptExhaustiveEval))
		if err != nil {
			return
		}
		program.Eval(values)
		if took := time.Since(began); took > 2*time.Second {
			t.Fatalf("took %s", took)
		}
	})
}

// lowest gives every measure its lowest value.
func lowest(f *testing.F, v *vocab.Vocabulary) map[string]any {
	day, err := clinical.ParseDate("2026-10-02")
	if err != nil {
		f.Fatal(err)
	}
	degrees, _ := clinical.UnitByCode("deg")
	pitch, _ := clinical.NewQuantity(3, degrees)
	out := map[string]any{"finding.bent": types.True, "quantity.pitch": pitch}
	for _, m := range v.Measures {
		for _, root := range roots(m) {
			out["recorded."+root+"."+m.Name] = types.True
			switch m.Kind {
			case vocab.Quantity:
				q, err := clinical.NewQuantity(m.Plausible.Lo, m.Unit)
				if err != nil {
					f.Fatal(err)
				}
				out[root+"."+m.Name] = q
			case vocab.Grade:
				g, _ := m.Scale.At(0)
				out[root+"."+m.Name] = g
			case vocab.Option:
				out[root+"."+m.Name] = types.String(m.Options[0])
			case vocab.YesNo:
				out[root+"."+m.Name] = types.True
			case vocab.Count:
				out[root+"."+m.Name] = types.Int(m.Plausible.Lo)
			case vocab.Date:
				out[root+"."+m.Name] = day.Before(30).AsOf(day)
			}
		}
	}
	return out
}

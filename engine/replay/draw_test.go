package replay_test

import (
	"bytes"
	"flag"
	"fmt"
	"go/format"
	"math/rand/v2"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// The ruleset of the benchmarks was drawn once: 120 rules and 20 findings over 30 measures of a limb, ten choices. It is
// kept in three forms with one meaning: HCL in testdata/bench, plain CEL and Go in byhand_test.go.

// update writes them anew.
var update = flag.Bool("update", false, "write the ruleset of the benchmarks anew")

const (
	drawnRules    = 120
	drawnFindings = 20
	drawnCautions = 8
)

// form is a condition that can be written in each of the three ways.
type form struct {
	op   string // and, or, not, ask, finding
	kids []*form
	m    measure
	cmp  string // of ask: < <= > >= == in, is
	at   int    // the constant: in the unit, a rank, a place among the options, the number of a finding
	also int    // the second option
}

type measure struct {
	name, kind, unit string
	lo, hi           int
	words            []string
}

// drawer draws the ruleset.
type drawer struct{ *rand.Rand }

func (d drawer) tree(terms, findings int) *form {
	if terms > 1 {
		k := 1 + d.IntN(terms-1)
		f := &form{op: []string{"and", "or"}[d.IntN(2)], kids: []*form{d.tree(k, findings), d.tree(terms-k, findings)}}
		if d.IntN(10) == 0 {
			return &form{op: "not", kids: []*form{f}}
		}
		return f
	}
	if findings > 0 && d.IntN(5) == 0 {
		return &form{op: "finding", at: d.IntN(findings)}
	}
	all := drawnMeasures()
	f := &form{op: "ask", m: all[d.IntN(len(all))]}
	f.cmp = []string{"<", "<=", ">", ">="}[d.IntN(4)]
	switch f.m.kind {
	case "yes_no":
		f.cmp = "is"
	case "option":
		f.cmp, f.at = "==", d.IntN(len(f.m.words))
		if d.IntN(2) == 0 {
			f.cmp, f.also = "in", (f.at+1)%len(f.m.words)
		}
	case "grade":
		f.at = 1 + d.IntN(len(f.m.words)-1)
	default:
		f.at = f.m.lo + (1+d.IntN(7))*(f.m.hi-f.m.lo)/8
	}
	return f
}

// hcl writes a condition as rulesets do.
func (f *form) hcl() string {
	path := "limb." + f.m.name
	switch f.op {
	case "and", "or":
		return fmt.Sprintf("(%s %s %s)", f.kids[0].hcl(), map[string]string{"and": "&&", "or": "||"}[f.op], f.kids[1].hcl())
	case "not":
		return "!" + f.kids[0].hcl()
	case "finding":
		return fmt.Sprintf("finding.f%02d", f.at)
	}
	switch {
	case f.cmp == "is":
		return path
	case f.cmp == "in":
		return fmt.Sprintf("%s in ['%s', '%s']", path, f.m.words[f.at], f.m.words[f.also])
	case f.m.kind == "option":
		return fmt.Sprintf("%s == '%s'", path, f.m.words[f.at])
	case f.m.kind == "grade":
		return fmt.Sprintf("%s %s %s('%s')", path, f.cmp, f.m.unit, f.m.words[f.at])
	case f.m.kind == "count":
		return fmt.Sprintf("%s %s %d", path, f.cmp, f.at)
	}
	return fmt.Sprintf("%s %s %s(%d)", path, f.cmp, f.m.unit, f.at)
}

// cel writes a condition over bare numbers: a grade is its rank.
func (f *form) cel() string {
	path := "limb." + f.m.name
	switch f.op {
	case "and", "or":
		return fmt.Sprintf("(%s %s %s)", f.kids[0].cel(), map[string]string{"and": "&&", "or": "||"}[f.op], f.kids[1].cel())
	case "not":
		return "!" + f.kids[0].cel()
	case "finding":
		return fmt.Sprintf("finding.f%02d", f.at)
	}
	switch {
	case f.m.kind == "option" || f.cmp == "is":
		return f.hcl()
	case f.m.kind == "quantity":
		return fmt.Sprintf("%s %s %d.0", path, f.cmp, f.at)
	}
	return fmt.Sprintf("%s %s %d", path, f.cmp, f.at)
}

// code writes a condition as Go.
func (f *form) code() string {
	switch f.op {
	case "and", "or":
		return fmt.Sprintf("%s(%s, %s)", f.op, f.kids[0].code(), f.kids[1].code())
	case "not":
		return "not(" + f.kids[0].code() + ")"
	case "finding":
		return fmt.Sprintf("p.finding[%d]", f.at)
	}
	path := "p." + camel(f.m.name)
	switch f.cmp {
	case "is":
		return path
	case "in":
		return fmt.Sprintf("or(%s.is(%d), %s.is(%d))", path, f.at, path, f.also)
	case "==":
		return fmt.Sprintf("%s.is(%d)", path, f.at)
	}
	return fmt.Sprintf("%s.%s(%d)", path, map[string]string{"<": "less", "<=": "atMost", ">": "more", ">=": "atLeast"}[f.cmp], f.at)
}

func camel(name string) string {
	var b strings.Builder
	for i, w := range strings.Split(name, "_") {
		if i > 0 {
			w = strings.ToUpper(w[:1]) + w[1:]
		}
		b.WriteString(w)
	}
	return b.String()
}

// drawn is the ruleset.
type drawn struct {
	findings, rules, unless, cautions []*form // unless[i] is nil where a rule has none
	overrides                         [][]int
	says                              [][]string
	strong                            []bool
}

func drawBench() *drawn {
	d := drawer{rand.New(rand.NewPCG(11, 120))}
	x := &drawn{}
	for range drawnFindings {
		x.findings = append(x.findings, d.tree(2, 0))
	}
	choices := drawnChoices()
	for i := range drawnRules {
		x.rules = append(x.rules, d.tree(3+d.IntN(3), drawnFindings))
		var unless *form
		if d.IntN(5) == 0 {
			unless = d.tree(1, drawnFindings)
		}
		x.unless = append(x.unless, unless)
		var over []int
		if i < drawnRules-10 && d.IntN(5) == 0 {
			over = append(over, i+1+d.IntN(9))
		}
		x.overrides = append(x.overrides, over)
		var says []string
		for _, k := range d.Perm(len(choices))[:1+d.IntN(2)] {
			c := choices[k]
			verb := "favour"
			switch {
			case c.unit != "":
				verb = []string{"aim", "aim", "at_least", "at_most"}[d.IntN(4)]
				at := c.lo + d.IntN(c.hi-c.lo)
				switch verb {
				case "at_least":
					at = c.lo + d.IntN((c.hi-c.lo)/3)
				case "at_most":
					at = c.hi - d.IntN((c.hi-c.lo)/3)
				}
				says = append(says, fmt.Sprintf("  advise %q { %s = \"%s(%d)\" }\n", c.name, verb, c.unit, at))
				continue
			case d.IntN(4) == 0:
				verb = "never"
			}
			says = append(says, fmt.Sprintf("  advise %q { %s = [%q] }\n", c.name, verb, c.options[d.IntN(len(c.options))]))
		}
		x.says = append(x.says, says)
		x.strong = append(x.strong, d.IntN(2) == 0)
	}
	for range drawnCautions {
		x.cautions = append(x.cautions, d.tree(3, drawnFindings))
	}
	return x
}

// hcl writes the ruleset.
func (x *drawn) hcl() string {
	var b strings.Builder
	b.WriteString("# Drawn once for the benchmarks of package replay by draw_test.go; it means nothing.\n\n")
	b.WriteString("ruleset \"bench\" {\n  title      = \"Drawn for benchmarks\"\n  version    = \"1.0.0\"\n  status     = \"draft\"\n  vocabulary = \"measured@1\"\n}\n")
	for i, f := range x.findings {
		fmt.Fprintf(&b, "\nfinding \"f%02d\" {\n  holds = %q\n}\n", i, f.hcl())
	}
	for i, f := range x.rules {
		fmt.Fprintf(&b, "\nrule \"r%03d\" {\n  when     = %q\n", i, f.hcl())
		if x.unless[i] != nil {
			fmt.Fprintf(&b, "  unless   = %q\n", x.unless[i].hcl())
		}
		strength := "conditional"
		if x.strong[i] {
			strength = "strong"
		}
		fmt.Fprintf(&b, "  because  = \"It was drawn.\"\n  strength = %q\n  basis    = \"from_memory\"\n", strength)
		for _, o := range x.overrides[i] {
			fmt.Fprintf(&b, "  overrides = [\"r%03d\"]\n", o)
		}
		b.WriteString(strings.Join(x.says[i], "") + "}\n")
	}
	for i, f := range x.cautions {
		fmt.Fprintf(&b, "\ncaution \"c%02d\" {\n  level = \"precaution\"\n  when  = %q\n  says  = \"It was drawn.\"\n  basis = \"from_memory\"\n}\n", i, f.hcl())
	}
	return b.String()
}

// code writes the conditions as plain CEL and as Go.
func (x *drawn) code() []byte {
	var b bytes.Buffer
	b.WriteString("// Code generated by draw_test.go; DO NOT EDIT.\n\npackage replay_test\n\n")
	b.WriteString("// plainFindings, plainRules and plainUnless are the conditions of the benchmarks over bare numbers.\n")
	list := func(name string, fs []*form) {
		fmt.Fprintf(&b, "func %s() []string {\nreturn []string{\n", name)
		for _, f := range fs {
			text := ""
			if f != nil {
				text = f.cel()
			}
			fmt.Fprintf(&b, "%q,\n", text)
		}
		b.WriteString("}\n}\n\n")
	}
	list("plainFindings", x.findings)
	list("plainRules", x.rules)
	list("plainUnless", x.unless)
	b.WriteString("// limb is what is known of a limb.\ntype limb struct {\n")
	for _, m := range drawnMeasures() {
		fmt.Fprintf(&b, "%s %s\n", camel(m.name), map[string]string{"quantity": "number", "count": "number", "grade": "step", "option": "step", "yes_no": "truth"}[m.kind])
	}
	fmt.Fprintf(&b, "finding [%d]truth\n}\n\n", drawnFindings)
	b.WriteString("// record notes the value of a measure, by its place.\nfunc (p *limb) record(i int, x float64) {\nswitch i {\n")
	for i, m := range drawnMeasures() {
		value := "number{x, either}"
		switch m.kind {
		case "grade", "option":
			value = "step{int8(x), either}"
		case "yes_no":
			value = "answer(either, x == 1)"
		}
		fmt.Fprintf(&b, "case %d:\np.%s = %s\n", i, camel(m.name), value)
	}
	b.WriteString("}\n}\n\n// blank is a limb of which nothing is known.\nfunc blank() limb {\nreturn limb{")
	for _, m := range drawnMeasures() {
		if m.kind == "yes_no" {
			fmt.Fprintf(&b, "%s: unknown, ", camel(m.name))
		}
	}
	b.WriteString("}\n}\n\n// findings works the findings out.\nfunc (p *limb) findings() {\n")
	for i, f := range x.findings {
		fmt.Fprintf(&b, "p.finding[%d] = %s\n", i, f.code())
	}
	fmt.Fprintf(&b, "}\n\n// rules works out the own truth of every rule.\nfunc (p *limb) rules(out *[%d]truth) {\n", drawnRules)
	for i := range x.rules {
		fmt.Fprintf(&b, "out[%d] = rule%03d(p)\n", i, i)
	}
	b.WriteString("}\n")
	for i, f := range x.rules {
		code := f.code()
		if x.unless[i] != nil {
			code = fmt.Sprintf("and(%s, not(%s))", code, x.unless[i].code())
		}
		fmt.Fprintf(&b, "\nfunc rule%03d(p *limb) truth {\nreturn %s\n}\n", i, code)
	}
	return b.Bytes()
}

// The files are what is drawn.
func TestDrawnFilesAreCurrent(t *testing.T) {
	x := drawBench()
	code, err := format.Source(x.code())
	if err != nil {
		t.Fatal(err)
	}
	for name, want := range map[string][]byte{
		"testdata/bench/bench/rules.hcl":         []byte(x.hcl()),
		"testdata/bench/measured/vocabulary.hcl": []byte(drawnVocabulary()),
		"byhand_test.go":                         code,
	} {
		if *update {
			if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
				t.Fatal(err)
			}
			if err := os.WriteFile(name, want, 0o644); err != nil {
				t.Fatal(err)
			}
		}
		got, err := os.ReadFile(name)
		if err != nil || !bytes.Equal(got, want) {
			t.Errorf("%s is not what is drawn (%v); go test -update writes it", name, err)
		}
	}
}

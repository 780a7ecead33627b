package cases

import (
	"bytes"
	"encoding/json"
	"fmt"
	"math/big"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"
	"github.com/hashicorp/hcl/v2/hclwrite"
	"github.com/zclconf/go-cty/cty"

	"crus/engine/assess"
	"crus/engine/cell"
	"crus/engine/reason"
)

// someDay is the date of a new case that needs one.
const someDay = "2026-10-02"

// ready writes worked cases that show question i, or "" where a row can't be written as an assessment. What they expect
// is what the ruleset says now: the author has to confirm it.
func (st *study) ready(pair []run, i int, names map[string]bool) string {
	f := hclwrite.NewEmptyFile()
	for n, r := range pair {
		a, side, err := st.assessment(r)
		if err != nil {
			return ""
		}
		if n > 0 {
			f.Body().AppendNewline()
		}
		st.block(f.Body(), a, side, st.name(r, i, names), st.origin(r))
	}
	return string(hclwrite.Format(f.Bytes()))
}

// assessment gives a run as an assessment, with the limb that it is about ("" for the person).
func (st *study) assessment(r run) (*assess.Assessment, assess.Side, error) {
	if r.a != nil {
		a, err := st.Changed(r.a, r.side, r.row, someDay)
		return a, r.side, err
	}
	row := r.row
	row.Alone = false
	a, err := st.Assessment("", someDay, map[assess.Side]cell.Row{assess.Left: row})
	if err == nil && !slices.ContainsFunc(st.reads, func(i int) bool { return row.Recorded[i] && st.Axes[i].Step() == 86400 }) {
		a.Date = "" // nothing is counted back from it
	}
	if st.Limb {
		return a, assess.Left, err
	}
	return a, "", err
}

// name gives a new case a name that no other has: "rule.low: limb.tone >= tone('2') is no".
func (st *study) name(r run, i int, names map[string]bool) string {
	answer := map[cell.Truth]string{cell.Yes: "yes", cell.No: "no"}[r.answer[i]]
	text := strings.Join(strings.Fields(st.Expr.Written(st.questions[i].ID)), " ")
	out := fmt.Sprintf("%s: %s is %s", st.Of, text, answer)
	for n := 2; names[out]; n++ {
		out = fmt.Sprintf("%s: %s is %s (%d)", st.Of, text, answer, n)
	}
	names[out] = true
	return out
}

// origin says from which case a run was made.
func (st *study) origin(r run) string {
	if r.a == nil {
		return ""
	}
	return r.a.ID
}

// block writes a worked case.
func (st *study) block(out *hclwrite.Body, a *assess.Assessment, side assess.Side, name, origin string) {
	text := "# Confirm what is expected by hand: it is what the ruleset says now."
	if origin != "" {
		text += "\n# Made from the case " + fmt.Sprintf("%q", origin) + "."
	}
	out.AppendUnstructuredTokens(hclwrite.Tokens{{Type: hclsyntax.TokenComment, Bytes: []byte(text + "\n")}})
	body := out.AppendNewBlock("case", []string{name}).Body()
	body.SetAttributeValue("basis", cty.StringVal("common_practice"))
	given(body.AppendNewBlock("given", nil).Body(), a)
	of := string(side)
	if of == "" {
		of = "person"
	}
	st.expected(body.AppendNewBlock("expect", []string{of}).Body(), a, of)
}

func stringList(words []string) cty.Value {
	var out []cty.Value
	for _, w := range words {
		out = append(out, cty.StringVal(w))
	}
	return cty.ListVal(out)
}

// given writes an assessment.
func given(body *hclwrite.Body, a *assess.Assessment) {
	src, err := a.JSON()
	if err != nil {
		return
	}
	var doc struct {
		Date                string
		Person, Left, Right map[string]any
	}
	d := json.NewDecoder(bytes.NewReader(src))
	d.UseNumber()
	if d.Decode(&doc) != nil {
		return
	}
	if doc.Date != "" {
		body.SetAttributeValue("date", cty.StringVal(doc.Date))
	}
	var sides []string
	for _, s := range a.DeviceFor {
		sides = append(sides, string(s))
	}
	body.SetAttributeValue("device_for", stringList(sides))
	for _, group := range []struct {
		name   string
		values map[string]any
	}{{"person", doc.Person}, {"left", doc.Left}, {"right", doc.Right}} {
		if len(group.values) == 0 {
			continue
		}
		in := body.AppendNewBlock(group.name, nil).Body()
		var names []string
		for name := range group.values {
			names = append(names, name)
		}
		slices.Sort(names)
		for _, name := range names {
			in.SetAttributeValue(name, written(group.values[name]))
		}
	}
}

// written gives a value of JSON as one of HCL.
func written(v any) cty.Value {
	switch x := v.(type) {
	case string:
		return cty.StringVal(x)
	case bool:
		return cty.BoolVal(x)
	case json.Number:
		if f, _, err := big.ParseFloat(x.String(), 10, 512, big.ToNearestEven); err == nil {
			return cty.NumberVal(f)
		}
	case map[string]any:
		fields := map[string]cty.Value{}
		for name, field := range x {
			fields[name] = written(field)
		}
		return cty.ObjectVal(fields)
	}
	return cty.NullVal(cty.DynamicPseudoType)
}

// expected writes what the ruleset says now of what the condition belongs to.
func (st *study) expected(body *hclwrite.Body, a *assess.Assessment, of string) {
	side := assess.Side(of)
	if of == "person" {
		side = ""
	}
	c := st.NewCase()
	st.Work(c, st.Row(a, side))
	kind, name, _ := strings.Cut(st.Of, ".")
	list := cty.ListVal([]cty.Value{cty.StringVal(name)})
	says := func(yes bool, attribute string) {
		if !yes {
			attribute = "silent"
		}
		body.SetAttributeValue(attribute, list)
	}
	switch kind {
	case "applies":
		body.SetAttributeValue("applies", cty.StringVal([...]string{"no", "unknown", "yes"}[c.Truth[st.Applies]]))
	case "finding":
		v := [...]cty.Value{cty.False, cty.StringVal("unknown"), cty.True}[c.Truth[st.Node]]
		body.SetAttributeRaw("findings", hclwrite.TokensForObject([]hclwrite.ObjectAttrTokens{{Name: hclwrite.TokensForIdentifier(name), Value: hclwrite.TokensForValue(v)}}))
	case "rule":
		at := slices.IndexFunc(st.Rules, func(r *cell.Rule) bool { return r.Name == name })
		says(st.State(c, at) == reason.Fired, "fires")
	case "caution":
		at := slices.IndexFunc(st.Cautions, func(x cell.Caution) bool { return x.Name == name })
		says(c.Truth[st.Cautions[at].Node] == cell.Yes, "cautions")
	}
}

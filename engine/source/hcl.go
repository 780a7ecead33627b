package source

import (
	"bytes"
	"fmt"
	"math"
	"slices"
	"strings"
	"unicode/utf8"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
	"github.com/zclconf/go-cty/cty"
)

// maxMarks bounds the number of tokens in a file, each of which costs some hundred bytes of memory. A
// ruleset of 500 rules has about a tenth.
const maxMarks = 150_000

// ReadHCL reads one file into a block without type or labels that holds everything in it.
// Only values are read, no HCL expressions: a text, a number, true or false, a list, or a group of
// fields. Nothing is returned when the file has an error.
func ReadHCL(f *File) (*Block, Diagnostics) {
	if ds := readable(f); ds.HasErrors() {
		return nil, ds
	}
	if marks := bytes.Count(f.Src, []byte(`"`)) + bytes.Count(f.Src, []byte(",")) + bytes.Count(f.Src, []byte("\n")); marks > maxMarks {
		return nil, Diagnostics{Errorf(Range{File: f}, "too_large", "The file has %d quotes, commas and line ends; more than %d are not read.", marks, maxMarks).
			Hinting("Divide it into several files: all .hcl files of the folder are read as one.")}
	}
	tokens, lexed := hclsyntax.LexConfig(f.Src, f.Name, hcl.InitialPos)
	if d := scan(f, tokens); d != nil {
		return nil, Diagnostics{*d}
	}
	if lexed.HasErrors() {
		return nil, Diagnostics{fromHCL(f, lexed)}
	}
	parsed, diags := hclsyntax.ParseConfig(f.Src, f.Name, hcl.InitialPos)
	if diags.HasErrors() {
		return nil, Diagnostics{fromHCL(f, diags)}
	}
	r := &hclReader{file: f, tokens: tokens}
	root := &Block{Where: Range{f, 0, 0}, End: Range{f, len(f.Src), len(f.Src)}}
	r.body(root, parsed.Body.(*hclsyntax.Body))
	if r.diags.HasErrors() {
		return nil, r.diags
	}
	return root, r.diags
}

// readable refuses what is no text of a sensible size.
func readable(f *File) Diagnostics {
	if len(f.Src) > MaxFileSize {
		return Diagnostics{Errorf(Range{File: f}, "too_large", "The file has %d bytes; more than %d are not read.", len(f.Src), MaxFileSize).
			Hinting("Divide it into several files: all .hcl files of the folder are read as one.")}
	}
	if !utf8.Valid(f.Src) {
		at := 0
		for at < len(f.Src) {
			c, n := utf8.DecodeRune(f.Src[at:])
			if c == utf8.RuneError && n == 1 {
				break
			}
			at += n
		}
		return Diagnostics{Errorf(Range{f, at, at + 1}, "not_utf8", "The file is not UTF-8 text.").
			Hinting("Save it again with the encoding UTF-8.")}
	}
	return nil
}

// fromHCL keeps the first error of the HCL parser: the later ones of a file follow from it.
func fromHCL(f *File, diags hcl.Diagnostics) Diagnostic {
	for _, d := range diags {
		if d.Severity != hcl.DiagError {
			continue
		}
		where := Range{f, 0, 0}
		if d.Subject != nil {
			where = Range{f, d.Subject.Start.Byte, d.Subject.End.Byte}
		}
		message, hint := plainHCL(d, bytes.TrimRight(f.Src[:where.Start], " \t"), f.Src[where.Start:])
		return Errorf(where, "syntax", "%s", message).Hinting("%s", hint)
	}
	return Errorf(Range{f, 0, 0}, "syntax", "The file could not be read.")
}

// plainHCL rewords the parser's errors for a reader who does not know HCL; before is what stands before
// the place, and behind is what begins there.
func plainHCL(d *hcl.Diagnostic, before, behind []byte) (message, hint string) {
	switch d.Summary {
	case "Unterminated template string":
		return "A quoted text is not closed.", `Close it with ", or write a long text between <<-EOT and EOT on lines of their own.`
	case "Missing newline after argument":
		if n := len(before); n > 0 && strings.IndexByte(digits, before[n-1]) >= 0 {
			return "Something stands behind the number.", `A value with its unit, a grade and a word stand in quotes: "25 cm", "2-", "none".`
		}
		return "Something stands behind the value on this line.", `One name = value a line. A quote inside a quoted text is written \"; in a condition use single quotes: limb.malleolar_skin == 'broken'.`
	case "Unexpected comma after argument":
		return "A comma stands behind the value.", "Take it out; in a number the decimal sign is a point: 25.5"
	case "Invalid single-argument block definition":
		return "A block on one line holds one name = value, and its } stands on that line.", "Begin a new line behind the {, behind each value, and before the }."
	case "Missing newline after block definition":
		return "Something stands behind the } of a block.", "What comes next begins on a new line, and nothing stands between the two."
	case "Missing attribute separator":
		return "A comma is missing between two fields of a group.", `For example: { shell_side = "anterior", closure = "strap" }`
	case "Missing key/value separator":
		return "A = is missing between the name of a field and its value.", `For example: { shell_side = "anterior" }`
	case "Invalid number literal":
		return "This is not a number.", `A number is written 25 or 25.5; anything else stands in quotes.`
	case "Invalid expression", "Missing expression", "Missing attribute value":
		return "A value is expected here.", `It can be a text in quotes, a number that begins with a digit, true, false, or a list such as ["first", "second"].`
	case "Invalid escape sequence":
		return "A backslash stands before a character that it does not go with.", `Write \\ for a backslash, or put the text between <<-EOT and EOT, where backslashes are plain.`
	case "Attribute redefined":
		return "The same name is set twice in this block.", "Keep one of the two lines."
	case "Unclosed configuration block":
		return "This block has no closing brace.", "Write } on a line of its own where the block ends."
	case "Invalid block definition", "Invalid argument name":
		if next := bytes.TrimSpace(behind); bytes.HasSuffix(before, []byte(`"`)) && !bytes.HasPrefix(next, []byte("{")) && !bytes.HasPrefix(next, []byte("=")) {
			return "A = is missing between the name and its text, or a { behind the name of a block.", `For example: title = "..." or rule "name" {`
		}
		return "A block begins with its kind, its name in quotes, and { on the same line.", `For example: rule "raise_trimline" {`
	case "Argument or block definition required":
		if bytes.HasPrefix(bytes.TrimLeft(behind, "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789_-"), []byte(":")) {
			return "A name and its value are joined by = and not by a colon.", `For example: title = "..."`
		}
		return "This is neither a name = value line nor the beginning of a block.", `For example: title = "..." or rule "name" {`
	case "Unclosed tuple", "Missing item separator":
		return "A list is not closed, or a comma is missing between its items.", `For example: ["first", "second"]`
	}
	return "The file can't be read from here on.", `Every line is name = value, or begins a block with its kind, its name in quotes and {, or ends one with }.`
}

type hclReader struct {
	file   *File
	tokens hclsyntax.Tokens
	diags  Diagnostics
}

func (r *hclReader) at(h hcl.Range) Range { return Range{r.file, h.Start.Byte, h.End.Byte} }

func (r *hclReader) body(into *Block, body *hclsyntax.Body) {
	for _, a := range ordered(body) {
		if v, ok := r.value(a.Expr); ok {
			into.Attrs = append(into.Attrs, Field{Name: a.Name, NameWhere: r.at(a.NameRange), Value: v})
		}
	}
	for _, b := range body.Blocks {
		block := &Block{Type: b.Type, Where: r.at(b.DefRange()), End: r.at(b.CloseBraceRange)}
		for i, label := range b.Labels {
			block.Labels = append(block.Labels, Label{label, r.at(b.LabelRanges[i])})
		}
		r.body(block, b.Body)
		into.Blocks = append(into.Blocks, block)
	}
}

// ordered gives the attributes in the order they were written; HCL keeps them in a map.
func ordered(body *hclsyntax.Body) []*hclsyntax.Attribute {
	out := make([]*hclsyntax.Attribute, 0, len(body.Attributes))
	for _, a := range body.Attributes {
		out = append(out, a)
	}
	slices.SortFunc(out, func(a, b *hclsyntax.Attribute) int { return a.SrcRange.Start.Byte - b.SrcRange.Start.Byte })
	return out
}

func (r *hclReader) fail(e hclsyntax.Expression, message, hint string) (Value, bool) {
	r.diags = append(r.diags, Errorf(r.at(e.Range()), "value", "%s", message).Hinting("%s", hint))
	return Value{}, false
}

func (r *hclReader) value(e hclsyntax.Expression) (Value, bool) {
	v := Value{Where: r.at(e.Range())}
	switch e := e.(type) {
	case *hclsyntax.TemplateExpr, *hclsyntax.TemplateWrapExpr:
		text, err := r.text(v.Where)
		if err != "" {
			return r.fail(e, err, "Check the escapes in the text.")
		}
		v.Kind, v.Text = TextKind, text
		if len(text.At) > 0 {
			return v, true
		}
	case *hclsyntax.LiteralValueExpr:
		switch {
		case e.Val.IsNull():
			v.Kind = NullKind
			return v, true
		case e.Val.Type() == cty.Bool:
			v.Kind, v.Bool = BoolKind, e.Val.True()
			return v, true
		case e.Val.Type() == cty.Number:
			return r.number(e, v, e.Val, 1)
		}
	case *hclsyntax.UnaryOpExpr:
		if lit, ok := e.Val.(*hclsyntax.LiteralValueExpr); ok && e.Op == hclsyntax.OpNegate && lit.Val.Type() == cty.Number {
			return r.number(e, v, lit.Val, -1)
		}
	case *hclsyntax.TupleConsExpr:
		v.Kind = ListKind
		for _, item := range e.Exprs {
			iv, ok := r.value(item)
			if !ok {
				return v, false
			}
			v.Items = append(v.Items, iv)
		}
		return v, true
	case *hclsyntax.ObjectConsExpr:
		return r.object(e, v)
	case *hclsyntax.ScopeTraversalExpr:
		switch word := v.Where.Text(); word {
		case "yes", "Yes":
			return r.fail(e, "Yes is not written like this.", `For yes or no write true; a word from a list stands in quotes: "yes"`)
		case "no", "No":
			return r.fail(e, "No is not written like this.", `For yes or no write false; a word from a list stands in quotes: "no"`)
		}
		return r.fail(e, fmt.Sprintf("The value %s is not in quotes.", v.Where.Text()), fmt.Sprintf("Write %q.", v.Where.Text()))
	}
	return r.fail(e, "A value is expected here: a text in quotes, a number, true or false, or a list.", "Conditions and formulas are texts in quotes too.")
}

func (r *hclReader) number(e hclsyntax.Expression, v Value, n cty.Value, sign float64) (Value, bool) {
	number, _ := n.AsBigFloat().Float64()
	if math.IsInf(number, 0) {
		return r.fail(e, "This number is too large.", "Write the value in another unit, or correct it.")
	}
	v.Kind, v.Number = NumberKind, sign*number
	return v, true
}

func (r *hclReader) object(e *hclsyntax.ObjectConsExpr, v Value) (Value, bool) {
	v.Kind = ObjectKind
	first := map[string]Range{}
	for _, item := range e.Items {
		name := hcl.ExprAsKeyword(item.KeyExpr)
		where := r.at(item.KeyExpr.Range())
		if name == "" {
			key, diags := item.KeyExpr.Value(nil)
			if diags.HasErrors() || key.IsNull() || key.Type() != cty.String {
				return r.fail(e, "A field's name is a word or a text in quotes.", `For example: { shell_side = "anterior" }`)
			}
			name = key.AsString()
		}
		fv, ok := r.value(item.ValueExpr)
		if !ok {
			return v, false
		}
		if at, twice := first[name]; twice {
			r.diags = append(r.diags, Errorf(where, "duplicate", "%s is set twice.", name).
				Hinting("Keep one of the two.").With("The first one is here.", at))
			return v, false
		}
		first[name] = where
		v.Fields = append(v.Fields, Field{Name: name, NameWhere: where, Value: fv})
	}
	return v, true
}

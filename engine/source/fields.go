package source

import (
	"fmt"
	"strings"
)

// Fields takes the attributes of one block one by one, with their kinds checked, and in the end
// reports those that nobody asked for. Errors are added to Diags; every getter then gives a zero
// value, so that a reader can go on and report everything in one go.
type Fields struct {
	Block *Block
	Diags *Diagnostics
	asked []string
	inner []string
	lacks []lack
	alias map[string]string // the name of an attribute by another that people write
}

// lack is an attribute that is not written, with an example of it.
type lack struct{ name, example string }

// Fields starts taking the attributes of b.
func (b *Block) Fields(diags *Diagnostics) *Fields { return &Fields{Block: b, Diags: diags} }

// Has reports whether the attribute is written.
func (f *Fields) Has(name string) bool {
	f.asked = append(f.asked, name)
	_, ok := f.Block.Attr(name)
	return ok
}

func (f *Fields) get(name string, kind Kind, example string) (Field, bool) {
	f.asked = append(f.asked, name)
	a, ok := f.Block.Attr(name)
	if !ok {
		return a, false
	}
	if a.Value.Kind != kind {
		f.wrong(a, kind.String(), example)
		return a, false
	}
	return a, true
}

func (f *Fields) wrong(a Field, wanted, example string) {
	f.fail(Errorf(a.Value.Where, "kind", "%s takes %s, and this is %s.", a.Name, wanted, a.Value.Kind).
		Hinting("For example: %s = %s", a.Name, example))
}

func (f *Fields) fail(d Diagnostic) { *f.Diags = append(*f.Diags, d) }

// Text takes a text.
func (f *Fields) Text(name string) (Text, bool) { return f.TextLike(name, `"..."`) }

// TextLike takes a text; the example shows one where something else is written.
func (f *Fields) TextLike(name, example string) (Text, bool) {
	a, ok := f.get(name, TextKind, example)
	return a.Value.Text, ok
}

// String takes a text for which the place does not matter; ${names} are not allowed in it.
func (f *Fields) String(name string) string {
	t, ok := f.Text(name)
	if ok && len(t.Refs) > 0 {
		f.fail(Errorf(t.Range(t.Refs[0].Start, t.Refs[0].End), "template", "%s is a plain text, without ${names}.", name).
			Hinting("Write the words themselves."))
	}
	return strings.TrimSpace(t.S)
}

// Required takes a plain text that must be there and not be empty.
func (f *Fields) Required(name, example string) string {
	s := f.String(name)
	if s == "" {
		f.missing(name, example)
	}
	return s
}

// RequiredText takes a text that must be there and not be empty.
func (f *Fields) RequiredText(name, example string) (Text, bool) {
	t, ok := f.TextLike(name, example)
	if !ok || strings.TrimSpace(t.S) == "" {
		f.missing(name, example)
		return t, false
	}
	return t, true
}

// Needs reports an attribute that must be there and is not.
func (f *Fields) Needs(name, example string) {
	if !f.Has(name) {
		f.missing(name, example)
	}
}

func (f *Fields) missing(name, example string) {
	if a, ok := f.Block.Attr(name); ok {
		if a.Value.Kind == TextKind {
			f.fail(Errorf(a.Value.Where, "missing", "%s is empty.", name).Hinting("For example: %s = %s", name, example))
		}
		return // of the wrong kind: already said
	}
	f.lacks = append(f.lacks, lack{name, example})
}

// missed reports what is not written, in one diagnostic. What an unknown name was probably meant to
// be is not said again.
func (f *Fields) missed(unknown []string) {
	var names, examples []string
	for _, l := range f.lacks {
		if len(Nearest(l.name, unknown)) == 0 {
			names = append(names, l.name)
			examples = append(examples, l.name+" = "+l.example)
		}
	}
	if len(names) > 0 {
		f.fail(Errorf(f.Block.Where, "missing", "%s has no line for %s.", describe(f.Block), Or(names)).
			Hinting("Add inside the braces, for example:\n%s", strings.Join(examples, "\n")))
	}
}

func describe(b *Block) string {
	if len(b.Labels) > 0 {
		return fmt.Sprintf("The %s %q", b.Type, b.Labels[0].Text)
	}
	return "The block " + b.Type
}

// OneOf takes a text that must be one of the words; an absent one is "".
func (f *Fields) OneOf(name string, words ...string) string {
	t, ok := f.Text(name)
	if !ok {
		return ""
	}
	for _, w := range words {
		if t.S == w {
			return w
		}
	}
	f.fail(Errorf(t.All(), "word", "%s is %q, which is not one of its words.", name, t.S).
		Hinting("%s", DidYouMean(t.S, words, "It can be "+Or(words)+".")))
	return ""
}

// Bool takes true or false.
func (f *Fields) Bool(name string) bool {
	a, ok := f.get(name, BoolKind, "true")
	return ok && a.Value.Bool
}

// Number takes a number.
func (f *Fields) Number(name string) (float64, bool) {
	a, ok := f.get(name, NumberKind, "5")
	return a.Value.Number, ok
}

// Pair takes a list of two numbers, the lower one first.
func (f *Fields) Pair(name string) (lo, hi float64, ok bool) {
	a, ok := f.get(name, ListKind, "[0, 60]")
	if !ok {
		return 0, 0, false
	}
	items := a.Value.Items
	if len(items) != 2 || items[0].Kind != NumberKind || items[1].Kind != NumberKind || items[0].Number >= items[1].Number {
		f.fail(Errorf(a.Value.Where, "pair", "%s takes two numbers, the smaller one first.", name).Hinting("For example: %s = [0, 60]", name))
		return 0, 0, false
	}
	return items[0].Number, items[1].Number, true
}

// maxItems is the longest list of texts that is read.
const maxItems = 500

// Texts takes a list of texts, or a single text as a list of one.
func (f *Fields) Texts(name string) []Text {
	f.asked = append(f.asked, name)
	a, ok := f.Block.Attr(name)
	if !ok {
		return nil
	}
	var out []Text
	switch a.Value.Kind {
	case TextKind:
		out = append(out, a.Value.Text)
	case ListKind:
		if len(a.Value.Items) > maxItems {
			f.fail(Errorf(a.Value.Where, "too_large", "%s has more than %d items.", name, maxItems).Hinting("Shorten the list."))
			return nil
		}
		for _, item := range a.Value.Items {
			if item.Kind != TextKind {
				f.fail(Errorf(item.Where, "kind", "%s takes a list of texts, and this is %s.", name, item.Kind).
					Hinting(`For example: %s = ["first", "second"]`, name))
				continue
			}
			out = append(out, item.Text)
		}
	default:
		f.wrong(a, "a text or a list of texts", `["first", "second"]`)
	}
	seen := map[string]bool{}
	for _, t := range out {
		if seen[t.S] {
			f.fail(Errorf(t.All(), "duplicate", "%q stands twice in %s.", t.S, name).Hinting("Keep one of the two."))
		}
		seen[t.S] = true
	}
	return out
}

// Object takes a group of fields.
func (f *Fields) Object(name, example string) []Field {
	a, _ := f.get(name, ObjectKind, example)
	return a.Value.Fields
}

// Where gives the place of an attribute's value, or of the block's header where it is not written.
func (f *Fields) Where(name string) Range {
	if a, ok := f.Block.Attr(name); ok {
		return a.Value.Where
	}
	return f.Block.Where
}

// Inner names the kinds of block that may stand inside this one.
func (f *Fields) Inner(types ...string) { f.inner = append(f.inner, types...) }

// Instead notes a name that people write in place of an attribute's.
func (f *Fields) Instead(written, name string) {
	if f.alias == nil {
		f.alias = map[string]string{}
	}
	f.alias[written] = name
}

// Done reports the attributes and inner blocks that the block does not have, and those that it lacks.
func (f *Fields) Done() {
	var unknown []string
	for _, a := range f.Block.Attrs {
		if contains(f.asked, a.Name) {
			continue
		}
		d := Errorf(a.NameWhere, "unknown_field", "%s has nothing called %s.", describe(f.Block), a.Name).
			Hinting("%s", DidYouMean(a.Name, append(unique(f.asked), f.inner...), "It can have "+And(unique(f.asked))+"."))
		meant := a.Name
		if name, ok := f.alias[a.Name]; ok && contains(f.asked, name) {
			meant = name
			d = d.Hinting("Here it is called %s.", name)
		} else if contains(f.inner, a.Name) {
			d = Errorf(a.NameWhere, "unknown_field", "%s is a block, and is written without =.", a.Name).
				Hinting("Take the = out; what it is about, if anything, stands in quotes: %s \"...\" {", a.Name)
		}
		unknown = append(unknown, meant)
		f.fail(d)
	}
	for _, b := range f.Block.Blocks {
		if contains(f.asked, b.Type) {
			f.fail(Errorf(b.Where, "unknown_block", "%s is no block, and is written with =.", b.Type).Hinting("Put the = behind its name: %s = ...", b.Type))
		} else if !contains(f.inner, b.Type) {
			other := "No block can stand inside it."
			if len(f.inner) > 0 {
				other = "Inside it can stand " + And(f.inner) + "."
			}
			f.fail(Errorf(b.Where, "unknown_block", "%s has no block %s inside.", describe(f.Block), b.Type).
				Hinting("%s", DidYouMean(b.Type, f.inner, other)))
		}
	}
	f.missed(unknown)
}

func contains(list []string, s string) bool {
	for _, x := range list {
		if x == s {
			return true
		}
	}
	return false
}

func unique(list []string) []string {
	var out []string
	for _, s := range list {
		if !contains(out, s) {
			out = append(out, s)
		}
	}
	return out
}

// Identifier reports whether s can be a name: small letters, digits and underscores, a letter first.
func Identifier(s string) bool {
	for i, c := range s {
		if (c < 'a' || c > 'z') && (i == 0 || (c < '0' || c > '9') && c != '_') {
			return false
		}
	}
	return s != ""
}

// Named checks that a block has just one label and that it is a name, and gives it.
func (b *Block) Named(diags *Diagnostics, example string) string {
	if len(b.Labels) != 1 {
		*diags = append(*diags, Errorf(b.Where, "label", "A %s block has one name in quotes before its brace.", b.Type).
			Hinting("For example: %s %q {", b.Type, example))
		return ""
	}
	if l := b.Labels[0]; !Identifier(l.Text) {
		*diags = append(*diags, Errorf(l.Where, "label", "%q can't be a name.", l.Text).
			Hinting("A name has small letters, digits and underscores, and begins with a letter, for example %q.", example))
		return ""
	}
	switch name := b.Labels[0].Text; name {
	case "in", "true", "false", "null":
		*diags = append(*diags, Errorf(b.Labels[0].Where, "label", "%q can't be a name: it has a meaning of its own in conditions.", name).
			Hinting("Choose another name, for example %q.", example))
		return ""
	default:
		return name
	}
}

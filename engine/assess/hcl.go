package assess

import (
	"fmt"
	"strings"

	"crus/engine/source"
	"crus/engine/vocab"
)

// ReadHCL reads the one assessment in an HCL file: its fields as attributes, and person, left and
// right as blocks.
func ReadHCL(f *source.File, v *vocab.Vocabulary) (*Assessment, source.Diagnostics) {
	if _, diags := whole(f, source.MaxFileSize); diags.HasErrors() {
		return nil, diags
	}
	root, diags := source.ReadHCL(f)
	if root == nil {
		for i, d := range diags {
			if hint := bareSlip(f.Src, d.Where.Start); hint != "" {
				diags[i] = d.Hinting("%s", hint)
			}
		}
		return nil, diags
	}
	doc := newDocument(f, hclNotation)
	doc.required = []string{"format", "id", "vocabulary", "device_for"}
	doc.fromBlock(root)
	return check(doc, v)
}

// Given reads the given block of a worked case: an assessment that needs neither format, id nor
// vocabulary.
func Given(b *source.Block, v *vocab.Vocabulary) (*Assessment, source.Diagnostics) {
	doc := newDocument(b.Where.File, hclNotation)
	doc.where = b.Where
	doc.required = []string{"device_for"}
	doc.written = usual(v)
	for _, l := range b.Labels {
		doc.fail(labelled(b, l))
	}
	doc.fromBlock(b)
	return check(doc, v)
}

func labelled(b *source.Block, l source.Label) source.Diagnostic {
	return source.Errorf(l.Where, "label", "A %s block has no name behind its word.", b.Type).Hinting("Write: %s {", b.Type)
}

// fromBlock makes the tree of a block.
func (d *document) fromBlock(b *source.Block) {
	d.root = source.Value{Kind: source.ObjectKind, Where: b.Where}
	first := map[string]source.Range{}
	add := func(f source.Field) {
		if at, twice := first[f.Name]; twice {
			d.fail(duplicate(f.Name, f.NameWhere, at))
			return
		}
		first[f.Name] = f.NameWhere
		d.plain(f.Value, 1)
		d.root.Fields = append(d.root.Fields, f)
	}
	for _, a := range b.Attrs {
		add(a)
	}
	for _, inner := range b.Blocks {
		if d.full() {
			return
		}
		for _, l := range inner.Labels {
			d.fail(labelled(inner, l))
		}
		for _, deep := range inner.Blocks {
			d.fail(source.Errorf(deep.Where, "unknown_block", "%s has no block %s inside.", inner.Type, short(deep.Type)).
				Hinting(`Write a measure as a value or a group of fields: %s = { value = 86.5, unit = "cm" }`, short(deep.Type)))
		}
		v := source.Value{Kind: source.ObjectKind, Where: inner.Where, Fields: inner.Attrs}
		add(source.Field{Name: inner.Type, NameWhere: inner.Where, Value: v})
	}
}

// plain refuses ${names} in texts, and values that stand too deep in each other.
func (d *document) plain(v source.Value, depth int) {
	if depth > maxDepth {
		d.refuse(tooDeep(v.Where))
		return
	}
	if len(v.Text.Refs) > 0 {
		name := v.Text.Refs[0]
		d.fail(source.Errorf(v.Text.Range(name.Start, name.End), "template", "A text in an assessment is plain, without ${names}.").
			Hinting("Write $${ for the two characters themselves."))
		d.bad[v.Where] = true
	}
	for _, item := range v.Items {
		d.plain(item, depth+1)
	}
	for _, f := range v.Fields {
		d.plain(f.Value, depth+1)
	}
}

// usual is how a vocabulary is named in an assessment: with the first number of its version.
func usual(v *vocab.Vocabulary) string {
	major, _, _ := strings.Cut(v.Version, ".")
	return fmt.Sprintf("%s@%s", v.Name, major)
}

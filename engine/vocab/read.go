package vocab

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"io/fs"
	"path"

	"crus/engine/biomech"
	"crus/engine/clinical"
	"crus/engine/source"
)

// Read reads the vocabulary in the folder dir of fsys; show is how its path is shown. All errors
// come in one go, and then no vocabulary.
func Read(fsys fs.FS, dir, show string) (*Vocabulary, source.Diagnostics) {
	files, diags := source.ReadFolder(fsys, dir, show)
	if diags.HasErrors() {
		return nil, diags
	}
	return Parse(files)
}

// Parse reads the vocabulary in some files.
func Parse(files []*source.File) (*Vocabulary, source.Diagnostics) {
	blocks, diags := source.ReadBlocks(files)
	r := &reader{
		v:     &Vocabulary{Digest: Digest(files), measures: map[string]*Measure{}, choices: map[string]*Choice{}},
		diags: diags,
		first: map[string]source.Range{},
	}
	if r.diags.HasErrors() { // what the unreadable files define is not known: more errors would be false
		return nil, r.diags.Sorted()
	}
	if b := rulesetIn(blocks); b != nil {
		return nil, source.Diagnostics{source.Errorf(b.Where, NotAVocabulary, "This folder is a ruleset, not a vocabulary.").Hinting("Name the folder of a vocabulary.")}
	}
	r.header(blocks, files)
	for _, b := range blocks { // scales and citations first: measures name them
		switch b.Type {
		case "scale":
			r.scale(b)
		case "citation":
			r.citation(b)
		}
	}
	for _, b := range blocks {
		switch b.Type {
		case "measure":
			r.measure(b)
		case "choice":
			r.choice(b)
		case "vocabulary", "scale", "citation":
		default:
			r.fail(source.Errorf(b.Where, "unknown_block", "A vocabulary has no block %s.", b.Type).
				Hinting("%s", source.DidYouMean(b.Type, blockTypes(), "It can have "+source.And(blockTypes())+".")))
		}
	}
	if r.diags.HasErrors() {
		return nil, r.diags.Sorted()
	}
	return r.v, r.diags.Sorted()
}

// NotAVocabulary is the code of the one diagnostic of a folder that is a ruleset.
const NotAVocabulary = "not_a_vocabulary"

// rulesetIn gives the header of a ruleset among the blocks, unless there is one of a vocabulary.
func rulesetIn(blocks []*source.Block) *source.Block {
	var found *source.Block
	for _, b := range blocks {
		switch b.Type {
		case "vocabulary":
			return nil
		case "ruleset":
			found = b
		}
	}
	return found
}

func blockTypes() []string { return []string{"vocabulary", "scale", "measure", "choice", "citation"} }

// Digest is the hash of files by name and content, in their order.
func Digest(files []*source.File) string {
	h := sha256.New()
	for _, f := range files {
		fmt.Fprintf(h, "%s %d\n", path.Base(f.Name), len(f.Src))
		h.Write(f.Src)
	}
	return "sha256:" + hex.EncodeToString(h.Sum(nil))
}

type reader struct {
	v     *Vocabulary
	diags source.Diagnostics
	first map[string]source.Range // where each name was first defined
}

func (r *reader) fail(d source.Diagnostic) { r.diags = append(r.diags, d) }

// unique reports a name that is taken; kind keeps the name spaces apart.
func (r *reader) unique(kind, name string, where source.Range) {
	if name == "" {
		return
	}
	if first, taken := r.first[kind+" "+name]; taken {
		r.fail(source.Errorf(where, "duplicate", "The %s %q is defined twice.", kind, name).
			Hinting("Give one of the two another name, or delete it.").With("The first one is here.", first))
		return
	}
	r.first[kind+" "+name] = where
}

func (r *reader) header(blocks []*source.Block, files []*source.File) {
	var header *source.Block
	for _, b := range blocks {
		if b.Type != "vocabulary" {
			continue
		}
		if header != nil {
			r.fail(source.Errorf(b.Where, "duplicate", "There is a second vocabulary block.").
				Hinting("One folder is one vocabulary: keep one of the two.").With("The first one is here.", header.Where))
			continue
		}
		header = b
	}
	if header == nil {
		r.fail(source.Errorf(source.Range{File: files[0]}, "missing", "The folder has no vocabulary block.").
			Hinting("Add one:\nvocabulary \"lower_limb\" {\ntitle = \"...\"\nversion = \"1.0.0\"\n}"))
		return
	}
	r.v.Where = header.Where
	r.v.Name = header.Named(&r.diags, "lower_limb")
	f := header.Fields(&r.diags)
	r.v.Title = f.Required("title", `"Lower-limb orthotic assessment"`)
	r.v.Version = f.Required("version", `"1.0.0"`)
	if r.v.Version != "" && !IsVersion(r.v.Version) {
		r.fail(source.Errorf(f.Where("version"), "version", "%q is not a version.", r.v.Version).Hinting(`A version has three numbers: "1.0.0".`))
	}
	f.Done()
}

func (r *reader) citation(b *source.Block) {
	c := ReadCitation(b, &r.diags)
	r.unique("citation", c.Key, b.Where)
	r.v.Citations = append(r.v.Citations, c)
}

func (r *reader) cites(f *source.Fields) []string {
	var out []string
	for _, t := range f.Texts("cites") {
		if _, ok := r.first["citation "+t.S]; !ok {
			var keys []string
			for _, c := range r.v.Citations {
				keys = append(keys, c.Key)
			}
			r.fail(source.Errorf(t.All(), "unknown_name", "There is no citation %q.", t.S).
				Hinting("%s", source.DidYouMean(t.S, keys, fmt.Sprintf("Add a block: citation %q { text = \"...\" }", t.S))))
			continue
		}
		out = append(out, t.S)
	}
	return out
}

func (r *reader) scale(b *source.Block) {
	name := b.Named(&r.diags, "muscle_power")
	f := b.Fields(&r.diags)
	f.String("title")
	before := r.diags.Errors()
	grades := f.Texts("grades")
	broken := r.diags.Errors() > before
	r.cites(f)
	f.Done()
	r.unique("scale", name, b.Where)
	if name == "" {
		return
	}
	labels := make([]string, len(grades))
	for i, g := range grades {
		labels[i] = g.S
	}
	if root(name) {
		r.fail(source.Errorf(b.Label0().Where, "reserved", "A scale can't be called %s: names in conditions begin with that word.", name).Hinting("Choose another name."))
		return
	}
	if biomech.Named(name) != nil {
		r.fail(source.Errorf(b.Label0().Where, "reserved", "A scale can't be called %s: conditions have a formula of that name.", name).Hinting("Choose another name."))
		return
	}
	if _, err := clinical.NewScale(name, []string{"0", "1"}); err != nil { // the name alone is wrong
		r.fail(source.Errorf(b.Label0().Where, "reserved", "%s", err).Hinting("Choose another name."))
		return
	}
	if len(grades) > maxWords {
		r.fail(source.Errorf(f.Where("grades"), "scale", "A scale has at most %d grades.", maxWords).Hinting("What is finer is a quantity with a unit, or a count."))
		return
	}
	if broken {
		return
	}
	s, err := clinical.NewScale(name, labels)
	if err != nil {
		r.fail(source.Errorf(f.Where("grades"), "scale", "%s", err).Hinting(`For example: grades = ["0", "1", "1+", "2", "3", "4"], the lowest first.`))
		return
	}
	r.v.Scales = append(r.v.Scales, s)
}

// root reports whether a word begins the names in a condition.
func root(name string) bool {
	switch name {
	case "person", "limb", "other", "finding", "quantity", "recorded":
		return true
	}
	return false
}

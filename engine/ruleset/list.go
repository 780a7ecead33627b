package ruleset

import (
	"crus/engine/source"
	"crus/engine/vocab"
)

// Listing is what one folder of a library says of itself, unchecked.
type Listing struct {
	Kind                   string // ruleset | vocabulary
	Name                   string // by which it is found
	Title, Version, Status string // as written; a vocabulary has no status
}

// List lists what can be found by name, in the order of the names. A folder without a header that
// can be read is left out.
func (l Library) List() []Listing {
	var out []Listing
	for _, name := range l.names() {
		f, _, ok := l.find(folder{}, name)
		if !ok {
			continue
		}
		if header := f.header(); header != nil {
			text := func(attr string) string {
				a, _ := header.Attr(attr)
				return a.Value.Text.S
			}
			out = append(out, Listing{header.Type, name, text("title"), text("version"), text("status")})
		}
	}
	return out
}

// header gives the ruleset or vocabulary block of a folder, or nil.
func (f folder) header() *source.Block {
	for _, b := range f.blocks() {
		if b.Type == "ruleset" || b.Type == "vocabulary" {
			return b
		}
	}
	return nil
}

// blocks gives the blocks of those files of a folder that can be read.
func (f folder) blocks() []*source.Block {
	files, _ := source.ReadFolder(f.fsys, f.dir, f.show)
	blocks, _ := source.ReadBlocks(files)
	return blocks
}

// Given gives the given blocks of a ruleset's worked cases with the vocabulary that they are written
// in, even where the rules have errors; nothing where the vocabulary can't be read.
func (l Library) Given(name string) ([]*source.Block, *vocab.Vocabulary) {
	f, _, diags := l.named(name, "ruleset")
	if diags.HasErrors() {
		return nil, nil
	}
	header := f.header()
	if header == nil {
		return nil, nil
	}
	named, _ := header.Attr("vocabulary")
	at, want, ok := l.find(f, named.Value.Text.S)
	if !ok {
		return nil, nil
	}
	v, _ := vocab.Read(at.fsys, at.dir, at.show)
	if v == nil || !vocab.Accepts(want, v.Version) {
		return nil, nil
	}
	var out []*source.Block
	for _, b := range f.blocks() {
		for _, inner := range b.Blocks {
			if b.Type == "case" && inner.Type == "given" {
				out = append(out, inner)
			}
		}
	}
	return out, v
}

// Files reads the files of the ruleset or vocabulary that a person named, unchecked. The names of
// the files are their paths, unless embedded says that they came with the program.
func (l Library) Files(name string) (files []*source.File, embedded bool, diags source.Diagnostics) {
	f, _, diags := l.named(name, "ruleset")
	if diags.HasErrors() {
		return nil, false, diags
	}
	files, diags = source.ReadFolder(f.fsys, f.dir, f.show)
	return files, f.embedded, diags
}

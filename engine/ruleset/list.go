package ruleset

import "crus/engine/source"

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
	files, _ := source.ReadFolder(f.fsys, f.dir, f.show)
	blocks, _ := source.ReadBlocks(files)
	for _, b := range blocks {
		if b.Type == "ruleset" || b.Type == "vocabulary" {
			return b
		}
	}
	return nil
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

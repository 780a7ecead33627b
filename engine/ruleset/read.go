package ruleset

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"strings"

	"crus/engine/clinical"
	"crus/engine/source"
	"crus/engine/vocab"
)

// read reads the ruleset in a folder and all that it builds on.
func (l Library) read(f folder, want string) (*Ruleset, source.Diagnostics) {
	r := &reader{lib: l, rs: &Ruleset{}, facts: map[string]*Fact{}, rules: map[string]*Rule{}, cautions: map[string]*Caution{}, parts: map[string]*Part{}}
	part := r.part(f, want, nil, source.Range{})
	if part == nil {
		return nil, r.diags.Sorted()
	}
	r.order()
	r.link()
	r.except()
	r.reach()
	if r.diags.HasErrors() {
		return nil, r.diags.Sorted()
	}
	r.rs.Header, r.rs.Digest = part.Header, r.digest()
	return r.rs, r.diags.Sorted()
}

// reader gathers the parts into one ruleset. Names in its maps are full names.
type reader struct {
	lib      Library
	rs       *Ruleset
	diags    source.Diagnostics
	parts    map[string]*Part
	facts    map[string]*Fact // by path: finding.x, quantity.part.x
	rules    map[string]*Rule
	cautions map[string]*Caution
	excepts  []pendingExcept
}

func (r *reader) fail(d source.Diagnostic) { r.diags = append(r.diags, d) }

// part reads one folder after those that it builds on; trail holds the names on the way to it.
// It gives nil where the folder could not be used, which has then been said.
func (r *reader) part(f folder, want string, trail []string, from source.Range) *Part {
	files, diags := source.ReadFolder(f.fsys, f.dir, f.show)
	r.diags = append(r.diags, diags...)
	if diags.HasErrors() {
		return nil
	}
	blocks, diags := source.ReadBlocks(files)
	r.diags = append(r.diags, diags...)
	if diags.HasErrors() { // what the unreadable files define is not known: more errors would be false
		return nil
	}
	lost := map[string]bool{}
	if len(blocks) > maxBlocks {
		r.fail(source.Errorf(blocks[maxBlocks].Where, "too_large", "The ruleset has %d blocks; more than %d are not read.", len(blocks), maxBlocks).
			Hinting("Divide it into rulesets that build on each other."))
		return nil
	}
	p := &partReader{reader: r, folder: f, blocks: blocks, p: &Part{Root: trail == nil, Digest: vocab.Digest(files), lost: lost}, first: map[string]source.Range{}, lost: lost}
	return p.read(files, want, trail, from)
}

// partReader reads one part.
type partReader struct {
	*reader
	folder folder
	blocks []*source.Block
	p      *Part
	scope  *scope
	cites  map[string]bool
	first  map[string]source.Range // where each name was first defined
	lost   map[string]bool         // names that are defined with an error: rulesets built on, and quantities by path
}

func blockTypes() []string {
	return []string{"ruleset", "citation", "finding", "quantity", "rule", "caution", "clinician_decides", "case", "except"}
}

func (p *partReader) read(files []*source.File, want string, trail []string, from source.Range) *Part {
	header, applies, built := p.header(files, want, from)
	if header == nil {
		return nil
	}
	if cycle(trail, p.p.Name) {
		p.fail(source.Errorf(from, "cycle", "Rulesets build on each other in a circle: %s.", strings.Join(append(trail, p.p.Name), " → ")).
			Hinting("Move what both need into a ruleset of its own."))
		return nil
	}
	for _, t := range built {
		p.buildOn(t, append(trail, p.p.Name))
	}
	if p.rs.Vocabulary == nil {
		return nil
	}
	p.rs.Parts = append(p.rs.Parts, p.p)
	p.parts[p.p.Name] = p.p
	p.citations()
	pending := p.declare()
	s, err := newScope(p.p, p.rs.Vocabulary, p.visible(), p.lost, &p.diags)
	if err != nil {
		p.fail(source.Errorf(header.Where, "names", "The names of the ruleset can't all be used together: %s.", err).
			Hinting("Rename what clashes."))
		return nil
	}
	p.scope = s
	if applies.S != "" {
		p.p.Applies = s.condition(applies)
	}
	for _, define := range pending {
		if p.diags.Errors() > maxErrors {
			p.fail(source.Errorf(header.Where, "too_many", "There are more than %d errors.", maxErrors).Hinting("Only these were looked for. Correct them, then look again."))
			break
		}
		define()
	}
	return p.p
}

// maxBlocks is how many blocks one ruleset can have. A large one has a thousand.
const maxBlocks = 4000

// maxErrors is how many errors are looked for in a ruleset; more help nobody.
const maxErrors = 200

func cycle(trail []string, name string) bool { return contains(trail, name) }

// buildOn reads a ruleset that this one builds on, once.
func (p *partReader) buildOn(t source.Text, trail []string) {
	name, _, _ := strings.Cut(t.S, "@")
	if !p.wanted(t) {
		p.lost[name] = true
		return
	}
	f, want, ok := p.lib.find(p.folder, t.S)
	if !ok {
		p.lost[name] = true
		p.fail(source.Errorf(t.All(), "unknown_name", "There is no ruleset %s to build on.", t.S).Hinting("%s", p.lib.lookedFor(t.S)))
		return
	}
	if old, ok := p.parts[name]; ok && !cycle(trail, name) {
		if !vocab.Accepts(want, old.Version) {
			p.fail(source.Errorf(t.All(), "version", "%s is already in force as version %s.", name, old.Version).
				Hinting("Two versions of one ruleset can't both be built on: agree on one."))
		}
		return
	}
	if p.part(f, want, trail, t.All()) == nil {
		p.lost[name] = true
	}
}

// wanted reports a name behind whose @ stands no version.
func (p *partReader) wanted(t source.Text) bool {
	if vocab.IsWanted(t.S) {
		return true
	}
	p.fail(noVersion(t.All(), t.S))
	return false
}

func noVersion(where source.Range, asked string) source.Diagnostic {
	name, want, _ := strings.Cut(asked, "@")
	message := fmt.Sprintf("%q behind the @ is not a version.", want)
	if want == "" {
		message = "Behind the @ the version is missing."
	}
	return source.Errorf(where, "version", "%s", message).Hinting("For example %s@1 for any 1.x.y, or %s@1.2.0 for that one.", name, name)
}

// visible gives the facts of all parts read so far, by the path that this part uses.
func (p *partReader) visible() map[string]*Fact {
	out := map[string]*Fact{}
	for _, f := range p.rs.Facts {
		root := "finding."
		if f.Quantity != nil {
			root = "quantity."
		}
		name := f.Name
		if f.Part == p.p {
			name = strings.TrimPrefix(name, p.p.Name+".")
		}
		out[root+name] = f
	}
	return out
}

// unique reports a name that is taken within this part.
func (p *partReader) unique(kind, name string, where source.Range) bool {
	if name == "" {
		return false
	}
	if first, taken := p.first[kind+" "+name]; taken {
		message, hint := fmt.Sprintf("The %s %q is defined twice.", kind, name), "Give one of the two another name, or delete it."
		if kind == "except" || kind == "clinician_decides" {
			message, hint = fmt.Sprintf("There is a second block %s %q.", kind, name), "Keep one of the two."
		}
		p.fail(source.Errorf(where, "duplicate", "%s", message).Hinting("%s", hint).With("The first one is here.", first))
		return false
	}
	p.first[kind+" "+name] = where
	return true
}

func (p *partReader) citations() {
	p.cites = map[string]bool{}
	for _, c := range p.rs.Vocabulary.Citations {
		p.cites[c.Key] = true
		p.first["citation "+c.Key] = c.Where
	}
	for _, b := range p.blocks {
		if b.Type == "citation" {
			c := vocab.ReadCitation(b, &p.diags)
			if p.unique("citation", c.Key, b.Where) {
				p.cites[c.Key] = true
				p.p.Citations = append(p.p.Citations, c)
			}
		}
	}
}

// declare notes every name that the part defines, so that conditions can name each other in any
// order, and gives the work that is left once they can.
func (p *partReader) declare() (pending []func()) {
	for _, b := range p.blocks {
		switch b.Type {
		case "finding", "quantity":
			if define := p.declareFact(b); define != nil {
				pending = append(pending, define)
			}
		case "rule":
			pending = append(pending, func() { p.rule(b) })
		case "caution":
			pending = append(pending, func() { p.caution(b) })
		case "clinician_decides":
			pending = append(pending, func() { p.open(b) })
		case "case":
			pending = append(pending, func() { p.workedCase(b) })
		case "except":
			pending = append(pending, func() { p.except(b) })
		case "ruleset", "citation":
		default:
			p.fail(source.Errorf(b.Where, "unknown_block", "A ruleset has no block %s.", b.Type).
				Hinting("%s", source.DidYouMean(b.Type, blockTypes(), "It can have "+source.And(blockTypes())+".")))
		}
	}
	return pending
}

// digest is the identity of everything that decides: the parts' files and the vocabulary's.
func (r *reader) digest() string {
	h := sha256.New()
	fmt.Fprintf(h, "vocabulary %s\n", r.rs.Vocabulary.Digest)
	for _, p := range r.rs.Parts {
		fmt.Fprintf(h, "%s %s\n", p.Name, p.Digest)
	}
	return "sha256:" + hex.EncodeToString(h.Sum(nil))
}

// unitOf reads the unit attribute of a quantity.
func unitOf(f *source.Fields, diags *source.Diagnostics) *clinical.Unit {
	t, ok := f.RequiredText("unit", `"deg"`)
	if !ok {
		return nil
	}
	u, known := clinical.UnitByCode(t.S)
	if !known {
		var codes []string
		for _, u := range clinical.Units() {
			codes = append(codes, u.Code)
		}
		*diags = append(*diags, source.Errorf(t.All(), "unit", "%q is not a unit that is known here.", t.S).
			Hinting("%s", source.DidYouMean(t.S, codes, "Units are UCUM codes: "+source.And(codes)+".")))
		return nil
	}
	return &u
}

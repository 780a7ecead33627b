package ruleset

import (
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"sort"
	"strings"

	"crus/engine/source"
	"crus/engine/vocab"
)

// Library is where names of rulesets and vocabularies are looked for: in the folder beside the
// one that names them, then in each of Dirs, then in Embedded.
type Library struct {
	Dirs     []string
	Embedded fs.FS // folders at its root; may be nil
}

// folder is one folder of .hcl files, wherever it is.
type folder struct {
	fsys fs.FS
	dir  string // within fsys
	show string // how its path is shown

	embedded bool // came with the program
}

func osFolder(p string) folder {
	abs, err := filepath.Abs(p)
	if err != nil {
		abs = p
	}
	return folder{fsys: os.DirFS(filepath.Dir(abs)), dir: filepath.Base(abs), show: filepath.ToSlash(filepath.Clean(p))}
}

// beside gives the folder called name next to f.
func (f folder) beside(name string) folder {
	f.dir, f.show = path.Join(path.Dir(f.dir), name), path.Join(path.Dir(f.show), name)
	return f
}

func (f folder) exists() bool {
	info, err := fs.Stat(f.fsys, f.dir)
	return err == nil && info.IsDir()
}

// Ruleset reads the ruleset that a person named: a folder, or a bare name (with @1 or @1.2.0 if
// wanted) that is looked for in the library. All errors come in one go, and then no ruleset;
// warnings come with one.
func (l Library) Ruleset(name string) (*Ruleset, source.Diagnostics) {
	f, want, diags := l.named(name, "ruleset")
	if diags.HasErrors() {
		return nil, diags
	}
	return l.read(f, want)
}

// Vocabulary reads the vocabulary that a person named, likewise.
func (l Library) Vocabulary(name string) (*vocab.Vocabulary, source.Diagnostics) {
	f, want, diags := l.named(name, "vocabulary")
	if diags.HasErrors() {
		return nil, diags
	}
	v, diags := vocab.Read(f.fsys, f.dir, f.show)
	if v != nil && !vocab.Accepts(want, v.Version) {
		return nil, source.Diagnostics{source.Errorf(v.Where, "version", "%s is version %s, and %s is asked for.", v.Name, v.Version, name).
			Hinting("Name the version that is there, or add the folder of the other one with --library.")}
	}
	return v, diags
}

// named finds what a person typed: first as a folder, then by name.
func (l Library) named(name, what string) (folder, string, source.Diagnostics) {
	if info, err := os.Stat(name); err == nil {
		if !info.IsDir() {
			return folder{}, "", source.Diagnostics{source.Errorf(source.Range{}, "folder", "%s is a file, and a %s is a folder of .hcl files.", name, what).
				Hinting("Name the folder: %s", filepath.ToSlash(filepath.Dir(name)))}
		}
		return osFolder(name), "", nil
	}
	if strings.ContainsAny(name, `/\`) {
		return folder{}, "", source.Diagnostics{source.Errorf(source.Range{}, "folder", "There is no folder %s.", name).
			Hinting("Check the path. %s", l.known())}
	}
	if name == "" {
		return folder{}, "", source.Diagnostics{source.Errorf(source.Range{}, "unknown_name", "No %s is named.", what).Hinting("%s", l.known())}
	}
	if !vocab.IsWanted(name) {
		return folder{}, "", source.Diagnostics{noVersion(source.Range{}, name)}
	}
	f, want, ok := l.find(folder{}, name)
	if !ok {
		return folder{}, "", source.Diagnostics{source.Errorf(source.Range{}, "unknown_name", "There is no %s %s.", what, name).
			Hinting("%s", strings.TrimSpace(source.DidYouMean(strings.SplitN(name, "@", 2)[0], l.names(), "")+" "+l.known()))}
	}
	return f, want, nil
}

func (l Library) known() string {
	if names := l.names(); len(names) > 0 {
		return "Known by name are " + source.And(names) + "; anything else is given as a folder."
	}
	return "Give the path of the folder."
}

// lookedFor makes the hint for a name in a ruleset that could not be found.
func (l Library) lookedFor(name string) string {
	name, _, _ = strings.Cut(name, "@")
	if !source.Identifier(name) {
		return "It is a name such as lower_limb@1, not a path."
	}
	return strings.TrimSpace(source.DidYouMean(name, l.names(), "") +
		" It is looked for beside the ruleset, then in each --library folder, then among those that come with the program.")
}

// find looks for name, which may end in @version, beside a folder (if that has one), then in the
// library. It gives the wanted version too.
func (l Library) find(near folder, name string) (folder, string, bool) {
	name, want, _ := strings.Cut(name, "@")
	if !source.Identifier(name) {
		return folder{}, want, false
	}
	var tries []folder
	if near.fsys != nil {
		tries = append(tries, near.beside(name))
	}
	for _, d := range l.Dirs {
		tries = append(tries, osFolder(filepath.Join(d, name)))
	}
	if l.Embedded != nil {
		tries = append(tries, folder{fsys: l.Embedded, dir: name, show: path.Join("rulesets", name), embedded: true})
	}
	for _, f := range tries {
		if f.exists() {
			return f, want, true
		}
	}
	return folder{}, want, false
}

// names lists what can be found by name.
func (l Library) names() []string {
	seen := map[string]bool{}
	add := func(fsys fs.FS, dir string) {
		entries, _ := fs.ReadDir(fsys, dir)
		for _, e := range entries {
			if e.IsDir() && source.Identifier(e.Name()) {
				seen[e.Name()] = true
			}
		}
	}
	for _, d := range l.Dirs {
		add(os.DirFS(d), ".")
	}
	if l.Embedded != nil {
		add(l.Embedded, ".")
	}
	var out []string
	for n := range seen {
		out = append(out, n)
	}
	sort.Strings(out)
	return out
}

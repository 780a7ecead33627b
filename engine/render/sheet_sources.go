package render

import (
	"slices"
	"strings"

	"crus/engine/reason"
	"crus/engine/ruleset"
	"crus/engine/vocab"
)

// cited is one source.
type cited struct {
	Key      string // as shown beside a rule: "digiovanni 2002"
	Text     string
	Link     string // https only
	Standing string
}

// Citations gathers the sources that a ruleset's rules and cautions can name: the vocabulary's and
// the ruleset's own by key, those of what it builds on by "ruleset.key".
func Citations(rs *ruleset.Ruleset) map[string]*vocab.Citation {
	out := map[string]*vocab.Citation{}
	if rs.Vocabulary != nil {
		for _, c := range rs.Vocabulary.Citations {
			out[c.Key] = c
		}
	}
	for _, p := range rs.Parts {
		for _, c := range p.Citations {
			out[p.FullName(c.Key)] = c
		}
	}
	return out
}

// source finds the source that a rule or caution cites by key.
func (d *drawer) source(by, key string) (string, *vocab.Citation) {
	if i := strings.LastIndexByte(by, '.'); i >= 0 {
		if c := d.cites[by[:i+1]+key]; c != nil {
			return by[:i+1] + key, c
		}
	}
	return key, d.cites[key]
}

// citeKeys names sources as they stand in the list of sources.
func (d *drawer) citeKeys(by string, keys []string) []string {
	out := make([]string, len(keys))
	for i, k := range keys {
		full, _ := d.source(by, k)
		out[i] = d.citeKey(full)
	}
	return out
}

// citeKey writes a key as words, with its ruleset where another one uses the key for another source.
func (d *drawer) citeKey(full string) string {
	i := strings.LastIndexByte(full, '.')
	key := plain(full[i+1:])
	for other, c := range d.cites {
		if other != full && c != nil && other[strings.LastIndexByte(other, '.')+1:] == full[i+1:] && (d.cites[full] == nil || c.Text != d.cites[full].Text) {
			return strings.TrimSpace(key + " " + from(full))
		}
	}
	return key
}

// sources lists what the rules and cautions that fired or wait stand on, by key.
func (d *drawer) sources() []cited {
	found := map[string]*vocab.Citation{}
	note := func(by string, keys []string) {
		for _, k := range keys {
			full, c := d.source(by, k)
			found[full] = c
		}
	}
	for _, b := range d.bearers {
		for name, r := range b.result.Rules {
			if r.State == reason.Fired || r.State == reason.Pending {
				note(name, r.Cites)
			}
		}
		for _, c := range b.result.Cautions {
			note(c.Name, c.Cites)
		}
	}
	var out []cited
	for _, full := range sortedKeys(found) {
		x := cited{Key: d.citeKey(full), Standing: standingWords(found[full])}
		if c := found[full]; c != nil {
			x.Text = c.Text
			switch {
			case c.DOI != "":
				x.Link = "https://doi.org/" + c.DOI
			case strings.HasPrefix(c.URL, "https://"), strings.HasPrefix(c.URL, "http://"):
				x.Link = c.URL
			}
		}
		out = append(out, x)
	}
	slices.SortStableFunc(out, func(a, b cited) int { return strings.Compare(a.Key, b.Key) })
	return out
}

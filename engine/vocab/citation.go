package vocab

import "crus/engine/source"

// Citation is a source that a measure or a rule stands on.
type Citation struct {
	Key      string
	Text     string // authors, year, title, place, as far as they are known
	DOI, URL string
	Standing string // "read", "second_hand", "from_memory", or "" where it is not said
	Where    source.Range
}

// ReadCitation reads one citation block.
func ReadCitation(b *source.Block, diags *source.Diagnostics) *Citation {
	c := &Citation{Key: b.Named(diags, "author_2020"), Where: b.Where}
	f := b.Fields(diags)
	c.Text = f.Required("text", `"Author. Title. Journal 2020;1:1-9."`)
	c.DOI, c.URL = f.String("doi"), f.String("url")
	c.Standing = standing(f)
	f.Done()
	return c
}

// standing reads how well the source is known; what else is written is not guessed at.
func standing(f *source.Fields) string {
	t, ok := f.Text("standing")
	if !ok {
		return ""
	}
	switch t.S {
	case "read", "second_hand", "from_memory":
		return t.S
	}
	*f.Diags = append(*f.Diags, source.Errorf(t.All(), "word", "standing is %q, which is not one of its words.", t.S).
		Hinting("read: it was read.\nsecond_hand: it is known from another text that was read.\nfrom_memory: it was recalled, and not looked up."))
	return ""
}

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
	c.Standing = f.OneOf("standing", "read", "second_hand", "from_memory")
	f.Done()
	return c
}

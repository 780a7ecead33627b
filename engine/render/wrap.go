package render

import (
	"strings"
	"unicode"

	"github.com/rivo/uniseg"

	"crus/engine/source"
)

// Columns is the width of a terminal page.
const Columns = 80

// Wrap sets a text as one paragraph in lines of at most width columns (at least 2, the widest
// character): broken at spaces, and within a word only where the word is wider than a line. It
// gives at least one line. What could steer a terminal is made visible first.
func Wrap(text string, width int) []string {
	width = max(width, 2)
	paragraph := strings.Join(strings.Fields(clean(text)), " ")
	var lines []string
	for _, line := range source.Wrap(paragraph, width) {
		for uniseg.StringWidth(line) > width {
			head, rest := cutAt(line, width)
			lines = append(lines, head)
			line = strings.TrimPrefix(rest, " ")
		}
		lines = append(lines, line)
	}
	return lines
}

// cutAt divides a text before the first grapheme that does not fit into width columns.
func cutAt(text string, width int) (head, rest string) {
	at, used, state := 0, 0, -1
	for left := text; left != ""; {
		var cluster string
		var w int
		cluster, left, w, state = uniseg.FirstGraphemeClusterInString(left, state)
		if used+w > width && at > 0 {
			break
		}
		at += len(cluster)
		used += w
	}
	return text[:at], text[at:]
}

// pad fills a text with spaces up to width columns.
func pad(text string, width int) string {
	return text + strings.Repeat(" ", max(0, width-uniseg.StringWidth(text)))
}

// clean makes visible what could steer a terminal or turn the order of reading: control characters
// and overrides of direction become "�". Line ends and tabs stay white space.
func clean(text string) string {
	return strings.Map(func(c rune) rune {
		switch {
		case c == '\n' || c == '\t':
			return c
		case c == '\r':
			return '\n'
		case unicode.IsControl(c), c >= 0x202a && c <= 0x202e, c >= 0x2066 && c <= 0x2069:
			return unicode.ReplacementChar
		}
		return c
	}, text)
}

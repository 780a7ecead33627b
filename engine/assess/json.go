package assess

import (
	"bytes"
	"encoding/json"
	"errors"
	"io"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"crus/engine/source"
	"crus/engine/vocab"
)

// ReadJSON reads the one assessment in a JSON file.
func ReadJSON(f *source.File, v *vocab.Vocabulary) (*Assessment, source.Diagnostics) {
	start, diags := whole(f, MaxFileSize)
	if diags.HasErrors() {
		return nil, diags
	}
	return readJSON(f, start, len(f.Src), v)
}

// readJSON reads the assessment that stands from start to end of a file.
func readJSON(f *source.File, start, end int, v *vocab.Vocabulary) (*Assessment, source.Diagnostics) {
	doc := newDocument(f, jsonNotation)
	doc.required = []string{"format", "id", "vocabulary", "device_for"}
	r := &jsonReader{doc: doc, file: f, src: f.Src[:end], base: start, at: start}
	r.dec = json.NewDecoder(bytes.NewReader(f.Src[start:end]))
	r.dec.UseNumber()
	if !r.document() {
		return nil, doc.diags.Sorted()
	}
	return check(doc, v)
}

// jsonReader makes the tree of one JSON text. It stands on the tokens of encoding/json, whose
// whole-value decoding keeps no places and accepts duplicate names.
type jsonReader struct {
	doc    *document
	file   *source.File
	src    []byte // the file up to the end of the text
	dec    *json.Decoder
	base   int // where the decoder began
	at     int // just past the last token
	values int
}

func (r *jsonReader) document() bool {
	tok, where, ok := r.next()
	if !ok {
		return false
	}
	root, ok := r.value(tok, where, 1)
	if !ok {
		return false
	}
	if rest := r.blank(r.at); rest < len(r.src) {
		return r.stop(source.Errorf(r.token(rest), "trailing", "Something stands behind the end of the assessment.").
			Hinting("A .json file holds one assessment. Write several as JSON lines, one a line, in a file whose name ends in .jsonl."))
	}
	r.doc.root = root
	r.doc.where = root.Where
	if root.Kind == source.ObjectKind {
		r.doc.where.End = root.Where.Start + 1
	}
	return true
}

func (r *jsonReader) stop(d source.Diagnostic) bool {
	r.doc.fail(d)
	return false
}

// next reads a token and gives its place.
func (r *jsonReader) next() (json.Token, source.Range, bool) {
	start := r.blank(r.at)
	if start < len(r.src) && (r.src[start] == ',' || r.src[start] == ':') {
		start = r.blank(start + 1)
	}
	tok, err := r.dec.Token()
	if err != nil {
		return nil, source.Range{}, r.stop(r.syntax(start, err))
	}
	r.at = r.base + int(r.dec.InputOffset())
	return tok, source.Range{File: r.file, Start: start, End: r.at}, true
}

// blank gives the first offset from at on that is no JSON white space.
func (r *jsonReader) blank(at int) int {
	for at < len(r.src) && strings.IndexByte(" \t\r\n", r.src[at]) >= 0 {
		at++
	}
	return at
}

// value makes the value that begins with a token.
func (r *jsonReader) value(tok json.Token, where source.Range, depth int) (source.Value, bool) {
	if r.values++; r.values > maxValues {
		return source.Value{}, r.stop(source.Errorf(where, "too_many", "The assessment has more than %d values.", maxValues).
			Hinting("One assessment is expected here; give several as JSON lines, one a line."))
	}
	switch t := tok.(type) {
	case json.Delim:
		if depth > maxDepth {
			return source.Value{}, r.stop(tooDeep(where))
		}
		if t == '{' {
			return r.object(where, depth)
		}
		return r.list(where, depth)
	case string:
		v := textValue(where, t)
		if loneSurrogate(where.Text()) {
			r.doc.refuse(source.Errorf(where, "not_text", "The text holds half of a character, written with \\u.").
				Hinting("Write the character itself, or both halves of it."))
		}
		return v, true
	case json.Number:
		n, err := strconv.ParseFloat(string(t), 64)
		if err != nil {
			r.doc.refuse(tooLarge(where))
			n = 0
		}
		return source.Value{Kind: source.NumberKind, Where: where, Number: n}, true
	case bool:
		return source.Value{Kind: source.BoolKind, Where: where, Bool: t}, true
	}
	return source.Value{Kind: source.NullKind, Where: where}, true
}

func (r *jsonReader) list(open source.Range, depth int) (source.Value, bool) {
	v := source.Value{Kind: source.ListKind, Where: open}
	for {
		tok, where, ok := r.next()
		if !ok {
			return v, false
		}
		if tok == json.Delim(']') {
			v.Where.End = where.End
			return v, true
		}
		item, ok := r.value(tok, where, depth+1)
		if !ok {
			return v, false
		}
		v.Items = append(v.Items, item)
	}
}

func (r *jsonReader) object(open source.Range, depth int) (source.Value, bool) {
	v := source.Value{Kind: source.ObjectKind, Where: open}
	first := map[string]source.Range{}
	for {
		tok, where, ok := r.next()
		if !ok {
			return v, false
		}
		name, isName := tok.(string)
		if !isName { // the decoder gives nothing else here than the closing brace
			v.Where.End = where.End
			return v, true
		}
		tok, valueWhere, ok := r.next()
		if !ok {
			return v, false
		}
		value, ok := r.value(tok, valueWhere, depth+1)
		if !ok {
			return v, false
		}
		if at, twice := first[name]; twice {
			r.doc.fail(duplicate(name, where, at))
			continue
		}
		first[name] = where
		v.Fields = append(v.Fields, source.Field{Name: name, NameWhere: where, Value: value})
	}
}

// syntax says in plain words why the decoder stopped; start is where the token that it could not
// read begins.
func (r *jsonReader) syntax(start int, err error) source.Diagnostic {
	if errors.Is(err, io.EOF) || errors.Is(err, io.ErrUnexpectedEOF) || start >= len(r.src) {
		return source.Errorf(source.Range{File: r.file, Start: len(r.src), End: len(r.src)}, "syntax", "The text ends before the assessment does.").
			Hinting("A quote, bracket or brace is not closed, or the file was cut off.")
	}
	for digit(r.src[start]) && start > 0 && digit(r.src[start-1]) { // 05: the decoder takes 0 for a number of its own
		start--
	}
	where := r.token(start)
	word := where.Text()
	before := byte(0)
	if i := bytes.LastIndexFunc(r.src[r.base:start], func(c rune) bool { return !unicode.IsSpace(c) }); i >= 0 {
		before = r.src[r.base+i]
	}
	d := source.Errorf(where, "syntax", "%s does not belong here.", quoted(word))
	at := start
	if digit(word[0]) && start > r.base && r.src[start-1] == ',' {
		at = start - 1
	}
	if hint := bareSlip(r.src, at); hint != "" {
		return d.Hinting("%s", hint)
	}
	switch {
	case isNoNumber(word):
		return notANumber(where, jsonNotation)
	case word[0] == '"':
		where.End = r.lineEnd(start)
		return source.Errorf(where, "syntax", "This text in quotes can't be read.").
			Hinting(`It is closed with " on its own line; inside it a quote is written \", a backslash \\, and a new line \n.`)
	case word[0] == '\'':
		return d.Hinting("Texts and names stand between double quotes.")
	case word[0] == '/' || word[0] == '#':
		return d.Hinting("JSON has no notes. Write the assessment as .hcl, where a note begins with #.")
	case (word[0] == '}' || word[0] == ']') && before == ',':
		return d.Hinting("Remove the comma before it.")
	case digit(word[0]) || word[0] == '-' || word[0] == '+' || word[0] == '.':
		return d.Hinting("A number is written like 5, -5, 0.5 or 1.5e3: without + or 0 before it, with a point, and with digits on both sides of that.")
	case unicode.IsLetter(rune(word[0])):
		return d.Hinting("Names and texts stand between double quotes; without them only true, false and null.")
	}
	return d.Hinting("Check the commas, quotes and braces just before it.")
}

func digit(c byte) bool { return c >= '0' && c <= '9' }

// token gives the place of the run of characters that begins at start.
func (r *jsonReader) token(start int) source.Range {
	c, n := utf8.DecodeRune(r.src[start:])
	end := start + n
	inWord := func(c rune) bool { return unicode.IsLetter(c) || unicode.IsDigit(c) || strings.ContainsRune("+-._", c) }
	for goOn := inWord(c); goOn && end < len(r.src) && end-start < 40; {
		c, n := utf8.DecodeRune(r.src[end:])
		if goOn = inWord(c); goOn {
			end += n
		}
	}
	return source.Range{File: r.file, Start: start, End: end}
}

func (r *jsonReader) lineEnd(start int) int {
	if i := bytes.IndexByte(r.src[start:], '\n'); i >= 0 {
		return start + i
	}
	return len(r.src)
}

// loneSurrogate reports whether a JSON text in quotes holds a \u escape that is half of a pair;
// encoding/json would silently put another character there.
func loneSurrogate(raw string) bool {
	high := false // the escape just before was the first half of a pair
	for i := 0; i < len(raw); i++ {
		if raw[i] != '\\' || i+1 >= len(raw) || raw[i+1] != 'u' || i+6 > len(raw) {
			if high {
				return true
			}
			if raw[i] == '\\' {
				i++
			}
			continue
		}
		code, _ := strconv.ParseUint(raw[i+2:i+6], 16, 32)
		low := code >= 0xDC00 && code <= 0xDFFF
		if low != high {
			return true
		}
		high = code >= 0xD800 && code <= 0xDBFF
		i += 5
	}
	return high
}

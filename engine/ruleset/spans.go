package ruleset

import (
	"unicode"

	"github.com/google/cel-go/common/ast"
)

// span is a half-open range of code points in a CEL text.
type span struct{ start, end int }

type token struct {
	span
	text string
}

// spans maps the id of every written node to its full extent. cel-go itself keeps the place of an
// operator or bracket only. What a macro generated has none; the macro's result has that of the call.
func spans(text string, a *ast.AST) map[int64]span {
	m := &mapper{toks: celTokens([]rune(text)), info: a.SourceInfo(), out: map[int64]span{}}
	if len(m.toks) > 0 {
		m.visit(a.Expr())
	}
	return m.out
}

type mapper struct {
	toks []token
	info *ast.SourceInfo
	out  map[int64]span
}

func (m *mapper) visit(e ast.Expr) span {
	if s, ok := m.out[e.ID()]; ok {
		return s
	}
	r, ok := m.info.GetOffsetRange(e.ID())
	if !ok {
		return span{-1, -1}
	}
	at := m.index(int(r.Start))
	node := e
	if call, ok := m.info.GetMacroCall(e.ID()); ok {
		node = call
	}
	s := m.toks[at].span
	kids := func(es ...ast.Expr) {
		for _, c := range es {
			if k := m.parens(m.visit(c)); k.start >= 0 {
				s.start, s.end = min(s.start, k.start), max(s.end, k.end)
			}
		}
	}
	switch node.Kind() {
	case ast.LiteralKind:
		if m.toks[at].text == "-" && at+1 < len(m.toks) { // a negative number is one node
			s.end = m.toks[at+1].end
		}
	case ast.SelectKind:
		kids(node.AsSelect().Operand())
		if node.AsSelect().IsTestOnly() {
			s = m.call(at, s)
		} else if at+1 < len(m.toks) {
			s.end = m.toks[at+1].end
		}
	case ast.CallKind:
		c := node.AsCall()
		if c.IsMemberFunction() {
			kids(c.Target())
		}
		kids(c.Args()...)
		switch m.toks[at].text {
		case "(":
			s = m.call(at, s)
		case "[":
			s.end = m.toks[m.match(at)].end
		case ".":
			s.end = max(s.end, m.toks[min(at+1, len(m.toks)-1)].end)
		}
	case ast.ListKind:
		kids(node.AsList().Elements()...)
		s.end = m.toks[m.match(at)].end
	case ast.MapKind:
		for _, en := range node.AsMap().Entries() {
			kids(en.AsMapEntry().Key(), en.AsMapEntry().Value())
		}
		s.end = m.toks[m.match(at)].end
	}
	m.out[e.ID()] = s
	return s
}

// call widens a call anchored at its opening parenthesis to its name and closing one.
func (m *mapper) call(at int, s span) span {
	if m.toks[at].text == "(" {
		s.end = m.toks[m.match(at)].end
		if at > 0 {
			s.start = min(s.start, m.toks[at-1].start)
		}
	}
	return s
}

// parens widens s over parentheses that only group it.
func (m *mapper) parens(s span) span {
	for s.start >= 0 {
		i, j := m.index(s.start)-1, m.index(s.end-1)+1
		if i < 0 || j >= len(m.toks) || m.toks[i].text != "(" || m.toks[j].text != ")" || m.isCall(i) {
			return s
		}
		s = span{m.toks[i].start, m.toks[j].end}
	}
	return s
}

func (m *mapper) isCall(i int) bool {
	if i == 0 {
		return false
	}
	t := m.toks[i-1].text
	r := []rune(t)[0]
	return t != "in" && (unicode.IsLetter(r) || r == '_')
}

func (m *mapper) match(i int) int {
	depth := 0
	for j := i; j < len(m.toks); j++ {
		switch m.toks[j].text {
		case "(", "[", "{":
			depth++
		case ")", "]", "}":
			if depth--; depth == 0 {
				return j
			}
		}
	}
	return i
}

// index finds the token at an offset by binary search.
func (m *mapper) index(off int) int {
	lo, hi := 0, len(m.toks)-1
	for lo < hi {
		mid := (lo + hi) / 2
		if m.toks[mid].end <= off {
			lo = mid + 1
		} else {
			hi = mid
		}
	}
	return lo
}

// celTokens cuts a CEL text into tokens; it need not be valid.
func celTokens(r []rune) []token {
	var out []token
	for i := 0; i < len(r); {
		j := i + 1
		switch c := r[i]; {
		case unicode.IsSpace(c):
			i = j
			continue
		case c == '/' && j < len(r) && r[j] == '/':
			for i < len(r) && r[i] != '\n' {
				i++
			}
			continue
		case c == '"' || c == '\'':
			j = quoted(r, i, false)
		case unicode.IsLetter(c) || c == '_':
			for j < len(r) && (unicode.IsLetter(r[j]) || unicode.IsDigit(r[j]) || r[j] == '_') {
				j++
			}
			if j < len(r) && (r[j] == '"' || r[j] == '\'') && j-i <= 2 {
				j = quoted(r, j, r[i] == 'r' || r[i] == 'R' || r[j-1] == 'r' || r[j-1] == 'R')
			}
		case unicode.IsDigit(c):
			for j < len(r) && (unicode.IsDigit(r[j]) || unicode.IsLetter(r[j]) || r[j] == '.' || (r[j] == '-' || r[j] == '+') && (r[j-1] == 'e' || r[j-1] == 'E')) {
				j++
			}
		case j < len(r) && (r[j] == '=' || r[j] == '&' || r[j] == '|') && (c == '=' || c == '!' || c == '<' || c == '>' || c == r[j]):
			j++
		}
		out = append(out, token{span{i, j}, string(r[i:j])})
		i = j
	}
	return out
}

func quoted(r []rune, i int, raw bool) int {
	q, n := r[i], 1
	if i+2 < len(r) && r[i+1] == q && r[i+2] == q {
		n = 3
	}
	for j := i + n; j < len(r); j++ {
		if r[j] == '\\' && !raw {
			j++
			continue
		}
		if r[j] == q && (n == 1 || j+2 < len(r) && r[j+1] == q && r[j+2] == q) {
			return j + n
		}
	}
	return len(r)
}

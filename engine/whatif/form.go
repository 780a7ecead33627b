package whatif

import (
	"encoding/binary"
	"math"

	"crus/engine/cell"
)

// form is a yes/no form over open measures, or a number that hangs on them. The first three are the truths.
type form int32

const (
	no      = form(cell.No)
	unknown = form(cell.Unknown)
	yes     = form(cell.Yes)
	unset   = form(-1)
)

// made is a form as it is made. A switch has one form for each cell of its variable.
type made struct {
	op      formOp
	a, b, c form
	v       int // of a switch, and of what was sampled
	kids    []form
	x       float64 // of a number
	text    string  // of what was sampled: the formula
}

type formOp uint8

const (
	truth formOp = iota
	number
	switchOn
	not
	and
	or
	choose
	guess // A, as far as samples of one variable show
)

type formKey struct {
	op      formOp
	a, b, c form
	x       float64
	v       int
	text    string
}

// store makes forms, each once.
type store struct {
	list []made
	at   map[formKey]form
	sw   map[string]form
}

func newStore() *store {
	return &store{list: make([]made, 3, 256), at: map[formKey]form{}, sw: map[string]form{}}
}

// fixed reports whether a form hangs on nothing open.
func (s *store) fixed(f form) bool { return f < 3 || s.list[f].op == number }

func (s *store) add(m made) form {
	k := formKey{m.op, m.a, m.b, m.c, m.x, m.v, m.text}
	if f, ok := s.at[k]; ok {
		return f
	}
	f := form(len(s.list))
	s.list, s.at[k] = append(s.list, m), f
	return f
}

// number gives the form of a number; NaN is unknown.
func (s *store) number(x float64) form {
	if math.IsNaN(x) {
		return unknown
	}
	return s.add(made{op: number, x: x})
}

// switchOn gives one form for each cell of a variable.
func (s *store) switchOn(v int, kids []form) form {
	same := true
	for _, k := range kids {
		same = same && k == kids[0]
	}
	if same && len(kids) > 0 {
		return kids[0]
	}
	id := binary.AppendVarint(make([]byte, 0, 4+4*len(kids)), int64(v))
	for _, k := range kids {
		id = binary.AppendVarint(id, int64(k))
	}
	if f, ok := s.sw[string(id)]; ok {
		return f
	}
	f := form(len(s.list))
	s.list, s.sw[string(id)] = append(s.list, made{op: switchOn, v: v, kids: kids}), f
	return f
}

func (s *store) not(a form) form {
	if a < 3 {
		return yes - a
	}
	if m := &s.list[a]; m.op == not {
		return m.a
	}
	return s.add(made{op: not, a: a})
}

func (s *store) and(a, b form) form {
	switch {
	case a == no || b == no:
		return no
	case a == yes || a == b:
		return b
	case b == yes:
		return a
	}
	return s.add(made{op: and, a: min(a, b), b: max(a, b)})
}

func (s *store) or(a, b form) form {
	switch {
	case a == yes || b == yes:
		return yes
	case a == no || a == b:
		return b
	case b == no:
		return a
	}
	return s.add(made{op: or, a: min(a, b), b: max(a, b)})
}

func (s *store) choose(a, b, c form) form {
	switch a {
	case yes:
		return b
	case no:
		return c
	case unknown:
		return unknown
	}
	return s.add(made{op: choose, a: a, b: b, c: c})
}

// sampled marks a form over one variable as what samples of a formula show.
func (s *store) sampled(f form, v int, text string) form {
	return s.add(made{op: guess, a: f, v: v, text: text})
}

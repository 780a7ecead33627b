package smtlib

import (
	"crus/engine/cell"
	"crus/engine/ruleset"
)

// decideNumber defines what limits leave of a number, and from where to where the aims go that count: the strong ones,
// or else the conditional ones, each moved to the nearest end of what limits leave.
func (w *writer) decideNumber(t *cell.Topic, all []said, prefix string, d *decision) {
	least, most := real(t.Between.Lo), real(t.Between.Hi)
	aims := map[ruleset.Strength][]said{}
	var strong, aimed []expr
	for _, s := range all {
		switch s.Advice.Verb {
		case ruleset.AtLeast:
			least = call("larger", least, either(s.speaks, s.at, real(t.Between.Lo)))
		case ruleset.AtMost:
			most = call("smaller", most, either(s.speaks, s.at, real(t.Between.Hi)))
		default:
			aims[s.Rule.Strength] = append(aims[s.Rule.Strength], s)
			aimed = append(aimed, s.speaks)
			if s.Rule.Strength == ruleset.Strong {
				strong = append(strong, s.speaks)
			}
		}
	}
	d.prefers = w.named(prefix+"/aimed", or(aimed...), true)
	least, most = w.defined(prefix+"/least", "Real", least), w.defined(prefix+"/most", "Real", most)
	from, to := most, least
	for _, strength := range []ruleset.Strength{ruleset.Strong, ruleset.Conditional} {
		for _, a := range aims[strength] {
			counts := a.speaks
			if strength == ruleset.Conditional {
				counts = and(counts, not(or(strong...)))
			}
			near := call("smaller", call("larger", a.at, least), most)
			from, to = call("smaller", from, either(counts, near, most)), call("larger", to, either(counts, near, least))
		}
	}
	from, to = w.defined(prefix+"/from", "Real", from), w.defined(prefix+"/to", "Real", to)
	agree := call("<=", call("-", to, from), real(t.Rounding))
	d.conflict = call(">", least, most)
	possible := and(d.spoken, not(d.conflict))
	d.several = w.named(prefix+"/open", and(possible, either(d.prefers, not(agree), call("<", least, most))), true)
	d.settled = and(possible, not(d.several))
	value := call("rounded", call("/", call("+", from, to), real(2)), real(t.Rounding), least, most)
	d.lo = either(d.several, either(d.prefers, from, least), either(d.prefers, value, least))
	d.hi = either(d.several, either(d.prefers, to, most), either(d.prefers, value, least))
	if t.HasDefault {
		d.settled = either(d.spoken, d.settled, yes())
		d.lo, d.hi = either(d.spoken, d.lo, real(t.DefaultAt)), either(d.spoken, d.hi, real(t.DefaultAt))
	}
	d.lo, d.hi = w.defined(prefix+"/low", "Real", d.lo), w.defined(prefix+"/high", "Real", d.hi)
}

// inUnit gives a number in base units in the unit of a choice.
func inUnit(e expr, t *cell.Topic) expr {
	if one := t.Unit.ToBase(1); one != 1 {
		return call("/", e, real(one))
	}
	return e
}

// helpers are the functions that the definitions use.
const helpers = `(define-fun larger ((a Real) (b Real)) Real (ite (< a b) b a))
(define-fun smaller ((a Real) (b Real)) Real (ite (< b a) b a))
(define-fun more ((a Int) (b Int)) Int (ite (< a b) b a))
; the whole number nearest to x, halves away from zero
(define-fun nearest ((x Real)) Int (ite (< x 0.0) (- (to_int (+ (- x) 0.5))) (to_int (+ x 0.5))))
; the multiple of step that is nearest to x and lies from lo to hi; x itself where there is none
(define-fun rounded ((x Real) (step Real) (lo Real) (hi Real)) Real
  (let ((at (* step (to_real (nearest (/ x step))))) (up (* step (to_real (- (to_int (- (/ lo step))))))))
    (let ((raised (ite (< at lo) up at)))
      (let ((lowered (ite (> raised hi) (* step (to_real (to_int (/ hi step)))) raised)))
        (ite (or (< lowered lo) (> lowered hi)) x lowered)))))
`

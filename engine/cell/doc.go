// Package cell is a ruleset as cells: the one form behind whatif, prove and replay.
//
// A ruleset looks at a measure only through finitely many questions (>= deg(5), == 'absent'), so these cut the
// measure's range into a few cells within which every rule behaves the same. A case is then a short list of cell
// numbers, and every condition a yes/no form over questions in Kleene's three-valued logic.
//
//	space, err := cell.New(engine)
//	c := space.NewCase()
//	space.Work(c, space.Row(assessment, assess.Left))
//	state := space.State(c, rule)
//
// What a formula gives is an axis of its own (a limb's range less the other's, a pitch), worked out with the same
// arithmetic as in conditions. The few forms that no cell can express are kept as unclear parts, which cel-go
// answers. docs/cells.md describes the idea and the exact fragment. Package reason stays the reference: everything here
// is held against it.
//
// The files, in the order of the work: axis, node, term, space (what there is), new, compile, compare, compile_term,
// inputs, asker, linear, cut (how it is made of a ruleset), row, case, span, words (how it is used).
package cell

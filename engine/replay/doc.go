// Package replay carries a ruleset out on very many assessments: what became of every rule, caution and choice, and what
// of it is provisional, as package reason says it of each assessment by itself.
//
//	p := replay.New(space)
//	tally, err := p.Run(ctx, source, replay.Options{}, func(r *replay.Result) error { ... })
//
// Assessments come in blocks of 1,024 rows in columns. The values of a measure are packed into the numbers of their cells
// (see package cell), as planes of bits with 64 rows to a word; everything else is a circuit of words: questions, rules
// with two planes each (known to hold, known not to), overriding, and choices, whose votes are counted bit by bit. Numbers
// that are advised are looked up by the pattern of what the rules in force say. What completing a row could change is
// found in steps: a circuit proves that most results stand however the undecided rules come out; a few completions of all
// rows at once show which of the others do change; the rest are settled one by one, 64 completions to a word. Rows on
// which a formula looks at something missing are tabulated as package reason does it.
//
// The files, in the order of the work: block (rows in columns), pack (values to planes), circuit and wide (gates and how
// they are run), logic (nodes to gates), options and numbers (choices), program (all of it for one ruleset), worker (one
// block after the other), complete and rounds (all rows at once), trial and try (one row, in words), slow and slow_every
// (one row, in tables), result, tally, report, run (many blocks, side by side).
package replay

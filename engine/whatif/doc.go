// Package whatif says what else one assessment could have brought: which results missing measures could change, which
// results lie close to a boundary within measurement error, and the nearest change that would bring another result.
//
//	w, err := whatif.New(engine)
//	outcome := w.Advise(assessment, today)
//
// It works on the cells of a ruleset (package cell). What a result hangs on is written as forms over some measures that
// are left open, all others having their values; the open measures are then gone through one after the other, and
// forms that come out alike are looked at once. What comes of it is a diagram: from its top, each open measure's cells
// lead on to a result. Whether a result can be, which measures matter to it and the shortest way there are read
// off the diagram, however many completions there are. Package reason stays the reference: what it has explored in full
// is left as it is, and what is added is checked with it.
//
// The files, in the order of the work: scene (one assessment as rows), variable and formula (what is open), form, lift
// (what results hang on), question, diagram, path (what comes of it), witness (values for what formulas ask), settle,
// missing, advise (provisional results), near (boundaries), instead, change (the nearest change), words.
package whatif

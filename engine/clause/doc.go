// Package clause puts a ruleset's cells as clauses for a SAT solver: variables that are true or false, and
// clauses of which at least one member must hold.
//
//	frame := clause.New(space)
//	c := frame.Clauses(1)
//	c.Add(c.True(0, space.Applies))
//	if c.Solve(c.True(0, space.Rules[3].Force)) {
//		// some full assessment, as far as cells tell, has rule 3 in force
//	}
//
// Only what is asked for becomes clauses, so that each question stays as small as what it rests on: many small
// instances are a hundred times faster than a large one. A line of values has one variable for each cut, true where the
// value lies above; options have one each. A node has two, for known to be true and known to be false, which
// are each other's negation where nothing can be unknown below.
//
// A row is an assessment as one limb sees it. With two rows both limbs have a device: the person is the same, and what
// one row has for the limb the other has for the opposite limb.
//
// What a formula gives is bound to what it reads only as far as cells tell exactly (see [Frame]); which of the
// solutions are real is for package prove to find out. What it finds impossible it adds as a clause.
package clause

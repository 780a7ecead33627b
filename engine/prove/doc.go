// Package prove says what holds of a ruleset over all assessments, not samples: whether a choice can stay
// unanswered, whether limits can contradict each other, which rules can never fire, and so on.
//
//	report, err := prove.Prove(space, prove.Options{})
//
// It asks about every full assessment to which the ruleset applies: every measure is recorded, within its
// plausible range; only a measure that some condition asks recorded() of can also be missing. What rests on
// missing measures alone is no fault: a choice counts where everything is recorded, or where every rule that
// advises on it is in force or known not to be.
//
// What is found comes with a witness, an assessment on which package reason shows the same. What can be
// neither shown nor excluded is undecided, and says what stood in the way.
package prove

// Package smtlib writes what package prove asks of a ruleset in SMT-LIB 2, the language of solvers, so that anyone can
// put the same questions to a program that has nothing to do with this one.
//
//	err := smtlib.Write(file, space, report)
//
// Measures are declared as numbers within their plausible ranges; findings, conditions, what rules in force leave of a
// choice and how many prefer an option are defined in plain arithmetic over them, and every question is one check-sat
// with the answer that prove gave. Nothing of prove's own encoding is used. Three-valued forms come as two: what makes
// them true, and what makes them false. Formulas that are not arithmetic are declared without a meaning; a question that
// rests on one says so. Rounding to nine decimals of a base unit is left out.
//
// The language is that of Barrett, Fontaine, Tinelli: The SMT-LIB Standard, version 2.6 (2017).
//
// The files: expr (expressions and how they are laid out), row (what one limb sees), measure, form, term (what that is made
// of), choice, number (what becomes of choices), question, write.
package smtlib

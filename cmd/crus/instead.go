package main

import (
	"slices"
	"strconv"
	"strings"

	"crus/engine/assess"
	"crus/engine/source"
	"crus/engine/vocab"
	"crus/engine/whatif"
)

// wishes reads what --instead asks for: choice=option or choice=number, with left. or right. before it for one limb. Sides
// are filled in for each assessment.
func wishes(asked []string, v *vocab.Vocabulary) ([]whatif.Wish, error) {
	var out []whatif.Wish
	for _, text := range asked {
		name, wanted, ok := strings.Cut(text, "=")
		if !ok {
			return nil, refusal{"--instead needs a choice and what it would be, and " + text + " has no =.", "For example --instead shell_trimline=behind_malleoli."}
		}
		w := whatif.Wish{}
		for _, side := range assess.Sides() {
			if rest, ok := strings.CutPrefix(name, string(side)+"."); ok {
				w.Side, name = side, rest
			}
		}
		if w.Choice = v.Choice(name); w.Choice == nil {
			return nil, refusal{v.Name + " has no choice " + name + ".", source.DidYouMean(name, choiceNames(v), "It has "+source.And(choiceNames(v))+".")}
		}
		switch c := w.Choice; {
		case c.Of == vocab.Person && w.Side != "":
			return nil, refusal{name + " is decided once for the person.", "Leave " + string(w.Side) + ". out."}
		case c.Numeric():
			x, err := strconv.ParseFloat(wanted, 64)
			if err != nil || x < c.Between.Lo || x > c.Between.Hi {
				return nil, refusal{name + " is a number in " + c.Unit.Code + " from " + plainNumber(c.Between.Lo) + " to " + plainNumber(c.Between.Hi) + ", not " + wanted + ".",
					"For example --instead " + name + "=" + plainNumber(c.Between.Lo) + "."}
			}
			w.Number = x
		case c.Rank(wanted) < 0:
			return nil, refusal{name + " has no option " + wanted + ".", source.DidYouMean(wanted, c.Options, "It has "+source.And(c.Options)+".")}
		default:
			w.Option = wanted
		}
		out = append(out, w)
	}
	return out, nil
}

func plainNumber(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }

func choiceNames(v *vocab.Vocabulary) []string {
	out := make([]string, len(v.Choices))
	for i, c := range v.Choices {
		out[i] = c.Name
	}
	return out
}

// onSides gives the wishes for an assessment: one that names no side stands for each limb that gets a device.
func onSides(ws []whatif.Wish, a *assess.Assessment) []whatif.Wish {
	var out []whatif.Wish
	for _, w := range ws {
		if w.Choice.Of == vocab.Person {
			out = append(out, w)
			continue
		}
		for _, side := range assess.Sides() {
			if slices.Contains(a.DeviceFor, side) && (w.Side == "" || w.Side == side) {
				x := w
				x.Side = side
				out = append(out, x)
			}
		}
	}
	return out
}

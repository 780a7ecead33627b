package clinical

import (
	"errors"
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"crus/engine/source"
)

var numberForm = regexp.MustCompile(`^[+-]?([0-9]+\.?[0-9]*|\.[0-9]+)([eE][+-]?[0-9]+)?`)

// ParseQuantity reads a decimal number and the UCUM code of its unit: "82 kg", "-5 deg",
// "3.5 N.m/deg", "0.9 1". The error is a sentence without its full stop that says what is wrong, and
// the units that may have been meant.
func ParseQuantity(s string) (Quantity, error) {
	s = strings.TrimSpace(s)
	number := numberForm.FindString(s)
	rest := s[len(number):]
	code := strings.TrimSpace(rest)
	switch {
	case number == "" && strings.HasPrefix(s, "−"):
		return Quantity{}, fmt.Errorf("%s has a dash for a minus sign: write the - of the keyboard", quoted(s))
	case number == "":
		return Quantity{}, fmt.Errorf("%s does not begin with a number", quoted(s))
	case strings.HasPrefix(rest, ","):
		return Quantity{}, fmt.Errorf("%s has a comma in its number: write a point before decimals, and nothing between thousands", quoted(s))
	case code == "":
		return Quantity{}, fmt.Errorf("%s has no unit: write its code after the number, for example 20 mm", quoted(s))
	}
	u, ok := UnitByCode(code)
	if !ok {
		return Quantity{}, unknownUnit(code)
	}
	v, err := strconv.ParseFloat(number, 64)
	if err != nil { // only its size is left to be wrong
		return Quantity{}, errors.New("the number is too large to be a measurement")
	}
	return NewQuantity(v, u)
}

func unknownUnit(code string) error {
	if near := unitsLike(code); len(near) > 0 {
		return fmt.Errorf("%s is not a unit that is known here: did you mean %s?", quoted(code), source.Or(near))
	}
	var all []string
	for _, u := range units[1:] {
		all = append(all, u.Code)
	}
	return fmt.Errorf("%s is not a unit that is known here: write one of %s", quoted(code), source.Or(all))
}

// unitsLike gives the codes of the units that may be meant by text, nearest first: the one that it is
// another name of ("KG", "lbs", "°", "mmHg"), else those whose code or name looks like it.
func unitsLike(text string) []string {
	names := map[string]string{} // code by code, symbol and words
	var all []string
	for _, u := range units[1:] {
		for _, name := range []string{u.Code, u.Symbol, u.literal, u.plural, strings.TrimSuffix(u.plural, "s")} {
			if name != "" && (strings.EqualFold(name, text) || len(text) > 2 && strings.EqualFold(name+"s", text)) {
				return []string{u.Code}
			}
			if _, taken := names[name]; name != "" && !taken {
				names[name] = u.Code
				all = append(all, name)
			}
		}
	}
	if len(text) > 40 {
		return nil
	}
	all = slices.DeleteFunc(all, func(name string) bool {
		return !strings.ContainsAny(strings.ToLower(name), strings.ToLower(text)) // every letter would have to change
	})
	var codes []string
	for _, name := range source.Nearest(text, all) {
		if !slices.Contains(codes, names[name]) {
			codes = append(codes, names[name])
		}
	}
	return codes
}

package assess

import (
	"slices"
	"strings"
	"unicode/utf8"

	"crus/engine/source"
)

// A slip is a value that is right but for the way it is written. It is refused all the same; these
// functions find how it is written, so that the message can say it.

// asName writes words as names are written: One hand and one-hand as one_hand.
func asName(s string) string {
	return strings.Join(strings.Fields(strings.ReplaceAll(keyboardMinus(strings.ToLower(s)), "-", " ")), "_")
}

// keyboardMinus writes the hyphens, dashes and minus signs that stand in reports and come of word
// processors as the one of the keyboard.
func keyboardMinus(s string) string {
	return strings.NewReplacer("−", "-", "–", "-", "—", "-", "‐", "-", "‑", "-", "－", "-", "﹣", "-").Replace(s)
}

// likeOption asks for the option that a text was probably meant as; "" if it is like none.
func (r *recorded) likeOption(s string) string {
	name := asName(s)
	if slices.Contains(r.m.Options, name) {
		return "Did you mean " + r.notation.text(name) + "?"
	}
	near := source.Nearest(name, r.m.Options)
	if len(near) == 0 {
		return ""
	}
	return "Did you mean " + source.Or(r.quotedAll(near)) + "?"
}

// likeGrade finds the grade that differs from a text in its minus, blanks or capital letters only.
func (r *recorded) likeGrade(s string) (string, bool) {
	plain := func(s string) string { return strings.ToLower(strings.Join(strings.Fields(keyboardMinus(s)), "")) }
	i := slices.IndexFunc(r.m.Scale.Grades, func(g string) bool { return plain(g) == plain(s) })
	if i < 0 {
		return "", false
	}
	return r.m.Scale.Grades[i], true
}

// slip reports a text that is a number, alone or with its unit, but for a dash as its minus or a
// comma before its decimals; false if it is something else.
func (r *recorded) slip() (source.Diagnostic, bool) {
	s := strings.TrimSpace(r.value.Text.S)
	plain := keyboardMinus(s)
	if rest, negative := strings.CutPrefix(plain, "-"); negative {
		plain = "-" + strings.TrimSpace(rest)
	}
	m := numberForm.FindStringSubmatch(plain)
	if m == nil || plain == s && m[2] != "," || strings.HasPrefix(m[5], ".") || strings.HasPrefix(m[5], ",") {
		return source.Diagnostic{}, false
	}
	whole, decimals, exponent, unit := m[1], m[3], m[4], strings.TrimSpace(m[5])
	number := whole + exponent
	if decimals != "" {
		number = whole + "." + decimals + exponent
	}
	unitHint := ""
	if r.unit != nil {
		unit = "" // it stands beside the number
	} else if unit != "" {
		if _, bad := unitOf(r.m, r.path, unit, r.value.Where); bad != nil {
			unit, unitHint = "", ". "+bad.Hint
		}
	}
	write := func(number string) string {
		if unit != "" {
			number = r.notation.text(number + " " + unit)
		}
		return r.notation.field(r.named(), number)
	}
	d := r.wrong("number", "has a minus sign that can't be read")
	way := "the keyboard's minus -"
	switch {
	case plain == s:
		d, way = r.wrong("decimal", "has a decimal comma"), "a decimal point"
	case m[2] == ",":
		way += " and a decimal point"
	}
	if m[2] == "," && len(decimals) == 3 && exponent == "" && len(strings.Trim(whole, "+-")) <= 3 && strings.Trim(whole, "+-0") != "" {
		return d.Hinting("Write it with %s: %s. If the comma stands between thousands, leave it out: %s%s", way, write(number), write(whole+decimals), unitHint), true
	}
	return d.Hinting("Write it with %s: %s%s", way, write(number), unitHint), true
}

// named gives the field that the value stands in.
func (r *recorded) named() string {
	if r.grouped {
		return "value"
	}
	return r.m.Name
}

// bareSlip finds the number around a comma or dash that the JSON or HCL parser can't read, such as
// 54,5 or –5 without quotes; at is the offset of that character. It says how to write the number; ""
// if there is none.
func bareSlip(src []byte, at int) string {
	inNumber := func(c rune) bool {
		return c < 128 && digit(byte(c)) || strings.ContainsRune(".,-", c) || keyboardMinus(string(c)) == "-"
	}
	this, _ := utf8.DecodeRune(src[at:])
	if this != ',' && keyboardMinus(string(this)) != "-" {
		return ""
	}
	start, end := at, at
	for this == ',' && start > 0 { // a minus is where its number begins
		c, n := utf8.DecodeLastRune(src[:start])
		if !inNumber(c) {
			break
		}
		start -= n
	}
	for end < len(src) {
		c, n := utf8.DecodeRune(src[end:])
		if !inNumber(c) {
			break
		}
		end += n
	}
	written := strings.TrimRight(string(src[start:end]), ",")
	plain := keyboardMinus(written)
	m := numberForm.FindStringSubmatch(plain)
	if m == nil || m[5] != "" || plain == written && m[2] != "," {
		return ""
	}
	number := strings.Replace(plain, ",", ".", 1)
	switch {
	case plain != written && m[2] == ",":
		return "Write " + number + ", with the keyboard's minus - and a decimal point."
	case plain != written:
		return "Write " + number + ", with the keyboard's minus -."
	}
	return "Write " + number + ", with a decimal point."
}

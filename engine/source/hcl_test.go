package source

import (
	"strings"
	"testing"
)

// What a beginner types where a value belongs is answered in the reader's words and not in the parser's,
// and with a way out that is read.
func TestReadHCLSaysPlainly(t *testing.T) {
	for _, test := range []struct{ written, message, hint string }{
		{`x = "a",`, "A comma stands behind the value.", "25.5"},
		{"x = 25,5", "A comma stands behind the value.", "25.5"},
		{"x = 25 cm", "Something stands behind the number.", `"25 cm"`},
		{"x = 25cm", "Something stands behind the number.", `"25 cm"`},
		{`x = "a" y = "b"`, "Something stands behind the value on this line.", "One name = value a line."},
		{"x = 3+", `"+" does not belong here: a file holds plain values, one name = value a line.`, `"3+"`},
		{"x = +2", `"+" does not belong here: a file holds plain values, one name = value a line.`, `"+2"`},
		{"x = deg(5)", `"(" does not belong here: a file holds plain values, one name = value a line.`, `"5 deg"`},
		{"x = deg(-5)", `"(" does not belong here: a file holds plain values, one name = value a line.`, `"5 deg"`},
		{`x = "a" + "b"`, `"+" does not belong here: a file holds plain values, one name = value a line.`, "A condition or formula"},
		{`x = upper("a")`, `"(" does not belong here: a file holds plain values, one name = value a line.`, "A condition or formula"},
		{"x = yes", "Yes is not written like this.", "write true"},
		{"x = no", "No is not written like this.", "write false"},
		{"x = none", "The value none is not in quotes.", `Write "none".`},
		{"x = 1.2.3", "This is not a number.", "25.5"},
		{"x = .5", "A value is expected here.", "begins with a digit"},
		{`x = ["a",,"b"]`, "A value is expected here.", "a list such as"},
		{`x = { a = "b" c = "d" }`, "A comma is missing between two fields of a group.", "closure"},
		{`x = { a "b" }`, "A = is missing between the name of a field and its value.", "shell_side"},
		{`inner { a = "b" c = "d" }`, "A block on one line holds one name = value, and its } stands on that line.", "behind each value"},
		{"inner {\n} other {\n}", "Something stands behind the } of a block.", "new line"},
		{"inner {\n},", "Something stands behind the } of a block.", "new line"},
	} {
		root, diags := ReadHCL(NewFile("f.hcl", []byte(test.written+"\n")))
		if root != nil && len(diags) == 0 || len(diags) != 1 {
			t.Errorf("%s: %d errors", test.written, len(diags))
			continue
		}
		if d := diags[0]; d.Message != test.message || !strings.Contains(d.Hint, test.hint) {
			t.Errorf("%s\ngot  %s (%s)\nwant %s (... %s ...)", test.written, d.Message, d.Hint, test.message, test.hint)
		}
	}
}

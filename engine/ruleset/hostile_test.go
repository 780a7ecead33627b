package ruleset

import (
	"fmt"
	"strings"
	"testing/fstest"

	"crus/engine/source/sourcetest"
)

// hostile holds the broken rulesets that are too large, too deep or not text enough for an archive.
var hostile = sourcetest.Made{
	"file_not_utf8":   rulesFile("finding \"a\" {\n  holds = \"person.age > years(\xff5)\"\n}\n"),
	"file_utf16":      rulesFile("\xff\xfef\x00i\x00n\x00d\x00"),
	"file_nul":        rulesFile("finding \"a\" {\n  holds = \"person.age\x00 > years(5)\"\n}\n"),
	"file_nul_blank":  rulesFile("finding \"a\" {\n  \x00holds = \"true\"\n}\n"),
	"file_empty":      func() fstest.MapFS { return fstest.MapFS{"bad/alone.hcl": {}} },
	"file_huge":       rulesFile(strings.Repeat("# a note that goes on and on and on and on and on and on\n", 20_000)),
	"file_enormous":   rulesFile(strings.Repeat("# a note that goes on and on and on and on and on and on\n", 90_000)),
	"folder_empty":    func() fstest.MapFS { return fstest.MapFS{"bad/readme.txt": {Data: []byte("no rules")}} },
	"folder_missing":  func() fstest.MapFS { return fstest.MapFS{} },
	"deep_hcl":        rulesFile("finding \"a\" {\n  cites = " + strings.Repeat("[", 3000) + strings.Repeat("]", 3000) + "\n}\n"),
	"deep_hcl_blocks": rulesFile(strings.Repeat("rule \"a\" {\n", 500)),
	"deep_brackets":   condition(strings.Repeat("(", 1500) + "true" + strings.Repeat(")", 1500)),
	"deep_choice":     condition(strings.Repeat("true ? true : ", 400) + "true"),
	"deep_lists":      condition(strings.Repeat("[", 200) + strings.Repeat("]", 200) + " == []"),
	"deep_dots":       condition("limb" + strings.Repeat(".x", 3000)),
	"long_condition":  condition(strings.Repeat("person.falls > 1 && ", 500) + "true"),
	"long_word":       condition("person." + strings.Repeat("a", 7000) + " > 1"),
	"long_number":     condition("person.falls > 1" + strings.Repeat("0", 5000)),
	"costly_nested":   condition("[1,2,3].all(a, [1,2,3].all(b, [1,2,3].all(c, a + b + c > person.falls)))"),
	"costly_list":     condition(list(2000) + ".exists(x, ('a' + string(x) + 'b').contains(string(x) + 'b'))"),
	"costly_regex":    condition("person.diabetes.matches('(((a{1,100}){1,100}){1,100}){1,100}')"),
	"costly_strings":  condition("'" + strings.Repeat("a", 3000) + "'.matches('" + strings.Repeat("a?", 1500) + strings.Repeat("a", 1500) + "')"),
	"many_names":      condition("[" + strings.Repeat("limb.naught,", 500) + "] == []"),
	"many_marks":      rulesFile("finding \"a\" {\n  holds = \"true\"\n  cites = [" + strings.Repeat("\"x\", ", 100_000) + "]\n}\n"),
	"many_cites":      rulesFile("finding \"a\" {\n  holds = \"true\"\n  cites = [" + strings.Repeat("\"x\", ", 20_000) + "]\n}\n"),
	"costly_map":      condition(list(1900) + ".map(x, " + list(9) + ").size() > person.falls"),
}

func rulesFile(text string) func() fstest.MapFS {
	return func() fstest.MapFS { return fstest.MapFS{"bad/rules.hcl": {Data: []byte(text)}} }
}

// condition makes a ruleset with one finding that holds where text does.
func condition(text string) func() fstest.MapFS {
	return rulesFile("finding \"a\" {\n  holds = \"" + strings.ReplaceAll(text, `"`, `\"`) + "\"\n}\n")
}

func list(n int) string {
	var b strings.Builder
	for i := range n {
		fmt.Fprintf(&b, ",%d", i%10)
	}
	return "[" + b.String()[1:] + "]"
}

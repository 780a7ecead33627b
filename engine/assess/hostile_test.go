package assess

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"crus/engine/source"
	"crus/engine/source/sourcetest"
)

// Texts that are as large as is read, and made to cost as much as they can.
func TestHostileTexts(t *testing.T) {
	v := vocabulary(t)
	numbered := func(form string, n int) string {
		var b strings.Builder
		for i := range n {
			fmt.Fprintf(&b, form, i)
		}
		return b.String()
	}
	for name, text := range map[string]string{
		"fields.json":     "{" + numbered(`"a%d":1,`, 300_000) + `"b":1}`,
		"brackets.json":   strings.Repeat("[", MaxFileSize),
		"long_name.json":  `{"` + strings.Repeat("x", MaxFileSize-100) + `": 1}`,
		"long_field.json": left(`"` + strings.Repeat("dorsiflexion", 300_000) + `": 1`),
		"digits.json":     left(`"dorsiflexion": ` + strings.Repeat("1", 4_000_000)),
		"unit.json":       left(`"dorsiflexion": "1 ` + strings.Repeat("d", 4_000_000) + `"`),
		"sides.csv":       "id,side,device\n" + strings.Repeat("x,y,z\n", 200_000),
		"ids.csv":         "id,side,device\n" + numbered("%d,y,z\n", 100_000),
		"columns.csv":     strings.Repeat(",", MaxFileSize),
		"cells.csv":       "id,side,device\n" + strings.Repeat(",", MaxFileSize-100),
		"quotes.csv":      `id,side,device` + "\n" + strings.Repeat(`"`, MaxFileSize-100),
		"fields.hcl":      numbered("a%d=1\n", 90_000),
		"object.hcl":      "left = {\n" + numbered("a%d=1\n", 90_000) + "}",
		"blocks.hcl":      strings.Repeat("a{}\n", 250_000),
		"lines.jsonl":     strings.Repeat("x\n", 50_000),
	} {
		t.Run(name, func(t *testing.T) {
			before := sourcetest.Used(t)
			list, diags := Read(source.NewFile(name, []byte(text)), v)
			if len(list) > 0 || !diags.HasErrors() {
				t.Error("accepted")
			}
			diags.Text()
			if took := sourcetest.Used(t) - before; took > 15*time.Second { // what is not linear takes minutes
				t.Errorf("it took %v of the processor's time", took)
			}
		})
	}
}

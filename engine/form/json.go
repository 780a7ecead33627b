package form

import (
	"bytes"
	"fmt"
	"slices"
	"strings"

	"crus/engine/assess"
)

// JSON writes the form as an assessment in which every measure says that it was left blank: JSON has
// no notes, and a reader takes no null. Fields stand in the order of the examination. The id is to be
// filled in; date and assessor may be added.
func (f *Form) JSON() []byte {
	var b bytes.Buffer
	fmt.Fprintf(&b, "{\n  \"format\": %q,\n  \"id\": \"\",\n  \"vocabulary\": %q,\n", assess.Format, f.usual())
	fmt.Fprintf(&b, "  \"device_for\": [\"%s\"]", strings.Join(sideNames(f.DeviceFor), `", "`))
	f.jsonGroup(&b, "person", func(field Field) bool { return field.Sides == nil })
	for _, s := range f.Sides() {
		f.jsonGroup(&b, string(s), func(field Field) bool { return slices.Contains(field.Sides, s) })
	}
	b.WriteString("\n}\n")
	return b.Bytes()
}

// jsonGroup writes the object of the person or of a limb with the fields that belong there, one a line.
func (f *Form) jsonGroup(b *bytes.Buffer, name string, mine func(Field) bool) {
	fmt.Fprintf(b, ",\n  %q: {", name)
	before := "\n"
	for _, st := range f.Stages {
		for _, field := range st.Fields {
			if mine(field) {
				fmt.Fprintf(b, "%s    %q: {\"not_recorded\": \"left blank\"}", before, field.Measure.Name)
				before = ",\n"
			}
		}
	}
	b.WriteString("\n  }")
}

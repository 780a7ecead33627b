package render

import (
	"encoding/json"
	"io"

	"crus/engine/reason"
)

// JSON writes an outcome as indented JSON with the names that package reason documents. The same
// outcome gives the same bytes.
func JSON(w io.Writer, o *reason.Outcome) error {
	e := json.NewEncoder(w)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	return e.Encode(o)
}

package assess

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"fmt"
	"strconv"

	"github.com/google/cel-go/common/types"

	"crus/engine/clinical"
)

// JSON writes the assessment in the format crus-assessment/1: names sorted, no spaces, each
// quantity in its measure's own unit with the fewest digits that read back to the same quantity.
// Equal assessments give equal bytes, whatever they were read from, and reading the bytes gives
// the assessment back (one without an id, from a worked case, excepted). An error comes only of an
// entry whose value no reader gives.
func (a *Assessment) JSON() ([]byte, error) {
	doc := map[string]any{"format": Format, "id": a.ID, "vocabulary": a.Vocabulary, "device_for": a.DeviceFor}
	if a.Date != "" {
		doc["date"] = a.Date
	}
	if a.Assessor != "" {
		doc["assessor"] = a.Assessor
	}
	for name, entries := range map[string]map[string]*Entry{"person": a.Person, "left": a.Left, "right": a.Right} {
		group := map[string]any{}
		for measure, e := range entries {
			v, err := e.written()
			if err != nil {
				return nil, fmt.Errorf("%s.%s: %w", name, measure, err)
			}
			group[measure] = v
		}
		doc[name] = group
	}
	var b bytes.Buffer
	enc := json.NewEncoder(&b)
	enc.SetEscapeHTML(false)
	if err := enc.Encode(doc); err != nil {
		return nil, err
	}
	return bytes.TrimSuffix(b.Bytes(), []byte("\n")), nil
}

// Digest is the identity of what was recorded: "sha256:" and the hash of JSON, in hexadecimal.
// It is empty where JSON has an error.
func (a *Assessment) Digest() string {
	b, err := a.JSON()
	if err != nil {
		return ""
	}
	sum := sha256.Sum256(b)
	return "sha256:" + hex.EncodeToString(sum[:])
}

// written gives an entry as JSON has it.
func (e *Entry) written() (any, error) {
	var v any
	object := map[string]any{}
	switch x := e.Value.(type) {
	case nil:
		return map[string]any{"not_recorded": e.NotRecorded}, nil
	case clinical.Quantity:
		number, exact := digits(x, e.Measure.Unit)
		for _, u := range clinical.Units() { // the last digit of a huge or tiny one may be lost in the own unit
			if !exact && u.Dimension == e.Measure.Unit.Dimension {
				number, exact = digits(x, u)
				object["unit"] = u.Code
			}
		}
		v = number
	case clinical.Grade:
		v = x.String()
	case clinical.Date:
		v = x.String()
	case types.String:
		v = string(x)
	case types.Bool:
		v = bool(x)
	case types.Int:
		v = int64(x)
	default:
		return nil, fmt.Errorf("a value of type %s", x.Type().TypeName())
	}
	if e.Confirmed {
		object["confirmed"] = true
	}
	if len(object) == 0 {
		return v, nil
	}
	object["value"] = v
	return object, nil
}

// digits writes a quantity in a unit with as few digits as read back to it, and reports whether
// any number does.
func digits(q clinical.Quantity, u clinical.Unit) (json.Number, bool) {
	at, ok := q.In(u)
	if !ok {
		return "", false
	}
	for precision := 1; precision <= 17; precision++ {
		s := strconv.FormatFloat(at, 'g', precision, 64)
		x, err := strconv.ParseFloat(s, 64)
		if err != nil {
			break
		}
		if back, err := clinical.NewQuantity(x, u); err == nil && back.Base() == q.Base() {
			b, err := json.Marshal(x) // the usual form: 86.5, not 8.65e+01
			return json.Number(b), err == nil
		}
	}
	return json.Number(strconv.FormatFloat(at, 'g', -1, 64)), false
}

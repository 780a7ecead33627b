package assess

import (
	"strings"

	"crus/engine/source"
	"crus/engine/vocab"
)

// record is the assessment that the rows with one id make.
type record struct {
	*document
	id     source.Value
	shared map[string]source.Value // what both rows must agree on, as first written
	root   []source.Field
	person source.Value
	limbs  map[Side]source.Value
	device source.Value // the list device_for; its place is that of a cell of the column device

	incomplete bool // a row was left out, since its side can't be told; nothing is made of the others
}

func newRecord(t *table, id source.Value) *record {
	r := &record{document: newDocument(t.file, csvNotation), id: id, shared: map[string]source.Value{}, limbs: map[Side]source.Value{}}
	r.document.where = id.Where
	r.written = usual(t.v)
	r.root = []source.Field{{Name: "id", NameWhere: id.Where, Value: id}}
	r.person = source.Value{Kind: source.ObjectKind, Where: id.Where}
	return r
}

// row adds one limb: cells are trimmed.
func (r *record) row(t *table, cells []string, places []source.Range) {
	if r.full() {
		return
	}
	at := t.at("side")
	side := Side(strings.ToLower(cells[at]))
	if side != Left && side != Right {
		r.incomplete = true
		t.noSide = append(t.noSide, textValue(places[at], cells[at]))
		return
	}
	if first, twice := r.limbs[side]; twice {
		r.fail(source.Errorf(places[at], "duplicate", "%s has a second row for its %s limb.", r.id.Text.S, side).
			Hinting("Keep one of the two, or give another assessment another id.").With("The first one is here.", first.Where))
		return
	}
	limb := source.Value{Kind: source.ObjectKind, Where: places[at]}
	r.wanted(side, cells[t.at("device")], places[t.at("device")])
	for i, c := range t.columns {
		if cells[i] == "" {
			continue
		}
		switch {
		case c.measure == nil && (c.name == "date" || c.name == "assessor"):
			if r.agrees(c.name, cells[i], places[i]) {
				r.root = append(r.root, source.Field{Name: c.name, NameWhere: places[i], Value: textValue(places[i], cells[i])})
			}
		case c.measure == nil:
		case c.measure.Of == vocab.Limb:
			limb.Fields = append(limb.Fields, r.field(t, c, cells[i], places[i]))
		case r.agrees("person."+c.name, cells[i], places[i]):
			r.person.Fields = append(r.person.Fields, r.field(t, c, cells[i], places[i]))
		}
	}
	r.limbs[side] = limb
}

// wanted adds the limb to device_for if its cell says so.
func (r *record) wanted(side Side, cell string, where source.Range) {
	if r.device.Where.File == nil {
		r.device = source.Value{Kind: source.ListKind, Where: where}
	}
	switch strings.ToLower(cell) {
	case "yes":
		r.device.Items = append(r.device.Items, textValue(where, string(side)))
	case "no":
	default:
		said := quoted(cell)
		if cell == "" {
			said = "a blank cell"
		}
		r.refuse(source.Errorf(where, "yes_no", "The column device says yes or no, and this is %s.", said).
			Hinting("Write yes if a device is wanted for this limb, otherwise no."))
		r.device.Where = where // so that the list is not complained of too
	}
}

// agrees reports whether this is the first row that says something; a second one must say the same.
func (r *record) agrees(name, cell string, where source.Range) bool {
	first, again := r.shared[name]
	if !again {
		r.shared[name] = textValue(where, cell)
		return true
	}
	if said := first.Text.S; said != cell {
		r.fail(source.Errorf(where, "differs", "%s is %s in this row of %s, and %s in the other.", name, quoted(cell), r.id.Text.S, quoted(said)).
			Hinting("Write what is right in both rows, or in one and leave the other blank.").With("The other row is here.", first.Where))
	}
	return false
}

// finish gives the tree.
func (r *record) finish() *document {
	r.document.root = source.Value{Kind: source.ObjectKind, Where: r.id.Where, Fields: r.root}
	add := func(name string, v source.Value) {
		if v.Where.Known() {
			r.document.root.Fields = append(r.document.root.Fields, source.Field{Name: name, NameWhere: v.Where, Value: v})
		}
	}
	if !r.incomplete { // the row that was left out may want the device
		add("device_for", r.device)
	}
	add("person", r.person)
	add("left", r.limbs[Left])
	add("right", r.limbs[Right])
	return r.document
}

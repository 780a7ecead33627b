package source

// Kind is what a written value is.
type Kind int

// The kinds of a written value.
const (
	TextKind Kind = iota
	NumberKind
	BoolKind
	ListKind
	ObjectKind
	NullKind
)

// String names the kind as a person would.
func (k Kind) String() string {
	return [...]string{"a text", "a number", "true or false", "a list", "a group of fields", "null"}[k]
}

// Value is what somebody wrote after a name, whatever the format (HCL, JSON, CSV): the one form
// that the readers check.
type Value struct {
	Kind   Kind
	Where  Range
	Text   Text    // TextKind
	Number float64 // NumberKind; always finite
	Bool   bool    // BoolKind
	Items  []Value // ListKind
	Fields []Field // ObjectKind, in written order; duplicates are refused by the reader
}

// Field is a name with a value.
type Field struct {
	Name      string
	NameWhere Range
	Value     Value
}

// Field finds a field of an object.
func (v Value) Field(name string) (Field, bool) {
	for _, f := range v.Fields {
		if f.Name == name {
			return f, true
		}
	}
	return Field{}, false
}

// Block is an HCL block: its type, labels, attributes and inner blocks in written order.
type Block struct {
	Type   string
	Labels []Label
	Where  Range // the header: type and labels
	Attrs  []Field
	Blocks []*Block
	End    Range // the closing brace
	Doc    string
}

// Label is a block's label with its place.
type Label struct {
	Text  string
	Where Range
}

// Attr finds an attribute by name.
func (b *Block) Attr(name string) (Field, bool) {
	for _, a := range b.Attrs {
		if a.Name == name {
			return a, true
		}
	}
	return Field{}, false
}

// Label0 gives the first label, or an empty one.
func (b *Block) Label0() Label {
	if len(b.Labels) == 0 {
		return Label{Where: b.Where}
	}
	return b.Labels[0]
}

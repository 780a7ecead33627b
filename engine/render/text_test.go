package render

import (
	"bytes"
	"fmt"
	"reflect"
	"regexp"
	"strings"
	"testing"

	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"
	"github.com/rivo/uniseg"
	"pgregory.net/rapid"

	"crus/engine/clinical"
	"crus/engine/reason"
	"crus/engine/source"
	"crus/engine/vocab"
)

func text(t interface{ Fatal(...any) }, o *reason.Outcome, v *vocab.Vocabulary, st Style, full bool) string {
	var b bytes.Buffer
	if err := Text(&b, o, v, st, TextOptions{Cites: citations(), Full: full}); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

func TestTextGolden(t *testing.T) {
	v := small(t)
	for name, o := range outcomes(t, v) {
		golden(t, name+".txt", []byte(text(t, o, v, Plain, false)))
	}
	golden(t, "every_status_full.txt", []byte(text(t, everyStatus(t, v), v, Plain, true)))
	golden(t, "every_status_colour.txt", []byte(text(t, everyStatus(t, v), v, Coloured(), false)))
}

// Nothing is lost without colour: each status has its mark and its word.
func TestEveryStatusHasMarkAndWord(t *testing.T) {
	v := small(t)
	got := text(t, everyStatus(t, v), v, Plain, false)
	for _, want := range []string{
		`● Device or referral +composite +settled`,
		`◐ Stiffness about the ankle +3.1 to 4.4 N·m/(deg|°) +open`,
		`○ Foot plate length +full length +default`,
		`◌ Side of the shank shell +anterior +settled, provisional`,
		`⊠ Malleolar trim-line +conflict +nothing is picked`,
		`◇ Place of the strut +left to the clinician`,
		`— unanswered: Padding`,
		`≈ close to a boundary`,
		`▲ contraindication, right: wound`,
		`◌ contraindication, pending, left: insensate under shell`,
		`△ precaution, left: strong tone`,
		`▫ note: driving`,
		`▫ note, both limbs: first wear`,
		`◌ pending: block for heel`,
		`— set aside: strap for hand`,
	} {
		if !regexp.MustCompile(want).MatchString(got) {
			t.Errorf("the text lacks %s", want)
		}
	}
}

// The gravest caution comes first, and the one that holds before the one that could.
func TestOrderOfSections(t *testing.T) {
	v := small(t)
	got := text(t, everyStatus(t, v), v, Plain, true)
	at := 0
	for _, want := range []string{"Cautions ─", "contraindication, right", "contraindication, pending", "precaution, left", "note:",
		"Recommendation ─", "  Left\n", "Device\n", "Alignment\n", "Stiffness\n", "Force pattern\n", "  Right\n", "  Person\n", "Follow-up\n",
		"What is missing ─", "Take first", "Reasons ─", "pending: block for heel", "Why not … ─", "Findings and quantities ─", "Step by step ─", "Sources ─", "Versions ─", "Notices ─"} {
		i := strings.Index(got[at:], want)
		if i < 0 {
			t.Fatalf("%q does not stand where it should", want)
		}
		at += i
	}
}

// steers reports whether a character moves the cursor, changes the terminal, or turns the order of
// reading: the control characters C0 and C1 but for the line end, and Unicode's overrides, embeddings
// and isolates of direction (UAX 9).
func steers(c rune) bool {
	return c < 0x20 && c != '\n' || c >= 0x7f && c <= 0x9f || c >= 0x202a && c <= 0x202e || c >= 0x2066 && c <= 0x2069
}

var colours = regexp.MustCompile("\x1b\\[[0-9;]+m")

// Whatever an outcome holds: no line is too wide, nothing steers the terminal, colour changes
// nothing but colour, and the same outcome gives the same bytes.
func TestTextOfAnyOutcome(t *testing.T) {
	v := small(t)
	rapid.Check(t, func(t *rapid.T) {
		o := anyOutcome(t, v)
		for _, full := range []bool{false, true} {
			plain := text(t, o, v, Plain, full)
			for n, l := range strings.Split(plain, "\n") {
				if w := uniseg.StringWidth(l); w > Columns {
					t.Fatalf("line %d has %d columns: %q", n+1, w, l)
				}
			}
			if i := strings.IndexFunc(plain, steers); i >= 0 {
				t.Fatalf("something that steers the terminal got through: %.20q", plain[i:])
			}
			if colour := colours.ReplaceAllString(text(t, o, v, Coloured(), full), ""); colour != plain {
				t.Fatalf("colour changes more than colour: %s", firstDifference([]byte(plain), []byte(colour)))
			}
			if plain != text(t, o, v, Plain, full) {
				t.Fatal("two runs differ")
			}
		}
		var page, again bytes.Buffer
		if err := HTML(&page, o, v, HTMLOptions{Cites: citations()}); err != nil {
			t.Fatal(err)
		}
		if err := HTML(&again, o, v, HTMLOptions{Cites: citations()}); err != nil {
			t.Fatal(err)
		}
		if !bytes.Equal(page.Bytes(), again.Bytes()) {
			t.Fatal("two pages differ")
		}
	})
}

// words are what people and machines write into texts.
func words() *rapid.Generator[string] {
	return rapid.OneOf(
		rapid.SampledFrom([]string{"", "tone", "in_front_of_malleoli", "limb.heel_down", "other.heel_down", "person.age", "finding.marked_tone", "limb_safety.insensate", "caution.wound", "deg", "mm", "settled", "open", "conflict", "pending", "fired", "contraindication", "favour", "aim", "limit"}),
		rapid.StringOfN(rapid.RuneFrom([]rune("abc ÄßŁ膝足🦶👩‍🦽\x1b[31m\u202e\r\n\t–°")), 0, 12, -1),
		rapid.Map(rapid.IntRange(50, 200), func(n int) string { return strings.Repeat("langeswort", n/10) }),
		rapid.Map(rapid.SliceOfN(rapid.StringMatching(`[a-z]{1,14}`), 1, 40), func(w []string) string { return strings.Join(w, " ") }),
	)
}

// anyOutcome fills every field of an outcome with something.
func anyOutcome(t *rapid.T, v *vocab.Vocabulary) *reason.Outcome {
	o := &reason.Outcome{}
	fillIn(t, v, reflect.ValueOf(o).Elem(), 0)
	o.Applies = rapid.SampledFrom([]string{"yes", "unknown", "no"}).Draw(t, "applies")
	for _, side := range []string{"left", "right"} {
		if rapid.Bool().Draw(t, side) {
			r := &reason.Result{}
			fillIn(t, v, reflect.ValueOf(r).Elem(), 1)
			if o.Limbs == nil {
				o.Limbs = map[string]*reason.Result{}
			}
			o.Limbs[side] = r
		}
	}
	return o
}

func fillIn(t *rapid.T, v *vocab.Vocabulary, x reflect.Value, depth int) {
	few := func() int { return rapid.IntRange(0, max(0, 3-depth/2)).Draw(t, "n") }
	switch x.Kind() {
	case reflect.String:
		x.SetString(words().Draw(t, "text"))
	case reflect.Bool:
		x.SetBool(rapid.Bool().Draw(t, "flag"))
	case reflect.Int:
		x.SetInt(int64(rapid.IntRange(0, 9).Draw(t, "count")))
	case reflect.Float64:
		x.SetFloat(rapid.Float64Range(-1e6, 1e6).Draw(t, "number"))
	case reflect.Pointer:
		if x.Type() == reflect.TypeFor[*reason.Written]() { // every step has one
			fillNew(t, v, x, depth)
			return
		}
		if depth > 0 && (depth > 8 || rapid.Bool().Draw(t, "nil")) {
			return
		}
		fillNew(t, v, x, depth)
	case reflect.Slice:
		for range few() {
			item := reflect.New(x.Type().Elem()).Elem()
			fillItem(t, v, item, depth+1)
			x.Set(reflect.Append(x, item))
		}
	case reflect.Array:
		for i := range x.Len() {
			fillIn(t, v, x.Index(i), depth+1)
		}
	case reflect.Map:
		x.Set(reflect.MakeMap(x.Type()))
		names := append(v.ChoiceNames(), "finding.marked_tone", "limb_safety.insensate", "caution.wound", "a_rule")
		for range few() {
			item := reflect.New(x.Type().Elem()).Elem()
			fillItem(t, v, item, depth+1)
			x.SetMapIndex(reflect.ValueOf(rapid.SampledFrom(names).Draw(t, "key")), item)
		}
	case reflect.Interface:
		if x.Type() == reflect.TypeFor[any]() {
			if value := rapid.SampledFrom([]any{nil, "in_front", 12.5, []string{"a_b", "c"}, [2]float64{1, 2}, []any{1.0, 2.0}, []any{"a", "b"}}).Draw(t, "value"); value != nil {
				x.Set(reflect.ValueOf(value))
			}
		}
	case reflect.Struct:
		if x.Type() == reflect.TypeFor[reason.Value]() {
			x.Set(reflect.ValueOf(reason.Value{V: rapid.SampledFrom([]ref.Val{nil, types.True, types.False, types.String("in_front"), types.Int(-3), unknown(), types.NewErr("division by zero")}).Draw(t, "val")}))
			return
		}
		for i := range x.NumField() {
			fillIn(t, v, x.Field(i), depth+1)
		}
	}
}

// fillItem fills an item of a list or map; only findings and quantities can be nil there.
func fillItem(t *rapid.T, v *vocab.Vocabulary, x reflect.Value, depth int) {
	if x.Kind() != reflect.Pointer || x.Type() == reflect.TypeFor[*bool]() || x.Type() == reflect.TypeFor[*reason.Measured]() {
		fillIn(t, v, x, depth)
		return
	}
	fillNew(t, v, x, depth)
}

func fillNew(t *rapid.T, v *vocab.Vocabulary, x reflect.Value, depth int) {
	x.Set(reflect.New(x.Type().Elem()))
	if x.Type() == reflect.TypeFor[*reason.Step]() && depth > 12 {
		x.Interface().(*reason.Step).Written = &reason.Written{Text: "limb.x", Place: "rules.hcl:1:1"}
		return
	}
	fillIn(t, v, x.Elem(), depth+1)
}

func TestWrap(t *testing.T) {
	for _, c := range []struct {
		text  string
		width int
		want  []string
	}{
		{"", 10, []string{""}},
		{"one two three", 7, []string{"one two", "three"}},
		{"  one\n two\t three ", 80, []string{"one two three"}},
		{"abcdefghij", 4, []string{"abcd", "efgh", "ij"}},
		{"膝を伸ばす", 4, []string{"膝を", "伸ば", "す"}},
		{"a 👩‍🦽👩‍🦽", 2, []string{"a", "👩‍🦽", "👩‍🦽"}},
		{"red\x1b[31m", 20, []string{"red�[31m"}},
		{"膝", 0, []string{"膝"}},
	} {
		if got := Wrap(c.text, c.width); !reflect.DeepEqual(got, c.want) {
			t.Errorf("Wrap(%q, %d) = %q, want %q", c.text, c.width, got, c.want)
		}
	}
}

func TestNumbers(t *testing.T) {
	for _, c := range []struct{ got, want string }{
		{number(-5, "deg"), "−5°"},
		{number(20, "mm"), "20 mm"},
		{number(1e18, "d"), "longer than any limit"}, // since what never was
		{number(2, "no such unit"), "2 no such unit"},
		{span(10, 30, "mm"), "10 to 30 mm"},
		{span(-5, 10, "deg"), "−5° to 10°"},
		{span(4, 4, "mm"), "4 mm"},
		{grouped("1220703125"), "1,220,703,125"},
		{grouped("999"), "999"},
		{grouped("1" + strings.Repeat("0", 40)), "more than 10^40"},
		{limitWords([2]float64{0, 10}, vocab.Span{Lo: 0, Hi: 60}, "mm"), "at most 10 mm"},
		{limitWords([2]float64{5, 60}, vocab.Span{Lo: 0, Hi: 60}, "mm"), "at least 5 mm"},
		{limitWords([2]float64{5, 10}, vocab.Span{Lo: 0, Hi: 60}, "mm"), "within 5 to 10 mm"},
		{limitWords([2]float64{0, 60}, vocab.Span{Lo: 0, Hi: 60}, "mm"), ""},
		{valueWords([]any{1.0, 2.0}, "mm"), "1 to 2 mm"},
		{valueWords([]string{"a_b", "c", "d"}, ""), "a b, c or d"},
		{title("limb_safety.insensate_skin"), "Insensate skin"},
		{from("limb_safety.insensate_skin"), "from limb_safety"},
	} {
		if c.got != c.want {
			t.Errorf("got %q, want %q", c.got, c.want)
		}
	}
	if _, ok := clinical.UnitByCode("mm"); !ok {
		t.Fatal("the units of this test are gone")
	}
}

func TestDiagnostics(t *testing.T) {
	f := source.NewFile("rules.hcl", []byte("rule \"x\" {\n  when = \"limb.tonne\"\n}\n"))
	at := source.Range{File: f, Start: 20, End: 30}
	ds := source.Diagnostics{
		source.Warnf(at, "unused", "Nothing uses the finding %q.", "x"),
		source.Errorf(at, "unknown_name", "There is no measure %q.", "tonne").Hinting("Did you mean tone?"),
		source.Errorf(source.Range{}, "missing", "The folder is not there."),
	}
	var b, none bytes.Buffer
	if err := Diagnostics(&b, ds, Plain); err != nil {
		t.Fatal(err)
	}
	golden(t, "diagnostics.txt", b.Bytes())
	if err := Diagnostics(&none, nil, Coloured()); err != nil || none.Len() > 0 {
		t.Errorf("nothing wrong gives %q, %v", none.String(), err)
	}
	for n, want := range map[int]string{1: "1 error", 2: "2 errors"} {
		if got := count(n, "error"); got != want {
			t.Errorf("got %q, want %q", got, want)
		}
	}
}

func TestJSON(t *testing.T) {
	v := small(t)
	o := everyStatus(t, v)
	o.Ruleset.Title = "a < b & c"
	var b, again bytes.Buffer
	for _, w := range []*bytes.Buffer{&b, &again} {
		if err := JSON(w, o); err != nil {
			t.Fatal(err)
		}
	}
	if !bytes.Equal(b.Bytes(), again.Bytes()) {
		t.Error("two runs differ")
	}
	for _, want := range []string{"\n  \"format\": \"crus-outcome/1\"", `"title": "a < b & c"`, `"heel_stays_up": null`, `"status": "conflict"`} {
		if !strings.Contains(b.String(), want) {
			t.Errorf("the JSON lacks %s", want)
		}
	}
	if !strings.HasSuffix(b.String(), "}\n") {
		t.Error("the JSON does not end with a line end")
	}
	if err := JSON(failing{}, o); err == nil {
		t.Error("an error of the writer is lost")
	}
	if err := Text(failing{}, o, v, Plain, TextOptions{}); err == nil {
		t.Error("an error of the writer is lost")
	}
	if err := HTML(failing{}, o, v, HTMLOptions{}); err == nil {
		t.Error("an error of the writer is lost")
	}
}

type failing struct{}

func (failing) Write([]byte) (int, error) { return 0, fmt.Errorf("the disk is full") }

// A result that becomes another one under every value says so without an "if".
func TestWhateverIsMissing(t *testing.T) {
	v := small(t)
	o := everyStatus(t, v)
	c := o.Limbs["right"].Choices["closure"]
	c.Provisional, c.CouldBecome = true, []reason.Could{{Status: reason.Settled, Value: "strap", If: "whatever the missing values are"}}
	if got := text(t, o, v, Plain, false); !strings.Contains(got, "becomes strap whatever the missing values are") {
		t.Errorf("whatever is missing:\n%s", got)
	}
}

package assess

import (
	"path/filepath"
	"strings"
	"testing"

	"crus/engine/source"
)

// person, left and hcl put some text into an assessment that is otherwise right.
func person(line string) string { return minimal(`"person": {}`, `"person": { `+line+` }`) }
func left(line string) string   { return minimal(`"left": {}`, `"left": { `+line+` }`) }

func hcl(lines string) string {
	return `format     = "crus-assessment/1"
id         = "demo-017"
vocabulary = "small_limb@1"
date       = "2026-10-02"
device_for = ["left"]
` + lines + "\n"
}

// rows gives a table with two rows that are right but for what stands in some further columns.
func rows(column, first, second string) string {
	return "id,date,side,device," + column + "\ndemo-017,2026-10-02,left,yes," + first + "\ndemo-017,2026-10-02,right,no," + second + "\n"
}

// broken are assessments that are refused; what is said of each is in testdata/name.golden.
func broken() map[string]string {
	deep := strings.Repeat("[", 12) + strings.Repeat("]", 12)
	return map[string]string{
		// the document
		"empty.json":              " \n",
		"not_utf8.json":           minimal("demo-017", "demo \xff"),
		"too_large.json":          minimal("demo-017", strings.Repeat("x", MaxFileSize)),
		"cut_off.json":            minimal()[:70],
		"trailing.json":           minimal() + "{}",
		"trailing_comma.json":     minimal(`"left": {}`, `"left": {"tone": "2",}`),
		"not_an_object.json":      `[` + minimal() + `]`,
		"nan.json":                left(`"dorsiflexion": NaN`),
		"infinity.json":           left(`"dorsiflexion": -Infinity`),
		"leading_zero.json":       left(`"dorsiflexion": 05`),
		"unquoted.json":           left(`"tone": low`),
		"note.json":               left("// a note\n"),
		"single_quotes.json":      left(`'tone': "2"`),
		"open_quote.json":         left(`"tone": "2`),
		"too_deep.json":           left(`"tone": ` + deep),
		"too_many.json":           minimal(`["left"]`, `["left"`+strings.Repeat(`, "left"`, maxValues)+`]`),
		"half_character.json":     minimal("demo-017", `demo \ud83d!`),
		"no_ending.txt":           minimal(),
		"missing_fields.json":     `{ "person": {} }`,
		"wrong_format.json":       minimal("assessment/1", "assessment/2"),
		"other_vocabulary.json":   minimal("small_limb@1", "lower_limb@1", `"left": {}`, `"left": {"shoe_size": 42}`),
		"other_version.json":      minimal("small_limb@1", "small_limb@2"),
		"no_version.json":         minimal("small_limb@1", "small_limb"),
		"unknown_field.json":      minimal(`"date"`, `"dates"`),
		"measure_outside.json":    minimal(`"person": {}`, `"tone": "2", "age": 61`),
		"empty_id.json":           minimal("demo-017", "  "),
		"line_end_in_id.json":     minimal("demo-017", `demo\n017`),
		"number_as_id.json":       minimal(`"demo-017"`, "17"),
		"bad_date.json":           minimal("2026-10-02", "2.10.2026"),
		"no_such_day.json":        minimal("2026-10-02", "2026-02-30"),
		"device_for_none.json":    minimal(`["left"]`, `[]`),
		"device_for_text.json":    minimal(`["left"]`, `"left"`),
		"device_for_unknown.json": minimal(`["left"]`, `["lefft", 3]`),
		"device_for_twice.json":   minimal(`["left"]`, `["left", "left"]`),
		"duplicate.json":          left(`"tone": "2", "skin": "sore", "tone": "3"`),
		"limb_as_list.json":       minimal(`"left": {}`, `"left": []`),

		// measures
		"unknown_measure.json":      left(`"dorsiflection": 5, "shoe_size": 42`),
		"limb_under_person.json":    person(`"tone": "2"`),
		"person_under_limb.json":    left(`"age": 61`),
		"grade_lacking.json":        left(`"tone": "2+"`),
		"grade_as_number.json":      left(`"tone": 2`),
		"grade_as_number_5.json":    left(`"tone": 1.5`),
		"wrong_dimension.json":      person(`"body_mass": "82 cm"`),
		"wrong_dimension_unit.json": left(`"dorsiflexion": {"value": 5, "unit": "mm"}`),
		"unknown_unit.json":         left(`"leg_length": "34 inches", "dorsiflexion": "5°"`),
		"unit_of_a_grade.json":      left(`"tone": {"value": "2", "unit": "deg"}`),
		"unit_twice.json":           left(`"leg_length": {"value": "86 cm", "unit": "cm"}`),
		"number_as_text.json":       left(`"dorsiflexion": "5", "foot_posture": "3"`),
		"words.json":                left(`"dorsiflexion": "about 5", "leg_length": "86,5 cm"`),
		"dash.json":                 left(`"dorsiflexion": "−5 deg"`),
		"dashes.json":               left(`"dorsiflexion": {"value": "– 5", "unit": "deg"}, "leg_length": "—86,5 cm", "foot_posture": "−3", "tone": "1 +"`),
		"dashes_units.json":         left(`"dorsiflexion": "−5°", "leg_length": "−5 kg", "foot_posture": "–3 points"`),
		"comma.json":                left(`"dorsiflexion": "7,5", "leg_length": {"value": "86,5", "unit": "cm"}, "foot_posture": "3,0", "pressure_index": "1,123"`),
		"bare_comma.json":           left(`"dorsiflexion": 7,5`),
		"comma_of_a_ratio.json":     left(`"pressure_index": "0,925", "leg_length": "1.086,5"`),
		"bare_list.json":            left(`"dorsiflexion": [7,–5]`),
		"bare_dash.json":            left(`"dorsiflexion": −5,5`),
		"option_words.json":         left(`"skin": "Broken Open", "side_used": "One hand"`),
		"minus_of_a_grade.json":     left(`"strength": "4−"`),
		"nan_as_text.json":          left(`"dorsiflexion": "NaN", "foot_posture": "Infinity"`),
		"too_large_number.json":     left(`"dorsiflexion": 1e400, "leg_length": 1e200, "foot_posture": 1e18`),
		"implausible.json":          left(`"dorsiflexion": 50, "leg_length": "8650 mm"`),
		"implausible_count.json":    left(`"foot_posture": -13`),
		"not_confirmed.json":        left(`"dorsiflexion": {"value": 50, "confirmed": false}`),
		"confirmed_as_text.json":    left(`"dorsiflexion": {"value": 50, "confirmed": "yes"}`),
		"confirmed_grade.json":      left(`"tone": {"value": "2", "confirmed": true}`),
		"half_a_fall.json":          person(`"falls": 1.5`),
		"unknown_option.json":       left(`"skin": "brokn"`),
		"option_as_bool.json":       left(`"skin": true`),
		"yes_as_text.json":          person(`"drives": "yes"`),
		"yes_as_number.json":        person(`"drives": 1`),
		"measure_no_date.json":      person(`"last_injection": "July 2026"`),
		"date_later.json":           person(`"last_injection": "2026-10-03"`),
		"never.json":                person(`"onset": "never", "last_injection": "Never", "last_surgery": {"value": "never", "confirmed": true}`),
		"never_a_grade.json":        left(`"tone": "never", "dorsiflexion": "never"`),
		"null.json":                 left(`"tone": null`),
		"empty_reason.json":         left(`"tone": {"not_recorded": ""}, "skin": {"not_recorded": true}`),
		"reason_and_value.json":     left(`"tone": {"not_recorded": "pain", "value": "2"}`),
		"empty_group.json":          left(`"tone": {}`),
		"group_field.json":          left(`"dorsiflexion": {"valu": 5}`),
		"group_in_group.json":       left(`"dorsiflexion": {"value": {"value": 5}}`),
		"control_character.json":    left(`"device": "a\u0007b"`),
		"text_as_number.json":       left(`"device": 12`),
		"list_as_quantity.json":     left(`"dorsiflexion": [5, 10]`),
		"many.json":                 minimal(`"date": "2026-10-02"`, `"date": "today"`, `"person": {}`, `"person": {"age": 261}`, `"left": {}`, `"left": {"tone": 9}, "right": {"skin": 1}`),

		// HCL
		"syntax.hcl":        hcl("left {\n  tone = 2-\n}"),
		"duplicate.hcl":     hcl("left {\n  tone = \"2\"\n  tone = \"3\"\n}"),
		"second_block.hcl":  hcl("left {\n  tone = \"2\"\n}\nleft {\n}"),
		"named_block.hcl":   hcl("limb \"left\" {\n}"),
		"block_inside.hcl":  hcl("left {\n  leg_length {\n    value = 86\n  }\n}"),
		"template.hcl":      hcl("left {\n  device = \"worn since ${person.age}\"\n}"),
		"implausible.hcl":   hcl("left {\n  dorsiflexion = 50\n}"),
		"bare_comma.hcl":    hcl("left {\n  leg_length = 86,5\n}"),
		"bare_dash.hcl":     hcl("left {\n  dorsiflexion = –5\n}"),
		"option_words.hcl":  hcl("left {\n  side_used = \"right-hand\"\n  skin = \"Intact\"\n}"),
		"values.hcl":        hcl("left {\n  dorsiflexion = \"82 kg\"\n  tone = 2\n  skin = \"wet\"\n}\nperson {\n  drives = \"no\"\n  age = null\n}"),
		"never.hcl":         hcl("person {\n  onset = { value = \"Never\" }\n  last_injection = false\n  last_surgery = \"not ever\"\n}"),
		"missing.hcl":       "person {\n}\n",
		"empty.hcl":         "\n",
		"device_for_no.hcl": replaceOnce(hcl(""), `["left"]`, `["left", "both"]`),
		"too_deep.hcl":      hcl("left {\n  tone = " + deep + "\n}"),

		// tables
		"empty.csv":             "\n\n",
		"only_header.csv":       "id,side,device\n",
		"missing_columns.csv":   "date,tone\n2026-10-02,2\n",
		"two_separators.csv":    "id,side;device\nx,left;yes\n",
		"columns.csv":           "id,side,device,tone,tone,person.tone,shoe_size,leg_length [kg],skin [mm],body_mass [kg,dorsiflexion [grad],\n",
		"cells_too_many.csv":    "id,side,device,dorsiflexion\ndemo-017,left,yes,5,5\n",
		"no_id.csv":             "id,side,device\n,left,yes\n",
		"side.csv":              "id,side,device\ndemo-017,links,yes\n",
		"sides.csv":             "ID,Date, Side ,Device,DORSIFLEXION [deg]\na,2026-10-02,R,yes,5\na,2026-10-02,left,no,95\nb,2026-10-02,L,yes,5\nc,2026-10-02,R,yes,5\n",
		"headings.csv":          "Patient,Limb,Leg Length [cm],Leg-length,Dorsi flexion,Tone\na,L,86,5,x,9\nb,R,86,5,x,9\n",
		"dashes.csv":            rows("dorsiflexion,strength,foot_posture", "–5,4−,−3", "−5 deg,4 -,NaN"),
		"never.csv":             "id,side,device,onset,last_surgery\nx,left,yes,never,never before\n",
		"side_twice.csv":        "id,side,device\ndemo-017,left,yes\ndemo-017,left,yes\n",
		"device_cell.csv":       "id,side,device\ndemo-017,left,1\ndemo-018,left,\n",
		"device_none.csv":       "id,side,device\ndemo-017,left,no\ndemo-017,right,no\n",
		"quote.csv":             "id,side,device,limb.device\ndemo-017,left,yes,a \"boot\"\n",
		"not_utf8.csv":          rows("remarks", "F\xfc\xdfe", ""),
		"rows_differ.csv":       "id,date,side,device,body_mass\ndemo-017,2026-10-02,left,yes,82\ndemo-017,2026-10-03,right,no,83\n",
		"decimal_comma.csv":     rows("dorsiflexion", `"7,5"`, `"1.234,5"`),
		"decimal_semicolon.csv": "id;side;device;leg_length\ndemo-017;left;yes;1,234\ndemo-017;right;no;86.123\n",
		"cells.csv":             rows("dorsiflexion,tone,skin,foot_posture,drives", `50,2+,wet,1.5,true`, `7 mm,"",Broken,NaN,1`),
		"not_recorded.csv":      rows("tone,dorsiflexion", "not recorded,not recorded because of pain", ","),
		"column_unit_twice.csv": rows("leg_length [mm]", "86 cm", "8600"),
		"confirmed.csv":         rows("tone,dorsiflexion", "2 (confirmed),steep (confirmed)", ",1e999"),

		// JSON lines
		"lines.jsonl": compact(minimal()) + "\n\n" + compact(left(`"tone": 2`)) + "\nnot JSON\n" + compact(left(`"skin": "wet"`)),
		"empty.jsonl": "\n \n",
		"long.jsonl":  `{"id": "` + strings.Repeat("x", MaxLineSize) + "\"}\n" + compact(left(`"tone": 2`)) + "\n",
		"utf8.jsonl":  compact(minimal("demo-017", "demo \xff")) + "\n",
	}
}

func compact(text string) string { return strings.Join(strings.Fields(text), " ") }

func TestBrokenAssessmentsAreRefused(t *testing.T) {
	v := vocabulary(t)
	for name, text := range broken() {
		t.Run(name, func(t *testing.T) {
			list, diags := Read(source.NewFile(name, []byte(text)), v)
			if !diags.HasErrors() {
				t.Fatal("accepted")
			}
			if len(list) > 0 && !strings.HasSuffix(name, ".jsonl") {
				t.Errorf("%d assessments come of it all the same", len(list))
			}
			for _, d := range diags {
				if d.Hint == "" {
					t.Errorf("no way out: %s", d.Message)
				}
				if d.Where.Known() && (d.Where.Start > d.Where.End || d.Where.End > len(text)) {
					t.Errorf("no place in the text: %d-%d", d.Where.Start, d.Where.End)
				}
			}
			golden(t, strings.ReplaceAll(name, ".", "_"), diags.Text())
		})
	}
}

func TestEveryGoldenFileHasItsTest(t *testing.T) {
	tests := map[string]bool{"stream": true, "json_no_date": true}
	for name := range broken() {
		tests[strings.ReplaceAll(name, ".", "_")] = true
	}
	files, err := filepath.Glob("testdata/*.golden")
	if err != nil || len(files) != len(tests) {
		t.Errorf("%d golden files for %d tests, %v", len(files), len(tests), err)
	}
	for _, file := range files {
		if !tests[strings.TrimSuffix(filepath.Base(file), ".golden")] {
			t.Errorf("%s belongs to no test", file)
		}
	}
}

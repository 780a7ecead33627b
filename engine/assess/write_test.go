package assess

import (
	"strings"
	"testing"

	"github.com/google/cel-go/common/types"
)

func TestJSONIsCanonical(t *testing.T) {
	got, err := only(t, "a.hcl", fullHCL).JSON()
	if err != nil {
		t.Fatal(err)
	}
	const want = `{"assessor":"orthotist A","date":"2026-10-02","device_for":["left","right"],"format":"crus-assessment/1","id":"demo-017",` +
		`"left":{"dorsiflexion":-5,"foot_posture":{"confirmed":true,"value":13},"leg_length":86.5,"pressure_index":0.9,"skin":"broken","tone":"1+"},` +
		`"person":{"age":61,"body_mass":82,"drives":false,"falls":3,"last_injection":"2026-07-01","last_surgery":"never","remarks":"walks with a stick"},` +
		`"right":{"device":"leather boot","leg_length":{"confirmed":true,"value":150},"tone":{"not_recorded":"pain on movement"}},"vocabulary":"small_limb@1"}`
	if string(got) != want {
		t.Errorf("%s\nwant\n%s", got, want)
	}
}

func TestTheDigestIsThatOfWhatWasRecorded(t *testing.T) {
	base := only(t, "a.json", minimal())
	for _, same := range []string{
		strings.Join(strings.Fields(minimal()), ""),
		minimal(`"left": {}`, `"left": {}, "right": {}`),
	} {
		if got := only(t, "b.json", same).Digest(); got != base.Digest() {
			t.Errorf("another digest for\n%s", same)
		}
	}
	for _, other := range []string{minimal("017", "018"), minimal(`["left"]`, `["right"]`), left(`"tone": "2"`), left(`"tone": {"not_recorded": "pain"}`)} {
		if got := only(t, "b.json", other).Digest(); got == base.Digest() {
			t.Errorf("the same digest for\n%s", other)
		}
	}
}

func TestAValueThatNoReaderGivesIsAnError(t *testing.T) {
	a := only(t, "a.json", minimal())
	a.Left["tone"] = &Entry{Value: types.NewDynamicList(types.DefaultTypeAdapter, []int{1})}
	if b, err := a.JSON(); err == nil {
		t.Errorf("%s", b)
	}
	if got := a.Digest(); got != "" {
		t.Error(got)
	}
}

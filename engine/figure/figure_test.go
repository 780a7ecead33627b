package figure

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"crus/engine/biomech"
)

// legs draws legs from a small child's to a tall adult's.
func legs() *rapid.Generator[Leg] {
	return rapid.Custom(func(t *rapid.T) Leg {
		height := rapid.Float64Range(900, 2000).Draw(t, "height")
		foot := rapid.Float64Range(0.14, 0.165).Draw(t, "foot") * height
		return Leg{FootLength: foot, HeelToBall: rapid.Float64Range(0.68, 0.75).Draw(t, "ball") * foot}.Complete(height)
	})
}

func off(a, b point) float64 { return math.Hypot(a.x-b.x, a.z-b.z) }

// to measures the drawing back: what a length on paper is on the leg, to 0.02 mm.
func to(t *rapid.T, what string, paper, scale, want float64) {
	t.Helper()
	if math.Abs(paper*scale-want) > 0.02 {
		t.Fatalf("%s is %.4f mm on paper, at 1:%g %.4f mm, and should be %.4f mm", what, paper, scale, paper*scale, want)
	}
}

// direction of a line from its first to its last place, degrees forward of straight up.
func direction(s shape) float64 {
	a, b := s.at[0], s.at[len(s.at)-1]
	return math.Atan2(b.x-a.x, a.z-b.z) * 180 / math.Pi
}

func TestToScale(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		leg := legs().Draw(t, "leg")
		scale := rapid.SampledFrom([]float64{2, 4, 5, 6, 8, 10, 12}).Draw(t, "scale")
		ankle := rapid.Float64Range(-30, 15).Draw(t, "ankle")
		first, second := rapid.Float64Range(1, 30).Draw(t, "shoe"), rapid.Float64Range(1, 30).Draw(t, "raise")
		p := parse(t, Drawing{Leg: leg, Side: []View{{Title: "a", Angle: ankle, Under: []Layer{{"shoe", first}, {"raise", second}}}}}.SVG(scale))

		ground := p.of("ground")[0].at[0].z
		low, high := p.of("under")[0].at, p.of("raise")[0].at
		to(t, "the shoe", low[0].z-low[1].z, scale, first)
		to(t, "the raise", high[0].z-high[1].z, scale, second)
		to(t, "what stands lowest above the ground", ground-low[0].z, scale, 0)
		heel, ball := high[1], high[2]
		to(t, "the ball above the ground", ground-ball.z, scale, 0)
		to(t, "heel to ball", off(heel, ball), scale, leg.HeelToBall)

		axis, joint := p.of("axis shank")[0], p.of("joint")[0]
		at := point{float(t, joint.attrs["cx"]), float(t, joint.attrs["cy"])}
		to(t, "the axis's place", off(axis.at[0], at), scale, 0)
		to(t, "the axis of the shank", off(axis.at[0], axis.at[1]), scale, 1.12*(leg.KneeHeight-leg.AnkleHeight))
		sin, cos := math.Sincos(leg.Pitch(Pose{Rise: first + second}) * math.Pi / 180)
		to(t, "the ankle above the ground", ground-at.z, scale, leg.AnkleHeight*cos+(leg.HeelToBall-leg.AnkleToHeelBack)*sin)

		skin := p.of("skin")[0].at
		to(t, "the knee's depth", off(skin[0], skin[len(skin)-1]), scale, 0.97*leg.CalfDepth)
		for _, s := range skin {
			if s.z > ground+0.3 {
				t.Fatalf("the foot reaches %.2f mm below the ground on paper", s.z-ground)
			}
		}
		bar := p.of("measure bar")[0].attrs["d"]
		var x0, z0, z1, x1 float64
		if _, err := fmt.Sscanf(strings.NewReplacer("M", "", "V", " ", "H", " ").Replace(bar), "%g %g %g %g", &x0, &z0, &z1, &x1); err != nil {
			t.Fatalf("%s: %v", bar, err)
		}
		to(t, "the bar", x1-x0, scale, 100)
	})
}

// The lean that is drawn and written is pitch and ankle angle together, as package biomech has it.
func TestLean(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		leg := legs().Draw(t, "leg")
		ankle, rise := float64(rapid.IntRange(-30, 15).Draw(t, "ankle")), rapid.Float64Range(0, 0.5).Draw(t, "slope")*leg.HeelToBall
		v := View{Angle: ankle, Under: []Layer{{"block", rise}}}
		p := parse(t, Drawing{Leg: leg, Side: []View{v}}.SVG(2))
		pitch, err := biomech.PitchAlongPlate(rise, leg.HeelToBall)
		if err != nil {
			t.Fatal(err)
		}
		lean := direction(p.of("axis shank")[0])
		if math.Abs(lean-pitch-ankle) > 0.02 || math.Abs(direction(p.of("axis square")[0])-pitch) > 0.02 {
			t.Fatalf("the shank is drawn %.3f° forward, the square to the plate %.3f°; the pitch is %.3f° and the ankle %g°", lean, direction(p.of("axis square")[0]), pitch, ankle)
		}
		if want, err := biomech.ShankToVertical(pitch, ankle); err == nil && (math.Abs(lean-want) > 0.02 || math.Abs(leg.ShankToVertical(Pose{rise, ankle})-want) > 1e-9) {
			t.Fatalf("the shank is drawn %.3f° forward, biomech has %.3f°", lean, want)
		}
		if got, want := p.words(t), "shank to vertical "+degrees(pitch+ankle); !strings.Contains(fmt.Sprint(got), want) {
			t.Fatalf("no words %q", want)
		}
	})
}

// The mirrored angle on a flat foot leans as far the other way.
func TestMirroredAngle(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		leg, ankle := legs().Draw(t, "leg"), rapid.Float64Range(-30, 30).Draw(t, "ankle")
		lean := func(ankle float64) float64 {
			return direction(parse(t, Drawing{Leg: leg, Side: []View{{Angle: ankle}}}.SVG(2)).of("axis shank")[0])
		}
		if a, b := lean(ankle), lean(-ankle); math.Abs(a+b) > 0.02 {
			t.Fatalf("%.3f and %.3f", a, b)
		}
	})
}

// Whatever numbers and words come in, the drawing is XML of numbers.
func TestAnythingIsDrawn(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		any := rapid.OneOf(rapid.Float64(), rapid.SampledFrom([]float64{0, -1, 1e-300, 1e9, math.MaxFloat64, -math.MaxFloat64, math.NaN(), math.Inf(1), math.Inf(-1)}), rapid.Float64Range(0, 500))
		n := func(name string) float64 { return any.Draw(t, name) }
		text := rapid.String()
		at := rapid.SampledFrom([]string{Calf, Shin, Instep, Heel, Forefoot, Floor, AnkleLateral, AnkleMedial, Shank, Foot, "elsewhere"})
		var under []Layer
		for range rapid.IntRange(0, 3).Draw(t, "layers") {
			under = append(under, Layer{text.Draw(t, "name"), finite(n("height"))})
		}
		var forces []Force
		for range rapid.IntRange(0, 4).Draw(t, "forces") {
			forces = append(forces, Force{at.Draw(t, "at"), n("newtons"), n("off")})
		}
		d := Drawing{Leg: Leg{n("foot"), n("ball"), n("heel"), n("ankle height"), n("knee"), n("ankle depth"), n("calf"), nil},
			Side: []View{{Title: text.Draw(t, "title"), Angle: finite(n("angle")), Under: under, Block: rapid.Bool().Draw(t, "block"), Lean: ptr(finite(n("lean"))), Forces: forces,
				Device: &Device{Shell: Circumferential, ShellTop: n("top"), Contact: n("contact"), Strut: rapid.SampledFrom([]string{Anterior, Posterior, "beside", ""}).Draw(t, "strut"), Plate: n("plate"), FootShell: n("shell"), Dorsal: true}}},
			Behind: &Behind{Notes: []string{text.Draw(t, "note")}, Right: rapid.Bool().Draw(t, "right"), Under: under, Contact: n("contact behind"), Forces: forces}}
		parse(t, d.SVG(n("scale")))
		d.Fit(n("width"), n("height"))
	})
	parse(t, Drawing{}.SVG(0))
}

func finite(x float64) float64 {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return 0
	}
	return x
}

// What somebody wrote stays text.
func TestTextIsEscaped(t *testing.T) {
	wicked := `</text><script>alert("1")</script>&` + "\x00\x1b\ufffe"
	p := parse(t, Drawing{Leg: adult, Side: []View{{Title: wicked, Notes: []string{wicked}, Under: []Layer{{wicked, 20}}}}, Behind: &Behind{Title: wicked}}.SVG(5))
	n := 0
	for _, s := range p.shapes {
		if s.name == "script" {
			t.Error("a script")
		}
		if strings.Contains(s.text, `</text><script>alert("1")</script>&`) {
			n++
		}
	}
	if n != 4 {
		t.Errorf("%d of 4 texts are there", n)
	}
}

// Arrows end where the skin is, point the way their force pushes, and a greater force has a longer arrow, in all
// pictures alike.
func TestArrows(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		leg, right := legs().Draw(t, "leg"), rapid.Bool().Draw(t, "right")
		newtons := rapid.Float64Range(1, 900)
		crouch, varus := rapid.Bool().Draw(t, "crouch"), rapid.Bool().Draw(t, "varus")
		names := []string{Calf, Instep, Forefoot}
		if crouch {
			names = []string{Shin, Heel, Floor}
		}
		behind := []string{AnkleLateral, Shank, Foot}
		if !varus {
			behind[0] = AnkleMedial
		}
		var n []float64
		force := func(at string) Force {
			n = append(n, newtons.Draw(t, at))
			return Force{At: at, Newtons: n[len(n)-1]}
		}
		v := View{Angle: rapid.Float64Range(-30, 15).Draw(t, "ankle"), Under: []Layer{{"shoe", rapid.Float64Range(0, 0.3).Draw(t, "slope") * leg.HeelToBall}}}
		b := Behind{Right: right, Under: v.Under}
		for _, at := range names {
			v.Forces = append(v.Forces, force(at))
		}
		for _, at := range behind {
			b.Forces = append(b.Forces, force(at))
		}
		const scale = 5
		p := parse(t, Drawing{Leg: leg, Side: []View{v}, Behind: &b}.SVG(scale))
		lines, heads, skins := p.of("force"), p.of("head"), p.of("skin")
		if len(lines) != 6 || len(heads) != 6 || len(skins) != 3 {
			t.Fatalf("%d arrows with %d heads on %d legs", len(lines), len(heads), len(skins))
		}
		length := make([]float64, 6)
		for i := range lines {
			tip := heads[i].at[0]
			tail := point{float(t, lines[i].attrs["x1"]), float(t, lines[i].attrs["y1"])}
			length[i] = off(tip, tail)
			skin := skins[0]
			if i >= 3 {
				skin = skins[2]
			}
			if away := distance(tip, skin.at); away > 0.1 {
				t.Fatalf("arrow %d ends %.2f mm from the skin on paper", i, away)
			}
		}
		for i := range n {
			for j := range n {
				if n[i] > n[j]+1 && length[i] <= length[j] {
					t.Fatalf("%.0f N is drawn %.2f mm long, %.0f N %.2f mm", n[i], length[i], n[j], length[j])
				}
			}
		}
		pushes := func(i int) point { // on paper, of length 1
			tip := heads[i].at[0]
			return point{(tip.x - float(t, lines[i].attrs["x1"])) / length[i], (tip.z - float(t, lines[i].attrs["y1"])) / length[i]}
		}
		balanced(t, crouch, n[:3], pushes(0), pushes(1), pushes(2), v.Angle, leg, heightOf(v.Under))
		side := -1.0 // where the ankle is pushed from: the lateral side of a left leg, seen from behind, is the left
		if right {
			side = 1
		}
		if !varus {
			side = -side
		}
		for i, want := range []float64{-side, side, side} {
			if got := pushes(3 + i); math.Abs(got.x-want) > 1e-3 {
				t.Fatalf("%s pushes to %.2f, want %.2f", behind[i], got.x, want)
			}
		}
		middle := p.of("axis")[0].at[0].x
		for _, w := range p.words(t) {
			if w.text == "lateral" && (w.x0+w.x1)/2 > middle != right {
				t.Fatal("the lateral side of the leg is on the wrong side")
			}
		}
	})
}

// balanced holds the directions of the drawing against a system of package biomech that has the same forces.
func balanced(t *rapid.T, crouch bool, n []float64, shank, closing, foot point, ankle float64, leg Leg, rise float64) {
	sum := point{n[0]*shank.x + n[2]*foot.x, n[0]*shank.z + n[2]*foot.z}
	size := math.Hypot(sum.x, sum.z)
	if size < 1 {
		return
	}
	if !crouch { // calf and forefoot push the limb, and the instep holds against both
		sum = point{-sum.x, -sum.z}
	} else { // the heel goes with the floor, and against the shin
		sum = point{-n[0]*shank.x + n[2]*foot.x, -n[0]*shank.z + n[2]*foot.z}
		size = math.Hypot(sum.x, sum.z)
	}
	if math.Abs(closing.x-sum.x/size) > 0.01 || math.Abs(closing.z-sum.z/size) > 0.01 {
		t.Fatalf("the closing force pushes to %.3f, %.3f; the other two ask for %.3f, %.3f", closing.x, closing.z, sum.x/size, sum.z/size)
	}
	moment, shankLever := 10.0, 10000/n[0]
	forefootLever := 10000 / n[2]
	system := biomech.Equinus
	if crouch {
		system = biomech.Crouch
	}
	s, err := system(moment, shankLever, forefootLever, ankle)
	if err != nil {
		t.Fatal(err)
	}
	lean := leg.ShankToVertical(Pose{rise, ankle})
	for i, got := range []point{shank, foot, closing} { // the order of the system
		want := point{s.Forces[i].Toward[0], s.Forces[i].Toward[1]}.turned(lean)
		if math.Abs(got.x-want.x) > 0.01 || math.Abs(got.z+want.z) > 0.01 {
			t.Fatalf("the force on the %s pushes to %.3f, %.3f on paper; biomech has %.3f, %.3f", s.Forces[i].Where, got.x, got.z, want.x, -want.z)
		}
	}
}

// distance of a place from a line through others.
func distance(p point, line []point) float64 {
	out := math.Inf(1)
	for i := 1; i < len(line); i++ {
		a, b := line[i-1], line[i]
		long := (b.x-a.x)*(b.x-a.x) + (b.z-a.z)*(b.z-a.z)
		at := 0.0
		if long > 0 {
			at = min(max(((p.x-a.x)*(b.x-a.x)+(p.z-a.z)*(b.z-a.z))/long, 0), 1)
		}
		out = min(out, off(p, point{a.x + at*(b.x-a.x), a.z + at*(b.z-a.z)}))
	}
	return out
}

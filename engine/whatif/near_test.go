package whatif_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"crus/engine/assess"
	"crus/engine/cell/celltest"
	"crus/engine/reason"
	"crus/engine/whatif"
)

// differs says how what is shown of a result differs, or "": of a number by its status or the rules that decide, if by its
// value at all.
func differs(a, b *reason.Outcome, side, name string) string {
	x, y := shown(a, side, name), shown(b, side, name)
	if x == y {
		return ""
	}
	if c, d := results(a)[side].Choices[name], results(b)[side].Choices[name]; c != nil && c.Unit != "" {
		whole := func(c *reason.Choice) string {
			if c.Range != nil {
				return fmt.Sprint(*c.Range)
			} else if c.Interval != nil && c.Value == nil {
				return fmt.Sprint(*c.Interval)
			}
			return fmt.Sprint(c.Value)
		}
		if strings.Fields(x)[0] == strings.Fields(y)[0] && whole(c) == whole(d) {
			return ""
		}
	}
	return x + " becomes " + y
}

// shown writes what is shown of a result: for a number its status and the rules that decide.
func shown(o *reason.Outcome, side, name string) string {
	r := results(o)[side]
	if caution, ok := strings.CutPrefix(name, "caution."); ok {
		for _, c := range r.Cautions {
			if c.Name == caution && !(c.State == reason.Pending && c.Provisional && known(c)) {
				return c.State
			}
		}
		return reason.DidNotFire
	}
	c := r.Choices[name]
	status := c.Status
	if status == reason.Default {
		status = reason.Settled
	}
	if c.Unit == "" {
		return fmt.Sprint(status, c.Value, c.Among)
	}
	by := []string{}
	for _, verb := range []string{"decides", "limit"} {
		for _, n := range c.Numbers {
			if n.State == verb && !slices.Contains(by, n.Rule) {
				by = append(by, n.Rule)
			}
		}
		if len(by) > 0 {
			break
		}
	}
	return fmt.Sprint(status, " ", by)
}

// known reports whether a caution that is shown as pending is silent as things stand.
func known(c *reason.Caution) bool { return len(c.WaitsFor) == 0 && c.Failed == "" }

// What is said to be close to a boundary is: every value on a grid within the error is tried with the reference.
func TestNearBoundary(t *testing.T) {
	near, tried := 0, 0
	for seed := range uint64(60) {
		size, plain := celltest.Small(), seed%2 == 0 // what is not linear is sampled, and something can be missed
		if plain {
			size = size.Without(celltest.Biomech | celltest.Failing | celltest.Opaque)
		}
		s := celltest.Draw(celltest.Seeded(seed+500), size)
		w, err := whatif.New(s.Engine(t))
		if err != nil {
			t.Fatal(err)
		}
		d := celltest.Seeded(seed + 1<<34)
		for _, missing := range []int{0, 20} {
			a := s.Quick(d, missing)
			o := w.Advise(a, today())
			if o.Person == nil {
				continue
			}
			said := map[string]bool{}
			for side, r := range results(o) {
				for _, b := range r.Boundaries {
					said[fmt.Sprint(side, " ", b.Result, " ", absolute(b.Measure, side))] = true
					near++
				}
			}
			base := o
			found := map[string]string{}
			w.Around(a, 12, func(measure string, value float64, b *assess.Assessment) {
				tried++
				other := w.Advise(b, today())
				if other.Applies != base.Applies {
					found[" applies "+measure] = other.Applies
				}
				if other.Person == nil {
					return
				}
				for side, r := range results(base) {
					names := []string{}
					if base.Applies != other.Applies {
						continue
					}
					for name := range r.Choices {
						names = append(names, name)
					}
					for _, k := range w.Cautions {
						if k.Limb == (side != "") {
							names = append(names, "caution."+k.Name)
						}
					}
					for _, name := range names {
						if c := results(other)[side].Choices[name]; c != nil && c.Whatever && !r.Choices[name].Whatever {
							found[fmt.Sprint(side, " ", name, " ", measure)] = "" // it may be said or not: what is known is compared
							continue
						}
						if how := differs(base, other, side, name); how != "" {
							found[fmt.Sprint(side, " ", name, " ", measure)] = fmt.Sprint(how, " at ", value)
						}
					}
				}
			})
			for what, how := range found {
				if plain && !said[what] && how != "" {
					doc, _ := a.JSON()
					t.Fatalf("seed %d:\n%s\n%s\n%s: %s", seed, s, doc, what, how)
				}
			}
			for what := range said {
				if _, ok := found[what]; !ok {
					doc, _ := a.JSON()
					for _, r := range results(o) {
						for _, b := range r.Boundaries {
							t.Logf("%+v", b)
						}
					}
					t.Fatalf("seed %d:\n%s\n%s\n%s is said to be close to a boundary, and no value changes it", seed, s, doc, what)
				}
			}
		}
	}
	t.Log(near, "boundaries,", tried, "values tried")
	if near < 50 {
		t.Error("too few boundaries")
	}
}

// absolute names a measure by its side.
func absolute(path, side string) string {
	root, name, _ := strings.Cut(path, ".")
	switch root {
	case "limb":
		return side + "." + name
	case "other":
		return string(assess.Side(side).Opposite()) + "." + name
	}
	return path
}

package biomech

import (
	"maps"
	"math"
	"strings"
	"testing"

	"crus/engine/clinical"
)

// mechanicsCheckers are those of stiffness, forces, struts and uncertainty.
func mechanicsCheckers() map[string]checker {
	out := map[string]checker{}
	for _, m := range []map[string]checker{stiffnessCheckers(), strutCheckers(), forceCheckers(), uncertaintyCheckers()} {
		maps.Copy(out, m)
	}
	return out
}

// published reads a named number of what the row expects.
func (c checkCase) published(t *testing.T, name string) float64 {
	t.Helper()
	return checkCase{id: c.id, inputs: c.expected}.in(t, name)
}

// nearly holds a result against a number to a relative tolerance.
func nearly(t *testing.T, what string, got, want, relative float64) {
	t.Helper()
	if !(math.Abs(got-want) <= relative*math.Abs(want)) {
		t.Errorf("%s is %v, want %v to %v of it", what, got, want, relative)
	}
}

// converted gives a number of one unit in another.
func converted(t *testing.T, v float64, from, to string) float64 {
	t.Helper()
	a, ok := clinical.UnitByCode(from)
	b, ok2 := clinical.UnitByCode(to)
	q, err := clinical.NewQuantity(v, a)
	got, ok3 := q.In(b)
	if !ok || !ok2 || !ok3 || err != nil {
		t.Fatalf("%v %s is nothing in %s: %v", v, from, to, err)
	}
	return got
}

func stiffnessCheckers() map[string]checker {
	bySlope := func(t *testing.T, c checkCase) { c.wants(t, must(t)(NormalStiffness(c.in(t, "k"), c.in(t, "M")))) }
	return map[string]checker{
		"peakPFmoment_Nm": func(t *testing.T, c checkCase) {
			c.wants(t, must(t)(PeakAnkleMoment(c.in(t, "m_norm"), c.in(t, "M"))))
		},
		"K_demand_Nm_per_deg": func(t *testing.T, c checkCase) {
			c.wants(t, must(t)(StiffnessDemand(c.in(t, "k"), c.in(t, "M"), c.in(t, "residual"))))
		},
		"K_deficit_Nm_per_deg": func(t *testing.T, c checkCase) {
			c.wants(t, must(t)(StiffnessFromDeficit(c.in(t, "m_norm")*c.in(t, "M"), c.in(t, "m_pat")*c.in(t, "M"), c.in(t, "DFexc_deg"))))
		},
		"dMaxDF_deg;dPower_W_kg": func(t *testing.T, c checkCase) {
			from, to := c.in(t, "K1"), c.in(t, "K2")
			c.wants(t, must(t)(DorsiflexionChange(DorsiflexionSlope, from, to)), must(t)(PowerChange(PowerSlope, from, to)))
		},
		"single_heel_rise_moment_Nm": func(t *testing.T, c checkCase) {
			c.wants(t, must(t)(HeelRiseMoment(c.in(t, "M"), 1000*c.in(t, "lever_m"))))
		},
		"Nm_per_deg->Nm_per_rad": func(t *testing.T, c checkCase) {
			c.wants(t, converted(t, leading(t, c.id, c.inputs), "N.m/deg", "N.m/rad"))
		},
		"peakPF_by_speed_interp Nm/kg": func(t *testing.T, c checkCase) {
			v := c.in(t, "v*")
			c.wants(t, must(t)(PeakMomentAt(v)))
			// The same walker, of a kilogram and a leg of a metre.
			c.wants(t, must(t)(PeakAnkleMomentAt(1, 1, v*math.Sqrt(Gravity), 1000)))
		},
		"K_norm from set slope": bySlope,
	}
}

func strutCheckers() map[string]checker {
	const giga = 1e6 // kPa
	return map[string]checker{
		"strut: I_mm4,EI_Nm2,K_Nm_rad,K_Nm_deg": func(t *testing.T, c checkCase) {
			e, b, h, l := giga*c.in(t, "E"), 1000*c.in(t, "b"), 1000*c.in(t, "t"), 1000*c.in(t, "L")
			beam, err := NewBeam(e, b, h, l)
			if err != nil {
				t.Fatal(err)
			}
			k := must(t)(StrutStiffness(e, b, h, l))
			c.wants(t, beam.Bending/(e/1000), beam.Bending/1e6, converted(t, k, "N.m/deg", "N.m/rad"), k)
		},
		"K_calf_force_Nm_rad": func(t *testing.T, c checkCase) {
			const e, b, h = 60 * giga, 40, 4 // the strut of B1.1, whose bending stiffness the rows take
			l := 1000 * c.in(t, "L")
			beam, err := NewBeam(e, b, h, l)
			if err != nil {
				t.Fatal(err)
			}
			nearly(t, c.id+": E·I", beam.Bending/1e6, c.in(t, "EI"), 1e-12)
			k := must(t)(StrutStiffnessAtHeight(e, b, h, l, 1000*c.in(t, "h")))
			radian, degree, _ := strings.Cut(c.expected, "(")
			c.close(t, []string{radian, degree}, converted(t, k, "N.m/deg", "N.m/rad"), k)
		},
		"pure_moment_cantilever": func(t *testing.T, c checkCase) {
			l, y := 1000*c.in(t, "L"), c.in(t, "y")
			radius := y / c.in(t, "eps_max")
			beam := Beam{Length: l, Bending: 1e6}
			rotation, shift := beam.UnderCouple(beam.Bending / radius)
			nearly(t, "radius, m", radius/1000, c.published(t, "rho"), 1e-12)
			nearly(t, "curvature, 1/m", 1000*rotation/l, c.published(t, "kappa"), 1e-4)
			nearly(t, "rotation, rad", rotation, c.published(t, "theta"), 1e-12)
			nearly(t, "shift, mm", shift, c.published(t, "delta"), 1e-12)
			// The strain at that rotation, of a strut of half the thickness and so half the strain (this one is not slender).
			nearly(t, "strain", 2*must(t)(StrutStrain(y, l, degrees(rotation))), c.in(t, "eps_max"), 1e-12)
		},
		"tip_load_cantilever": func(t *testing.T, c checkCase) {
			beam := Beam{Length: 1000 * c.in(t, "L")}
			if strings.Contains(c.inputs, "I=") {
				beam.Bending = c.in(t, "E") * c.in(t, "I") * 1e6
			} else {
				section, err := NewBeam(c.in(t, "E")/1000, c.in(t, "b"), c.in(t, "t"), beam.Length)
				if err != nil {
					t.Fatal(err)
				}
				beam.Bending = section.Bending
			}
			rotation, shift := beam.UnderForce(c.in(t, "P"))
			nearly(t, "rotation, rad", rotation, c.published(t, "theta"), 1e-12)
			nearly(t, "shift, mm", shift, c.published(t, "delta"), 3e-6)
		},
		"layer_ratio (n2/n1)^3": func(t *testing.T, c checkCase) {
			c.wants(t, must(t)(LayersStiffnessRatio(c.in(t, "n1"), c.in(t, "n2"))))
		},
		"layers_needed": func(t *testing.T, c checkCase) {
			n, from, to := c.in(t, "n1"), c.in(t, "K1"), c.in(t, "K2")
			c.wants(t, must(t)(LayersExact(n, from, to)))
			if got, want := must(t)(LayersFor(n, from, to)), math.Ceil(leading(t, c.id, c.expected)); got != want {
				t.Errorf("%s: %v layers, want %v", c.id, got, want)
			}
		},
		"surface_strain, stress_MPa": func(t *testing.T, c checkCase) {
			strain := must(t)(StrutStrain(c.in(t, "t"), c.in(t, "L"), c.in(t, "theta")))
			stress := must(t)(StrutStress(giga*c.in(t, "E"), c.in(t, "t"), c.in(t, "L"), c.in(t, "theta")))
			c.wants(t, strain, converted(t, stress, "kPa", "MPa"))
			nearly(t, "strain", strain, leading(t, c.id, c.expected), 2e-5)
		},
		"rel u(K)": func(t *testing.T, c checkCase) {
			k := must(t)(StrutStiffness(60*giga, 40, 4, 200))
			u, err := Propagate(func(x []float64) (float64, error) { return StrutStiffness(x[0], x[1], x[2], x[3]) }, []Input{
				{Name: "modulus", Value: 60 * giga, U: 60 * giga * c.in(t, "uE/E")}, {Name: "width", Value: 40, U: 40 * c.in(t, "ub/b")},
				{Name: "thickness", Value: 4, U: 4 * c.in(t, "ut/t")}, {Name: "length", Value: 200, U: 200 * c.in(t, "uL/L")},
			}, nil)
			if err != nil {
				t.Fatal(err)
			}
			c.wants(t, u.U/k)
			nearly(t, "the part of the thickness", u.Parts[2].U/k, 3*c.in(t, "ut/t"), 1e-3)
		},
	}
}

func forceCheckers() map[string]checker {
	bent := func(t *testing.T, c checkCase, ankle float64) Bent {
		t.Helper()
		b, err := ThreePointBent(c.in(t, "M"), 1000*c.in(t, "Lc"), 1000*c.in(t, "Lf"), ankle)
		if err != nil {
			t.Fatal(err)
		}
		return b
	}
	const cm2 = 100 // mm²
	return map[string]checker{
		"equinus_3pt: Fcalf,Fplantar,Finstep,angle_deg_from_horizontal": func(t *testing.T, c checkCase) {
			b := bent(t, c, 0)
			c.wants(t, b.Shank, b.Forefoot, b.Ankle, b.Direction)
		},
		"equinus_3pt_PF_device: Finstep": func(t *testing.T, c checkCase) {
			c.wants(t, bent(t, c, -c.in(t, "A_PF_deg")).Ankle)
		},
		"parallel_3pt: F1,F3,F2": func(t *testing.T, c checkCase) {
			p, err := ThreePointParallel(c.in(t, "M"), 1000*c.in(t, "a"), 1000*c.in(t, "b"))
			if err != nil {
				t.Fatal(err)
			}
			c.wants(t, p.Outer, p.OtherOuter, p.Middle)
		},
		"pretibial_force_N": func(t *testing.T, c checkCase) {
			crouch, err := Crouch(c.in(t, "M"), 1000*c.in(t, "Lt"), 120, 0)
			if err != nil {
				t.Fatal(err)
			}
			c.wants(t, crouch.Forces[0].N)
		},
		"mean_pressure_kPa": func(t *testing.T, c checkCase) {
			c.wants(t, must(t)(MeanPressure(c.in(t, "F_N"), cm2*c.in(t, "A_cm2"))))
		},
		"strap: T_N, p_kPa=T/(w r)": func(t *testing.T, c checkCase) {
			f := c.in(t, "F")
			c.wants(t, must(t)(StrapTension(f)), must(t)(StrapPressure(f, 1000*c.in(t, "w_m"), 1000*c.in(t, "r_m"))))
		},
		"min_area_cm2": func(t *testing.T, c checkCase) {
			c.wants(t, must(t)(LeastArea(c.in(t, "F"), c.in(t, "p_kPa")))/cm2)
		},
		"mmHg->kPa": func(t *testing.T, c checkCase) {
			c.wants(t, converted(t, leading(t, c.id, c.inputs), "mm[Hg]", "kPa"))
		},
	}
}

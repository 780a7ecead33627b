package biomech

import (
	"errors"
	"fmt"
	"math"
)

// Input is one input of a calculation with its standard uncertainty.
type Input struct {
	Name    string
	Value   float64
	U       float64 // standard uncertainty, in the unit of Value; 0: exact
	Freedom float64 // degrees of freedom of U; 0: so many that they do not matter
}

// Contribution is what one input adds to the uncertainty of a result.
type Contribution struct {
	Name string
	U    float64 // sensitivity times standard uncertainty, with its sign, in the unit of the result
}

// Uncertainty is a result with its standard uncertainty.
type Uncertainty struct {
	Value   float64
	U       float64        // combined standard uncertainty
	Parts   []Contribution // in the order of the inputs
	Freedom float64        // effective degrees of freedom (Welch-Satterthwaite); 0: so many that they do not matter, or inputs that are correlated, for which they are not defined
	Flat    []string       // uncertain inputs to which the result does not respond at first order: its uncertainty may be too small
}

// Correlation tells the correlation coefficient of the i-th and the j-th input, from −1 to 1; it is asked for
// i < j only. A nil Correlation means independent inputs.
type Correlation func(i, j int) float64

// Propagate works f out and propagates the standard uncertainties of its inputs at first order:
//
//	u²(y) = Σᵢ Σⱼ cᵢ cⱼ uᵢ uⱼ rᵢⱼ,  cᵢ uᵢ = (f(xᵢ + uᵢ) − f(xᵢ − uᵢ)) / 2
//
// Where f fails on one side, the difference is taken on the other alone; where it fails on both, its error is
// returned, as it is where f fails on the values themselves. The effective degrees of freedom are u⁴ over the sum
// of (cᵢ uᵢ)⁴/νᵢ. Units are those of the inputs and of f. Values and uncertainties that are no numbers, an
// uncertainty below 0, and correlations that cannot be together are errors.
// Source: JCGM 100:2008, 5.1 and 5.2 for the law, G.4 for the degrees of freedom.
func Propagate(f func([]float64) (float64, error), in []Input, r Correlation) (Uncertainty, error) {
	all, _, err := PropagateAll(func(x []float64) ([]float64, error) {
		y, err := f(x)
		return []float64{y}, err
	}, in, r)
	if err != nil {
		return Uncertainty{}, err
	}
	return all[0], nil
}

// PropagateAll is [Propagate] for several results of the same inputs, and the correlation coefficients between
// them, r(yₖ, yₗ) = Σᵢ Σⱼ cₖᵢ cₗⱼ uᵢ uⱼ rᵢⱼ / (u(yₖ) u(yₗ)): a square table, 1 on its diagonal, 0 where a result is
// exact. Source: JCGM 100:2008, H.2.
func PropagateAll(f func([]float64) ([]float64, error), in []Input, r Correlation) ([]Uncertainty, [][]float64, error) {
	values, err := usable(in)
	if err != nil {
		return nil, nil, err
	}
	at, err := worked(f, values)
	if err != nil {
		return nil, nil, err
	}
	parts := make([][]float64, len(at)) // a row for each result, a column for each input
	for k := range parts {
		parts[k] = make([]float64, len(in))
	}
	for i, x := range in {
		if x.U == 0 {
			continue
		}
		d, err := difference(f, values, i, x.U, at)
		if err != nil {
			return nil, nil, err
		}
		for k := range d {
			parts[k][i] = d[k]
		}
	}
	covariance, err := combined(parts, in, r)
	if err != nil {
		return nil, nil, err
	}
	out := make([]Uncertainty, len(at))
	table := make([][]float64, len(at))
	for k := range at {
		out[k] = summed(at[k], math.Sqrt(covariance[k][k]), parts[k], in, r == nil)
	}
	for k := range at {
		table[k] = make([]float64, len(at))
		for l := range at {
			if u := out[k].U * out[l].U; u > 0 {
				table[k][l] = covariance[k][l] / u
			}
		}
		table[k][k] = 1
	}
	return out, table, nil
}

func usable(in []Input) ([]float64, error) {
	values := make([]float64, len(in))
	for i, x := range in {
		if err := first(finite(x.Name, x.Value), finite("uncertainty of the "+x.Name, x.U), finite("degrees of freedom of the "+x.Name, x.Freedom)); err != nil {
			return nil, err
		}
		if x.U < 0 || x.Freedom < 0 {
			return nil, outside("The uncertainty of the %s and its degrees of freedom cannot be less than nothing.", x.Name)
		}
		values[i] = x.Value
	}
	return values, nil
}

// worked is f, whose results must be numbers.
func worked(f func([]float64) ([]float64, error), x []float64) ([]float64, error) {
	y, err := f(x)
	for _, v := range y {
		_, err2 := small(v)
		err = first(err, err2)
	}
	return y, err
}

// difference is how much each result changes with one standard uncertainty of the i-th input.
func difference(f func([]float64) ([]float64, error), values []float64, i int, u float64, at []float64) ([]float64, error) {
	moved := func(by float64) ([]float64, error) {
		x := append([]float64(nil), values...) // f may keep or change what it is given
		x[i] += by
		return worked(f, x)
	}
	up, errUp := moved(u)
	down, errDown := moved(-u)
	span := 2.0
	switch {
	case errUp != nil && errDown != nil:
		return nil, errUp
	case errUp != nil:
		up, span = at, 1
	case errDown != nil:
		down, span = at, 1
	}
	if len(up) != len(at) || len(down) != len(at) {
		return nil, errors.New("the number of results changes with the inputs")
	}
	out := make([]float64, len(at))
	for k := range at {
		out[k] = (up[k] - down[k]) / span
	}
	return out, nil
}

// combined is the covariance of each result with each.
func combined(parts [][]float64, in []Input, r Correlation) ([][]float64, error) {
	correlated := func(i, j int) float64 {
		switch {
		case i == j:
			return 1
		case r == nil:
			return 0
		}
		return r(min(i, j), max(i, j))
	}
	for i := range in {
		for j := range i {
			if c := correlated(i, j); !(c >= -1 && c <= 1) {
				return nil, fmt.Errorf("the correlation of %s and %s is %v; it must be from −1 to 1", in[j].Name, in[i].Name, c)
			}
		}
	}
	out := make([][]float64, len(parts))
	for k := range parts {
		out[k] = make([]float64, len(parts))
		for l := range k + 1 {
			for i, a := range parts[k] {
				for j, b := range parts[l] {
					out[k][l] += a * b * correlated(i, j)
				}
			}
			out[l][k] = out[k][l]
		}
		var size float64 // of the terms, against which a rounding error is small
		for _, a := range parts[k] {
			size += a * a
		}
		switch v := out[k][k]; {
		case math.IsNaN(v) || math.IsInf(v, 0):
			return nil, errors.New("the uncertainty is too large to be worked out")
		case v < -1e-9*size:
			return nil, errors.New("the correlations of the inputs contradict each other: the square of the uncertainty would be below 0")
		case v < 0:
			out[k][k] = 0
		}
	}
	return out, nil
}

// summed puts a result together from its parts.
func summed(value, u float64, parts []float64, in []Input, independent bool) Uncertainty {
	out := Uncertainty{Value: value, U: u}
	var spread float64 // Σ (cᵢ uᵢ)⁴/νᵢ over u⁴
	for i, p := range parts {
		out.Parts = append(out.Parts, Contribution{in[i].Name, p})
		if in[i].U > 0 && math.Abs(p) <= 1e-12*math.Abs(value) {
			out.Flat = append(out.Flat, in[i].Name)
		}
		if in[i].Freedom > 0 && u > 0 {
			spread += math.Pow(p/u, 4) / in[i].Freedom
		}
	}
	if independent && spread > 0 {
		out.Freedom = 1 / spread
	}
	return out
}

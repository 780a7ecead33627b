package biomech

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
	Freedom float64        // effective degrees of freedom (Welch-Satterthwaite); 0: so many that they do not matter
	Flat    []string       // uncertain inputs to which the result does not respond at first order
}

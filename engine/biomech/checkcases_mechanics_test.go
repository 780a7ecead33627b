package biomech

// mechanicsCheckers are those of stiffness, forces, struts and uncertainty.
func mechanicsCheckers() map[string]checker { return nil }

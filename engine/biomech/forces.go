package biomech

func forces() []*Formula { return nil }

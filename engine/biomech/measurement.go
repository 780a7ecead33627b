package biomech

func measurement() []*Formula { return nil }

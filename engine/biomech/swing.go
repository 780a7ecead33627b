package biomech

func swing() []*Formula { return nil }

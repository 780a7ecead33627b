package biomech

func stiffnesses() []*Formula { return nil }

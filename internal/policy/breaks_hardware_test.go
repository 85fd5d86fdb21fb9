package policy_test

func breaksHardware() []broken {
	return []broken{}
}

package policy_test

func breaksBridle() []broken {
	return []broken{}
}

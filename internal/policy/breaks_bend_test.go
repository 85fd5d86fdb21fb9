package policy_test

func breaksBend() []broken {
	return []broken{}
}

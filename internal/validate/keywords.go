package validate

import (
	"fmt"

	"github.com/santhosh-tekuri/jsonschema/v5"

	"liftlint/internal/quantity"
)

// quantityKeyword compiles `quantity: <kind>` with its companion `sign`. A
// schema that has one without the other, or a name that does not exist, is
// refused: an unread keyword would let everything through.
type quantityKeyword struct{}

func (quantityKeyword) Compile(_ jsonschema.CompilerContext, m map[string]any) (jsonschema.ExtSchema, error) {
	name, hasKind := m["quantity"]
	sign, hasSign := m["sign"]
	if !hasKind && !hasSign {
		return nil, nil
	}
	kind, err := quantity.ParseKind(fmt.Sprint(name))
	if err != nil {
		return nil, fmt.Errorf("validate: keyword quantity: %w", err)
	}
	s, err := quantity.ParseSign(fmt.Sprint(sign))
	if err != nil {
		return nil, fmt.Errorf("validate: keyword sign: %w", err)
	}
	return quantityRule{kind, s}, nil
}

type quantityRule struct {
	kind quantity.Kind
	sign quantity.Sign
}

func (r quantityRule) Validate(ctx jsonschema.ValidationContext, v any) error {
	text, ok := v.(string)
	if !ok {
		return nil // `type` has its own message
	}
	if err := r.kind.CheckSign(text, r.sign); err != nil {
		return ctx.Error("quantity", "%v", err)
	}
	return nil
}

// dayKeyword compiles `calendar_day: true`.
type dayKeyword struct{}

func (dayKeyword) Compile(_ jsonschema.CompilerContext, m map[string]any) (jsonschema.ExtSchema, error) {
	v, ok := m["calendar_day"]
	if !ok {
		return nil, nil
	}
	if v != true {
		return nil, fmt.Errorf("validate: keyword calendar_day is %v; only true has a meaning", v)
	}
	return dayRule{}, nil
}

type dayRule struct{}

func (dayRule) Validate(ctx jsonschema.ValidationContext, v any) error {
	text, ok := v.(string)
	if !ok {
		return nil
	}
	if !isDay(text) {
		return ctx.Error("calendar_day", "not a day of the calendar")
	}
	return nil
}

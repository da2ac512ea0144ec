package hook_test

import (
	"encoding/json"
	"fmt"

	"example.com/panelmath/gauge/hook"
	"github.com/shopspring/decimal"
)

func ExampleParse() {
	h, err := hook.Parse("5.5 mm")
	fmt.Println(h, err)
	_, err = hook.Parse("P/16")
	fmt.Println(err)
	// Output:
	// 5.5 mm <nil>
	// parse hook: "P/16": a label, which makers use differently; write the diameter: 11 mm or 11.5 mm
}

func ExampleMust() {
	fmt.Println(hook.Must("0.55 cm"))
	// Output:
	// 5.5 mm
}

func ExampleLabelled() {
	fmt.Println(hook.Labelled("P-16"), hook.Labelled("h/8"), hook.Labelled("Z"))
	// Output:
	// [11 mm 11.5 mm] [5 mm] []
}

func ExampleHook_US() {
	fmt.Println(hook.Must("5.5 mm").US())
	// Output:
	// I-9
}

func ExampleHook_UK() {
	fmt.Println(hook.Must("5.5 mm").UK())
	// Output:
	// 5
}

func ExampleHook_Labels() {
	for _, l := range hook.Must("9 mm").Labels() {
		fmt.Println(l.Scheme, l.Text, "-", l.Check)
	}
	// Output:
	// US M/N-13 - two sources
	// old UK 00 - two sources
	// US M-13 - two sources
}

func ExampleHook_Explain() {
	fmt.Println(hook.Must("5.5 mm").Explain())
	fmt.Println(hook.Must("5.3 mm").Explain())
	// Output:
	// 5.5 mm: US I-9 (two sources), old UK 5 (two sources)
	// 5.3 mm: no label in the table
}

func ExampleHook_Larger() {
	fmt.Println(hook.Must("5 mm").Larger())
	// Output:
	// 5.5 mm true
}

func ExampleHook_Smaller() {
	fmt.Println(hook.Must("5.5 mm").Smaller())
	// Output:
	// 5 mm true
}

func ExampleHook_String() {
	fmt.Println(hook.Hook{Diameter: decimal.RequireFromString("5.50")})
	// Output:
	// 5.5 mm
}

func ExampleHook_Validate() {
	fmt.Println(hook.Hook{}.Validate())
	// Output:
	// Hook.Diameter: got 0, want more than 0 and at most 50
}

func ExampleHook_MarshalText() {
	b, err := json.Marshal(hook.Must("5.5 mm"))
	fmt.Println(string(b), err)
	// Output:
	// "5.5 mm" <nil>
}

func ExampleHook_UnmarshalText() {
	var h hook.Hook
	err := json.Unmarshal([]byte(`"5.5mm"`), &h)
	fmt.Println(h.US(), err)
	// Output:
	// I-9 <nil>
}

func ExampleScheme_String() {
	fmt.Println(hook.US, "/", hook.OldUK, "/", hook.Steel, "/", hook.Lace)
	// Output:
	// US / old UK / steel / lace
}

func ExampleScheme_MarshalText() {
	b, err := json.Marshal(hook.OldUK)
	fmt.Println(string(b), err)
	// Output:
	// "old UK" <nil>
}

func ExampleScheme_UnmarshalText() {
	var s hook.Scheme
	err := json.Unmarshal([]byte(`"steel"`), &s)
	fmt.Println(s, err)
	// Output:
	// steel <nil>
}

func ExampleCheck_String() {
	fmt.Println(hook.TwoSources, "/", hook.OneSource, "/", hook.FromMemory)
	// Output:
	// two sources / one source / from memory
}

func ExampleCheck_MarshalText() {
	b, err := json.Marshal(hook.TwoSources)
	fmt.Println(string(b), err)
	// Output:
	// "two sources" <nil>
}

func ExampleCheck_UnmarshalText() {
	var c hook.Check
	err := json.Unmarshal([]byte(`"one source"`), &c)
	fmt.Println(c, err)
	// Output:
	// one source <nil>
}

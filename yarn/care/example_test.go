package care_test

import (
	"fmt"

	"example.com/panelmath/yarn/care"
)

// What to print beside the finishing of a cotton blend.
func Example() {
	advice, err := care.ForLabel("a DK cotton blend")
	for _, a := range advice {
		fmt.Println(a)
	}
	fmt.Println(err)
	for _, c := range care.Cautions(care.SteamBurns, care.Hands) {
		fmt.Println(c.Text)
	}
	// Output:
	// other, wet: with care: for this fibre, or for the rest of the blend, there is no advice on record: follow the care symbols of the label and test on a swatch first
	// other, spray: with care: for this fibre, or for the rest of the blend, there is no advice on record: follow the care symbols of the label and test on a swatch first
	// other, steam: avoid: for this fibre, or for the rest of the blend, there is no advice on record: follow the care symbols of the label and test on a swatch first
	// <nil>
	// Steam burns. Keep hands and face off the vents, and let the fabric cool and dry before you move it.
	// Rest your hands: put the work down and move for a minute or two after every 20 minutes, and stop when it hurts. Pain that stays is for a doctor.
}

func ExampleFibres() {
	for _, label := range []string{"100% superwash merino wool", "60% cotton, 40% acrylic", "cotton blend", "yak"} {
		found, err := care.Fibres(label)
		fmt.Println(found, err)
	}
	// Output:
	// [superwash wool] <nil>
	// [cotton acrylic and other synthetics] <nil>
	// [other cotton] <nil>
	// [other] <nil>
}

func ExampleBlocking() {
	for _, a := range care.Blocking(care.Acrylic) {
		fmt.Println(a)
	}
	// Output:
	// acrylic and other synthetics, wet: suits
	// acrylic and other synthetics, spray: suits
	// acrylic and other synthetics, steam: disputed: a handbook says never, two makers say it is the method that works; if you steam: test on a swatch first, hover 1 to 2 in (2.5 to 5 cm) above, never touch with the iron; too much heat is permanent, and sources put the beginning of damage at 110 °C (230 °F) and at 149 °C (300 °F), below a cotton setting
}

func ExampleForLabel() {
	advice, err := care.ForLabel("80% wool, 20% silk")
	for _, a := range advice {
		fmt.Println(a.Method, a.Verdict, "for the", a.Fibre)
	}
	fmt.Println(err)
	// Output:
	// wet with care for the silk
	// spray with care for the silk
	// steam with care for the silk
	// <nil>
}

func ExampleAdvice_String() {
	fmt.Println(care.Blocking(care.Silk)[0])
	// Output: silk, wet: with care
}

func ExampleCautions() {
	for _, c := range care.Cautions(care.Hands) {
		fmt.Println(c.Place+":", c.Text, "("+c.Source+")")
	}
	// Output:
	// before the first long stretch of work: Rest your hands: put the work down and move for a minute or two after every 20 minutes, and stop when it hurts. Pain that stays is for a doctor. (The Breaking Point, mamas2hands; East Lancs RSI Group)
}

func ExampleFibre_String() {
	fmt.Println(care.Mohair, "|", care.Acrylic)
	// Output: mohair and angora | acrylic and other synthetics
}

func ExampleFibre_MarshalText() {
	b, err := care.Cotton.MarshalText()
	fmt.Println(string(b), err)
	// Output: cotton <nil>
}

func ExampleFibre_UnmarshalText() {
	var f care.Fibre
	err := f.UnmarshalText([]byte("superwash wool"))
	fmt.Println(f, err)
	// Output: superwash wool <nil>
}

func ExampleMethod_String() {
	fmt.Println(care.Wet, care.Spray, care.Steam)
	// Output: wet spray steam
}

func ExampleMethod_MarshalText() {
	b, err := care.Steam.MarshalText()
	fmt.Println(string(b), err)
	// Output: steam <nil>
}

func ExampleMethod_UnmarshalText() {
	var m care.Method
	err := m.UnmarshalText([]byte("spray"))
	fmt.Println(m, err)
	// Output: spray <nil>
}

func ExampleVerdict_String() {
	fmt.Println(care.Suits, care.WithCare, care.Disputed, care.Avoid)
	// Output: suits with care disputed avoid
}

func ExampleVerdict_MarshalText() {
	b, err := care.WithCare.MarshalText()
	fmt.Println(string(b), err)
	// Output: with care <nil>
}

func ExampleVerdict_UnmarshalText() {
	var v care.Verdict
	err := v.UnmarshalText([]byte("avoid"))
	fmt.Println(v, err)
	// Output: avoid <nil>
}

func ExampleTopic_String() {
	fmt.Println(care.SteamBurns, care.Hands)
	// Output: steam hands
}

func ExampleTopic_MarshalText() {
	b, err := care.Hands.MarshalText()
	fmt.Println(string(b), err)
	// Output: hands <nil>
}

func ExampleTopic_UnmarshalText() {
	var t care.Topic
	err := t.UnmarshalText([]byte("hands"))
	fmt.Println(t, err)
	// Output: hands <nil>
}

package main

import (
	"errors"
	"fmt"
	"strings"

	"example.com/panelmath/examples/internal/command"
	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/number"
	"example.com/panelmath/internal/text"
	"example.com/panelmath/yarn"
	"example.com/panelmath/yarn/stash"
	"github.com/shopspring/decimal"
)

// question is what the maker asks, as the flags say it. What she left out is
// its zero value.
type question struct {
	file, format, size string

	have   [][]amount // each a dye lot of its own
	label  yarn.Label // her yarn; that of the brief where it is unset
	margin *yarn.Margin
}

// ask reads the flags. Asked for help it returns flag.ErrHelp and the text.
func ask(args []string) (q question, help []byte, err error) {
	f := command.New("onhand")
	q.format = "markdown"
	command.Text(f, "brief", "the brief to read, - for standard input (default: one that the program holds)", func(s string) { q.file = s })
	command.Text(f, "format", "what to print: markdown (the default) or json", func(s string) { q.format = s })
	command.Text(f, "size", "the size that you would like to make, by its name: 8, or XL–2X", func(s string) { q.size = s })
	command.ReadEach(f, "have", `the yarn you have: "6 skeins", "2.5 skeins and 35 g", "900 yd"; given several times, each is a dye lot of its own`, parseAmounts,
		func(a []amount) { q.have = append(q.have, a) })
	command.Read(f, "label", `what the label of your skeins says, where it is not the yarn of the brief: "210 m = 50 g"`, yarn.ParseLabel, func(l yarn.Label) { q.label = l })
	command.Read(f, "margin", `what to keep to spare, instead of what the brief has: "5%"`, yarn.ParseMargin, func(m yarn.Margin) { q.margin = &m })
	if help, err := f.Parse(args); err != nil {
		return question{}, help, err
	}
	switch {
	case len(q.have) == 0:
		return question{}, nil, errors.New(`-have: missing; want the yarn you have, "6 skeins" or "430 g" or "900 yd"`)
	case len(q.have) > stash.MaxLots:
		return question{}, nil, fmt.Errorf("-have: given %d times, want at most %d lots", len(q.have), stash.MaxLots)
	case q.margin != nil && q.margin.Percent.Sign() < 0:
		return question{}, nil, fmt.Errorf("-margin: got %v, want 0%% or more", q.margin)
	case q.format != "markdown" && q.format != "json":
		return question{}, nil, fmt.Errorf("-format: got %s, want markdown or json", text.Quote(q.format))
	}
	return q, nil, nil
}

// mostAmounts is the most that one lot is added up from.
const mostAmounts = 100

// amount is yarn at hand: a number of skeins, a mass or a length. One of the
// three is set.
type amount struct {
	skeins decimal.Decimal
	mass   yarn.Mass
	length yarn.Length
}

// parseAmounts reads "4 skeins and 35 g", "900 yd", "2.5 skeins + 120 g".
func parseAmounts(s string) (all []amount, err error) {
	if len(s) > text.Limit {
		return nil, errors.New("text too long; at most 10000 characters")
	}
	for _, part := range strings.Split(strings.ReplaceAll(s, " and ", "+"), "+") {
		a, err := parseAmount(strings.TrimSpace(part))
		if err != nil {
			return nil, err
		}
		if all = append(all, a); len(all) > mostAmounts {
			return nil, fmt.Errorf("more than %d amounts", mostAmounts)
		}
	}
	return all, nil
}

func parseAmount(s string) (amount, error) {
	for _, word := range []string{"skeins", "skein"} {
		if number, ok := strings.CutSuffix(s, word); ok {
			return parseSkeins(strings.TrimSpace(number))
		}
	}
	if m, err := yarn.ParseMass(s); err == nil {
		return amount{mass: m}, nil
	}
	l, err := yarn.ParseLength(s)
	if err != nil {
		return amount{}, errors.New(`want skeins, a mass or a length: "6 skeins", "430 g", "900 yd"`)
	}
	return amount{length: l}, nil
}

// parseSkeins reads a number as lengths are written: 2.5, 2 1/2, 2½.
func parseSkeins(s string) (amount, error) {
	minus, at := number.Sign(s)
	n, read, trouble := number.Scan(s[at:])
	switch {
	case trouble != nil:
		return amount{}, errors.New(trouble.Cause)
	case read == 0 || at+read < len(s):
		return amount{}, errors.New("want a number of skeins like 6, 2.5 or 2 1/2, got " + text.Quote(s))
	case minus || n.GreaterThan(decimal.NewFromInt(gauge.MaxCount)):
		return amount{}, fmt.Errorf("want 0 to %d skeins, got %s", gauge.MaxCount, text.Quote(s))
	}
	return amount{skeins: n}, nil
}

// holding returns the amount as yarn of a label. A part of a skein is told by
// its mass, as it would be weighed.
func (a amount) holding(label yarn.Label) stash.Holding {
	switch {
	case a.mass.Unit.Valid():
		return stash.Holding{Label: label, Rest: a.mass}
	case a.length.Unit.Valid():
		if a.length.Value.Sign() == 0 {
			return stash.Holding{Label: label}
		}
		// One skein of that length; what it weighs is not asked.
		return stash.Holding{Label: yarn.Label{Length: a.length, Mass: label.Mass}, Skeins: 1}
	}
	whole := a.skeins.Truncate(0)
	h := stash.Holding{Label: label, Skeins: int(whole.IntPart())}
	if part := a.skeins.Sub(whole); part.Sign() > 0 {
		h.Rest = yarn.Mass{Value: part.Mul(label.Mass.Value), Unit: label.Mass.Unit}
	}
	return h
}

package usage

import (
	"fmt"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/number"
	"example.com/panelmath/yarn"
	"example.com/panelmath/yarn/internal/bound"
	"example.com/panelmath/yarn/internal/say"
	"github.com/shopspring/decimal"
)

// Project is a finished piece of work in the same fabric and what it used: its
// own mass, or the skeins that went into it and the mass of what was left. Just
// one of Mass and Skeins is set. Skeins whose rest was not weighed are known only
// to the last one: the line then takes them all, and Less is one skein.
//
// It scales what was used, never a number of skeins. The zero value is not valid.
type Project struct {
	Label  yarn.Label      `json:"label"`
	Area   yarn.Area       `json:"area,omitzero"`   // of the finished piece; needed by Fabric alone
	Mass   yarn.Mass       `json:"mass,omitzero"`   // of the finished piece
	Skeins decimal.Decimal `json:"skeins,omitzero"` // begun; more than 0
	Left   yarn.Mass       `json:"left,omitzero"`   // of what was left of them; unset where it was not weighed
}

// Validate returns a *gauge.FieldError if the label, the mass, the skeins or the
// rest is not valid, both or neither of Mass and Skeins are set, or as much was
// left as there was.
func (p Project) Validate() error {
	if err := p.Label.Validate(); err != nil {
		return gauge.InField("Project", err)
	}
	skeins, err := bound.Number("Project.Skeins", p.Skeins)
	if err != nil {
		return err
	}
	if !p.Mass.IsZero() {
		if skeins.Sign() != 0 {
			return &gauge.FieldError{Field: "Project.Skeins", Got: "both a mass and skeins", Want: "one of the two"}
		}
		return positive("Project.Mass", p.Mass, p.Mass.Value)
	}
	if skeins.Sign() <= 0 || skeins.Cmp(gauge.Int(gauge.MaxCount)) > 0 {
		return &gauge.FieldError{Field: "Project.Skeins", Got: number.Text(p.Skeins), Want: "more than 0, at most 100000"}
	}
	if !p.Left.IsZero() {
		if err := p.Left.Validate(); err != nil {
			return gauge.InField("Project.Left", err)
		}
		if p.Left.Exact().Cmp(p.Label.Mass.Exact().Times(skeins)) >= 0 {
			return &gauge.FieldError{Field: "Project.Left", Got: p.Left.String(), Want: "less than the skeins weigh"}
		}
	}
	return nil
}

// Used returns the yarn that went into the project. It returns the error of
// Validate.
func (p Project) Used() (yarn.Line, error) {
	if err := p.Validate(); err != nil {
		return yarn.Line{}, err
	}
	u := p.Label.Length.Unit
	l := yarn.Line{Name: "finished project"}
	if !p.Mass.IsZero() {
		l.Length = p.Label.LengthOf(p.Mass.Exact())
		l.Why = fmt.Sprintf("%v at %v is %s of yarn", p.Mass, p.Label, say.In(l.Length, u))
		return checked(l)
	}
	skeins, _ := gauge.FromDecimal(p.Skeins)
	many, are := number.Text(p.Skeins)+" skeins", "are"
	if skeins.Equal(gauge.Int(1)) {
		many, are = "1 skein", "is"
	}
	if p.Left.IsZero() {
		l.Length = p.Label.Length.Measurement().Times(skeins)
		l.Less = p.Label.Length.Measurement()
		if skeins.Cmp(gauge.Int(1)) < 0 {
			l.Less = l.Length
		}
		l.Why = fmt.Sprintf("%s of %v %s at most %s, the last one begun", many, p.Label, are, say.In(l.Length, u))
		return checked(l)
	}
	l.Length = p.Label.LengthOf(p.Label.Mass.Exact().Times(skeins).Sub(p.Left.Exact()))
	l.Why = fmt.Sprintf("%s of %v less %v left %s %s of yarn", many, p.Label, p.Left, are, say.In(l.Length, u))
	return checked(l)
}

// Times returns the line for a piece that takes so many times as much: twice as
// wide, 80 stitches for 60. It returns the error of Validate, and one if times is
// negative or the line out of bounds.
func (p Project) Times(name string, times gauge.Ratio) (yarn.Line, error) {
	l, err := p.Used()
	if err != nil {
		return yarn.Line{}, err
	}
	if times.Sign() < 0 {
		return yarn.Line{}, &gauge.FieldError{Field: "Times", Got: say.Number(times), Want: "at least 0"}
	}
	l.Name = name
	l.Length, l.Less, l.More = l.Length.Times(times), l.Less.Times(times), l.More.Times(times)
	l.Why += fmt.Sprintf("; %s times as much is %s", say.Number(times), say.In(l.Length, p.Label.Length.Unit))
	return checked(l)
}

// Fabric returns the line for an area of the same fabric, in proportion to the
// area of the project. It returns the errors of Times, and one if the project's
// area is nothing.
func (p Project) Fabric(name string, a yarn.Area) (yarn.Line, error) {
	times, err := a.Per(p.Area)
	if err != nil || p.Area.Sign() < 0 {
		return yarn.Line{}, &gauge.FieldError{Field: "Project.Area", Got: p.Area.String(), Want: "more than 0"}
	}
	return p.Times(name, times)
}

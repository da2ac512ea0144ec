package fit

import (
	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
)

// Window is the ease that a wearer may get. The zero value is exactly no ease.
type Window struct {
	Least grade.Ease `json:"least"`
	Most  grade.Ease `json:"most"` // not looked at where Open
	Open  bool       `json:"open"` // no upper limit
}

// Validate returns a *gauge.FieldError if an ease is not valid, or both are
// lengths, or both percentages, and Least is above Most.
func (w Window) Validate() error {
	if err := w.Least.Validate(); err != nil {
		return gauge.InField("Window.Least", err)
	}
	if w.Open {
		return nil
	}
	if err := w.Most.Validate(); err != nil {
		return gauge.InField("Window.Most", err)
	}
	one := gauge.MeasurementOf(gauge.Int(1), gauge.Metre)
	sameKind := (w.Least.Unit == 0) == (w.Most.Unit == 0)
	if sameKind && w.Least.Finished(one).Cmp(w.Most.Finished(one)) > 0 {
		return &gauge.FieldError{Field: "Window.Most", Got: w.Most.String(), Want: "at least " + w.Least.String()}
	}
	return nil
}

// Miss returns by how much a garment lies outside the window on a body: less
// than nothing where it is too small, more than nothing where it is too large,
// nothing where it is inside.
func (w Window) Miss(body, finished gauge.Measurement) gauge.Measurement {
	if d := finished.Sub(w.Least.Finished(body)); d.Sign() < 0 {
		return d
	}
	if d := finished.Sub(w.Most.Finished(body)); !w.Open && d.Sign() > 0 {
		return d
	}
	return gauge.Measurement{}
}

// Holds reports whether a garment lies inside the window on a body.
func (w Window) Holds(body, finished gauge.Measurement) bool {
	return w.Miss(body, finished).Sign() == 0
}

// String returns "2 in to 4 in", or "6 in and more".
func (w Window) String() string {
	switch {
	case w.Open:
		return w.Least.String() + " and more"
	case w.Least.String() == w.Most.String():
		return w.Least.String()
	}
	return w.Least.String() + " to " + w.Most.String()
}

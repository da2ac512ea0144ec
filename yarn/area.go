package yarn

import "example.com/panelmath/gauge"

// Area is an exact area of fabric without a unit of its own. The zero value is
// an area of nothing.
type Area struct{ mm2 gauge.Ratio }

// Rectangle returns the area of a rectangle of finished measurements.
func Rectangle(width, height gauge.Measurement) Area {
	return Area{width.In(gauge.Millimetre).Mul(height.In(gauge.Millimetre))}
}

// In returns how many square units a is: In(gauge.Inch) is the number of square
// inches. A unit that is not valid gives 0.
func (a Area) In(u gauge.Unit) gauge.Ratio {
	mm := gauge.MeasurementOf(gauge.Int(1), u).In(gauge.Millimetre)
	if mm.Sign() == 0 {
		return gauge.Ratio{}
	}
	return over(a.mm2, mm.Mul(mm))
}

// Add returns a + b.
func (a Area) Add(b Area) Area { return Area{a.mm2.Add(b.mm2)} }

// Times returns a · x: Times(gauge.Int(2)) is the area of two such pieces.
func (a Area) Times(x gauge.Ratio) Area { return Area{a.mm2.Mul(x)} }

// Per returns a / b as a number. It returns a *gauge.FieldError if b is nothing.
func (a Area) Per(b Area) (gauge.Ratio, error) { return a.mm2.Quo(b.mm2) }

// Cmp returns -1, 0 or +1 as a is smaller than, equal to or larger than b.
func (a Area) Cmp(b Area) int { return a.mm2.Cmp(b.mm2) }

// Sign returns -1, 0 or +1.
func (a Area) Sign() int { return a.mm2.Sign() }

// String returns a in square millimetres, as a whole number, or as a fraction:
// "23225.76 mm²".
func (a Area) String() string {
	if d := a.mm2.Decimal(10); exactly(d).Equal(a.mm2) {
		return d.String() + " mm²"
	}
	return a.mm2.String() + " mm²"
}

// inSquare prints a in square u for a sentence.
func (a Area) inSquare(u gauge.Unit) string { return show(a.In(u)) + " sq " + u.String() }

package gauge

import "example.com/panelmath/internal/exact"

// Counter rounds many measurements by one gauge and one rule, which are checked
// once. It gives what Over.Round gives, several times faster. The zero value
// counts nothing: Round returns an error. It is not for files: keep the gauge and
// the rule.
type Counter struct {
	perMM, each exact.Ratio
	unit        Unit
	rule        Rule
}

// Counter returns a counter for o and r. It returns the error of Validate of
// either.
func (o Over) Counter(r Rule) (Counter, error) {
	per, err := o.perMM()
	if err != nil {
		return Counter{}, err
	}
	if err := r.Validate(); err != nil {
		return Counter{}, err
	}
	per = per.Reduced()
	return Counter{perMM: per, each: per.Inv(), unit: o.Span.Unit, rule: r}, nil
}

// Round returns the legal count for m; see Over.Round.
func (c *Counter) Round(m Measurement) (n Count, err error) {
	if c.unit == 0 {
		return Count{}, &FieldError{Field: "Counter", Got: "the zero value", Want: "a counter made by Over.Counter"}
	}
	if err := round(&c.rule, Ratio{m.mm.Mul(c.perMM)}, &n); err != nil {
		return Count{}, err
	}
	n.Each, n.Unit = Measurement{c.each}, c.unit
	return n, nil
}

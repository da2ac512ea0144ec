package row

import (
	"strconv"
	"strings"

	"example.com/panelmath/grade"
)

// Text returns the row in the given terms, as Parse reads it back.
func (r Row) Text(t Terms) string {
	w := &writer{terms: t}
	if len(r.Items) > 0 {
		_, w.overCh = r.Items[0].(FoundationChain)
	}
	w.items(r.Items)
	return w.b.String()
}

// String returns the row in US terms.
func (r Row) String() string { return r.Text(US) }

// MarshalText returns the row in US terms, or the error of Validate.
func (r Row) MarshalText() ([]byte, error) {
	if err := r.Validate(); err != nil {
		return nil, err
	}
	return []byte(r.String()), nil
}

// UnmarshalText reads a row in US terms; see Parse.
func (r *Row) UnmarshalText(b []byte) error {
	v, err := Parse(string(b), US)
	if err != nil {
		return err
	}
	*r = v
	return nil
}

// String returns "7", or one number for each size in the house style of
// grade.Text: "7 (8, 9)". An empty number is 1.
func (n Num) String() string {
	if len(n) == 0 {
		return "1"
	}
	return grade.Numbers(grade.Run[int](n))
}

// plural reports whether a noun after n takes the plural.
func (n Num) plural() bool { return !n.one() }

type writer struct {
	b      strings.Builder
	terms  Terms
	overCh bool
}

func (w *writer) put(s ...string) {
	for _, s := range s {
		w.b.WriteString(s)
	}
}

func (w *writer) items(items []Item) {
	hook := 0
	for i, it := range items {
		if i > 0 {
			w.put(", ")
		}
		if fc, ok := it.(FoundationChain); ok {
			hook = fc.Hook
			w.put("ch")
			if len(fc.Count) > 0 {
				w.put(" ", fc.Count.String())
			}
			continue
		}
		if wk, ok := it.(Work); ok && wk.At == FirstChain {
			w.make(wk.Make)
			w.put(" in ", ordinal(hook), " ch from hook")
			if fc, ok := items[0].(FoundationChain); ok && (fc.Counts != nil || hook != 2) {
				if fc.Counts == nil {
					w.put(" (skipped chs do not count)")
				} else {
					w.put(" (skipped chs count as ")
					w.parts(fc.Counts)
					w.put(")")
				}
			}
			continue
		}
		w.item(it)
	}
}

func ordinal(n int) string {
	suffix := "th"
	if n%100 < 11 || n%100 > 13 {
		switch n % 10 {
		case 1:
			suffix = "st"
		case 2:
			suffix = "nd"
		case 3:
			suffix = "rd"
		}
	}
	return strconv.Itoa(n) + suffix
}

func (w *writer) item(it Item) {
	switch it := it.(type) {
	case Foundation:
		w.put(it.Of.Abbr(w.terms))
		if len(it.Count) > 0 {
			w.put(" ", it.Count.String())
		}
	case TurningChain:
		w.put("ch ", strconv.Itoa(it.N))
		if it.Counts == nil {
			w.put(" (does not count)")
		} else {
			w.put(" (counts as ")
			w.parts(it.Counts)
			w.put(")")
		}
	case Chainless:
		w.put("chainless ", it.Of.Abbr(w.terms), " in first st")
	case Work:
		w.work(it)
	case Each:
		w.each(it)
	case Skip:
		w.put(w.skip(), " ")
		if it.Space == 0 {
			w.put(it.N.String())
			break
		}
		w.put("next ")
		if it.N.plural() {
			w.put(it.N.String(), " ")
		}
		w.noun(it.Space, it.N.plural())
	case Chains:
		w.put("ch ", it.N.String())
	case Together:
		w.put(it.Of.Abbr(w.terms), strconv.Itoa(it.N), "tog")
	case Repeat:
		w.repeat(it)
	case Leave:
		if len(it.N) == 0 {
			w.put("leave rem sts unworked")
		} else {
			w.put("leave ", it.N.String(), " st", s(it.N.plural()), " unworked")
		}
	}
}

func (w *writer) skip() string {
	if w.terms == UK {
		return "miss"
	}
	return "sk"
}

func s(plural bool) string {
	if plural {
		return "s"
	}
	return ""
}

// noun writes st, ch, ch-2 sp or ch-sp.
func (w *writer) noun(sp Space, plural bool) {
	switch {
	case sp == 0 && w.overCh:
		w.put("ch", s(plural))
	case sp == 0:
		w.put("st", s(plural))
	case sp == AnySpace && w.terms == UK:
		w.put("ch sp", s(plural))
	case sp == AnySpace:
		w.put("ch-sp", s(plural))
	default:
		w.put("ch-", strconv.Itoa(int(sp)), " sp", s(plural))
	}
}

// make writes what goes into a place.
func (w *writer) make(parts []Part) {
	if len(parts) > 1 {
		w.put("(")
	}
	w.parts(parts)
	if len(parts) > 1 {
		w.put(")")
	}
}

func (w *writer) parts(parts []Part) {
	for i, p := range parts {
		if i > 0 {
			w.put(", ")
		}
		switch {
		case p.Of == Chain:
			w.put("ch ", p.N.String())
		case p.N.one():
			w.put(p.Of.Abbr(w.terms))
		default:
			w.put(p.N.String(), " ", p.Of.Abbr(w.terms))
		}
	}
}

func (w *writer) work(it Work) {
	w.make(it.Make)
	w.put(" in ")
	if it.N.plural() && !single(it.Make) {
		w.put("each of ")
	}
	switch it.At {
	case First:
		w.put("first ")
	case Last:
		w.put("last ")
	case Same:
		w.put("same ")
	default:
		w.put("next ")
	}
	if it.N.plural() {
		w.put(it.N.String(), " ")
	}
	w.noun(it.Space, it.N.plural())
}

func (w *writer) each(it Each) {
	for i, in := range it.In {
		if i > 0 {
			w.put(" and ")
		}
		if i == 0 || !equalParts(in.Make, it.In[0].Make) {
			w.make(in.Make)
			w.put(" ")
		}
		w.put("in each ")
		w.noun(in.Space, false)
	}
	w.until(it.Last)
}

func (w *writer) until(last Num) {
	switch {
	case len(last) == 0:
		w.put(" across")
	case last.one():
		w.put(" to last ")
		w.noun(0, false)
	default:
		w.put(" to last ", last.String(), " ")
		w.noun(0, true)
	}
}

func (w *writer) repeat(it Repeat) {
	if !it.Star && len(it.Times) > 0 {
		w.put("[")
		w.items(it.Items)
		w.put("] ", it.Times.String(), " time", s(it.Times.plural()))
		return
	}
	w.put("*")
	w.items(it.Items)
	w.put("; rep from *")
	if len(it.Times) == 0 {
		w.until(it.Last)
		return
	}
	least := it.Times[0]
	for _, n := range it.Times {
		least = min(least, n)
	}
	if least < 1 {
		w.put(" a total of ", it.Times.String(), " time", s(it.Times.plural()))
		return
	}
	more := plus(it.Times, -1)
	w.put(" ", more.String(), " more time", s(more.plural()))
}

func equalParts(a, b []Part) bool {
	if len(a) != len(b) {
		return false
	}
	for i := range a {
		if a[i].Of != b[i].Of || a[i].N.String() != b[i].N.String() {
			return false
		}
	}
	return true
}

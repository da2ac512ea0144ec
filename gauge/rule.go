package gauge

import (
	"fmt"
	"strconv"
	"strings"

	"example.com/panelmath/internal/number"
	"example.com/panelmath/internal/text"
)

// MaxCount is the largest count of stitches or rows anything here takes.
const MaxCount = 100_000

// Direction says which of two legal neighbours a count goes to.
type Direction uint8

// The zero value is Nearest: a tie goes to the larger count.
const (
	Nearest         Direction = iota // a tie goes to the larger count
	NearestTiesDown                  // a tie goes to the smaller count
	Up                               // the smallest legal count not below
	Down                             // the largest legal count not above
)

var directionNames = [...]string{"nearest", "ties down", "up", "down"}

// String names the direction as Rule prints it; "nearest" is left out there.
func (d Direction) String() string { return text.Name("Direction", d, directionNames[:]) }

// MarshalText returns String, or a *FieldError for an invalid value.
func (d Direction) MarshalText() ([]byte, error) {
	return marshalName("Direction", d, directionNames[:])
}

// UnmarshalText reads what String prints.
func (d *Direction) UnmarshalText(b []byte) error {
	return unmarshalName(d, "direction", b, directionNames[:])
}

// Rule says which counts are legal and which way to round to one: the numbers
// k·Multiple + Plus that are at least Least. Multiple first, then add: a
// multiple of 6 + 1 is 1, 7, 13, ... and not a multiple of 7. Parity is a
// multiple of 2.
//
// The zero value takes any count from 0 and rounds to the nearest, a tie up.
type Rule struct {
	Multiple  int // 0 stands for 1; at most MaxCount
	Plus      int // any whole number within ±MaxCount; -1 is one less than a multiple
	Least     int // the smallest legal count wanted, 0 to MaxCount
	Direction Direction
}

// Validate returns a *FieldError if a field is out of its range.
func (r Rule) Validate() error {
	switch {
	case r.Multiple < 0 || r.Multiple > MaxCount:
		return &FieldError{Field: "Rule.Multiple", Got: strconv.Itoa(r.Multiple), Want: "0 to 100000", Err: ErrBounds}
	case r.Plus < -MaxCount || r.Plus > MaxCount:
		return &FieldError{Field: "Rule.Plus", Got: strconv.Itoa(r.Plus), Want: "-100000 to 100000", Err: ErrBounds}
	case r.Least < 0 || r.Least > MaxCount:
		return &FieldError{Field: "Rule.Least", Got: strconv.Itoa(r.Least), Want: "0 to 100000", Err: ErrBounds}
	case r.Direction > Down:
		return &FieldError{Field: "Rule.Direction", Got: r.Direction.String(), Want: text.Or(directionNames[:])}
	}
	return nil
}

// multiple returns the multiple with its default.
func (r Rule) multiple() int { return max(r.Multiple, 1) }

// least returns the smallest legal count.
func (r Rule) least() int {
	m := r.multiple()
	return r.Least + mod(r.Plus-r.Least, m)
}

func mod(a, m int) int { return ((a % m) + m) % m }

// Legal reports whether n is a legal count.
func (r Rule) Legal(n int) bool { return n >= r.Least && mod(n-r.Plus, r.multiple()) == 0 }

// Round returns the legal count for x, in one step from the exact value.
// Nearest to 103.6 among the multiples of 4 + 2 is 102. Where x lies below the
// smallest legal count, that is the count, whatever the direction but Down.
//
// It returns an error if:
//   - the rule is not valid (*FieldError);
//   - the direction is Down and the smallest legal count is above x (ErrNoCount);
//   - the count would exceed MaxCount (ErrBounds).
func (r Rule) Round(x Ratio) (Count, error) {
	if err := r.Validate(); err != nil {
		return Count{}, err
	}
	var c Count
	if err := round(&r, x, &c); err != nil {
		return Count{}, err
	}
	return c, nil
}

// round sets c to the count for x; r is known to be valid. It works on the
// caller's structs, which are large: copies would take as long as the rounding.
func round(r *Rule, x Ratio, c *Count) error {
	below, above, half, err := x.r.Snap(int64(r.multiple()), int64(r.Plus))
	if err != nil || below > MaxCount {
		return tooMany(x)
	}
	if below < int64(r.Least) { // x lies below the smallest legal count
		least := int64(r.least())
		if r.Direction == Down {
			return fmt.Errorf("round %s by %q: %w; the smallest is %d", clip(x), r.String(), ErrNoCount, least)
		}
		below, above, half = least, least, 0
	}
	c.Value = int(below)
	switch r.Direction {
	case Nearest:
		if half >= 0 {
			c.Value = int(above)
		}
	case NearestTiesDown:
		if half > 0 {
			c.Value = int(above)
		}
	case Up:
		c.Value = int(above)
	}
	if c.Value > MaxCount {
		return tooMany(x)
	}
	c.Exact, c.Below, c.Above, c.Rule = x, int(below), int(above), *r
	c.Tie = half == 0 && below != above
	return nil
}

func tooMany(x Ratio) error {
	return &FieldError{Field: "Count", Got: "about " + clip(x), Want: "at most 100000", Err: ErrBounds}
}

// Combine returns the rule for a count that must satisfy both a and b, with Plus
// from 0 to less than Multiple: a multiple of 3 + 1 and even is a multiple of
// 6 + 4. Least is the larger of the two; a direction other than Nearest holds
// for both.
//
// It returns an error if:
//   - a or b is not valid, or their directions contradict each other, or the
//     multiple would exceed MaxCount (*FieldError);
//   - no count satisfies both, as with a multiple of 4 and odd (ErrNoCount).
func Combine(a, b Rule) (Rule, error) {
	if err := a.Validate(); err != nil {
		return Rule{}, err
	}
	if err := b.Validate(); err != nil {
		return Rule{}, err
	}
	c := Rule{Least: max(a.Least, b.Least), Direction: a.Direction}
	if a.Direction == Nearest {
		c.Direction = b.Direction
	} else if b.Direction != Nearest && b.Direction != a.Direction {
		return Rule{}, &FieldError{Field: "Rule.Direction", Got: a.Direction.String() + " and " + b.Direction.String(), Want: "one direction"}
	}
	// A count is a.Plus + k·m. Its remainder by n takes n/gcd values in turn, so
	// that many steps find the first that b allows, or show that there is none.
	m, n := a.multiple(), b.multiple()
	steps := n / gcd(m, n)
	if m > MaxCount/steps {
		return Rule{}, &FieldError{Field: "Rule.Multiple", Got: fmt.Sprintf("%d times %d", m, steps), Want: "at most 100000", Err: ErrBounds}
	}
	c.Multiple = m * steps
	for k := range steps {
		if x := a.Plus + k*m; mod(x-b.Plus, n) == 0 {
			c.Plus = mod(x, c.Multiple)
			return c, nil
		}
	}
	return Rule{}, fmt.Errorf("combine %v and %v: %w", a, b, ErrNoCount)
}

func gcd(a, b int) int {
	for b != 0 {
		a, b = b, a%b
	}
	return a
}

// Within returns the legal counts from low to high, both included, in order. No
// count is a valid answer: a multiple of 12 + 2 has none from 219 to 229.
//
// It returns the error of Validate, or a *FieldError if high is more than
// MaxCount.
func (r Rule) Within(low, high Ratio) ([]int, error) {
	if err := r.Validate(); err != nil {
		return nil, err
	}
	if high.Cmp(Int(MaxCount)) > 0 {
		return nil, &FieldError{Field: "high", Got: clip(high), Want: "at most 100000", Err: ErrBounds}
	}
	var out []int
	if low.Sign() < 0 {
		low = Ratio{}
	}
	if low.Cmp(high) > 0 {
		return nil, nil
	}
	_, first, _, _ := low.r.Snap(int64(r.multiple()), int64(r.Plus)) // within bounds: 0 to MaxCount
	for n := max(int(first), r.least()); high.Cmp(Int(n)) >= 0; n += r.multiple() {
		out = append(out, n)
	}
	return out, nil
}

// clip prints x for a message.
func clip(x Ratio) string {
	if s := number.Text(x.Decimal(3)); len(s) < 20 {
		return s
	}
	return "a number of more than 20 digits"
}

// String returns "multiple of 6 + 1", with "even", "odd" and "any" for
// themselves, and ", at least 4", ", ties down", ", up" or ", down" where they
// differ from the zero value. ParseRule reads it back.
func (r Rule) String() string {
	var s string
	m := r.multiple()
	switch {
	case m == 1:
		s = "any"
	case m == 2 && mod(r.Plus, 2) == 0:
		s = "even"
	case m == 2:
		s = "odd"
	case r.Plus == 0:
		s = "multiple of " + strconv.Itoa(m)
	case r.Plus < 0:
		s = fmt.Sprintf("multiple of %d - %d", m, -r.Plus)
	default:
		s = fmt.Sprintf("multiple of %d + %d", m, r.Plus)
	}
	if r.Least > 0 {
		s += ", at least " + strconv.Itoa(r.Least)
	}
	if r.Direction != Nearest {
		s += ", " + r.Direction.String()
	}
	return s
}

// ParseRule reads `multiple of 6 + 1` (also `6n + 1`), `multiple of 4`, `even`,
// `odd` and `any`, followed by any of `, at least 4`, `, nearest`, `, ties down`,
// `, up` and `, down`.
//
// It returns a *ParseError with the place if s is none of these, says a thing
// twice, or breaks the bounds of Rule.
func ParseRule(s string) (Rule, error) {
	fail := func(at int, cause string, err error) (Rule, error) {
		return Rule{}, &ParseError{Kind: "rule", Text: s, At: at, Cause: cause, Err: err}
	}
	if len(s) > text.Limit {
		return fail(text.Limit, "text too long; at most 10000 characters", ErrBounds)
	}
	first, rest, more := strings.Cut(s, ",")
	r, ok := parseMultiple(strings.ToLower(strings.TrimSpace(first)))
	if !ok {
		return fail(0, "want multiple of 6 + 1, multiple of 4, even, odd or any, got "+text.Quote(first), nil)
	}
	least, direction := false, false
	for more {
		at := len(s) - len(rest)
		var part string
		part, rest, more = strings.Cut(rest, ",")
		part = strings.ToLower(strings.TrimSpace(part))
		if after, ok := strings.CutPrefix(part, "at least "); ok {
			n, ok := wholeNumber(after)
			if !ok || least {
				return fail(at, "want one whole number after at least, got "+text.Quote(after), nil)
			}
			r.Least, least = n, true
			continue
		}
		d, err := parseName[Direction]("direction", part, directionNames[:])
		if err != nil || direction {
			return fail(at, "want at least N, and one of nearest, ties down, up or down, got "+text.Quote(part), nil)
		}
		r.Direction, direction = d, true
	}
	if err := r.Validate(); err != nil {
		return fail(0, err.Error(), ErrBounds)
	}
	return r, nil
}

// parseMultiple reads what comes before the first comma.
func parseMultiple(s string) (Rule, bool) {
	switch s {
	case "even":
		return Rule{Multiple: 2}, true
	case "odd":
		return Rule{Multiple: 2, Plus: 1}, true
	case "any":
		return Rule{}, true
	}
	s, multiple := strings.CutPrefix(s, "multiple of ")
	first, plus, sign := s, "0", 1
	if at := strings.IndexAny(s, "+-"); at >= 0 {
		first, plus = s[:at], s[at+1:]
		if s[at] == '-' {
			sign = -1
		}
	}
	first, short := strings.CutSuffix(strings.TrimSpace(first), "n")
	m, ok1 := wholeNumber(first)
	p, ok2 := wholeNumber(plus)
	return Rule{Multiple: m, Plus: sign * p}, ok1 && ok2 && m > 0 && (multiple || short) // 10 alone may mean that very count
}

// wholeNumber reads digits and nothing else.
func wholeNumber(s string) (int, bool) {
	s = strings.TrimSpace(s)
	if s == "" || number.Digits(s) != s {
		return 0, false
	}
	n, err := strconv.Atoi(s)
	return n, err == nil
}

// MarshalText returns String. It returns the error of Validate.
func (r Rule) MarshalText() ([]byte, error) {
	if err := r.Validate(); err != nil {
		return nil, err
	}
	return []byte(r.String()), nil
}

// UnmarshalText reads what ParseRule reads.
func (r *Rule) UnmarshalText(b []byte) error {
	return text.Read(r, b, ParseRule)
}

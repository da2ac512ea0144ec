package spread

import (
	"errors"
	"fmt"
	"strconv"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/seam/internal/say"
)

// ErrNoGroup: no repeating group that a maker can count lies within the
// tolerance.
var ErrNoGroup = errors.New("no short group")

// MaxGroup is the longest repeating group that ShortestGroup looks for.
const MaxGroup = 1000

// Group is a repeat over an edge: Take out of every Of, Times times. "3 of
// every 4" is Group{Take: 3, Of: 4}.
type Group struct {
	Take  int `json:"take"`
	Of    int `json:"of"`
	Times int `json:"times,omitempty"` // 0 where it goes on to the end of the edge
}

// String returns "3 of 4", or "3 of 4, 5 times".
func (g Group) String() string {
	s := fmt.Sprintf("%d of %d", g.Take, g.Of)
	switch {
	case g.Times == 1:
		s += ", once"
	case g.Times > 1:
		s += fmt.Sprintf(", %d times", g.Times)
	}
	return s
}

// Rate returns how many of `to` meet one of `from` where two edges of the same
// length are joined, both at their finished gauge: 10/13 of a stitch to a row
// end at 20 stitches and 26 rows over 4 in. Row ends meet rows of another gauge
// in the same way.
//
// It returns a *gauge.FieldError if either is not valid.
func Rate(from, to gauge.Over) (gauge.Ratio, error) {
	each, err := from.Measure(gauge.Int(1))
	if err != nil {
		return gauge.Ratio{}, gauge.InField("from", err)
	}
	r, err := to.Exact(each)
	if err != nil {
		return gauge.Ratio{}, gauge.InField("to", err)
	}
	return r, nil
}

// Implied returns how many of so many stitches along an edge lie in a span: a
// check of a printed count against the gauge of the band it makes. 53 along 11½
// in are 18.4 to 4 in.
//
// It returns a *gauge.FieldError if stitches is not from 1 to gauge.MaxCount or
// the edge is not more than nothing.
func Implied(stitches int, edge, span gauge.Measurement) (gauge.Ratio, error) {
	if stitches < 1 || stitches > gauge.MaxCount {
		return gauge.Ratio{}, &gauge.FieldError{Field: "stitches", Got: strconv.Itoa(stitches), Want: "1 to 100000", Err: gauge.ErrBounds}
	}
	if edge.Sign() <= 0 {
		return gauge.Ratio{}, &gauge.FieldError{Field: "edge", Got: say.Length(edge), Want: "more than nothing"}
	}
	share, err := span.Per(edge)
	if err != nil {
		return gauge.Ratio{}, err
	}
	return share.Mul(gauge.Int(stitches)), nil
}

// ShortestGroup returns the shortest group whose rate lies within tolerance of
// rate, as a share of it: within 1/20 of 10/13 that is 3 of 4, within nothing
// it is 10 of 13. Of two groups of one length the nearer is taken.
//
// It returns a *gauge.FieldError if rate is not more than 0 and at most
// MaxGroup or tolerance not from 0 to less than 1, and ErrNoGroup, wrapped, if
// the group would be longer than MaxGroup.
func ShortestGroup(rate, tolerance gauge.Ratio) (Group, error) {
	if rate.Sign() <= 0 || rate.Cmp(gauge.Int(MaxGroup)) > 0 {
		return Group{}, &gauge.FieldError{Field: "rate", Got: say.Plain(rate, 3), Want: "more than 0, at most 1000"}
	}
	if tolerance.Sign() < 0 || tolerance.Cmp(gauge.Int(1)) >= 0 {
		return Group{}, &gauge.FieldError{Field: "tolerance", Got: say.Plain(tolerance, 3), Want: "0 to less than 1"}
	}
	for of := 1; of <= MaxGroup; of++ {
		want := rate.Mul(gauge.Int(of))
		c, err := gauge.Rule{Least: 1}.Round(want)
		if err != nil {
			return Group{}, err
		}
		off := c.Off()
		if off.Sign() < 0 {
			off = gauge.Int(0).Sub(off)
		}
		if off.Cmp(want.Mul(tolerance)) <= 0 {
			return Group{Take: c.Value, Of: of}, nil
		}
	}
	return Group{}, fmt.Errorf("shortest group for %s within %s: %w of at most %d", say.Plain(rate, 6), say.Plain(tolerance, 6), ErrNoGroup, MaxGroup)
}

// Off returns by how many stitches a group worked along an edge of that many
// falls short of rate (negative) or goes beyond it: 3 of 4 along 104 rows at
// 10/13 is 2 short. What is left over at the end of the edge is taken in full
// as far as the group goes.
//
// It returns a *gauge.FieldError if the group or the edge is out of range.
func (g Group) Off(edge int, rate gauge.Ratio) (gauge.Ratio, error) {
	if g.Of < 1 || g.Of > gauge.MaxCount || g.Take < 1 || g.Take > gauge.MaxCount {
		return gauge.Ratio{}, &gauge.FieldError{Field: "Group", Got: g.String(), Want: "1 to 100000 of 1 to 100000", Err: gauge.ErrBounds}
	}
	if edge < 1 || edge > gauge.MaxCount {
		return gauge.Ratio{}, &gauge.FieldError{Field: "edge", Got: strconv.Itoa(edge), Want: "1 to 100000", Err: gauge.ErrBounds}
	}
	// Within a group the first Take row ends are used, or all of them several times.
	made := gauge.Int(edge / g.Of).Mul(gauge.Int(g.Take))
	rest := edge % g.Of
	if g.Take >= g.Of {
		rest = rest * g.Take / g.Of
	}
	return made.Add(gauge.Int(min(rest, g.Take))).Sub(rate.Mul(gauge.Int(edge))), nil
}

// Match is the exact plan for joining, or working into, an edge of From row
// ends or stitches with Take of the other edge: 71 from 88. Spread evenly: any
// two gaps between stitches, and any two between the places left out, differ
// by at most one. The zero value is not valid.
type Match struct {
	From     int  `json:"from"` // along the edge; 1 to gauge.MaxCount
	Take     int  `json:"take"` // of the other; 1 to gauge.MaxCount
	Mirrored bool `json:"mirrored,omitempty"`
}

// Validate returns a *gauge.FieldError if a count is out of its range.
func (m Match) Validate() error {
	if m.From < 1 || m.From > gauge.MaxCount {
		return &gauge.FieldError{Field: "From", Got: strconv.Itoa(m.From), Want: "1 to 100000", Err: gauge.ErrBounds}
	}
	if m.Take < 1 || m.Take > gauge.MaxCount {
		return &gauge.FieldError{Field: "Take", Got: strconv.Itoa(m.Take), Want: "1 to 100000", Err: gauge.ErrBounds}
	}
	return nil
}

// CanMirror reports whether the plan can be the same from either end: where
// the edge is even and what is spread over it odd, the one in the middle has
// no place of its own. A plan that is not valid can't.
func (m Match) CanMirror() bool {
	return m.Validate() == nil && (m.From%2 == 1 || m.Take%m.From%2 == 0)
}

// Places returns for each place along the edge how many are worked into it: 0
// or 1 where the edge has more places than are taken, otherwise the even share
// or one more. They add up to Take. Mirrored, it reads the same from either
// end, but for the one in the middle where CanMirror is false.
//
// It returns the error of Validate.
func (m Match) Places() ([]int, error) {
	if err := m.Validate(); err != nil {
		return nil, err
	}
	each, odd, at := m.spread()
	places := make([]int, m.From)
	for i := range places {
		places[i] = each
	}
	for _, i := range at {
		places[i] += odd
	}
	return places, nil
}

// spread returns how many go into each place, and the fewer places, in order,
// that take one more (odd is 1) or one less (-1).
func (m Match) spread() (each, odd int, at []int) {
	each, odd = m.Take/m.From, 1
	n := m.Take % m.From
	if 2*n > m.From {
		each, odd, n = each+1, -1, m.From-n
	}
	at = make([]int, n)
	for k := range at {
		at[k] = m.place(k, n)
	}
	return each, odd, at
}

// place returns where the k-th of n goes. Plain: at the end of its share of
// the edge, so that a repeat ends with it. Mirrored: in the middle of its
// share; where that lies between two places, the one nearer to the middle of
// the edge, so that both halves lean the same way.
func (m Match) place(k, n int) int {
	if !m.Mirrored {
		return ((k+1)*m.From+n-1)/n - 1
	}
	num := (2*k + 1) * m.From
	if at := num / (2 * n); num%(2*n) != 0 || 2*k+1 < n {
		return at
	}
	return num/(2*n) - 1
}

// Groups returns the plan as what a maker counts: stretches worked one after
// another, each "Take of Of" with at most one place left out (or, where few
// are taken, with one taken at its end), equal neighbours gathered.
//
// It returns the error of Validate, and a *gauge.FieldError if Take is more
// than From: then Places tells how many go into each.
func (m Match) Groups() ([]Group, error) {
	places, err := m.Places()
	if err != nil {
		return nil, err
	}
	if m.Take > m.From {
		return nil, &gauge.FieldError{Field: "Take", Got: strconv.Itoa(m.Take), Want: "at most From, " + strconv.Itoa(m.From)}
	}
	stop := 0 // a group ends with a place left out, or with one taken where most are left out
	if 2*m.Take <= m.From {
		stop = 1
	}
	var groups []Group
	g := Group{Times: 1}
	flush := func() {
		if last := len(groups) - 1; last >= 0 && groups[last].Take == g.Take && groups[last].Of == g.Of {
			groups[last].Times++
		} else if g.Of > 0 {
			groups = append(groups, g)
		}
		g = Group{Times: 1}
	}
	for _, p := range places {
		g.Take += p
		g.Of++
		if p == stop {
			flush()
		}
	}
	if g.Of > 0 {
		flush()
	}
	return groups, nil
}

// Simple returns the plan that is easiest to count, the short group first and
// what is left at the end: 71 from 88 is 4 of 5, 17 times, then 3 of 3. It is
// less even than Groups: all that is left over lies at one end.
//
// It returns the errors of Groups.
func (m Match) Simple() ([]Group, error) {
	if err := m.Validate(); err != nil {
		return nil, err
	}
	skip := m.From - m.Take
	switch {
	case skip < 0:
		return nil, &gauge.FieldError{Field: "Take", Got: strconv.Itoa(m.Take), Want: "at most From, " + strconv.Itoa(m.From)}
	case skip == 0:
		return []Group{{m.Take, m.From, 1}}, nil
	}
	var groups []Group
	if m.Take >= skip {
		t := m.Take / skip
		groups = append(groups, Group{t, t + 1, skip})
		if rest := m.Take - t*skip; rest > 0 {
			groups = append(groups, Group{rest, rest, 1})
		}
		return groups, nil
	}
	of := m.From / m.Take
	groups = append(groups, Group{1, of, m.Take})
	if rest := m.From - of*m.Take; rest > 0 {
		groups = append(groups, Group{0, rest, 1})
	}
	return groups, nil
}

// mostWords is how many groups a sentence lists before it breaks off.
const mostWords = 40

// Explain says the plan in a sentence: "71 from 88: (5 of 6), (4 of 5) 4 times,
// ...", or how many go into each place where more are taken than there are: "22
// from 9: 2 into each, but 3 into numbers 3, 5, 7, 9".
//
// It returns the error of Validate.
func (m Match) Explain() (string, error) {
	if err := m.Validate(); err != nil {
		return "", err
	}
	s := fmt.Sprintf("%d from %d: ", m.Take, m.From)
	each, odd, at := m.spread()
	switch {
	case m.Take == m.From:
		return s + "one to one", nil
	case len(at) == 0:
		return s + fmt.Sprintf("%d into each", each), nil
	case m.Take > m.From:
		s += fmt.Sprintf("%d into each, but %d into numbers ", each, each+odd)
		words := make([]string, 0, len(at))
		for k, i := range at {
			if k == mostWords {
				words = append(words, "and so on")
				break
			}
			words = append(words, strconv.Itoa(i+1))
		}
		s += strings.Join(words, ", ")
	default:
		groups, err := m.Groups()
		if err != nil {
			return "", err
		}
		words := make([]string, 0, len(groups))
		for i, g := range groups {
			if i == mostWords {
				words = append(words, "and so on")
				break
			}
			words = append(words, g.words())
		}
		s += strings.Join(words, ", ")
	}
	if m.Mirrored && !m.CanMirror() {
		s += "; the same from either end but for the one in the middle"
	}
	return s, nil
}

func (g Group) words() string {
	s := fmt.Sprintf("(%d of %d)", g.Take, g.Of)
	switch {
	case g.Times == 2:
		s += " twice"
	case g.Times > 2:
		s += fmt.Sprintf(" %d times", g.Times)
	}
	return s
}

package main

import (
	"regexp"
	"slices"
	"strconv"
	"strings"
)

// numbering of the rows of a piece, as far as it can be followed.
type numbered struct {
	next  int  // number of the next row; 0 where nobody knows
	last  int  // number of the row worked last, as it stands in the text; 0 where nobody knows
	prose line // prose after the last row that may stand for rows
	less  int  // number of the next row where `Rep Row 2 18 times` counts the first time as well; 0 for none
}

var (
	// rowProse is prose that may tell to work rows.
	rowProse = regexp.MustCompile(`(?i)^(?:rep|repeat|work|cont|continue|dec|decrease|inc|increase)\b|\b(?:rows?|rnds?|rounds?)\b`)
	// noRows is prose beside rows that tells to work none.
	noRows   = regexp.MustCompile(`(?i)(?::|\bas follows\.?|\bforms? (?:the |a )?(?:pattern|patt)(?: repeat)?\.?|\b(?:is|are) (?:the |on the )?(?:RS|WS|right side|wrong side)\.?)$`)
	lastRows = regexp.MustCompile(`^((?:[^:]*: *)?)(?i:rep(?:eat)? (?:(?:the )?(?:last|previous|prev|preceding)|this) (?:(\d{1,2}|two|three|four|five|six) )?(?:row|rnd)s?)\b`)
	repRows  = regexp.MustCompile(`^((?:[^:]*: *)?)(?i:rep(?:eat)? (?:rows?|rnds?)) (\d{1,6})(?:(?: ?[-–] ?| and | & | to )(\d{1,6}))?`)
	someMore = regexp.MustCompile(`^,? ((?i:` + listForm + `|[a-z]+)) (?i:(more )?times?( more)?)\b`)
	onceMore = regexp.MustCompile(`^,? (?i:(once|one time)|twice)(?: more)?`)
	endOfRow = regexp.MustCompile(`^ ?(?:$|[.;(\[–—-])`)
	sizedTo  = regexp.MustCompile(`^(?i:rows|rnds) (\d{1,6}) ?[-–] ?(\d{1,6}(?: ?[(\[] ?\d{1,6}(?:[,:] ?\d{1,6})*[)\]])+) ?: *`)
	nextRows = regexp.MustCompile(`^(?i:next (\d{1,4}) rows)\b`)
)

// mind takes down prose that may stand for rows. Whether it does, the number of
// the next row tells: see after.
func (p *pattern) mind(l line) {
	if len(p.open.lines) > 0 && p.as[l.number] == "" && rowProse.MatchString(l.text) && !noRows.MatchString(l.text) {
		p.open.prose = l
	}
}

// after ends the rows so far where prose after them stands for rows: the number
// of the next one is not that after theirs, or it has none.
func (p *pattern) after(said string) {
	from, _, again := numbersOf(said)
	switch {
	case p.open.prose.number == 0 || again:
	case from > 0 && from == p.open.next:
		p.open.prose = line{}
	default:
		p.as[p.open.prose.number] = "rows without a number; those after it are checked from their own counts on"
		p.cutBlock()
	}
}

// words returns a row that names others by their place, by how often or to which
// row in each size, in the words that package panel/proof reads: one line, or two.
func (b *block) words(said string) []string {
	if m := lastRows.FindStringSubmatch(said); m != nil && b.last > 0 {
		many := 1
		if m[2] != "" {
			if many, _ = strconv.Atoi(m[2]); many == 0 {
				many = 2 + slices.Index([]string{"two", "three", "four", "five", "six"}, strings.ToLower(m[2]))
			}
		}
		name := "Rep Row " + strconv.Itoa(b.last)
		if many > 1 {
			name = "Rep Rows " + strconv.Itoa(b.last-many+1) + "–" + strconv.Itoa(b.last)
		}
		said = m[1] + name + said[len(m[0]):]
	}
	if more := b.sized(said); more != nil {
		return more
	}
	m := repRows.FindStringSubmatch(said)
	if m == nil {
		return []string{said}
	}
	head, rest := m[0], said[len(m[0]):]
	if t := onceMore.FindStringSubmatch(rest); t != nil && endOfRow.MatchString(rest[len(t[0]):]) {
		n := " 2 more times"
		if t[1] != "" {
			n = " 1 more time"
		}
		rest = n + rest[len(t[0]):]
	}
	if t := someMore.FindStringSubmatch(rest); t != nil && t[2]+t[3] == "" && endOfRow.MatchString(rest[len(t[0]):]) {
		tail := rest[len(t[0]):]
		rest = " " + t[1] + " more times" + tail
		if n, err := strconv.Atoi(digits.FindString(t[1])); err == nil && m[1] == "" && b.next > 0 {
			b.less = b.next + (n-1)*span2(m[2], m[3])
		}
	}
	return []string{head + rest}
}

// span2 returns how many rows there are from one number to another.
func span2(from, to string) int {
	a, _ := strconv.Atoi(from)
	z, _ := strconv.Atoi(to)
	return max(1, z-a+1)
}

// sized returns rows whose label ends with a number for each size: the first of
// them, and how often it is worked again; nil where it is something else.
func (b *block) sized(said string) []string {
	m := sizedTo.FindStringSubmatch(said)
	if m == nil {
		return nil
	}
	from, _ := strconv.Atoi(m[1])
	if b.next > 0 && b.next != from {
		return nil
	}
	rest, span, done := said[len(m[0]):], 1, 1
	again := repRows.FindStringSubmatch(rest)
	if again != nil {
		span, done = span2(again[2], again[3]), 0
	}
	fits := true
	times := digits.ReplaceAllStringFunc(m[2], func(s string) string {
		to, _ := strconv.Atoi(s)
		fits = fits && to >= from && (to-from+1)%span == 0
		return strconv.Itoa((to-from+1)/span - done)
	})
	switch {
	case !fits:
		return nil
	case again != nil:
		return []string{again[0] + " " + times + " more times" + rest[len(again[0]):]}
	}
	return []string{"Row " + m[1] + ": " + rest, "Rep Row " + m[1] + " " + times + " more times."}
}

// follow goes on in the numbers of the rows.
func (b *block) follow(said string) {
	from, to, _ := numbersOf(said)
	m := repRows.FindStringSubmatch(said)
	switch {
	case m != nil && m[1] == "":
		b.last, _ = strconv.Atoi(m[2])
		if m[3] != "" {
			b.last, _ = strconv.Atoi(m[3])
		}
		t := someMore.FindStringSubmatch(said[len(m[0]):])
		if t == nil || b.next == 0 {
			b.next = 0
			return
		}
		if n, err := strconv.Atoi(t[1]); err == nil {
			b.next += n * span2(m[2], m[3])
		} else {
			b.next = 0
		}
	case from > 0:
		b.last, b.next = to, to+1
		if label, _, _ := strings.Cut(said, ":"); len(digits.FindAllString(label, 3)) > 2 || strings.ContainsAny(label, "([") && len(digits.FindAllString(label, 2)) > 1 {
			b.last, b.next = 0, 0 // a number for each size
		}
	case begins(said) > 0: // before row 1
	case nextRows.MatchString(said) && b.next > 0:
		n, _ := strconv.Atoi(nextRows.FindStringSubmatch(said)[1])
		b.last, b.next = b.next+n-1, b.next+n
	case strings.HasPrefix(strings.ToLower(said), "next row") && b.next > 0:
		b.last, b.next = b.next, b.next+1
	default:
		b.last, b.next = 0, 0
	}
}

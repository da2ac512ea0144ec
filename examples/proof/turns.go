package main

import (
	"regexp"
	"slices"
	"strconv"
)

// Labels of rows that are worked by turns with others.
var (
	someRows  = regexp.MustCompile(`^(?i:rows|rnds) (?:\d+(?:, \d+)+(?:,? (?:and|&) \d+)?|\d+ (?:and|&) \d+):`)
	everyRow  = regexp.MustCompile(`^(?i:row|rnd) (\d+)(?: \((RS|WS)\))? and (?:all|every|each) (?:(?:other )?(?:even|odd|foll|following|alternate|alt|RS|WS)(?:-numbered|-side)?|other) (?:rows?|rnds?):`)
	rowNumber = regexp.MustCompile(`^(?i:(rep(?:eat)? )?(?:rows?|rnds?) (\d+)(?:(?: ?[-–] ?| and | to )(\d+))?\b)`)
	lastCount = regexp.MustCompile(`\.? *(?:[(\[]` + listForm + ` [^()\[\]]*[)\]]| [-–—] .*|\. ` + listForm + ` [a-z]+)\.?$`)
	digits    = regexp.MustCompile(`\d+`)
)

// Rows by turns are short and few: a piece whose rows are more is not checked.
const (
	maxTurn   = 500 // characters of one
	maxTurns  = 300 // lines of the piece, with those of each row by turns
	maxLabels = 30  // labels of rows by turns
)

// inTurn returns the rows of a piece in the order in which they are worked: those
// of `Rows 2, 4 and 6: …` and of `Row 2 and all even rows: …` in their places among
// the others. The count of the latter is that of the first of them.
func (b block) inTurn() block {
	many := 0
	for _, s := range b.said {
		if someRows.MatchString(s) || everyRow.MatchString(s) {
			many++
		}
	}
	if many == 0 || many > maxLabels || len(b.said) > maxTurns {
		return b
	}
	for i := 0; i < len(b.said); i++ {
		if label := someRows.FindString(b.said[i]); label != "" {
			if more := b.spread(i, label, nil, ""); len(more.said) > len(b.said) {
				b, i = more, i-1 // another line stands here now
			}
		}
	}
	for i := 0; i < len(b.said); i++ {
		if label := everyRow.FindString(b.said[i]); label != "" {
			first, _ := strconv.Atoi(digits.FindString(label))
			b = b.spread(i, label, b.gaps(first), lastCount.ReplaceAllString(b.said[i][len(label):], ""))
		}
	}
	return b
}

// spread puts the rows whose numbers are in the label of a line in their places,
// and those of more numbers, which say something else.
func (b block) spread(i int, label string, more []int, others string) block {
	l, rest := b.lines[i], b.said[i][len(label):]
	var numbers []int
	for _, s := range digits.FindAllString(label, -1) {
		n, _ := strconv.Atoi(s)
		numbers = append(numbers, n)
	}
	many := len(numbers) + len(more)
	if len(rest) > maxTurn || len(b.said)+many > maxTurns || !slices.IsSorted(numbers) || !b.between(numbers) {
		return b
	}
	b.lines = slices.Delete(slices.Clone(b.lines), i, i+1)
	b.said = slices.Delete(slices.Clone(b.said), i, i+1)
	for k, n := range append(numbers, more...) {
		if k == len(numbers) {
			rest = others
		}
		at := b.place(n)
		b.lines = slices.Insert(b.lines, at, l)
		b.said = slices.Insert(b.said, at, "Row "+strconv.Itoa(n)+":"+rest)
	}
	return b
}

// between reports whether the rows between those of some numbers are there.
func (b block) between(numbers []int) bool {
	have := slices.Clone(numbers)
	for _, s := range b.said {
		from, to, again := numbersOf(s)
		switch {
		case everyRow.MatchString(s): // whatever is missing
			return true
		case again || from == 0:
			for _, n := range digits.FindAllString(someRows.FindString(s), -1) {
				k, _ := strconv.Atoi(n)
				have = append(have, k)
			}
		default:
			for n := from; n <= min(to, from+maxTurns); n++ {
				have = append(have, n)
			}
		}
	}
	for n := numbers[0]; n < numbers[len(numbers)-1]; n++ {
		if !slices.Contains(have, n) {
			return false
		}
	}
	return true
}

// place returns where in a piece row n belongs: after the last before it, and
// before what works it again.
func (b block) place(n int) int {
	at := 0
	for j, s := range b.said {
		from, to, again := numbersOf(s)
		if !again && from > n || again && to >= n {
			break
		}
		if from > 0 || j == at { // what has no number stays with what it follows
			at = j + 1
		}
	}
	return at
}

// gaps returns the numbers of every other row from the first on that no line has,
// where the lines before and after them are there.
func (b block) gaps(first int) []int {
	var out []int
	starts, ends := map[int]bool{}, map[int]bool{} // of rows; and of those worked again
	for _, s := range b.said {
		switch from, to, again := numbersOf(s); {
		case again:
			ends[to] = true
		default:
			starts[from] = true
		}
	}
	for _, s := range b.said {
		_, to, again := numbersOf(s)
		if n := to + 1; to > 0 && !again && n > first && (n-first)%2 == 0 && !starts[n] && (starts[n+1] || ends[n]) {
			out = append(out, n)
		}
	}
	return out
}

// numbersOf returns the first and the last number of the rows of a line, 0 for
// none, and whether it works them again.
func numbersOf(said string) (from, to int, again bool) {
	m := rowNumber.FindStringSubmatch(said)
	if m == nil || someRows.MatchString(said) || everyRow.MatchString(said) {
		return 0, 0, false
	}
	from, _ = strconv.Atoi(m[2])
	if to, _ = strconv.Atoi(m[3]); to == 0 {
		to = from
	}
	return from, to, m[1] != ""
}

package main

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/grade/notation"
)

var (
	sizesName   = regexp.MustCompile(`^(?i:sizes?|sizes? available|to fit sizes?)$`)
	inOrder     = regexp.MustCompile(`in this order: ([^.]*)\.`)
	tableCell   = regexp.MustCompile(`^\|\s*([^|]*?)\s*\|`)
	tableHead   = regexp.MustCompile(`^(?i:sizes?)$`)
	sizeWord    = regexp.MustCompile(`^(?i:\d*x*-?[sml]|\d+x|(?:\d*x+-?|extra[ -])?(?:small|medium|large)|newborn|preemie|infant|baby|toddler|child(?:ren)?|youth|teen|adult|(?:wo)?men|\d+(?:\.\d+)?(?:[-–/]\d+)?(?: ?(?:in|cm|"|m|mos?|months?|y|yrs?|years?))?\.?)$`)
	measureWord = regexp.MustCompile(`(?i)\b(?:bust|chest|waist|hips?|head|foot|hand|rounds?|circumference|lengths?|widths?|heights?|depths?|drop|neck|shoulders?|arms?|armholes?|sleeves?|cuff|hem|ease|yarn|skeins?|balls?|yards?|yardage|met(?:re|er)s|grams?|stitches|sts|rows|fits?|finished|measurements?|inches|in|cm)\b`)
	dashSizes   = regexp.MustCompile(`^\S+(?:\s*-\s*\S+){2,}$`)
	listHead    = regexp.MustCompile(`^([^()\[\],]+(?:\s*[(\[][^()\[\]]*[)\]])+)(?:[,;.]|\s*[-–—]|\s*(?:to )?fits?\b|\s*[a-z"″”][^()\[\]]*$)`) // of `2 (4, 6) years`
	bracketed   = regexp.MustCompile(`\s*[(\[][^()\[\]]*[)\]]`)
	fitting     = regexp.MustCompile(`(?i)\bfits?\b`)
	listAnd     = regexp.MustCompile(`,? (?:and|&) `)
	oneSize     = regexp.MustCompile(`(?i)^one size\b`)
	measureIn   = regexp.MustCompile(numberForm + `\s*(` + unitForm + `)`)
	extent      = regexp.MustCompile(`(?i)\b(?:wide|long|square|deep|tall|high|across|around|diameter|circumference)\b|[\w"″”)] ?(?:\bx\b|×|\bby\b) ?\d`)
	braces      = regexp.MustCompile(`([)\]]\s*)\{([^{}]*)\}`)
)

// readSizes finds how many sizes there are and what they are called: in a line
// `Sizes: XS (S, M, L)`, in a sentence "in this order: XS (S, M, L).", or in a table
// whose first row, or else first column, is headed Size. Where nothing names them, the length that
// most lists have is taken.
func (p *pattern) readSizes() {
	across := p.readSizesAcross()
	table, inTable := []string(nil), false
	for _, l := range p.lines {
		list := ""
		if sizesName.MatchString(l.name) && p.sizes == nil {
			list = l.body
		} else if m := inOrder.FindStringSubmatch(l.text); m != nil && p.sizes == nil {
			list = m[1]
		}
		if list != "" {
			list = withoutNotes(list)
			switch {
			case oneSize.MatchString(list), measured(list) && strings.EqualFold(l.name, "size"):
				p.n = 1
				continue
			case measured(list):
				continue
			}
			labels, err := labels(list)
			if err != nil {
				p.miss(l, fmt.Errorf("sizes: %w", err))
				continue
			}
			p.sizes, p.as[l.number] = labels, "sizes: "+strings.Join(labels, " | ")
			continue
		}
		m := tableCell.FindStringSubmatch(l.text)
		switch {
		case m == nil:
			inTable = false
		case p.as[l.number] != "":
		case strings.EqualFold(m[1], "size") && table == nil:
			inTable = true
		case inTable && !strings.HasPrefix(m[1], "---"):
			table = append(table, m[1])
			p.as[l.number] = "size " + m[1]
		}
	}
	if p.sizes == nil && len(across) <= grade.MaxSizes {
		p.sizes = across
	}
	if p.sizes == nil && len(table) <= grade.MaxSizes {
		p.sizes = table
	}
	switch {
	case p.sizes != nil:
		p.n = len(p.sizes)
	case p.n == 0:
		p.n = p.usual()
	}
}

// readSizesAcross returns the sizes that the first row of a table names, where that
// is headed Size and its cells are sizes, or those below it in the first column are
// none: `| Size | S | M | L |` over a row for each measure.
func (p *pattern) readSizesAcross() []string {
	for i, l := range p.lines {
		head := cells(l.text)
		if len(head) < 3 || !tableHead.MatchString(head[0]) || i > 0 && tableCell.MatchString(p.lines[i-1].text) {
			continue
		}
		var column []string
		for _, below := range p.lines[i+1:] {
			m := tableCell.FindStringSubmatch(below.text)
			if m == nil {
				break
			}
			if !strings.Contains(m[1], "--") {
				column = append(column, m[1])
			}
		}
		named, measures := head[1:], slices.ContainsFunc(head[1:], measureWord.MatchString)
		if len(column) > 0 && (every(named, sizeWord) && !every(column, sizeWord) || !measures && every(column, measureWord)) {
			p.as[l.number] = "sizes: " + strings.Join(named, " | ")
			return named
		}
	}
	return nil
}

// cells returns the cells of a row of a table.
func cells(row string) []string {
	if !strings.HasPrefix(row, "|") {
		return nil
	}
	out := strings.Split(strings.Trim(row, "| "), "|")
	for i := range out {
		out[i] = strings.TrimSpace(out[i])
	}
	return out
}

func every(cells []string, form *regexp.Regexp) bool {
	return !slices.ContainsFunc(cells, func(s string) bool { return !form.MatchString(s) })
}

// measured reports whether what stands behind "Size:" is how large the one size
// is: `7 in (18 cm) square`, `10 in wide, 60 in long`.
func measured(list string) bool {
	units := map[string]bool{}
	for _, m := range measureIn.FindAllStringSubmatch(list, -1) {
		if u, err := gauge.ParseUnit(strings.TrimSuffix(m[1], ".")); err == nil {
			units[u.String()] = true
		}
	}
	return len(units) > 1 || len(units) == 1 && extent.MatchString(list)
}

// plain writes numbers and brackets of a line as they are read: 1,200 yd as
// 1200 yd, 5 ft 8 in as 68 in, and the third kind of bracket, `S (M) [L] {XL}`, as the second.
func (l *line) plain() {
	l.text, l.body = braces.ReplaceAllString(l.text, "$1[$2]"), braces.ReplaceAllString(l.body, "$1[$2]")
	l.withoutCommas()
	l.text, l.body = inInches(l.text), inInches(l.body)
}

var feetAndInches = regexp.MustCompile(`\b(\d{1,3})(?:[ -]?(?:ft\b\.?|feet\b|foot\b)|['’′])[ -]?(\d{1,2})((?:\.\d+)?(?: ?[½¼¾⅛⅜⅝⅞]| \d/\d)?[ -]?(?:inches\b|inch\b|in\b|["″”]))`)

// inInches writes 5 ft 8 in, which is one length, as 68 in.
func inInches(s string) string {
	return feetAndInches.ReplaceAllStringFunc(s, func(both string) string {
		m := feetAndInches.FindStringSubmatch(both)
		feet, _ := strconv.Atoi(m[1])
		inches, _ := strconv.Atoi(m[2])
		return strconv.Itoa(12*feet+inches) + m[3]
	})
}

var dashes = regexp.MustCompile(`\b\d+(?:\.\d+)?(?:-\d+(?:\.\d+)?){2,}\b`)

var (
	turnsIn = regexp.MustCompile(numberForm + `\s*\(` + numberForm + `\)(?:\s*` + numberForm + `\s*\(` + numberForm + `\))*(?:\s*` + numberForm + `)?`)
	barIn   = regexp.MustCompile(`(?:^|[^\d,;.]\s?)(` + numberForm + `(?:[,;] ` + numberForm + `){2,})\s*(?:` + unitForm + `|` + skeinsIn + `|` + massUnit + `)`)
	sumIn   = regexp.MustCompile(`(?:^|=\s*)(` + numberForm + `(?:[,;] ` + numberForm + `){2,})\s*(?:sts?\b|stitch(?:es)?\b|rows?\b|rnds?\b|rounds?\b)`)
	valueIn = regexp.MustCompile(numberForm)
)

// bracketed writes lists of as many values as there are sizes as a (b, c), where
// they are a-b-c, or a (b) c (d), or, in a line with a name, a, b, c in: elsewhere
// such marks may stand for anything.
func (p *pattern) bracketed() {
	if p.n < 3 {
		return
	}
	house := func(list string, values []string) string {
		if len(values) != p.n {
			return list
		}
		return values[0] + " (" + strings.Join(values[1:], ", ") + ")"
	}
	dashed := func(list string) string { return house(list, strings.Split(list, "-")) }
	write := func(list string) string { return house(list, valueIn.FindAllString(list, -1)) }
	bar := func(form *regexp.Regexp, s string) string {
		var b strings.Builder
		at := 0
		for _, m := range form.FindAllStringSubmatchIndex(s, -1) {
			b.WriteString(s[at:m[2]] + write(s[m[2]:m[3]]))
			at = m[3]
		}
		return b.String() + s[at:]
	}
	for i := range p.lines {
		l := &p.lines[i]
		if sizesName.MatchString(l.name) || l.aside || !hasNumber(l.text) {
			continue
		}
		l.text, l.body = dashes.ReplaceAllStringFunc(l.text, dashed), dashes.ReplaceAllStringFunc(l.body, dashed)
		own := l.name != "" && !rowLine.MatchString(l.text)
		if own || p.n > 3 { // 3 (4) 5 may stand in a row
			l.text, l.body = turnsIn.ReplaceAllStringFunc(l.text, write), turnsIn.ReplaceAllStringFunc(l.body, write)
		}
		if own {
			l.text, l.body = bar(barIn, l.text), bar(barIn, l.body)
		}
		if own && strings.Contains(l.body, "=") { // elsewhere they may be stripes
			l.text, l.body = bar(sumIn, l.text), bar(sumIn, l.body)
		}
	}
}

// withoutNotes leaves out how large sizes are that have names:
// `Small (34 in), Medium (38 in)`.
func withoutNotes(list string) string {
	if first, _, _ := strings.Cut(list, "("); measureIn.MatchString(first) {
		return list
	}
	return bracketed.ReplaceAllStringFunc(list, func(note string) string {
		if measureIn.MatchString(note) || fitting.MatchString(note) {
			return ""
		}
		return note
	})
}

// labels reads what the sizes are called.
func labels(list string) (grade.Run[string], error) {
	list = strings.TrimSuffix(strings.TrimSpace(list), ".")
	if m := listHead.FindStringSubmatch(list); m != nil {
		list = m[1]
	}
	if !strings.ContainsAny(list, "([") {
		list = listAnd.ReplaceAllString(list, ", ")
	}
	if first, rest, ok := strings.Cut(list, ","); ok && !strings.ContainsAny(list, "([") {
		list = first + " (" + rest + ")"
	}
	if dashSizes.MatchString(list) && !strings.ContainsAny(list, "([,") {
		parts := strings.Split(list, "-")
		for i := range parts {
			parts[i] = strings.TrimSpace(parts[i])
		}
		list = parts[0] + " (" + strings.Join(parts[1:], ", ") + ")"
	}
	return notation.Read(list, 0, func(s string) (string, error) {
		label, _, _ := strings.Cut(s, " = ")
		return label, nil
	})
}

// usual returns the length that most lists of the text have.
func (p *pattern) usual() int {
	many := map[int]int{}
	best := 1
	for _, l := range p.lines {
		if !hasNumber(l.text) {
			continue
		}
		for _, s := range listIn.FindAllString(l.text, -1) {
			n := values(s)
			if n < 2 || n > grade.MaxSizes {
				continue
			}
			many[n]++
			if best == 1 || many[n] > many[best] {
				best = n
			}
		}
	}
	return best
}

// label returns what size i is called: its label, or its number. The one size of
// a text needs no name.
func (p *pattern) label(i int) string {
	switch {
	case i < 0 || p.n == 1:
		return ""
	case i < len(p.sizes):
		return p.sizes[i]
	}
	return strconv.Itoa(i + 1)
}

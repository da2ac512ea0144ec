package main

import (
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// Numbers of a printed pattern that nothing else in it tells, and those that are
// no numbers of the garment.
var unchecked = regexp.MustCompile(`^\d+\. ` + // number of a step
	`|^## \w+ \(make \d` +
	`|^- At the start of each row.*` + // turning chains never change a count
	`|^- ch-\d sp:.*` + // abbreviations
	`|^> \*\*Caution:.*` +
	`|^- The first row makes its chain.*` + // how a stitch is made
	`|\bin sizes? [^ ,.]+` + // names of sizes in running text
	`|^- (?:Wet|Spray|Steam) blocking:.*` +
	`|[\d.]+% to spare` +
	`|a 4-ply` +
	`|one after every .* pairs` +
	`|\(US [^)]*\)`) // labels of hooks: another may be another maker's

// mutated returns another number in the place of one, off by more than its
// printing may be.
func mutated(line, w string) string {
	step := 1
	if strings.HasPrefix(line, "- Yarn:") || strings.Contains(line, "leave ") || strings.Contains(line, "new length") || strings.Contains(line, "All other tails") {
		step = 2 // metres, grams and the lengths of tails are rounded, each from what is not printed
	}
	for _, sign := range []struct{ is, to string }{{"½", "¾"}, {"¼", "½"}, {"¾", "½"}} {
		if whole, ok := strings.CutSuffix(w, sign.is); ok {
			if step == 1 {
				return whole + sign.to
			}
			n, _ := strconv.Atoi(whole)
			return strconv.Itoa(n+step) + sign.is
		}
	}
	if whole, ok := strings.CutSuffix(w, ".5"); ok {
		n, _ := strconv.Atoi(whole)
		if step == 1 {
			return whole
		}
		return strconv.Itoa(n+step) + ".5"
	}
	n, _ := strconv.Atoi(w)
	return strconv.Itoa(n + step)
}

// TestEveryNumber changes every number of the printed patterns that is of a kind
// that is checked, one at a time, and wants a finding that names its line and its
// size. Where two lines contradict one another, and nothing says which is right,
// the finding stands at one of them and names the other.
func TestEveryNumber(t *testing.T) {
	numberIn := regexp.MustCompile(`\d+(?:\.\d+)?[½¼¾]?|[½¼¾]`)
	texts := map[string]string{}
	for _, file := range files(t, "../pattern/testdata/*.md") {
		if strings.Contains(file, "-why") {
			continue // the same with the arithmetic of each size, which is not checked
		}
		b, err := os.ReadFile(file)
		require.NoError(t, err)
		texts[filepath.Base(file)] = string(b)
	}
	r := rand.New(rand.NewPCG(3, 5))
	for len(texts) < 10 {
		if text, ok := generated(t, r); ok && !strings.Contains(text, "## Why") {
			texts[fmt.Sprint("generated ", len(texts))] = text
		}
	}
	for file, text := range texts {
		t.Run(file, func(t *testing.T) {
			t.Parallel()
			lines := strings.Split(text, "\n")
			right, err := read(text)
			require.NoError(t, err)
			many, stride := 0, 9 // some of the numbers of the other patterns
			if file == "orchard-wrap.md" {
				stride = 1
			}
			for i, l := range lines {
				skip := unchecked.FindAllStringIndex(l, -1)
				for _, at := range numberIn.FindAllStringIndex(l, -1) {
					if within(skip, at[0]) {
						continue
					}
					many++
					if many%stride > 0 {
						continue
					}
					to := mutated(l, l[at[0]:at[1]])
					changed := append([]string(nil), lines...)
					changed[i] = l[:at[0]] + to + l[at[1]:]
					code, out, errs := cli(strings.Join(changed, "\n"))
					if code == 2 && strings.HasPrefix(errs, fmt.Sprintf("line %d: ", i+1)) {
						continue // no row can be read so
					}
					size := sizeAt(right, right.lines[i], l, at[0])
					if code != 1 || !names(out, i+1, size) {
						t.Errorf("line %d: %s for %s at column %d, size %q: %d\n%s%s%s", i+1, to, l[at[0]:at[1]], at[0]+1, size, code, errs, out, l)
					}
				}
			}
			t.Logf("%d numbers changed", many)
			require.Greater(t, many, 50)
		})
	}
}

func within(spans [][]int, at int) bool {
	for _, s := range spans {
		if s[0] <= at && at < s[1] {
			return true
		}
	}
	return false
}

// sizeAt returns the label of the size that a number at a byte of a line is for;
// "" where it is for all.
func sizeAt(p *pattern, l line, raw string, at int) string {
	if m := tableCell.FindStringSubmatch(raw); m != nil {
		return m[1]
	}
	sizes := p.sizesOf(l)
	for _, list := range listIn.FindAllStringIndex(raw, -1) {
		if list[0] > at || at >= list[1] {
			continue
		}
		if n := values(raw[list[0]:list[1]]); n > 1 && n == len(sizes) {
			return p.label(sizes[values(raw[list[0]:at]+"0")-1])
		}
	}
	return ""
}

// names reports whether a finding is about the line, or names it, and about the
// size or all sizes.
func names(out string, line int, size string) bool {
	for f := range strings.Lines(out) {
		at := strings.HasPrefix(f, fmt.Sprintf("line %d, ", line)) || strings.HasPrefix(f, fmt.Sprintf("line %d:", line))
		if !at && !regexp.MustCompile(fmt.Sprintf(`\bline %d\b`, line)).MatchString(f) {
			continue
		}
		head, _, _ := strings.Cut(f, ": got ")
		if size == "" || !strings.Contains(head, ", size ") || strings.HasSuffix(head, ", size "+size) {
			return true
		}
	}
	return false
}

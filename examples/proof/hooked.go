package main

import (
	"regexp"
	"slices"
	"strconv"
	"strings"

	"example.com/panelmath/panel/proof"
	"example.com/panelmath/panel/row"
)

// hookForm is the first stitch over a foundation chain, without a remark about
// the chains before it.
var hookForm = regexp.MustCompile(`\b(?i:(` + stitchName + `) in(?:to)? (?:the )?(?:(\d{1,2})(?:rd|th)|(third|fourth|fifth)) ch(?:ain)? from (?:the |your )?hook)\b( *\()?`)

// mostHooked is how many stitches may be worked in all to find out about chains,
// by the numbers in the rows.
const mostHooked = 500_000

// hooked gives every foundation chain that does not say whether the chains before
// its first stitch count the remark with which the counts of its row, or else of
// the next rows that print some, agree. Where none tells, they count before a
// stitch that is higher than sc: common practice, no source.
func (p *pattern) hooked(b *block) {
	for i := range b.said {
		m := hookForm.FindStringSubmatchIndex(b.said[i])
		if m == nil || m[8] >= 0 || len(b.said[i]) > maxTurn {
			continue
		}
		name := strings.ToLower(b.said[i][m[2]:m[3]])
		of, err := row.ParseStitch(name, p.terms)
		if err != nil {
			continue
		}
		hook := 3
		if m[4] >= 0 {
			hook, _ = strconv.Atoi(b.said[i][m[4]:m[5]])
		} else {
			hook += slices.Index([]string{"third", "fourth", "fifth"}, strings.ToLower(b.said[i][m[6]:m[7]]))
		}
		remarks := []string{" (skipped chs count as " + name + ")", " (skipped chs do not count)"}
		if of.Height() < 2 {
			slices.Reverse(remarks)
		}
		usual := hook <= max(of.Height(), 2)+1
		for k := 1; k <= min(hook-2-of.Height(), 5); k++ { // the first space of a mesh
			remarks = append(remarks, " (skipped chs count as "+name+", ch "+strconv.Itoa(k)+")")
		}
		saying := func(remark string) string { return b.said[i][:m[1]] + remark + b.said[i][m[1]:] }
		k := slices.IndexFunc(remarks, func(s string) bool { return p.agrees(b, i, saying(s)) })
		if k < 0 && usual {
			k = 0
		}
		if k >= 0 {
			b.said[i] = saying(remarks[k])
		}
	}
}

// agrees reports whether a row in other words makes what it prints, or what the
// first of the two rows after it that has a count prints.
func (p *pattern) agrees(b *block, i int, said string) bool {
	lines := []string{said}
	if i > 0 && rowChain.MatchString(b.said[i-1]) && !strings.Contains(b.said[i-1], ":") {
		lines = []string{b.said[i-1], said}
	}
	for k := i + 1; p.overChains > 0; k++ {
		for _, n := range digits.FindAllString(strings.Join(lines, " "), -1) {
			v, _ := strconv.Atoi(n)
			p.overChains -= min(v, mostHooked)
		}
		t, err := proof.Parse(strings.Join(lines, "\n"), p.terms)
		if err != nil {
			return false
		}
		if len(t.Lines[len(t.Lines)-1].Count) > 0 || k >= min(len(b.said), i+3) {
			found, err := spending(t, &p.places)
			return err == nil && !slices.ContainsFunc(found, func(f proof.Finding) bool { return f.Kind != proof.KindNumber && !f.Remark })
		}
		lines = append(lines, b.said[k])
	}
	return false
}

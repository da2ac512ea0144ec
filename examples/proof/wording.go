package main

import (
	"regexp"
	"strconv"
	"strings"
)

// wording is a way to write something about rows, and the way in which package
// panel/proof reads it.
type wording struct {
	form *regexp.Regexp
	as   string
}

func (w wording) in(s string) string { return w.form.ReplaceAllString(s, w.as) }

// instruction is how a row begins.
const instruction = `(?:\d* ?f?(?:sc|hdc|dc)\b|[dh]?tr\b|ch(?:ain)?\b|sk(?:ip)?\b|sl st\b|[*\[(]|with [A-Z]\b|rep(?:eat)?\b|same as\b)`

// numberings are ways to number a row.
var numberings = [...]wording{
	{regexp.MustCompile(`^(\d+)(?:st|nd|rd|th)(?: row)? ?(?i:to|through|thru|[-–]) ?(\d+)(?:st|nd|rd|th) (?i:rows?) ?:`), "Rows $1–$2:"},
	{regexp.MustCompile(`^((?i:row|rnd))(?i:s?) (\d+) ?(?:[-–]|(?i:to|through|thru)) ?(?i:rows?|rnds?) (\d+) ?:`), "${1}s $2–$3:"},
	{regexp.MustCompile(`^((?i:rows?|rnds?) \d+(?: ?(?:[-–]|to|through|thru) ?\d+)?(?: ?\([^():]*\))?) +((?i:rep(?:eat)? (?:rows?|rnds?|R\d|(?:the )?(?:last|previous|prev) (?:row|rnd)|(?:the )?\d+(?:st|nd|rd|th) (?:row|rnd))))`), "$1: $2"},
	{regexp.MustCompile(`^(R\d+ ?[-–]) ?R(\d+ ?:)`), "$1$2"},
	{regexp.MustCompile(`^R(\d+(?: ?[-–] ?\d+)?(?: ?\([^():]*\))?) ?:`), "Row $1:"},
	{regexp.MustCompile(`^(\d+)(?:st|nd|rd|th) (?i:row)((?: ?[(\[][^:]{0,30}[)\]]|,? (?:RS|WS)(?: facing)?)?):`), "Row $1$2:"},
	{regexp.MustCompile(`^((?i:rows?|rnds?) \d+(?: ?[-–] ?\d+)?(?: ?\([^():]*\))?)(?:\.| -| –| —) +((?i:` + instruction + `))`), "$1: $2"},
	{regexp.MustCompile(`^(?i:set-up row)\b`), "Setup row"},
	{regexp.MustCompile(`^(?i:base row)\b`), "Foundation row"},
	{regexp.MustCompile(`^(?i:(?:with|using) [^:()]{1,40} )?(?i:make) (` + listForm + `) (?i:ch|chains?)\.?$`), "Ch $1."},
	{regexp.MustCompile(`^([^:]{0,40}: *)?((?i:rep(?:eat)?)) (?:the )?(\d+)(?:st|nd|rd|th)(?:( and | ?[-–] ?| to )(?:the )?(\d+)(?:st|nd|rd|th))? ((?i:row|rnd))s?\b`), "$1$2 ${6}s $3$4$5"},
	{regexp.MustCompile(`^([^:]{0,40}: *)?((?i:rep(?:eat)?)) R(\d+(?: ?[-–] ?\d+)?)\b`), "$1$2 Row $3"},
	{regexp.MustCompile(`^([^:]{0,40}): \((?i:(RS|WS)|(right|wrong) side(?: facing)?)\)[.:,]? +`), "$1 ($2$3): "},
}

// numbering returns a line with its row numbered as package panel/proof reads it.
func numbering(s string) string {
	for _, w := range numberings {
		s = w.in(s)
	}
	return s
}

const (
	stitchName = `sc|hdc|dc|tr|htr|dtr|trtr`
	// loop is a part of a stitch to work into, which changes no count.
	loop = `(?:the )?(?:blo|flo|(?:back|front|third|3rd)(?: horizontal)? (?:loops?|lps?|bars?)(?: only)?(?: \((?:blo|flo)\))?)`
	// idle is what changes no count either.
	idle = `(?:(?:do not |don['’]t )?(?:fasten|finish) off(?: (?:colou?r |yarn )?[A-Z]\b)?(?: and weave in (?:all )?(?:the )?ends)?|(?:cut|break)(?: the)? yarn|(?:and )?chang(?:e|ing) (?:colou?rs?|to (?:colou?r |yarn )?[A-Z]\b)(?: (?:in|on|at|with) [^,;.()]{1,40}?)?|turn|weave in (?:all )?(?:the )?ends|` + closing + `|(?:and )?leav(?:e|ing) an? [^;()]{0,40}(?:\([^()]{0,20}\) )?tail)`
	// closing closes a round, and makes no stitch.
	closing = `(?:and )?(?:join(?:ed|ing)?(?: (?:with|by|using) (?:an? )?(?:` + slip + `))?(?: (?:to|in|into|at) [^,;.()]{1,60}?)?|(?:` + slip + `) (?:to|in|into) [^,;.()]{1,60}? to join)`
	slip    = `sl st|sl-st|slip st|slip stitch|ss`
)

// usualWays are ways to write rows.
var usualWays = [...]wording{
	{regexp.MustCompile(` ?--+ ?(\d)`), " — $1"},
	{regexp.MustCompile(`—(\d)`), " — $1"},
	{regexp.MustCompile(`([)\]])[,;] *(?i:turn)\.?$`), "$1."},
	{regexp.MustCompile(`[.;,]? *\b(?i:total|in all):? (` + listForm + ` [a-z]+)\.?$`), ". $1"},
	{regexp.MustCompile(`\b(?i:(across|around|end|row|turn|times|unworked)); *(` + listForm + ` [a-z]+)\.?$`), "$1. $2"},
	{regexp.MustCompile(`^([^:]*: *)(?i:join) (?:(?i:yarn|colou?r|with)|[A-Z])\b[^,;.:]*[,;.] *`), "$1"},
	{regexp.MustCompile(`^([^:]*: *)(\d+) ch( \(|[,.;])`), "${1}Ch $2$3"},
	{regexp.MustCompile(`^([^:]*: *(?i:ch(?:ain)?) \d+)\. +(\d)`), "$1, $2"},
	{regexp.MustCompile(`\((?i:not count(?:ed|ing)|(?:does not|doesn['’]t|do not|don['’]t) count)(?: as (?:an? )?(?:st|sts|stitch))?\)`), "(does not count)"},
	{regexp.MustCompile(`\b((?i:counts as)) (?:the |a )?1st `), "$1 first "},
	{regexp.MustCompile(`(?i)\bto end of (?:the )?(?:chain|ch|rnd|round)\b`), "to end"},
	{regexp.MustCompile(`^((?:[^:]*: *)?(?i:rep(?:eat)? (?:rows?|rnds?) [\d–-]+(?: (?:and|to) \d+)?)) (?i:in|with|using) (?i:colou?r |yarn )?[A-Z]\.?$`), "$1"},
	{regexp.MustCompile(`^(?i:foundation(?: row)?): *((?i:ch(?:ain)?) \d[\d\s(),:\[\]]*\.?)$`), "$1"},
	{regexp.MustCompile(`: (` + listForm + ` [a-z]+)\.?$`), ". $1"},
	{regexp.MustCompile(`^([^:]*: *)(?i:with|using) (?:(?i:colou?r|yarn) )?[A-Z],? `), "$1"},
	{regexp.MustCompile(`^([^:]*: *(?i:ch(?:ain)?) \d+(?: \([^)]*\))?)(?:[,;.]| and| &) *(?i:turn)[,;.] `), "$1, "},
	{regexp.MustCompile(`(?i),? (?:and )?ch 1[,;.]? (?:and )?turn\b`), ", turn"},             // a chain of one never counts
	{regexp.MustCompile(`(?i)([^:\s] *\bch(?:ain)? \d+)[,;.]? *(?:and )?turn\b`), "$1 turn"}, // others may: package row says where they belong
	{regexp.MustCompile(`([.,;)\]])(?: *(?i:` + idle + `)[.,;]?)+( *[(\[]| [-–—] | ` + listForm + ` [a-z]+\.?$|$)`), "$1.$2"},
	{regexp.MustCompile(`\. *(?i:turn)\.? +([A-Za-z*])`), ", $1"},
	{regexp.MustCompile(`([\w)\]])\. +([A-Za-z*])`), "$1, $2"},
	{regexp.MustCompile(`(?i)\b(in|into|through) ` + loop + ` of\b`), "in"},
	{regexp.MustCompile(`(?i),? (?:work(?:ed|ing)? )?(?:in|into|through) ` + loop + `( throughout)?([,;.( ]|$)`), "$2"},
	{regexp.MustCompile(`(?i)(: *|, *)(?:work(?:ed|ing)? )?(?:in|into|through) ` + loop + `(?: throughout)?, `), "$1"},
	{regexp.MustCompile(`(?i)\b(st|` + stitchName + `)(?: |-)(?:blo|flo)\b`), "$1"},
	{regexp.MustCompile(`(?i)([:,*(\[] ?)(?:blo|flo) (` + stitchName + `)\b`), "$1$2"},
	{regexp.MustCompile(`(?i)([:,] *)(` + stitchName + `)(?: evenly)? (across|around|to (?:the )?end\b|to (?:the )?last)\b`), "$1$2 in each st $3"},
	{regexp.MustCompile(`(?i)([:,] *)((?:` + stitchName + `)\d+tog) (across|around|to end)\b`), "$1*$2; rep from * $3"},
	{regexp.MustCompile(`(?i), (?:ending|end)(?: with)? `), ", "},
	{regexp.MustCompile(`(?i)\bsame (st|stitch) as (?:the )?(?:turning |beg |beginning )?ch(?:-\d+| \d+)?\b`), "same $1"},
	{regexp.MustCompile(`(?i)^([^:]*: *ch 1(?: \(does not count[^()]*\))?, [^,]*\bin (?:the )?)same `), "${1}first "},
	{regexp.MustCompile(`(?i)([^:]), ch \d+ \((?:does|do) not count[^()]*\)`), "$1"}, // after slip stitches
	// A chain that counts stands on the first stitch: that needs no second word, and
	// what goes into the first stitch as well is an increase.
	{regexp.MustCompile(`(?i)(counts as (?:a |first |the )*[a-z]+(?:(?:,| and|\+) ch \d+)?(?: (?:here|now) and throughout| throughout)?\)?),? (?:sk|skip|miss) (?:the )?(?:first|1st) (?:st|stitch|` + stitchName + `),`), "$1,"},
	{regexp.MustCompile(`(?i)(counts as [^()]*\)|counts as [a-z]+), ((?:\d+ )?[a-z]+|\([^()]*\)) in (?:the )?(?:first|1st) (st|stitch|` + stitchName + `)\b`), "$1, $2 in same $3"},
	{regexp.MustCompile(`\.([)\]])\.?$`), "$1"}, // (21 sts.)
	// a count without its noun
	{regexp.MustCompile(`(\.| turn) *([(\[])(` + listForm + `)([)\]])\.?$`), "$1 $2$3 sts$4"},
	{regexp.MustCompile(`( — | – | - )(` + listForm + `)\.?$`), "$1$2 sts"},
}

// twoRows is a label of two rows.
var twoRows = regexp.MustCompile(`^(?i:rows|rnds) (\d+) (and|&|to|through|thru) (\d+)`)

// usual returns a row in the words that package panel/proof reads.
func usual(row string) string {
	if m := twoRows.FindStringSubmatch(row); m != nil {
		from, _ := strconv.Atoi(m[1])
		if to, _ := strconv.Atoi(m[3]); to == from+1 || strings.HasPrefix(m[2], "t") {
			row = "Rows " + m[1] + "–" + m[3] + row[len(m[0]):]
		}
	}
	for _, w := range usualWays {
		row = w.in(row)
	}
	return row
}

// What a text says of its turning chains: in a row, and in a sentence.
var (
	chainInRow   = regexp.MustCompile(`(?i)\bch(?:ain)? (\d+)(?: *\(|, )((?:counts as|does not count)\b[^();.]*)`)
	chainInWords = regexp.MustCompile(`(?i)\bch(?:ain)?[ -](\d+)\b[^.():;]{0,60}?\b(counts as (?:an? |one |1 |the |first )*[a-z]+|does not count)`)
	throughout   = regexp.MustCompile(`(?i),? *(?:here|now|throughout|as an? st|as a stitch)\b.*$`)
	bareChain    = regexp.MustCompile(`^([^:]*: *(?i:ch(?:ain)?) (\d+))([,;.] *)(.*)$`)
)

// recall takes down what a line says of the chain at the start of a row, and
// returns a row that leaves it out as it is said before.
func (p *pattern) recall(l line) string {
	if m := bareChain.FindStringSubmatch(l.text); m != nil && p.isRow(l) && p.chains[m[2]] != "" &&
		!strings.HasPrefix(m[4], "count") && !strings.HasPrefix(m[4], "does not") && !strings.Contains(m[4], "hook") {
		return m[1] + " (" + p.chains[m[2]] + ")" + m[3] + m[4]
	}
	for _, form := range []*regexp.Regexp{chainInRow, chainInWords} {
		if m := form.FindStringSubmatch(l.text); m != nil && m[1] != "1" { // one chain never counts
			p.chains[m[1]] = strings.ToLower(throughout.ReplaceAllString(m[2], ""))
			break
		}
	}
	return l.text
}

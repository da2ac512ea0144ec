package care

import (
	"slices"
	"strings"
	"unicode"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/number"
	"example.com/panelmath/internal/text"
	"github.com/shopspring/decimal"
)

// fibreWords are the words of a label that are read as each fibre; those of Other
// are fibres, and no source was read for them. Common practice, no source.
var fibreWords = [...]string{
	Other: "alpaca suri llama vicuna guanaco cashmere yak camel qiviut possum mink bamboo viscose rayon modal tencel lyocell cupro acetate " +
		"hemp ramie jute nettle raffia sisal soy soya seacell elastane elastic spandex lycra metallic lurex polypropylene",
	Wool:          "wool merino lambswool bluefaced shetland",
	SuperwashWool: "superwash",
	Mohair:        "mohair angora",
	Silk:          "silk",
	Cotton:        "cotton",
	Linen:         "linen flax",
	Acrylic:       "acrylic polyester nylon polyamide microfibre microfiber synthetic synthetics",
}

// plainWords say something of a yarn and are no fibre. Common practice, no source.
const plainWords = "a an the of in or for dk worsted aran sport fingering sock lace chunky bulky super jumbo light medium heavy weight size " +
	"soft organic pima supima egyptian peruvian highland mercerized mercerised recycled reclaimed virgin pure new natural real " +
	"fine finest superfine extrafine extra ultra premium luxury quality certified traceable " +
	"yarn yarns thread fibre fiber fibres fibers content contents composition blend blends blended mix mixed mixture " +
	"ply plied strand strands g gram grams kg oz ounce ounces m metre metres meter meters yd yds yard yards mm cm hook needle needles " +
	"skein skeins ball balls hank hanks cone cones colour colours color colors shade shades solid tonal variegated assorted " +
	"dyed undyed hand kettle machine spun handspun ring combed carded brushed baby kid " +
	"wash washable washed dry clean tumble iron cool warm cold flat lay made"

// lexicon has the words of the two lists.
type lexicon struct {
	fibre map[string]Fibre
	plain map[string]bool
}

func newLexicon() lexicon {
	lex := lexicon{map[string]Fibre{}, map[string]bool{}}
	for f, words := range fibreWords {
		for w := range strings.FieldsSeq(words) {
			lex.fibre[w] = Fibre(f)
		}
	}
	for w := range strings.FieldsSeq(plainWords) {
		lex.plain[w] = true
	}
	return lex
}

// Fibres returns the fibres that a label names, in the order of the constants:
// `cotton blend`, `60% cotton, 40% acrylic`. Superwash wool is not wool as well,
// and what a label denies it does not name: `wool-free`, `no silk`.
//
// Other is among them wherever a part of the yarn is not known: a fibre without
// a constant of its own or a word that is not understood, with a share or in a
// list of fibres; shares that leave something of 100 % unnamed; a blend of a
// single named fibre; a text that names none. Where the shares come to 100 %,
// the words beside them name no other fibre: `100% cotton, camel`.
//
// It returns a *gauge.ParseError if the text is longer than 10 000 characters.
func Fibres(label string) ([]Fibre, error) {
	if len(label) > text.Limit {
		return nil, &gauge.ParseError{Kind: "fibre", Text: label, Cause: "text too long; at most 10000 characters", Err: gauge.ErrBounds}
	}
	lex := newLexicon()
	var found [Acrylic + 1]bool
	var named decimal.Decimal // the shares of fibres with a constant
	shares, blend, loose := false, false, false
	parts := split(label)
	for _, p := range parts {
		known, other, strange := p.fibres(lex)
		for _, f := range known {
			found[f] = true
		}
		blend = blend || p.blend
		switch {
		case p.shared:
			shares = true
			if other || len(known) == 0 {
				found[Other] = true
			} else {
				named = named.Add(p.share)
			}
		case other || strange && len(known) == 0 && !p.denies && len(parts) > 1:
			loose = true
		}
	}
	if found[SuperwashWool] {
		found[Wool] = false
	}
	var out []Fibre
	for f := Wool; f <= Acrylic; f++ {
		if found[f] {
			out = append(out, f)
		}
	}
	whole := shares && named.Cmp(decimal.NewFromInt(100)) >= 0
	if found[Other] || shares && !whole || loose && !whole || blend && len(out) == 1 || len(out) == 0 {
		out = slices.Insert(out, 0, Other)
	}
	return out, nil
}

// part is what stands between two commas of a label, or one share of it.
type part struct {
	words  []string // as written, in lower case, with their hyphens
	share  decimal.Decimal
	shared bool
	denies bool // it says what the yarn is not made of
	blend  bool
}

// fibres returns the fibres with a constant that the part names, and whether it
// names another, or has a word that is not understood. It notes what it denies.
func (p *part) fibres(lex lexicon) (known []Fibre, other, strange bool) {
	var last string // the word before, if it is a fibre that may turn out to be denied
	note := func(w string) {
		f, ok := lex.fibre[w]
		switch {
		case !ok:
			strange = strange || !lex.plain[w]
		case f == Other:
			other = true
		default:
			known = append(known, f)
		}
	}
	take := func() {
		if last != "" {
			note(last)
		}
		last = ""
	}
	for i := 0; i < len(p.words); i++ {
		w := p.words[i]
		bits := strings.FieldsFunc(w, func(c rune) bool { return c == '-' })
		switch {
		case len(bits) == 0:
		case w == "no", w == "without", w == "faux", w == "imitation", w == "free" && i+1 < len(p.words) && (p.words[i+1] == "of" || p.words[i+1] == "from"):
			p.denies = true
			take()
			return known, other, strange
		case w == "made": // made in a place, made by a mill
			take()
			return known, other, strange
		case w == "not", w == "non":
			take()
			p.denies = true
			i++
		case w == "free":
			p.denies = true
			last = ""
		case bits[0] == "non":
			p.denies = true
		case len(bits) > 1 && slices.Contains([]string{"free", "like", "look", "feel", "effect"}, bits[len(bits)-1]):
			p.denies = true
		case len(bits) > 1:
			take()
			fibre, rest := false, false
			for _, b := range bits {
				_, ok := lex.fibre[b]
				fibre = fibre || ok
				rest = rest || !ok && !lex.plain[b]
				note(b)
			}
			other = other || fibre && rest // cotton-rich: and what else?
		default:
			take()
			last = w
			p.blend = p.blend || strings.HasPrefix(w, "blend") || strings.HasPrefix(w, "mix")
		}
	}
	take()
	return known, other, strange
}

// split takes a label apart: at commas, strokes and the like, at "and"
// and "with", and at every share, which stands before its fibre or behind it.
func split(label string) []*part {
	label = strings.ToLower(label)
	label = strings.NewReplacer("super-wash", "superwash", "super wash", "superwash", "per cent", "%", "percent", "%").Replace(label)
	var out []*part
	var tokens []string
	flush := func() {
		behind := len(tokens) > 0 && strings.HasSuffix(tokens[len(tokens)-1], "%") && !strings.HasSuffix(tokens[0], "%")
		p := &part{}
		add := func() {
			if len(p.words) > 0 || p.shared {
				out = append(out, p)
			}
			p = &part{}
		}
		for _, t := range tokens {
			switch digits, ok := strings.CutSuffix(t, "%"); {
			case !ok:
				p.words = append(p.words, t)
			case behind:
				p.shared, p.share = true, share(digits)
				add()
			default:
				add()
				p.shared, p.share = true, share(digits)
			}
		}
		add()
		tokens = nil
	}
	runes := []rune(label)
	for i := 0; i < len(runes); {
		start := i
		digit := func(k int) bool { return k >= 0 && k < len(runes) && runes[k] >= '0' && runes[k] <= '9' }
		switch c := runes[i]; {
		case digit(i), c == '%':
			for digit(i) || i < len(runes) && (runes[i] == '.' || runes[i] == ',') && digit(i-1) && digit(i+1) {
				i++
			}
			n := strings.ReplaceAll(string(runes[start:i]), ",", ".")
			for i < len(runes) && unicode.IsSpace(runes[i]) {
				i++
			}
			if i < len(runes) && runes[i] == '%' {
				i++
				tokens = append(tokens, n+"%")
			}
		case unicode.IsLetter(c):
			for i < len(runes) && (unicode.IsLetter(runes[i]) || unicode.IsMark(runes[i]) || runes[i] == '-' || runes[i] == '\'') {
				i++
			}
			if w := string(runes[start:i]); w == "and" || w == "with" {
				flush()
			} else {
				tokens = append(tokens, w)
			}
		case unicode.IsSpace(c) && c != '\n', c == '-' && i > 0 && !unicode.IsSpace(runes[i-1]), c == '\'', c == '"', c == '®', c == '™', c == '*', c == '(', c == ')':
			i++
		default:
			i++
			flush()
		}
	}
	flush()
	return out
}

// share reads the digits before a percent sign; what can't be read is nothing.
func share(digits string) decimal.Decimal {
	if strings.Count(digits, ".") > 1 || len(digits) > number.MaxDigits {
		return decimal.Decimal{}
	}
	return number.Parse(digits)
}

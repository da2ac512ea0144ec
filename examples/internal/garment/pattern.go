package garment

import (
	"fmt"
	"strings"

	"example.com/panelmath/examples/internal/brief"
	"example.com/panelmath/examples/internal/document"
	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"example.com/panelmath/grade/caution"
	"example.com/panelmath/grade/notation"
	"example.com/panelmath/panel"
	"example.com/panelmath/panel/layout"
	"example.com/panelmath/panel/row"
	"example.com/panelmath/panel/schematic"
	"example.com/panelmath/seam"
	"example.com/panelmath/yarn/care"
	"github.com/shopspring/decimal"
)

// Options say what a document holds beside the pattern.
type Options struct {
	Why       bool // one sentence for every derived number, in every size
	Schematic bool // the drawing for all sizes
}

// Document writes the pattern in the order of the trade.
func (g Garment) Document(o Options) (document.Document, error) {
	rows, err := g.rows(func(s Size) panel.Panel { return s.Panel })
	if err != nil {
		return document.Document{}, err
	}
	tails, end, err := g.finishing()
	if err != nil {
		return document.Document{}, err
	}
	how := "Panel (make 2)"
	if g.Layout == brief.Cocoon {
		how = "Panel (make 1)"
	}
	d := document.Document{Title: g.Name, Lang: g.Lang()}
	add := func(heading string, blocks ...document.Block) {
		d.Sections = append(d.Sections, document.Section{Heading: heading, Blocks: blocks})
	}
	add("Sizes", g.sizes()...)
	add("Finished measurements", g.measurements()...)
	if o.Schematic {
		figure, err := g.figure()
		if err != nil {
			return document.Document{}, err
		}
		add("Schematic", figure)
	}
	add("Materials", g.materials()...)
	add(g.word("Gauge", "Tension"), g.gauge()...)
	add("Notes", g.notes()...)
	at := len(d.Sections)
	add("Abbreviations")
	add("Tails", document.List{Items: tails})
	add(how, append(g.openFabric(), g.begin("", "panel"), instructions(rows), g.fastenOff())...)
	if g.Sizes[0].Sleeve != nil {
		sleeve, err := g.rows(func(s Size) panel.Panel { return *s.Sleeve })
		if err != nil {
			return document.Document{}, err
		}
		add("Sleeve (make 2)", g.begin("sleeve", "sleeve"), instructions(sleeve), g.fastenOff())
	}
	d.Sections = append(d.Sections, end...)
	d.Sections[at].Blocks = g.abbreviations(d)
	if o.Why {
		for _, s := range g.Sizes {
			add("Why these numbers: "+s.Group.Label(), document.List{Items: g.why(s)})
		}
	}
	return d, nil
}

// rows writes the rows of one piece for all sizes.
func (g Garment) rows(piece func(Size) panel.Panel) (panel.Instructions, error) {
	return g.Plan.Write(panel.Writing{Terms: g.Terms,
		Stitches: runOf(g, func(s Size) int { return piece(s).Stitches.Value }), Repeats: runOf(g, func(s Size) int { return piece(s).Repeats })})
}

// drawn is the size whose shape the schematic has.
func (g Garment) drawn() int { return len(g.Sizes) / 2 }

// Schematic draws the garment, one drawing for all sizes.
func (g Garment) Schematic() ([]byte, error) { return g.schematic().Draw() }

func (g Garment) schematic() schematic.All {
	return schematic.All{
		Sizes:   runOf(g, func(s Size) layout.Layout { return s.Sewn.Layout }),
		Labels:  runOf(g, func(s Size) string { return s.Group.Label() }),
		Shape:   g.drawn(),
		Options: schematic.Options{Title: g.Name, Centimetres: g.Units == gauge.Centimetre, Terms: g.Terms},
	}
}

// figure is the schematic with its key as text, in the type of the page.
func (g Garment) figure() (document.Figure, error) {
	all := g.schematic()
	all.Options.KeyApart = true
	svg, err := all.Draw()
	if err != nil {
		return document.Figure{}, err
	}
	key, err := all.Key()
	if err != nil {
		return document.Figure{}, err
	}
	caption := "The pieces to scale; the letters stand for what the key says."
	if len(g.Sizes) > 1 {
		caption = "The pieces to scale, drawn in size " + g.Sizes[g.drawn()].Group.Label() + "; the letters stand for what the key says, in every size."
	}
	f := document.Figure{SVG: string(svg), Caption: caption}
	for _, line := range key {
		f.Key = append(f.Key, document.KeyLine(line))
	}
	return f, nil
}

func runOf[T any](g Garment, f func(Size) T) grade.Run[T] {
	out := make(grade.Run[T], len(g.Sizes))
	for i, s := range g.Sizes {
		out[i] = f(s)
	}
	return out
}

func instructions(rows panel.Instructions) document.Block {
	var block document.Instructions
	for _, l := range rows.Lines {
		block.Lines = append(block.Lines, document.Line{Label: l.Label, Text: l.Text + ".", Count: l.Count})
	}
	return block
}

// begin says which pieces are made by the rows that follow, and with which tail.
func (g Garment) begin(of, one string) document.Block {
	var names []string
	for _, p := range g.Sizes[0].Sewn.Layout.Pieces {
		if strings.Contains(p.Name, "sleeve") == (of == "sleeve") {
			names = append(names, "the "+p.Name)
		}
	}
	tail := "Before the first row, leave the first tail of the " + one + g.tailLength() + "."
	if len(names) == 1 {
		return document.Para{Text: tail}
	}
	return document.Para{Text: "One is " + strings.Join(names, ", the other ") + ": the same rows make both. " + tail}
}

// tailLength says how long a tail is to be. Ends of no length are given none.
func (g Garment) tailLength() string {
	switch s := g.Yarn.Sewing; {
	case s.End.Value.Sign() > 0:
		return " at the length given under Tails"
	case s.Factor.Sign() > 0:
		return " at the length given under Tails; where none is given, long enough to weave in"
	}
	return " long enough to weave in"
}

// fastenOff ends a piece.
func (g Garment) fastenOff() document.Block {
	return document.Para{Text: "Fasten off, leaving the last tail" + g.tailLength() + "."}
}

// sentence makes a sentence of an explanation.
func sentence(s string) string { return strings.TrimSuffix(sentenceStart(s), ".") + "." }

func sentenceStart(s string) string {
	r := []rune(s)
	return strings.ToUpper(string(r[:1])) + string(r[1:])
}

// Lang is the language of the pattern, for a page.
func (g Garment) Lang() string { return g.word("en-US", "en-GB") }

// word returns the US or the UK word.
func (g Garment) word(us, uk string) string {
	if g.Terms == row.UK {
		return uk
	}
	return us
}

// Runs: one text for all sizes.

func (g Garment) text(f func(Size) string) string { return grade.Text(g.Sizes, f) }

func (g Garment) number(f func(Size) int) string {
	return g.text(func(s Size) string { return fmt.Sprint(f(s)) })
}

// grids returns the grid of the brief's own unit and the other one.
func (g Garment) grids() (own, other gauge.Grid) {
	if g.Units == gauge.Centimetre {
		return gauge.HalfCentimetre, gauge.QuarterInch
	}
	return gauge.QuarterInch, gauge.HalfCentimetre
}

// measure prints a measurement for all sizes in both units, the brief's first:
// `48½ (56, 66) in [123 (142, 167.5) cm]`.
func (g Garment) measure(f func(Size) gauge.Measurement) string {
	own, other := g.grids()
	all := make(grade.Run[gauge.Measurement], len(g.Sizes))
	for i, s := range g.Sizes {
		all[i] = f(s)
	}
	return notation.Both(all, own, other)
}

func (g Garment) sizes() []document.Block {
	labels := g.text(func(s Size) string { return s.Group.Label() })
	units := []gauge.Unit{gauge.Inch, gauge.Centimetre}
	if g.Units == gauge.Centimetre {
		units[0], units[1] = units[1], units[0]
	}
	t := document.Table{
		Caption: "Body measures that each size is made for (" + g.Chart.Name + "):",
		Header:  []string{"Size", "To fit chest, " + units[0].String(), "To fit chest, " + units[1].String()},
	}
	for _, s := range g.Sizes {
		t.Rows = append(t.Rows, []string{s.Group.Label(), g.printed(s.Group, units[0]), g.printed(s.Group, units[1])})
	}
	blocks := []document.Block{t}
	if len(g.Sizes) > 1 {
		how := "Numbers are given for the smallest size first and for the larger sizes in brackets, in this order: " + labels + ". One number alone is for every size. Mark your size all the way through before you begin."
		if least, most := g.repeats(); least == 0 && most > 0 {
			how += " 0 times means: leave this out in your size."
		}
		if gaps, err := grade.Gaps(g.Groups, grade.Chest, g.Units); err == nil && len(gaps) > 0 {
			how += " A chest between two sizes: take the larger."
		}
		blocks = append(blocks, document.Para{Text: how})
	}
	return append(blocks, document.Para{Text: "Body measures from: " + strings.TrimPrefix(g.Chart.Source, "Source: ")})
}

// repeats returns the fewest and the most of a piece.
func (g Garment) repeats() (least, most int) {
	least = g.Sizes[0].Panel.Repeats
	for _, s := range g.Sizes {
		least, most = min(least, s.Panel.Repeats), max(most, s.Panel.Repeats)
		if s.Sleeve != nil {
			least, most = min(least, s.Sleeve.Repeats), max(most, s.Sleeve.Repeats)
		}
	}
	return least, most
}

// told is the plan that the pattern tells: without the repeat where no size works
// it.
func (g Garment) told() panel.Plan {
	p := g.Plan
	if _, most := g.repeats(); most == 0 {
		p.Repeat = nil
	}
	return p
}

// printed returns the chest of a group as the chart prints it.
func (g Garment) printed(group grade.Group, u gauge.Unit) string {
	b, err := group.Body(grade.Chest, u)
	if err != nil {
		return "not in the table"
	}
	if b.Low.Value.Equal(b.High.Value) {
		return b.Low.Value.String()
	}
	return b.Low.Value.String() + "–" + b.High.Value.String()
}

func (g Garment) measurements() []document.Block {
	names := map[string]string{
		"round": "Round the body", "length": "Length", "width": "Width of a panel", "panel length": "Length of a panel, before joining",
		"armhole depth": "Armhole depth", "armhole round": "Armhole, all round", "neck drop": "Neck drop at the centre back", "neck depth": "Neck depth in front",
		"neck width": "Neck width", "neck round": "Neck opening, all round", "body opening": "Opening round the body", "hem round": "Hem, all round",
		"sleeve length": "Sleeve length", "sleeve round": "Sleeve, all round",
	}
	var items []string
	for _, m := range g.Sizes[0].Sewn.Layout.Measures {
		name := names[m.Name]
		if name == "" {
			name = sentenceStart(m.Name)
		}
		items = append(items, g.Terms.Spell(name)+": "+g.measure(func(s Size) gauge.Measurement { return s.Measure(m.Name) }))
	}
	items = append(items, map[bool]string{true: "The panel", false: "Each panel"}[g.Layout == brief.Cocoon]+", blocked: "+g.measure(func(s Size) gauge.Measurement { return s.Panel.Length })+" along the rows, "+
		g.measure(func(s Size) gauge.Measurement { return s.Panel.Width })+" across them")
	if g.Eased() {
		items = append(items, g.ease())
	}
	return []document.Block{document.List{Items: items},
		document.Para{Text: g.Terms.Spell("Measured after washing and blocking, inches to the nearest quarter and centimetres to the nearest half.")}}
}

// ease says how much larger, or smaller, than the body the garment is.
func (g Garment) ease() string {
	less := true
	for _, s := range g.Sizes {
		less = less && s.Measure("round").Cmp(s.Chest.High.Measurement()) < 0
	}
	whose := "the largest chest of each size"
	if len(g.Sizes) == 1 {
		whose = "the largest chest of the size"
	}
	if less {
		return "Negative ease, smaller than " + whose + " by: " + g.measure(func(s Size) gauge.Measurement { return s.Chest.High.Measurement().Sub(s.Measure("round")) })
	}
	return "Ease over " + whose + ": " + g.measure(func(s Size) gauge.Measurement { return s.Measure("round").Sub(s.Chest.High.Measurement()) })
}

func (g Garment) materials() []document.Block {
	y := g.Yarn
	own, mass := y.Label.Length.Unit, y.Label.Mass.Unit
	other := gauge.Metre
	if own == gauge.Metre {
		other = gauge.Yard
	}
	// Up to the whole unit: a maker buys by this number.
	whole := func(u gauge.Unit) string {
		return g.text(func(s Size) string { return up(s.Yarn.Total.In(u)) }) + " " + u.String()
	}
	items := []string{
		fmt.Sprintf("Yarn: %s, %s per skein: %s; %s, %s %v%s.", y.Named(), y.Label,
			skeins(g.number(func(s Size) int { return s.Yarn.Skeins })), both(whole(own), whole(other)),
			g.text(func(s Size) string { return up(s.Yarn.Mass.In(mass)) }), mass, g.spare()),
		"Left over from these skeins, about: " + g.text(func(s Size) string {
			n, _ := s.Yarn.Slack.In(own).Floor()
			return fmt.Sprint(n)
		}) + " " + own.String() + ". Buy all skeins of one dye lot.",
		"Hook: " + g.hook() + ", or the size that gives you the " + g.word("gauge", "tension") + ".",
		"Yarn needle, stitch markers that open, tape measure, pins.",
	}
	if g.Yarn.Sewing.Factor.IsZero() {
		items = append(items, "Another yarn for the seams, which are "+g.measure(Size.seams)+" long in all.")
	}
	return append([]document.Block{document.List{Items: items}}, g.cautions("materials")...)
}

// both puts two units beside one another; a long list has brackets of its own.
func both(own, other string) string {
	if strings.Contains(own, "[") {
		return own + " / " + other
	}
	return own + " [" + other + "]"
}

// skeins puts the word after a number, or after a run.
func skeins(n string) string {
	if n == "1" {
		return "1 skein"
	}
	return n + " skeins"
}

// spare says what the quantity holds beyond what was calculated.
func (g Garment) spare() string {
	if g.Yarn.Margin.Percent.IsZero() {
		return ", with nothing to spare"
	}
	return ", with " + g.Yarn.Margin.String() + " to spare included"
}

func (g Garment) hook() string {
	s := g.Hook.String()
	var labels []string
	if us := g.Hook.US(); us != "" {
		labels = append(labels, "US "+us)
	}
	if uk := g.Hook.UK(); uk != "" && g.Terms == row.UK {
		labels = append(labels, "old UK "+uk)
	}
	if len(labels) > 0 {
		s += " (" + strings.Join(labels, ", ") + ")"
	}
	return s
}

// up rounds to the next whole number, for a quantity to buy.
func up(x gauge.Ratio) string {
	n, _ := x.Ceil()
	return fmt.Sprint(n)
}

func (g Garment) gauge() []document.Block {
	items := []string{"Finished, washed, blocked and dry: " + g.Fabric.Finished.String() + g.elsewhere() + ", in the pattern of the rows below."}
	if w := g.Fabric.Worked; w.Validate() == nil {
		items = append(items, "On the hook, before washing: "+w.String()+".")
	}
	return []document.Block{document.List{Items: items},
		document.Para{Text: "Make a swatch larger than the span, treat it as you will treat the garment, and measure it then. With another " + g.word("gauge", "tension") + " the garment comes out in another size and takes another amount of yarn."}}
}

// made tells how each layout is put together.
func (g Garment) made() string {
	way := "Each is worked lengthwise: "
	if g.Crosswise {
		way = "Each is worked crosswise: "
	}
	switch g.Layout {
	case brief.OpenFront, brief.ClosedFront:
		joined := "meet at the centre back and open down the front"
		if g.Layout == brief.ClosedFront {
			joined = "meet at the centre back and the centre front and leave the neck open"
		}
		if g.Crosswise {
			return "The garment is two equal panels. " + way + "a row runs across the panel, and the panel grows from one hem over the shoulder to the other hem. " +
				"The inner edges of the two " + joined + "; the outer edges are each sewn to themselves below the armhole."
		}
		return "The garment is two equal panels. " + way + "a row starts at one hem, goes over the shoulder and ends at the other hem. " +
			"The foundation edges of the two " + joined + "; the last rows are the outer edges, each sewn to itself below the armhole."
	case brief.FrontAndBack:
		rows := "a row runs from hem to shoulder or from shoulder to hem, and the panel grows from one side to the other. "
		if g.Crosswise {
			rows = "a row runs from side to side, and the panel grows from the hem to the shoulder. "
		}
		s := "The garment is a front and a back, two equal panels. " + way + rows + "They are joined at the shoulders, which leaves a slit for the neck, and at the sides below the armholes."
		if g.Sizes[0].Sleeve != nil {
			s += " Two rectangles worked in the same way are the sleeves."
		}
		return s
	case brief.Cocoon:
		return "The garment is one rectangle, folded at the middle of its length. " + map[bool]string{
			false: "It is worked lengthwise: a row runs from one end over the fold to the other.",
			true:  "It is worked crosswise: a row runs from side to side, and the rectangle grows from one end to the other."}[g.Crosswise] +
			" Each side is sewn to itself from the open end up to the armhole at the fold; the open ends make the opening for the body."
	}
	return "The garment is two equal rectangles. " + way + map[bool]string{false: "a row runs the long way.", true: "a row runs the short way."}[g.Crosswise] +
		" The short end of each is sewn to the long side of the other; what is left of the two long sides is the neck."
}

// elsewhere gives the finished gauge over the span that a ruler in the other
// unit shows, to a tenth: 4 in are not 10 cm.
func (g Garment) elsewhere() string {
	span := gauge.Length{Value: decimal.NewFromInt(10), Unit: gauge.Centimetre}
	if g.Units == gauge.Centimetre {
		span = gauge.Length{Value: decimal.NewFromInt(4), Unit: gauge.Inch}
	}
	f := g.Fabric.Finished
	sts, err := f.Stitches.Exact(span.Measurement())
	if err != nil {
		return ""
	}
	rows, err := f.Rows.Exact(span.Measurement())
	if err != nil {
		return ""
	}
	return fmt.Sprintf(" (about %v sts and %v rows = %v)", sts.Decimal(1), rows.Decimal(1), span)
}

func (g Garment) notes() []document.Block {
	items := []string{"Written in " + g.Terms.String() + " terms.", g.Terms.Spell(g.made()),
		"Turn the work at the end of every row. The count at the end of a row is what the row has when it is done."}
	if how := g.foundation(); how != "" {
		items = append(items, how)
	}
	items = append(items, g.told().Starts(g.RowStart, g.Terms)...)
	if g.Fabric.Worked.Validate() == nil {
		items = append(items, "Before blocking, a panel fresh off the hook measures about "+g.measure(func(s Size) gauge.Measurement { return g.worked(s, true) })+" along the rows and "+
			g.measure(func(s Size) gauge.Measurement { return g.worked(s, false) })+" across them; blocking brings it to the finished measurements.")
	}
	blocks := []document.Block{document.List{Items: items}}
	for _, c := range care.Cautions(care.Hands) {
		blocks = append(blocks, document.Caution{Text: c.Text})
	}
	return blocks
}

// sewnSpaces tells how a last row of chain spaces is counted, where it is sewn.
func (g Garment) sewnSpaces() []document.Block {
	p := g.Sizes[0].Panel
	steps, err := g.Plan.Steps(p.Stitches.Value, p.Repeats)
	if err != nil || len(steps) == 0 || steps[len(steps)-1].Made.Spaces == 0 {
		return nil
	}
	for _, piece := range g.Sizes[0].Sewn.Layout.Pieces {
		for _, stretch := range piece.Stretches(piece.Foundation.After(2)) {
			if stretch.Kind != layout.Open {
				text := "The last row has chain spaces. Wherever its edge is counted, each chain counts as a st"
				if n := steps[len(steps)-1].Space; n > 0 {
					text += fmt.Sprintf(": a ch-%d sp as %d", n, n)
				}
				return []document.Block{document.Para{Text: text + "."}}
			}
		}
	}
	return nil
}

// foundation tells how the first row is worked. Common practice, no source.
func (g Garment) foundation() string {
	begun, ok := g.Plan.Opening[0].Items[0].(row.Foundation)
	if !ok {
		return "" // it begins with a chain of its own
	}
	first, yo := begun.Of, g.word("yo", "yoh")
	name, begin, draw := first.Abbr(g.Terms), "ch 3, "+yo+", insert the hook into the 3rd ch from the hook", ""
	switch first {
	case row.FoundationSingle:
		begin, draw = "ch 2, insert the hook into the 2nd ch from the hook", yo+" and draw through both loops"
	case row.FoundationHalfDouble:
		draw = yo + " and draw through all 3 loops"
	default:
		begin = "ch 4, " + yo + ", insert the hook into the 4th ch from the hook"
		draw = "(" + yo + " and draw through 2 loops) twice"
	}
	over := yo + ", "
	if first == row.FoundationSingle {
		over = ""
	}
	return "The first row makes its chain as it goes, so that its edge gives as much as the fabric. First " + name + ": " + begin + ", draw up a loop, " + yo + " and draw through 1 loop (the chain of the stitch), " + draw +
		". Each further " + name + ": " + over + "insert the hook under both strands of the chain of the stitch before, and go on in the same way. The chains skipped at the beginning do not count."
}

// worked returns a panel's length along the rows, or across them, on the hook.
func (g Garment) worked(s Size, along bool) gauge.Measurement {
	f, m := g.Fabric.WorkLength, s.Panel.Width
	if along {
		f, m = g.Fabric.WorkWidth, s.Panel.Length
	}
	m, err := f(m)
	if err != nil {
		return gauge.Measurement{} // the brief's gauges are valid
	}
	return m
}

// blocking names each method with what the sources say of it for the fibre.
func (g Garment) blocking() ([]document.Block, error) {
	advice, err := care.ForLabel(g.Yarn.Fibre)
	if err != nil {
		return nil, err
	}
	pieces := "both panels"
	if g.Layout == brief.Cocoon {
		pieces = "the panel"
	}
	first := "Before any seam, block " + pieces + " to " + g.measure(func(s Size) gauge.Measurement { return s.Panel.Length }) + " along the rows by " +
		g.measure(func(s Size) gauge.Measurement { return s.Panel.Width }) + " across them"
	if g.Sizes[0].Sleeve != nil {
		first += ", and the sleeves to " + g.measure(func(s Size) gauge.Measurement { return s.Sleeve.Length }) + " by " + g.measure(func(s Size) gauge.Measurement { return s.Sleeve.Width })
	}
	pin := ". Pin them, let them dry, then unpin."
	if g.Layout == brief.Cocoon {
		pin = ". Pin it, let it dry, then unpin."
	}
	blocks := []document.Block{document.Para{Text: first + pin}}
	var methods []string
	steam, alike := false, true
	for _, a := range advice {
		alike = alike && a.Note == advice[0].Note
	}
	for _, a := range advice {
		text := sentenceStart(a.Method.String()) + " blocking: " + a.Verdict.String()
		if a.Note != "" && !alike {
			text += ". " + sentenceStart(a.Note)
		}
		methods = append(methods, g.Terms.Spell(text+"."))
		steam = steam || a.Method == care.Steam && a.Verdict != care.Avoid
	}
	if alike && advice[0].Note != "" {
		methods = append(methods, g.Terms.Spell(sentence(advice[0].Note)))
	}
	of := ""
	if g.Yarn.Fibre != "" {
		of = " (" + g.Yarn.Fibre + ")"
	}
	blocks = append(blocks, document.Para{Text: "Ways to block" + of + "; the care symbols of the yarn's label go first:"}, document.List{Items: methods})
	if steam {
		for _, c := range care.Cautions(care.SteamBurns) {
			blocks = append(blocks, document.Caution{Text: c.Text})
		}
	}
	return blocks, nil
}

// cautions for whoever wears it, where they belong.
func (g Garment) cautions(place string) (blocks []document.Block) {
	for _, c := range caution.For(g.Chart.Name) {
		if c.Place == place && c.Topic != caution.Flame { // the end of the seams says it
			blocks = append(blocks, document.Caution{Text: g.Terms.Spell(c.Text) + " (" + c.Source + ")"})
		}
	}
	return blocks
}

// openFabric is the caution about holes, where the rows make any.
func (g Garment) openFabric() []document.Block {
	for _, s := range g.Sizes {
		if steps, err := g.Plan.Steps(s.Panel.Stitches.Value, s.Panel.Repeats); err == nil {
			for _, step := range steps {
				if step.Made.Spaces > 0 {
					return g.cautions("stitch pattern")
				}
			}
		}
	}
	return nil
}

// finishing returns blocking, seams and the end, in sections; tails are read
// before the panels are made.
func (g Garment) finishing() (tails []string, sections []document.Section, err error) {
	t, err := seam.Finishing{Labels: runOf(g, func(s Size) string { return s.Group.Label() }), Centimetres: g.Units == gauge.Centimetre,
		Terms: g.Terms, Sewing: seam.Sewing{Start: g.begun(), Measured: g.sewn(), End: g.Yarn.Sewing.End.Measurement(), AsGiven: true}}.
		Write(runOf(g, func(s Size) seam.Garment { return s.Sewn }))
	if err != nil {
		return nil, nil, err
	}
	blocking, err := g.blocking()
	if err != nil {
		return nil, nil, err
	}
	end := append([]document.Block{document.List{Items: t.Ending}}, g.cautions("use of the garment")...)
	if added := append(g.cautions("finishing"), g.cautions("ties and edgings")...); len(added) > 0 {
		end = append(append(end, document.Para{Text: "If you add buttons, ties or cords of your own:"}), added...)
	}
	return t.Tails, []document.Section{
		{Heading: "Blocking", Blocks: blocking},
		{Heading: "Seams", Blocks: append(g.sewnSpaces(), document.List{Numbered: true, Items: t.Joining})},
		{Heading: "Finishing", Blocks: append(end, document.Para{Text: caution.Deference})},
	}, nil
}

// begun says at which end of the foundation the first tail hangs.
func (g Garment) begun() seam.Start {
	if _, ok := g.Plan.Opening[0].Items[0].(row.Foundation); ok {
		return seam.FromStitches
	}
	return seam.FromChain
}

// sewn returns the yarn per length of seam that the quantity was worked out
// with.
func (g Garment) sewn() gauge.Ratio {
	r, err := gauge.FromDecimal(g.Yarn.Sewing.Factor)
	if err != nil {
		return gauge.Ratio{} // the brief was read with its bounds
	}
	return r
}

// abbreviations lists what the pattern uses, and nothing else.
func (g Garment) abbreviations(d document.Document) []document.Block {
	var items []string
	for _, a := range row.Abbreviations(d.Text(), g.Terms) {
		items = append(items, a.Abbr+": "+a.Meaning)
	}
	return []document.Block{document.List{Items: items}}
}

package work

import (
	"math/rand/v2"

	"example.com/panelmath/panel/row"
)

// gen writes sets of rows by chance.
type gen struct{ *rand.Rand }

func (g *gen) num(most int) row.Num { return row.Num{1 + g.IntN(most)} }

// set returns rows that have a fair chance to fit one another.
func (g *gen) set() []row.Row {
	var rows []row.Row
	space := row.Space(0)
	for range 1 + g.IntN(5) {
		var items []row.Item
		var tail []row.Item
		plain := func(n int) row.Item {
			return row.Work{Make: []row.Part{{Of: row.SingleCrochet}}, N: (row.Num{n})}
		}
		if space > 0 && g.IntN(3) == 0 { // worked place by place, over lace alone
			pair := func() []row.Item {
				return []row.Item{row.Work{Make: []row.Part{{N: row.Num{int(space)}, Of: row.SingleCrochet}}, Space: space}, plain(1)}
			}
			body, head, end := pair(), []row.Item{plain(1)}, []row.Item(nil)
			for range g.IntN(3) {
				head = append(head, pair()...)
			}
			for range g.IntN(3) {
				end = append(end, pair()...)
			}
			for range g.IntN(2) {
				body = append(body, pair()...)
			}
			head = append(head, row.Repeat{Star: true, Last: uses(end), Items: body})
			rows = append(rows, row.Row{Items: append(head, end...)})
			space = 0
			continue
		}
		if space != 0 && g.IntN(8) > 0 {
			e := row.Each{In: []row.Into{{Make: []row.Part{{Of: row.SingleCrochet}}}, {Make: []row.Part{{N: (row.Num{1 + g.IntN(3)}), Of: row.SingleCrochet}}, Space: space}}}
			if g.IntN(4) == 0 {
				e.In[1].Space = row.AnySpace
			}
			if g.IntN(4) == 0 {
				items = append(items, plain(1))
			}
			if g.IntN(5) == 0 {
				e.In[0].Make = append(e.In[0].Make, row.Part{Of: row.Chain})
			}
			space = 0
			if len(e.In[0].Make) > 1 {
				space = 1
			}
			rows = append(rows, row.Row{Items: append(items, e)})
			continue
		}
		for range g.IntN(3) {
			items = append(items, plain(1+g.IntN(4)))
		}
		for range g.IntN(3) {
			tail = append(tail, plain(1+g.IntN(4)))
		}
		switch g.IntN(7) {
		case 0: // lace
			m := 1 + g.IntN(4)
			items = append(items, row.Repeat{Star: true, Last: uses(tail), Items: []row.Item{row.Chains{N: (row.Num{m})}, row.Skip{N: (row.Num{m})}, plain(1 + g.IntN(3))}})
			space = row.Space(m)
			if len(items) == 1 {
				items = append([]row.Item{plain(1)}, items...)
			}
		case 1: // growing and shrinking
			items = append(items, row.Repeat{Star: true, Last: uses(tail), Items: []row.Item{plain(1 + g.IntN(4)), row.Together{Of: row.SingleCrochet, N: 2 + g.IntN(2)}}})
		case 2:
			items = append(items, row.Repeat{Star: true, Last: uses(tail), Items: []row.Item{plain(1 + g.IntN(3)), row.Work{Make: []row.Part{{N: row.Num{2 + g.IntN(2)}, Of: row.DoubleCrochet}}}, row.Skip{N: g.num(3)}}})
		case 3: // shells with spaces on their edges
			in := []row.Part{{Of: row.DoubleCrochet}, {N: g.num(2), Of: row.Chain}, {Of: row.DoubleCrochet}}
			if g.IntN(2) == 0 {
				in = []row.Part{{N: g.num(2), Of: row.Chain}, {Of: row.DoubleCrochet}, {N: g.num(2), Of: row.Chain}}
			}
			items = append(items, row.Repeat{Star: true, Last: uses(tail), Items: []row.Item{row.Work{Make: in}, row.Skip{N: g.num(3)}}})
			space = row.AnySpace
		case 4: // a number of stitches
			items = append(items, row.Repeat{Items: []row.Item{plain(1 + g.IntN(3)), row.Together{Of: row.SingleCrochet, N: 2}}, Times: row.Num{1 + g.IntN(12)}})
		case 5:
			items = append(items, row.Each{In: []row.Into{{Make: []row.Part{{N: g.num(2), Of: row.SingleCrochet}}}}, Last: uses(tail)})
		default:
			items = append(items, row.Repeat{Star: true, Last: uses(tail), Items: []row.Item{plain(1 + g.IntN(7))}})
		}
		rows = append(rows, row.Row{Items: append(items, tail...)})
	}
	return rows
}

// uses returns the stitches that a tail takes; nil for none.
func uses(tail []row.Item) row.Num {
	n, _ := needs(tail, 0)
	if n == 0 {
		return nil
	}
	return row.Num{n}
}

package row

import ("testing";"fmt")

func TestX(t *testing.T) {
	for _, s := range []string{"fhdc","hdc in each st across","dc in first st, *ch 2, sk 2, dc in next st; rep from * across","hdc in each st and 2 hdc in each ch-2 sp across","hdc in each st and in each ch-1 sp across","(dc, ch 1, dc) in next st", "[sc in next 2 sts, sc2tog] 4 times", "ch 12, dc in 4th ch from hook (skipped chs count as dc), dc in each ch across","hdc 7 (8, 9)","[[[dc in next 9999 sts] 9999 times] 9999 times]","ch 3 (counts as dc), dc in next st, *ch 1, sk 1, dc in next st; rep from * to last 3 sts, dc in last 3 sts", "hdcc in each", "htr in each st across", "Miss 2, treble crochet in next stitch"} {
		r, err := Parse(s, US)
		fmt.Printf("%q -> %q %v\n", s, r.Text(US), err)
		if err == nil { fmt.Printf("   UK %q\n", r.Text(UK))}
	}
	P := func(ss ...string) (out []Row) { for _, s := range ss { out = append(out, Must(s, US)) }; return }
	lace := "dc in first st, *ch 2, sk 2, dc in next st; rep from * across"
	fill := "hdc in each st and 2 hdc in each ch-2 sp across"
	e := "hdc in each st across"
	sol, err := SolveRepeat(P("fhdc", e, lace, fill), P(e,e,e,lace,fill), P(e), 0)
	fmt.Println(sol.Rule, err)
	if err == nil { fmt.Printf("%+v %+v %+v %+v\n", sol.Opening(2, 163), sol.Opening(3,163), sol.Repeat(5,4,163), sol.Closing(7,0,163)) }
	sol, err = SolveRepeat(P("fhdc", e, lace, fill), P(e,e,e,lace,e), P(e), 0)
	fmt.Println(sol.Rule, err)
	sol, err = SolveRepeat(P("fhdc", e, lace), P(e,e,e,lace,e), nil, 0)
	fmt.Println(sol.Rule, err)
	sol, err = SolveRepeat(P("fhdc", e, "dc in first st, *ch 3, sk 3, dc in next st; rep from * across", "hdc in each st and 3 hdc in each ch-3 sp across","dc in first 2 sts, *ch 1, sk 1, dc in next st; rep from * across","hdc in each st and in each ch-1 sp across"), nil, nil, 0)
	fmt.Println(sol.Rule, err)
}

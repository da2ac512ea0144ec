package weight

import (
	"fmt"
	"slices"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/text"
	"example.com/panelmath/yarn"
	"example.com/panelmath/yarn/internal/say"
)

// Substitution is another yarn in place of the one a pattern names.
type Substitution struct {
	From   yarn.Label        `json:"from"`
	To     yarn.Label        `json:"to"`
	Need   gauge.Measurement `json:"need"`   // length, which stays the same
	Skeins int               `json:"skeins"` // of To, rounded up
	Slack  gauge.Measurement `json:"slack"`  // what is left of them
	Finer  gauge.Ratio       `json:"finer"`  // how much longer To is to the same mass, as a share: 1/10 is 10% finer; negative is thicker
	Shared []int             `json:"shared"` // weight categories that both fit by their grist
}

// Substitute returns how many skeins of another yarn hold the length needed. It
// goes by length: the mass differs as the grist does, and so may the gauge, so
// make a swatch.
//
// It returns a *gauge.FieldError if a label is not valid, or the need is
// negative or out of bounds.
func Substitute(need gauge.Measurement, from, to yarn.Label) (Substitution, error) {
	old, err := OfLabel(from)
	if err != nil {
		return Substitution{}, gauge.InField("From", err)
	}
	fresh, err := OfLabel(to)
	if err != nil {
		return Substitution{}, gauge.InField("To", err)
	}
	s := Substitution{From: from, To: to, Need: need}
	if s.Skeins, s.Slack, err = to.Skeins(need); err != nil {
		return Substitution{}, err
	}
	times, _ := fresh.mmPerG.Quo(old.mmPerG)
	s.Finer = times.Sub(gauge.Int(1))
	a, err := Categories(Measured{Grist: old})
	if err != nil {
		return Substitution{}, err
	}
	b, err := Categories(Measured{Grist: fresh})
	if err != nil {
		return Substitution{}, err
	}
	for _, c := range a.Any {
		if slices.Contains(b.Any, c) {
			s.Shared = append(s.Shared, c)
		}
	}
	return s, nil
}

// Explain says how the skeins came about, how the two yarns differ in grist, and
// whether a weight category fits both.
func (s Substitution) Explain() []string {
	u := s.To.Length.Unit
	each, _ := s.Need.Per(s.To.Length.Measurement())
	out := []string{fmt.Sprintf("%s at %v a skein: %s, so %s, %s left", say.In(s.Need, u), s.To.Length, say.Number(each), text.Count(s.Skeins, "skein", "skeins"), say.In(s.Slack, u))}
	old, _ := OfLabel(s.From)
	fresh, _ := OfLabel(s.To)
	way, share := "finer", s.Finer
	if share.Sign() < 0 {
		way, share = "thicker", share.Mul(gauge.Int(-1))
	}
	grist := fmt.Sprintf("grist: %s for %s, %s%% %s", inUnit(fresh, MetresPer100g), inUnit(old, MetresPer100g), say.Number(share.Mul(gauge.Int(100))), way)
	if share.Sign() == 0 {
		grist = "grist: the same, " + inUnit(fresh, MetresPer100g)
	}
	out = append(out, grist)
	if len(s.Shared) == 0 {
		return append(out, "no weight category fits both by grist: expect another gauge, and make a swatch")
	}
	return append(out, "weight categories that fit both by grist: "+join(s.Shared)+"; make a swatch")
}

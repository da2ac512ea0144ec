package stash

import (
	"errors"
	"fmt"
	"strconv"
	"strings"

	"example.com/panelmath/gauge"
	"example.com/panelmath/internal/text"
	"example.com/panelmath/yarn"
)

// Bounds of Lots.
const (
	MaxPieces = 12
	MaxLots   = 8
)

// ErrLots is wrapped by the error of Lots when no way was found.
var ErrLots = errors.New("the lots do not hold the pieces whole")

// Lot is yarn of one dye lot.
type Lot struct {
	Name   string            `json:"name"`
	Length gauge.Measurement `json:"length"`
}

// Assignment says which lot a piece is made from.
type Assignment struct {
	Piece string `json:"piece"`
	Lot   string `json:"lot"`
}

// Lots assigns each piece whole to one dye lot, using the fewest lots, so that
// no piece changes shade in its middle. The pieces come from yarn.ByPiece (add the
// margin before); each counts with its Length and More. Pieces are returned in
// the order given; between ways with as few lots, earlier lots are filled first.
//
// It returns an error if there are more than 12 pieces or 8 lots, a piece is not
// valid, a lot is negative (*gauge.FieldError), or there is no way (ErrLots); the
// error names a piece that is larger than every lot, if that is the reason. Then
// alternate two lots every two rows, or keep the odd lot for edgings (common
// practice).
func Lots(pieces []yarn.Line, lots []Lot) ([]Assignment, error) {
	if len(pieces) == 0 || len(pieces) > MaxPieces {
		return nil, &gauge.FieldError{Field: "Pieces", Got: strconv.Itoa(len(pieces)), Want: "1 to 12", Err: gauge.ErrBounds}
	}
	if len(lots) == 0 || len(lots) > MaxLots {
		return nil, &gauge.FieldError{Field: "Lots", Got: strconv.Itoa(len(lots)), Want: "1 to 8", Err: gauge.ErrBounds}
	}
	for i, l := range lots {
		if l.Length.Sign() < 0 {
			return nil, &gauge.FieldError{Field: "Lots[" + strconv.Itoa(i) + "].Length", Got: l.Length.String(), Want: "at least 0"}
		}
	}
	need := make([]gauge.Measurement, 1<<len(pieces)) // of each set of pieces
	for i, p := range pieces {
		if err := p.Validate(); err != nil {
			return nil, gauge.InField("Pieces["+strconv.Itoa(i)+"]", err)
		}
		whole := p.Length.Add(p.More)
		for set := range 1 << i {
			need[set|1<<i] = need[set].Add(whole)
		}
	}
	all := len(need) - 1

	// few[k][set] is the fewest of the lots before k that hold the set, and
	// take[k][set] what lot k-1 gives to it.
	const none = MaxLots + 1
	few := make([][]int, len(lots)+1)
	take := make([][]int, len(lots)+1)
	for k := range few {
		few[k], take[k] = make([]int, len(need)), make([]int, len(need))
		for set := range few[k] {
			few[k][set] = none
		}
		few[k][0] = 0
	}
	for k, lot := range lots {
		fits := make([]bool, len(need))
		for set := range need {
			fits[set] = need[set].Cmp(lot.Length) <= 0
		}
		for set := range need {
			few[k+1][set] = few[k][set]
			for sub := set; sub > 0; sub = (sub - 1) & set {
				if fits[sub] && few[k][set^sub]+1 < few[k+1][set] {
					few[k+1][set], take[k+1][set] = few[k][set^sub]+1, sub
				}
			}
		}
	}
	if few[len(lots)][all] == none {
		return nil, lotsError(pieces, lots)
	}
	answer := make([]Assignment, len(pieces))
	for k, set := len(lots), all; k > 0; k-- {
		sub := take[k][set]
		for i, p := range pieces {
			if sub>>i&1 == 1 {
				answer[i] = Assignment{Piece: p.Name, Lot: lots[k-1].Name}
			}
		}
		set ^= sub
	}
	return answer, nil
}

// lotsError says which pieces are larger than every lot, or that none is.
func lotsError(pieces []yarn.Line, lots []Lot) error {
	var large []string
	for _, p := range pieces {
		fits := false
		for _, l := range lots {
			fits = fits || p.Length.Add(p.More).Cmp(l.Length) <= 0
		}
		if !fits {
			large = append(large, text.Quote(p.Name))
		}
	}
	assign := "assign " + text.Count(len(pieces), "piece", "pieces") + " to " + text.Count(len(lots), "lot", "lots")
	if len(large) > 0 {
		return fmt.Errorf("%s: %w: larger than every lot: %s", assign, ErrLots, strings.Join(large, ", "))
	}
	return fmt.Errorf("%s: %w: each fits a lot, all together do not", assign, ErrLots)
}

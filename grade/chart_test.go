package grade_test

import (
	"encoding/csv"
	"encoding/json"
	"fmt"
	"os"
	"strings"
	"testing"

	"example.com/panelmath/gauge"
	"example.com/panelmath/grade"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"
)

func standard(t testing.TB, name string) grade.Chart {
	c, err := grade.Standard(name)
	require.NoError(t, err)
	return c
}

// Every cell of the tables, read here a second time and on its own, is what the
// chart gives, in both units; and the chart has no cell beyond them.
func TestChartsEqualTheirTables(t *testing.T) {
	words := map[string]grade.Measure{
		"chest": grade.Chest, "waist": grade.Waist, "hip": grade.Hip, "upper_arm": grade.UpperArm, "head_circumference": grade.Head,
		"cross_back": grade.CrossBack, "armhole_depth": grade.ArmholeDepth, "back_waist": grade.BackWaist, "back_hip": grade.BackHip,
		"arm_length_underarm": grade.ArmLength, "neck_to_wrist": grade.NeckToWrist,
	}
	units := map[string]gauge.Unit{"in": gauge.Inch, "cm": gauge.Centimetre}
	for _, name := range grade.Standards() {
		t.Run(name, func(t *testing.T) {
			file, err := os.Open("standards/" + strings.ReplaceAll(name, " ", "-") + ".csv")
			require.NoError(t, err)
			defer file.Close()
			rows, err := csv.NewReader(file).ReadAll()
			require.NoError(t, err)
			c := standard(t, name)
			require.Len(t, c.Cells, len(rows)-1)
			for _, r := range rows[1:] {
				m, known := words[r[1]]
				require.True(t, known, r[1])
				b, err := c.Body(r[0], m, units[r[2]])
				require.NoError(t, err)
				require.True(t, b.Low.Value.Equal(decimal.RequireFromString(r[3])), "%v", r)
				require.True(t, b.High.Value.Equal(decimal.RequireFromString(r[4])), "%v", r)
				require.Equal(t, r[5:], []string{b.Basis.String(), b.Source, b.Note})
			}
		})
	}
}

// Figures written out here from the standard's tables, so that a change to the
// embedded ones does not pass unseen. Source: Craft Yarn Council's
// www.YarnStandards.com; upper arm, men and head from memory.
func TestChartRows(t *testing.T) {
	for _, c := range []struct {
		chart string
		m     grade.Measure
		u     gauge.Unit
		want  string
	}{
		{"women", grade.Chest, gauge.Inch, "28-30 32-34 36-38 40-42 44-46 48-50 52-54 56-58 60-62"},
		{"women", grade.Chest, gauge.Centimetre, "71-76 81-86 91.5-96.5 101.5-106.5 111.5-117 122-127 132-137 142-147 152-158"},
		{"women", grade.UpperArm, gauge.Inch, "9.75 10.25 11 12 13.5 15.5 17 18.5 19.5"},
		{"women", grade.ArmholeDepth, gauge.Inch, "6-6.5 6.5-7 7-7.5 7.5-8 8-8.5 8.5-9 9-9.5 9.5-10 10-10.5"},
		{"men", grade.Chest, gauge.Inch, "34-36 38-40 42-44 46-48 50-52"},
		{"men", grade.BackHip, gauge.Centimetre, "63.5-64.5 67.5-68 68.5-69 69.5-70.5 71-72.5"},
		{"youth", grade.Chest, gauge.Inch, "30 31.5 32.5"},
		{"child", grade.Chest, gauge.Centimetre, "53 58.5 63.5 67 71"},
		{"baby", grade.Chest, gauge.Inch, "16 17 18 19 20"},
		{"baby", grade.NeckToWrist, gauge.Inch, "10.5 11.5 12.5 14 18"},
		{"head", grade.Head, gauge.Centimetre, "30.5 35.5 40.5 45.5 50.5 56"},
		{"head ranges", grade.Head, gauge.Inch, "14-17 16-19 18-20 20-22 21-23.5 22-24.5"},
	} {
		t.Run(c.chart+" "+c.m.String()+" "+c.u.String(), func(t *testing.T) {
			chart := standard(t, c.chart)
			var got []string
			for _, s := range chart.Sizes {
				b, err := chart.Body(s, c.m, c.u)
				require.NoError(t, err)
				text := b.Low.Value.String()
				if !b.High.Value.Equal(b.Low.Value) {
					text += "-" + b.High.Value.String()
				}
				got = append(got, text)
			}
			require.Equal(t, c.want, strings.Join(got, " "))
		})
	}
}

// The counts that doc.go states.
func TestCellsByBasis(t *testing.T) {
	doc, err := os.ReadFile("doc.go")
	require.NoError(t, err)
	for _, name := range grade.Standards() {
		n := map[grade.Basis]int{}
		c := standard(t, name)
		for _, cell := range c.Cells {
			n[cell.Basis]++
		}
		line := fmt.Sprintf("//\t%-11s %7d %13d %12d %8d", name, len(c.Cells), n[grade.TwoSources], n[grade.OneSource], n[grade.Memory])
		require.Contains(t, string(doc), line)
	}
}

func TestStandardSources(t *testing.T) {
	for _, name := range grade.Standards() {
		c := standard(t, name)
		require.Empty(t, c.Falls())
		if name == "head ranges" {
			require.NotContains(t, c.Source, "YarnStandards")
			continue
		}
		require.Equal(t, "Source: Craft Yarn Council's www.YarnStandards.com", c.Source)
	}
}

func TestChartJSON(t *testing.T) {
	want := standard(t, "women")
	b, err := json.Marshal(want)
	require.NoError(t, err)
	require.Contains(t, string(b), `{"size":"XS","measure":"chest","low":"28 in","high":"30 in","basis":"one-source","source":"RW;Y1;O1","note":"low end 28 also in Y1 and O1"}`)
	var got grade.Chart
	require.NoError(t, json.Unmarshal(b, &got))
	require.NoError(t, got.Validate())
	require.Len(t, got.Cells, len(want.Cells))
	again, err := json.Marshal(got)
	require.NoError(t, err)
	require.Equal(t, string(b), string(again))
}

// at makes a cell of a literal chart.
func at(size string, m grade.Measure, low, high string) grade.Cell {
	return grade.Cell{Size: size, Measure: m, Body: grade.Body{Low: gauge.MustLength(low), High: gauge.MustLength(high)}}
}

func TestChartValidate(t *testing.T) {
	two := func(cells ...grade.Cell) grade.Chart {
		return grade.Chart{Name: "own", Sizes: []string{"A", "B"}, Cells: cells}
	}
	bare := at("A", grade.Chest, "80 cm", "84 cm")
	bare.Basis = 9
	for _, c := range []struct {
		chart grade.Chart
		want  string
	}{
		{grade.Chart{}, "Chart.Sizes: got 0, want 1 to 64"},
		{grade.Chart{Sizes: make([]string, 65)}, "Chart.Sizes: got 65, want 1 to 64"},
		{grade.Chart{Sizes: []string{"A", " "}}, "size  : name: got 1 bytes, want 1 to 40"},
		{grade.Chart{Sizes: []string{strings.Repeat("x", 41)}}, `size "` + strings.Repeat("x", 41) + `": name: got 41 bytes, want 1 to 40`},
		{grade.Chart{Sizes: []string{"A", "A"}}, "size A: name: got the name of size number 1, want one of its own"},
		{two(at("C", grade.Chest, "80 cm", "84 cm")), "size C: no such size in the chart own; it has A, B"},
		{two(at("A", 99, "80 cm", "84 cm")), "size A: Measure(99): got Measure(99), want a measure of the body"},
		{two(at("A", grade.Chest, "84 cm", "80 cm")), "size A: chest: High: got 80 cm, want at least Low, 84 cm"},
		{two(at("A", grade.Chest, "84 cm", "80 in")), "size A: chest: High: got 80 in, want the unit of Low, cm"},
		{two(at("A", grade.Chest, "0 cm", "80 cm")), "size A: chest: Low: got 0 cm, want more than 0"},
		{two(grade.Cell{Size: "A"}), "size A: chest: Low.Unit: got Unit(0), want mm, cm, m, in, ft or yd"},
		{two(grade.Cell{Size: "A", Body: grade.Body{Low: gauge.MustLength("1 cm")}}), "size A: chest: High.Unit: got Unit(0), want mm, cm, m, in, ft or yd"},
		{two(bare), "size A: chest: Basis: got Basis(9), want stated, two-sources, one-source or memory"},
		{two(at("A", grade.Chest, "80 cm", "84 cm"), at("A", grade.Chest, "81 cm", "84 cm")), "size A: chest: got two figures in cm, want one"},
		{two(at("A", grade.Chest, "80 cm", "84 cm"), at("B", grade.Chest, "79 cm", "90 cm")), "size B: chest: got 79 cm, want at least the 80 cm of size A"},
		{two(at("A", grade.UpperArm, "30 cm", "34 cm"), at("B", grade.UpperArm, "30 cm", "33 cm")), "size B: upper arm: got 33 cm, want at least the 34 cm of size A"},
	} {
		t.Run(c.want, func(t *testing.T) { require.EqualError(t, c.chart.Validate(), c.want) })
	}
}

func TestFallsAreRemarks(t *testing.T) {
	c := grade.Chart{Name: "own", Sizes: []string{"A", "B", "C"}, Cells: []grade.Cell{
		at("A", grade.ArmLength, "44 cm", "44 cm"), at("C", grade.ArmLength, "43.5 cm", "43.5 cm"), // B has none
		at("A", grade.Chest, "80 cm", "84 cm"), at("B", grade.Chest, "80 cm", "84 cm"),
	}}
	require.NoError(t, c.Validate())
	falls := c.Falls()
	require.Len(t, falls, 1)
	require.EqualError(t, falls[0], "size C: arm length to underarm: got 43.5 cm, want at least the 44 cm of size A")
}

// One person's measures are a chart of one size.
func TestOnePerson(t *testing.T) {
	ida := grade.Chart{Name: "Ida", Source: "taken on 3 March", Sizes: []string{"Ida"}, Cells: []grade.Cell{
		at("Ida", grade.Chest, "104 cm", "104 cm"), at("Ida", grade.UpperArm, "33.5 cm", "33.5 cm")}}
	groups, err := ida.Singles()
	require.NoError(t, err)
	b, err := groups[0].Body(grade.UpperArm, gauge.Centimetre)
	require.NoError(t, err)
	require.Equal(t, "33.5 cm, stated", b.High.String()+", "+b.Basis.String())
	finished, err := grade.OnChart(groups, grade.Chest, gauge.Centimetre, grade.Ruling{}, grade.Run[grade.Ease]{grade.MustEase("5%")})
	require.NoError(t, err)
	require.True(t, finished[0].Equal(gauge.MustLength("109.2 cm").Measurement()))
}

func TestReadChart(t *testing.T) {
	c, err := grade.ReadChart("shop", "our fitting day", strings.NewReader("\ufeffunit,LOW,high,measure,size\nin,32,34,bust,S\nin,36, 38,chest,M\nin,10 1/4,,upper_arm,S\n"))
	require.NoError(t, err)
	require.Equal(t, []string{"S", "M"}, c.Sizes)
	b, err := c.Body("S", grade.UpperArm, gauge.Inch)
	require.NoError(t, err)
	require.Equal(t, "10.25 in", b.High.String())
	require.Equal(t, grade.Stated, b.Basis)
}

func TestReadChartRefuses(t *testing.T) {
	var many strings.Builder
	many.WriteString("size,measure,unit,low,high\n")
	for i := range 65 {
		fmt.Fprintf(&many, "%d,chest,in,%d,\n", i, 20+i)
	}
	for _, c := range []struct{ table, want string }{
		{"", `read chart "own": an empty table; want the columns size, measure, unit, low and high`},
		{"size,measure,unit,low,high, SIZE\nS,chest,in,32,34,M\n", `read chart "own": header: two columns "size"`},
		{"size,measure,unit,low\n", `read chart "own": header: no column "high"`},
		{"size,measure,unit,low,high\nS,chest,in,32\n", `read chart "own": record on line 2: wrong number of fields`},
		{"size,measure,unit,low,high\nS,chest,in,32,34\nS,ear,in,2,2\n", `read chart "own": line 3: parse measure: "ear": unknown measure "ear"; want chest, waist, hip, upper arm, head, cross back, armhole depth, back waist length, back hip length, arm length to underarm, centre back neck to wrist`},
		{"size,measure,unit,low,high\nS,chest,inn,32,34\n", `read chart "own": line 2: parse length: "32 inn": unknown unit "inn"`},
		{"size,measure,unit,low,high\nS,chest,in,32,x\n", `read chart "own": line 2: parse length: "x in": want a number and a unit, like 20 1/2 in, got "x in"`},
		{"size,measure,unit,low,high,check\nS,chest,in,32,34,guess\n", `read chart "own": line 2: parse basis: "guess": unknown basis; want stated, two-sources, one-source or memory`},
		{"size,measure,unit,low,high\nS,chest,in,36,34\n", `read chart "own": size S: chest: High: got 34 in, want at least Low, 36 in`},
		{many.String(), `read chart "own": more than 64 sizes: out of bounds`},
		{"size,measure,unit,low,high\n" + strings.Repeat("S,chest,in,32,34\n", 20_000), `read chart "own": more than 262144 bytes: out of bounds`},
		{"size,measure,unit,low,high\n", `read chart "own": Chart.Sizes: got 0, want 1 to 64`},
	} {
		t.Run(c.want, func(t *testing.T) {
			_, err := grade.ReadChart("own", "", strings.NewReader(c.table))
			require.EqualError(t, err, c.want)
		})
	}
}

func TestBodyOfALiteralIsChecked(t *testing.T) {
	c := grade.Chart{Name: "own", Sizes: []string{"A"}, Cells: []grade.Cell{at("A", grade.Chest, "84 cm", "80 cm")}}
	_, err := c.Body("A", grade.Chest, gauge.Centimetre)
	require.EqualError(t, err, "size A: chest: High: got 80 cm, want at least Low, 84 cm")
	_, err = c.Groups([][]string{{"A"}})
	require.Error(t, err)
	_, err = c.Singles()
	require.Error(t, err)
}

func TestWords(t *testing.T) {
	for m := grade.Chest; m.Valid(); m++ {
		b, err := m.MarshalText()
		require.NoError(t, err)
		var back grade.Measure
		require.NoError(t, back.UnmarshalText(b))
		require.Equal(t, m, back)
	}
	require.Equal(t, "Measure(77)", grade.Measure(77).String())
	_, err := grade.Measure(77).MarshalText()
	require.EqualError(t, err, "Measure: got Measure(77), want a measure of the body")
	require.Error(t, new(grade.Measure).UnmarshalText([]byte("ear")))
	for b := grade.Stated; b <= grade.Memory; b++ {
		text, err := b.MarshalText()
		require.NoError(t, err)
		var back grade.Basis
		require.NoError(t, back.UnmarshalText(text))
		require.Equal(t, b, back)
	}
	require.Equal(t, "Basis(77)", grade.Basis(77).String())
	_, err = grade.Basis(77).MarshalText()
	require.EqualError(t, err, "Basis: got Basis(77), want stated, two-sources, one-source or memory")
	require.Error(t, new(grade.Basis).UnmarshalText([]byte("hearsay")))
}

func FuzzReadChart(f *testing.F) {
	f.Add("size,measure,unit,low,high\nS,chest,in,32,34\nM,chest,in,36,38\n")
	f.Add("size,measure,unit,low,high,check\nS,upper arm,cm,32 1/2,,memory\n")
	f.Add("size,measure,unit,low,high\n\"")
	f.Fuzz(func(t *testing.T, table string) {
		c, err := grade.ReadChart("fuzz", "", strings.NewReader(table))
		if err != nil {
			return
		}
		if err := c.Validate(); err != nil {
			t.Fatalf("a chart that was read is not valid: %v", err)
		}
		for _, cell := range c.Cells {
			if _, err := c.Body(cell.Size, cell.Measure, cell.Low.Unit); err != nil {
				t.Fatal(err)
			}
		}
	})
}

func BenchmarkStandard(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := grade.Standard("women"); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkBody(b *testing.B) {
	c := standard(b, "women")
	b.ReportAllocs()
	for b.Loop() {
		if _, err := c.Body("5X", grade.Hip, gauge.Centimetre); err != nil {
			b.Fatal(err)
		}
	}
}

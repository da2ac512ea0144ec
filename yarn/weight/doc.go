// Package weight tells how thick a yarn is (grist), which weight categories of
// the published tables fit it, and what another yarn in its place would take.
//
// # Grist
//
// Grist is length to a mass, exact, read and printed in any unit of the trade:
// yd/lb, yd/oz, yd/100 g, yd/50 g, m/100 g, m/50 g, m/oz, m/kg; the metric count
// Nm (m/g), cotton count (840 yd/lb), worsted count (560), woollen run (1600),
// linen lea (300), typp (1000); and, the other way round, tex (g to 1000 m), dtex
// (10 000 m) and denier (9000 m). The yard and the pound are those of 1959. Counts
// are those of the yarn as it stands; a folded count (2/28) is refused, since two
// orders of writing it are in use.
//
// # Categories
//
// Categories 0 (lace) to 7 (jumbo) are those of the standard yarn weight system.
// Source: Craft Yarn Council's www.YarnStandards.com. Neighbouring ranges overlap
// on purpose, so every category that fits is named, with the range that says so;
// a hook or a gauge alone fixes none. Where an edition differs (categories 6 and
// 7), both are there. The standard counts crochet gauge in single crochet (US
// terms), for lace in double crochet. Wraps per inch and grist are not part of the
// standard's table of gauges: they come from several tables that conflict, each
// named with its range. A range is "two-sources" or "one-source" by how many
// documents were read for it.
//
// Codes of sources:
//   - HS: http://222handspun.com/tips-and-tricks/tag/Yarn%20size%20gauge (the standard, earlier edition)
//   - CW: a crochet magazine, October 2018, p. 64 (the standard)
//   - MM: a shop's copy of the standard, current edition
//   - CT: http://crochetonatrain.com/standard-yarn-weight-system/ (the standard before 2014)
//   - KF: https://www.knitfreedom.com/abbreviation/wpi/
//   - YB: a shop table of single figures
//   - PA: a spinner's table of single figures
//   - PT: a spinner's table
//   - PM: a spinner's table
//   - CU: https://craftys.uk/info-downloads/Yarn-Weight-Wpi
//   - D4: a shop table of m/100 g
//   - WW: https://wooleywhale.blogspot.com/2010/02/needles-yarn-sizes-gaugesoh-my.html (handspinning)
//   - BO: http://bellaonline.com/articles/art34962.asp (handspinning)
//
// # Limits and errors
//
// A grist is more than 0; a text holds at most 10 000 characters, a number 60
// digits on either side of a fraction bar. Texts fail with *gauge.ParseError,
// fields with *gauge.FieldError. That no category fits is not an error: Verdict
// says so.
package weight

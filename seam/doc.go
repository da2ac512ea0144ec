// Package seam tells how rectangles are joined: how many pairs, where to stop
// for neck and arms, whether a person can put the garment on, which tail sews
// which seam, and the finishing as text for all sizes.
//
// # Pairs
//
// A seam is worked pair by pair from the hem up. The place where it stops is
// rounded down to a whole pair and a slit at the hem is rounded up, so that no
// opening is smaller than asked; what it comes to is reported exactly. An edge
// of an odd count that is folded at its middle has half a stitch on either side
// of the fold. Seam asks for one seam; Join is the answer, and explains itself.
//
// # Garments and their arithmetic
//
// Five garments are made from a rectangle and the openings that are wanted. L is
// the count along the length of the rectangle, W the count across it; l and w
// are the stitches (or rows) per length along each, exact ratios from gauge. With
// rows lengthwise L counts stitches and W rows; with rows crosswise it is the
// other way round. Rows, repeats and legal counts are found before (panel.Plan):
// W is the number nearest to the share of the finished round, L the one nearest
// to the length, ties to the larger.
//
//	open front: two panels over the shoulders; finished round F, each panel F/4
//	 1. W nearest to F/4 · w; L nearest to 2 · length · l.
//	 2. Centre back pairs = ⌊L/2 − neck_drop·l⌋.
//	    Slit = ⌈slit·l⌉. Side pairs = ⌊L/2 − armhole_depth·l⌋ − slit.
//	 3. Finished: round 4·W/w, length L/(2l), armhole depth (L/2 − slit − side
//	    pairs)/l, neck drop (L/2 − centre back pairs)/l.
//
//	closed front: the same, joined in front up to the neck
//	 4. Centre front pairs = ⌊L/2 − neck_depth·l⌋.
//	 5. Neck depth (L/2 − centre front pairs)/l; neck round
//	    2 · (L − centre back pairs − centre front pairs)/l.
//
//	front and back: two panels from hem to shoulder; each panel F/2
//	 1. W nearest to F/2 · w; L nearest to length · l.
//	 2. Shoulder pairs, each = ⌊W/2 − neck_width·w/2⌋, from the outer edge in.
//	    Slit = ⌈slit·l⌉. Side pairs = ⌊L − armhole_depth·l⌋ − slit; without an
//	    armhole depth, a slit and a sleeve the sides stay open.
//	 3. Finished: round 2·W/w, length L/l, neck width (W − 2·shoulder pairs)/w,
//	    neck round twice that, armhole depth (L − slit − side pairs)/l.
//	 4. Sleeve: its width is the count nearest to 2 · finished armhole depth, its
//	    length the count nearest to the sleeve length. Its top edge is joined to
//	    the armhole by the exact plan for the two counts (spread.Match), and must
//	    not differ from it by more than a tenth in length.
//
//	cocoon: one rectangle folded at the middle of its length
//	 1. W nearest to width · w; L nearest to panel_length · l (before folding).
//	 2. Side pairs = ⌊L/2 − armhole_depth·l⌋, from the open edges to the fold.
//	 3. Finished: width W/w, length L/(2l), armhole depth (L/2 − side pairs)/l,
//	    body opening 2·W/w.
//
//	poncho: two rectangles, the short end of each on the long side of the other
//	 1. W nearest to width · w; L nearest to panel_length · l, longer than wide.
//	 2. The short end, W/w long, takes ⌊W/w · l⌋ of the long side; its W are
//	    joined to them by the exact plan for the two counts.
//	 3. Finished: neck round 2 · (L − ⌊W/w · l⌋)/l, hem round 2 · (L/l + W/w).
//
// Fewer than one pair, an opening of less than nothing, or seams that leave no
// armhole or neck are errors. The armhole round is twice the finished depth.
//
// # Checks
//
// Body.Check and the functions it is made of compare the finished openings with
// what has to pass: upper arm and ease through the armhole, head through the
// neck with a stated stretch, arm through the sleeve end; and the neck with the
// shoulders. A garment that cannot be worn is a *FitError that says what, got and
// want. CentreNeck and CheckParts split a row; Visible leaves out the stitches
// that do not count toward a width.
//
// # Tails
//
// PlanTails tells at which corner each tail hangs. It depends on whether the
// rows are odd or even, and on whether the piece began with foundation stitches
// or a chain. It gives as many seams as can be a tail to sew with, and names
// those that need a new length. How much yarn a method takes is in Method, each
// figure with its source or "common practice, no source"; a measured seam beats
// them.
//
// # Text
//
// Finishing.Steps writes the whole finishing for all sizes, in the words of each
// ready garment, and seam by seam for an app's own. Blocking comes from the
// caller, who knows the fibre.
//
// # Errors and limits
//
// Errors are *gauge.FieldError (a field, what it holds, what it must hold),
// *FitError, and *grade.SizeError where a size is at fault; ErrNoPair and
// layout.ErrLayout are to test for with errors.Is. Counts go to gauge.MaxCount.
// Package spread holds the plans for unlike edges and for spacing along a row.
package seam

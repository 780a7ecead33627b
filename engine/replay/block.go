package replay

import (
	"math"

	"crus/engine/assess"
	"crus/engine/cell"
)

// Width of a block: how many rows, and how many words of them.
const (
	BlockRows = 1024
	words     = BlockRows / 64

	// BlockCases is how many assessments surely find room in a block.
	BlockCases = (BlockRows - words) / 2
)

// Block is up to 1,024 rows in columns. A row is one assessment as one limb sees it, or the person alone, as in
// [cell.Row]. The two rows of an assessment that is for both limbs stand next to each other, the left one first, and in
// one word of 64 rows; so a row may be left empty. Bit r%64 of word r/64 of a plane is that of row r.
type Block struct {
	Rows     int         // how many rows are in use, empty ones between them included
	Cases    int         // how many assessments they are
	Value    [][]float64 // of each measure's axis: of each row, NaN where it is not known
	Recorded [][]uint64  // of each measure's axis; nil: it is recorded where its value is known
	Used     []uint64    // rows that are not empty
	First    []uint64    // the first row of each case
	Pair     []uint64    // the first row of each case with two rows
	Right    []uint64    // rows of a right limb
	Alone    []uint64    // rows of the person alone
	Undated  []uint64    // rows of an assessment without a date
	ID       []string    // of each case, where it is known
	Note     any         // what the source has to say to who collects the results
}

// NewBlock makes an empty block for rows of a space.
func NewBlock(s *cell.Space) *Block {
	b := &Block{Value: make([][]float64, s.Measures), Recorded: make([][]uint64, s.Measures)}
	for i := range b.Value {
		b.Value[i] = make([]float64, BlockRows)
	}
	for _, p := range b.marks() {
		*p = make([]uint64, words)
	}
	return b
}

func (b *Block) marks() []*[]uint64 {
	return []*[]uint64{&b.Used, &b.First, &b.Pair, &b.Right, &b.Alone, &b.Undated}
}

// Reset empties the block.
func (b *Block) Reset() {
	b.Rows, b.Cases, b.ID, b.Note = 0, 0, b.ID[:0], nil
	for _, p := range b.marks() {
		clear(*p)
	}
	for _, p := range b.Recorded {
		clear(p)
	}
}

// Add adds an assessment, as a row for each limb that a device is for, or one of the person alone. There must be
// room: see [BlockCases].
func (b *Block) Add(s *cell.Space, a *assess.Assessment) {
	sides := a.DeviceFor
	if len(sides) == 0 {
		sides = []assess.Side{""}
	}
	rows := make([]cell.Row, len(sides))
	for i, side := range sides {
		rows[i] = s.Row(a, side)
	}
	b.AddRows(s, sides, rows, a.Date != "")
	b.ID = append(b.ID, a.ID)
}

// AddRows adds the rows of an assessment: of one limb, of the left and the right one, or for the side "" of the person
// alone. dated says whether it has a date. There must be room.
func (b *Block) AddRows(s *cell.Space, sides []assess.Side, rows []cell.Row, dated bool) {
	if len(rows) == 2 && b.Rows%64 == 63 {
		for i := range b.Value {
			b.Value[i][b.Rows] = math.NaN()
		}
		b.Rows++
	}
	for i, row := range rows {
		at := b.Rows
		word, bit := at/64, uint64(1)<<(at%64)
		b.Rows++
		b.Used[word] |= bit
		switch {
		case i == 0:
			b.First[word] |= bit
			b.Cases++
			if len(rows) == 2 {
				b.Pair[word] |= bit
			}
		}
		switch sides[i] {
		case assess.Right:
			b.Right[word] |= bit
		case "":
			b.Alone[word] |= bit
		}
		if !dated {
			b.Undated[word] |= bit
		}
		for axis, x := range row.Value {
			b.Value[axis][at] = x
			if row.Recorded[axis] == math.IsNaN(x) && b.Recorded[axis] == nil {
				b.Recorded[axis] = make([]uint64, words)
				for r := range at {
					if !math.IsNaN(b.Value[axis][r]) {
						b.Recorded[axis][r/64] |= 1 << (r % 64)
					}
				}
			}
			if b.Recorded[axis] != nil && row.Recorded[axis] {
				b.Recorded[axis][word] |= bit
			}
		}
	}
}

// Single says that the first n rows are each an assessment of one left limb with a date, whose values were written to
// Value.
func (b *Block) Single(n int) {
	b.Rows, b.Cases = n, n
	for j := range (n + 63) / 64 {
		all := ^uint64(0)
		if left := n - 64*j; left < 64 {
			all = 1<<left - 1
		}
		b.Used[j], b.First[j] = all, all
	}
}

// Row writes a row of the block into a row of the space.
func (b *Block) Row(into *cell.Row, at int) {
	for axis := range into.Value {
		x := b.Value[axis][at]
		into.Value[axis] = x
		if r := b.Recorded[axis]; r != nil {
			into.Recorded[axis] = bit(r, at)
		} else {
			into.Recorded[axis] = !math.IsNaN(x)
		}
	}
	into.Alone = bit(b.Alone, at)
}

func bit(plane []uint64, row int) bool { return plane[row/64]>>(row%64)&1 == 1 }

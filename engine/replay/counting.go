package replay

import "math/bits"

// counting gives bit i of the numbers that the 64 places of a word stand for, counted on from word to word.
func counting(i, word int) uint64 {
	switch i {
	case 0:
		return 0xaaaaaaaaaaaaaaaa
	case 1:
		return 0xcccccccccccccccc
	case 2:
		return 0xf0f0f0f0f0f0f0f0
	case 3:
		return 0xff00ff00ff00ff00
	case 4:
		return 0xffff0000ffff0000
	case 5:
		return 0xffffffff00000000
	}
	return -uint64(word >> (i - 6) & 1)
}

func lowest(m uint64) int { return bits.TrailingZeros64(m) }

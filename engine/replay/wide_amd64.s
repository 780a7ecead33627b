#include "textflag.h"

// func wideAVX2(gates *gate, n int, all, pairs *uint64)
//
// A gate has its operation at 0, a at 4, b at 8, to at 12, and is 16 bytes long; a plane is 128 bytes long.
TEXT ·wideAVX2(SB), NOSPLIT, $0-32
	MOVQ gates+0(FP), SI
	MOVQ n+8(FP), CX
	MOVQ all+16(FP), DI
	MOVQ pairs+24(FP), DX
	VPCMPEQD Y15, Y15, Y15

next:
	SUBQ $1, CX
	JLT  done
	MOVBLZX (SI), R9
	MOVLQSX 4(SI), AX
	MOVLQSX 8(SI), BX
	MOVLQSX 12(SI), R8
	ADDQ $16, SI
	SHLQ $7, AX
	SHLQ $7, BX
	SHLQ $7, R8
	ADDQ DI, AX
	ADDQ DI, BX
	ADDQ DI, R8
	VMOVDQU (AX), Y0
	VMOVDQU 32(AX), Y1
	VMOVDQU 64(AX), Y2
	VMOVDQU 96(AX), Y3
	CMPL R9, $3
	JEQ  and
	CMPL R9, $5
	JEQ  or
	CMPL R9, $4
	JEQ  andnot
	CMPL R9, $6
	JEQ  xor
	CMPL R9, $7
	JEQ  pool
	CMPL R9, $2
	JEQ  not
	VPXOR Y0, Y0, Y0
	VPXOR Y1, Y1, Y1
	VPXOR Y2, Y2, Y2
	VPXOR Y3, Y3, Y3

store:
	VMOVDQU Y0, (R8)
	VMOVDQU Y1, 32(R8)
	VMOVDQU Y2, 64(R8)
	VMOVDQU Y3, 96(R8)
	JMP  next

and:
	VPAND (BX), Y0, Y0
	VPAND 32(BX), Y1, Y1
	VPAND 64(BX), Y2, Y2
	VPAND 96(BX), Y3, Y3
	JMP  store

or:
	VPOR (BX), Y0, Y0
	VPOR 32(BX), Y1, Y1
	VPOR 64(BX), Y2, Y2
	VPOR 96(BX), Y3, Y3
	JMP  store

andnot:
	VMOVDQU (BX), Y4
	VMOVDQU 32(BX), Y5
	VMOVDQU 64(BX), Y6
	VMOVDQU 96(BX), Y7
	VPANDN Y0, Y4, Y0
	VPANDN Y1, Y5, Y1
	VPANDN Y2, Y6, Y2
	VPANDN Y3, Y7, Y3
	JMP  store

xor:
	VPXOR (BX), Y0, Y0
	VPXOR 32(BX), Y1, Y1
	VPXOR 64(BX), Y2, Y2
	VPXOR 96(BX), Y3, Y3
	JMP  store

not:
	VPXOR Y15, Y0, Y0
	VPXOR Y15, Y1, Y1
	VPXOR Y15, Y2, Y2
	VPXOR Y15, Y3, Y3
	JMP  store

pool:
	VPSRLQ $1, Y0, Y4
	VPSRLQ $1, Y1, Y5
	VPSRLQ $1, Y2, Y6
	VPSRLQ $1, Y3, Y7
	VPAND (DX), Y4, Y4
	VPAND 32(DX), Y5, Y5
	VPAND 64(DX), Y6, Y6
	VPAND 96(DX), Y7, Y7
	VPOR Y4, Y0, Y0
	VPOR Y5, Y1, Y1
	VPOR Y6, Y2, Y2
	VPOR Y7, Y3, Y3
	JMP  store

done:
	VZEROUPPER
	RET

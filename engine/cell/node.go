package cell

import (
	"fmt"

	"crus/engine/ruleset"
)

// Op is what a node does with its parts, in Kleene's strong logic.
type Op uint8

// The operations.
const (
	Always   Op = iota // true
	Ask                // the answer to question X: unknown where its axis is
	Recorded           // whether the measure of axis X is recorded: never unknown
	Opaque             // the answer to opaque question X, which cel-go works out
	Not                // of A
	And                // of A and B
	Or                 // of A and B
	If                 // B where A is true, C where it is false; unknown where A is
)

// Node is a yes/no form. A, B and C are the numbers of its parts, which are smaller than its own.
type Node struct {
	Op      Op
	X       int
	A, B, C int
}

// The first two nodes of every space.
const (
	True  = 0 // the node that is always true
	False = 1 // its negation
)

// nodes makes nodes, each once.
type nodes struct {
	list []Node
	at   map[Node]int
}

func newNodes() *nodes {
	n := &nodes{at: map[Node]int{}}
	n.add(Node{Op: Always})
	n.add(Node{Op: Not, A: True})
	return n
}

func (n *nodes) add(x Node) int {
	if i, ok := n.at[x]; ok {
		return i
	}
	i := len(n.list)
	n.list, n.at[x] = append(n.list, x), i
	return i
}

func (n *nodes) not(a int) int {
	switch {
	case a == True:
		return False
	case a == False:
		return True
	case n.list[a].Op == Not:
		return n.list[a].A
	}
	return n.add(Node{Op: Not, A: a})
}

func (n *nodes) and(a, b int) int {
	switch {
	case a == False || b == False:
		return False
	case a == True || a == b:
		return b
	case b == True:
		return a
	}
	return n.add(Node{Op: And, A: min(a, b), B: max(a, b)})
}

func (n *nodes) or(a, b int) int {
	switch {
	case a == True || b == True:
		return True
	case a == False || a == b:
		return b
	case b == False:
		return a
	}
	return n.add(Node{Op: Or, A: min(a, b), B: max(a, b)})
}

func (n *nodes) choose(a, b, c int) int {
	switch {
	case a == True:
		return b
	case a == False:
		return c
	}
	return n.add(Node{Op: If, A: a, B: b, C: c})
}

// Unclear is a yes/no part of a condition that no cell can express. cel-go answers it, row by row.
type Unclear struct {
	Expr   *ruleset.Expr
	ID     int64 // of the node in Expr
	Inputs []int // the measures' axes that it reads, directly or through findings and quantities
	Limb   bool
	ask    *asker
}

// String gives the place and the text.
func (u *Unclear) String() string {
	return fmt.Sprintf("%s: %s", u.Expr.Where(u.ID), u.Expr.Written(u.ID))
}

// Command crus gives an explained recommendation for a composite ankle-foot orthosis: an assessment
// in, a recommendation with its cautions and reasons out, decided by rules that a clinic wrote. It
// also checks, lays out and tries those rules. crus help lists its commands.
//
// The exit status is 0 where all is well, 1 where there are findings (a conflict, a failed case, an
// error in a ruleset that is checked), and 2 where the command could not run.
package main

import (
	"io"
	"os"
)

func main() { os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) }

// run carries out one command line and gives the exit status.
func run(args []string, in io.Reader, out, errors io.Writer) int {
	a := newApp(in, out, errors)
	root := a.root()
	root.SetArgs(args)
	return a.finish(root.Execute())
}

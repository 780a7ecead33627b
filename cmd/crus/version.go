package main

import (
	"encoding/json"
	"fmt"
	"runtime/debug"

	"github.com/spf13/cobra"

	"crus/engine/assess"
	"crus/engine/reason"
)

// programVersion is the version of the program, as of its last release or the next.
const programVersion = "0.1.0"

// about is what crus version says.
type about struct {
	Version    string   `json:"version"`
	Revision   string   `json:"revision,omitempty"` // of the sources, where the build knows it
	Changed    bool     `json:"changed,omitempty"`  // built from sources changed since that revision
	Assessment string   `json:"assessment_format"`
	Outcome    string   `json:"outcome_format"`
	Comes      []listed `json:"comes_with"`
}

type listed struct {
	Kind    string `json:"kind"`
	Name    string `json:"name"`
	Version string `json:"version"`
	Status  string `json:"status,omitempty"`
	Title   string `json:"title"`
}

func (a *app) version() *cobra.Command {
	var asJSON bool
	c := &cobra.Command{
		Use:     "version",
		Short:   "Show the versions of the program and of its rulesets",
		Long:    "Shows the version of the program, the formats that it reads and writes, and the\nrulesets and vocabularies that can be found by name.",
		Example: "  crus version\n  crus version --json",
		GroupID: groupOther,
		Args:    needs(),
		RunE: func(*cobra.Command, []string) error {
			v := a.about()
			if asJSON {
				return a.json(v)
			}
			return v.write(a)
		},
	}
	c.Flags().BoolVar(&asJSON, "json", false, "as JSON")
	return c
}

func (a *app) about() about {
	v := about{Version: programVersion, Assessment: assess.Format, Outcome: reason.Format, Comes: []listed{}}
	if info, ok := debug.ReadBuildInfo(); ok {
		for _, s := range info.Settings {
			switch s.Key {
			case "vcs.revision":
				v.Revision = s.Value
			case "vcs.modified":
				v.Changed = s.Value == "true"
			}
		}
	}
	for _, l := range a.rules().List() {
		v.Comes = append(v.Comes, listed{l.Kind, l.Name, l.Version, l.Status, l.Title})
	}
	return v
}

func (v about) write(a *app) error {
	fmt.Fprintf(a.out, "crus %s", v.Version)
	if v.Revision != "" {
		changed := ""
		if v.Changed {
			changed = ", changed since"
		}
		fmt.Fprintf(a.out, " (revision %.12s%s)", v.Revision, changed)
	}
	fmt.Fprintf(a.out, "\nreads %s, writes %s\n\n", v.Assessment, v.Outcome)
	for _, l := range v.Comes {
		status := l.Status
		if status != "" {
			status = " (" + status + ")"
		}
		fmt.Fprintf(a.out, "%-10s  %s %s%s: %s\n", l.Kind, l.Name, l.Version, status, l.Title)
	}
	return nil
}

// json writes a value as indented JSON.
func (a *app) json(v any) error {
	e := json.NewEncoder(a.out)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	return e.Encode(v)
}

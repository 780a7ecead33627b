package main

import (
	"os"

	"github.com/spf13/cobra"

	"crus/engine/source"
)

// The groups of commands in the help.
const (
	groupClinic = "clinic"
	groupAuthor = "author"
	groupReview = "review"
	groupOther  = "other"
)

// root makes the tree of commands.
func (a *app) root() *cobra.Command {
	root := &cobra.Command{
		Use:   "crus COMMAND",
		Short: "Explained recommendations for ankle-foot orthoses, by your clinic's own rules",
		Long: `crus takes the assessment of one person and the rules that a clinic wrote, and
gives a recommendation for a composite ankle-foot orthosis: alignment,
stiffness, force pattern and cautions, with the reason for each, what is
missing, and why the alternatives were not picked. A licensed clinician decides.

RULESET is the folder of a ruleset, or the name of one that comes with the
program or stands in a --library folder.`,
		Example: `  crus advise demo_clinic assessment.json
  crus form demo_clinic > assessment.hcl
  crus check my_ruleset`,
		Args:                  unknownCommand,
		RunE:                  func(c *cobra.Command, _ []string) error { return c.Help() },
		PersistentPreRunE:     func(*cobra.Command, []string) error { return a.checkLibrary() },
		SilenceErrors:         true,
		SilenceUsage:          true,
		DisableFlagsInUseLine: true,
	}
	root.SetIn(a.in)
	root.SetOut(a.out)
	root.SetErr(a.errors)
	root.SetUsageTemplate(usageTemplate)
	root.SetHelpTemplate(helpTemplate)
	root.SetFlagErrorFunc(plainFlagError)
	root.CompletionOptions.SetDefaultShellCompDirective(cobra.ShellCompDirectiveNoFileComp)
	root.AddGroup(
		&cobra.Group{ID: groupClinic, Title: "For the clinician:"},
		&cobra.Group{ID: groupAuthor, Title: "For the author of rules:"},
		&cobra.Group{ID: groupReview, Title: "For the reviewer:"},
		&cobra.Group{ID: groupOther, Title: "Other:"})

	all := root.PersistentFlags()
	all.StringArrayVar(&a.library, "library", nil, "look for rulesets and vocabularies in `DIR` too; may be repeated")
	all.Var(&a.colour, "color", "colour the text `WHEN`: auto (at a terminal, unless NO_COLOR is set), always or never")
	complete(root, "color", a.colour.complete)
	_ = root.MarkPersistentFlagDirname("library") // the flag was defined just above

	root.AddCommand(a.advise(), a.sheet(), a.form(), a.check(), a.tidy(), a.cases(), a.prove(), a.tally(), a.cite(), a.version())
	root.SetHelpCommand(a.help())
	root.SetHelpCommandGroupID(groupOther)
	root.SetCompletionCommandGroupID(groupOther)
	root.InitDefaultCompletionCmd()
	for _, c := range root.Commands() {
		c.DisableFlagsInUseLine = true
		c.Flags().BoolP("help", "h", false, "show this help")
		if c.Name() == "completion" {
			c.Short = "Write the script that completes commands in your shell"
			c.Long = "Writes the script with which your shell completes commands, options and the\nnames of rulesets. The help of each shell's command says where it goes."
			c.Args, c.RunE = unknownCommand, root.RunE
			for _, shell := range c.Commands() {
				shell.Short = "Write the script for " + shell.Name()
			}
		}
	}
	root.Flags().BoolP("help", "h", false, "show this help")
	return root
}

// checkLibrary refuses a library folder that is not there: names would silently not be found.
func (a *app) checkLibrary() error {
	for _, dir := range a.library {
		if info, err := os.Stat(dir); err != nil || !info.IsDir() {
			return refusal{"There is no folder " + dir + ", which --library names.", "Check the path."}
		}
	}
	return nil
}

// help is the command that shows the help of another.
func (a *app) help() *cobra.Command {
	return &cobra.Command{
		Use:   "help [COMMAND]",
		Short: "Show how a command is used",
		Long:  "Shows how a command is used, with its options and an example.",
		RunE: func(c *cobra.Command, args []string) error {
			at := c.Root()
			for _, name := range args {
				next := find(at, name)
				if next == nil {
					return unknownCommand(at, []string{name})
				}
				at = next
			}
			return at.Help()
		},
		ValidArgsFunction: func(c *cobra.Command, args []string, _ string) ([]string, cobra.ShellCompDirective) {
			var names []string
			if len(args) == 0 {
				for _, sub := range c.Root().Commands() {
					names = append(names, cobra.CompletionWithDesc(sub.Name(), sub.Short))
				}
			}
			return names, cobra.ShellCompDirectiveNoFileComp
		},
	}
}

func find(c *cobra.Command, name string) *cobra.Command {
	for _, sub := range c.Commands() {
		if sub.Name() == name {
			return sub
		}
	}
	return nil
}

// complete tells the shell what an option takes.
func complete(c *cobra.Command, option string, f cobra.CompletionFunc) {
	if err := c.RegisterFlagCompletionFunc(option, f); err != nil {
		panic(err) // the option is not defined: a slip in this file
	}
}

// completeRuleset lists the rulesets that can be found by name, for the first argument; folders
// are completed by the shell.
func (a *app) completeRuleset(_ *cobra.Command, args []string, _ string) ([]string, cobra.ShellCompDirective) {
	if len(args) > 0 {
		return nil, cobra.ShellCompDirectiveNoFileComp
	}
	return a.names("ruleset"), cobra.ShellCompDirectiveDefault
}

// names lists what can be found by name, with its title.
func (a *app) names(kind string) []string {
	var out []string
	for _, l := range a.rules().List() {
		if l.Kind == kind {
			out = append(out, cobra.CompletionWithDesc(l.Name, l.Title))
		}
	}
	return out
}

// unreadable picks the errors that have no place in a file: what is meant could not be read at all.
func unreadable(diags source.Diagnostics) source.Diagnostics {
	var out source.Diagnostics
	for _, d := range diags {
		if d.Severity == source.Error && !d.Where.Known() {
			out = append(out, d)
		}
	}
	return out
}

const helpTemplate = `{{with or .Long .Short}}{{. | trimTrailingWhitespaces}}

{{end}}{{.UsageString}}`

const usageTemplate = `Usage:
  {{.UseLine}}{{if .HasAvailableFlags}} [options]{{end}}
{{- if .HasExample}}

Examples:
{{.Example}}{{end}}
{{- if .HasAvailableSubCommands}}
{{- $all := .Commands}}
{{- range $group := .Groups}}

{{.Title}}
{{- range $all}}{{if and (eq .GroupID $group.ID) .IsAvailableCommand}}
  {{rpad .Name .NamePadding}} {{.Short}}{{end}}{{end}}
{{- end}}
{{- if not .AllChildCommandsHaveGroup}}

Commands:
{{- range $all}}{{if and (eq .GroupID "") .IsAvailableCommand}}
  {{rpad .Name .NamePadding}} {{.Short}}{{end}}{{end}}
{{- end}}{{end}}
{{- if .HasAvailableLocalFlags}}

Options:
{{.LocalFlags.FlagUsagesWrapped 80 | trimTrailingWhitespaces}}{{end}}
{{- if .HasAvailableInheritedFlags}}

Options of every command:
{{.InheritedFlags.FlagUsagesWrapped 80 | trimTrailingWhitespaces}}{{end}}
`

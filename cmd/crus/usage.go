package main

import (
	"errors"
	"fmt"
	"strings"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"

	"crus/engine/source"
)

// needs takes just the named arguments, and says in a sentence what is missing or too much.
func needs(names ...string) cobra.PositionalArgs {
	return func(c *cobra.Command, args []string) error {
		switch {
		case len(args) < len(names):
			return refusal{fmt.Sprintf("%s needs %s, and %s is missing.", c.CommandPath(), source.And(names), names[len(args)]), usageHint(c)}
		case len(args) > len(names):
			return tooMany(c, args[len(names)])
		}
		return nil
	}
}

// needsSome takes an argument for each of the names, or several for the last.
func needsSome(names ...string) cobra.PositionalArgs {
	return func(c *cobra.Command, args []string) error {
		return needs(names...)(c, args[:min(len(args), len(names))])
	}
}

// atMost takes up to n arguments.
func atMost(n int) cobra.PositionalArgs {
	return func(c *cobra.Command, args []string) error {
		if len(args) > n {
			return tooMany(c, args[n])
		}
		return nil
	}
}

func tooMany(c *cobra.Command, arg string) error {
	return refusal{fmt.Sprintf("%s does not know what to do with %s.", c.CommandPath(), arg), usageHint(c)}
}

func usageHint(c *cobra.Command) string {
	return fmt.Sprintf("It is called as: %s. See %s --help.", c.UseLine(), c.CommandPath())
}

// unknownCommand refuses the first word of a command line that is no command.
func unknownCommand(c *cobra.Command, args []string) error {
	if len(args) == 0 {
		return nil
	}
	var names []string
	for _, sub := range c.Commands() {
		if sub.IsAvailableCommand() {
			names = append(names, sub.Name())
		}
	}
	return refusal{fmt.Sprintf("%s has no command %s.", c.CommandPath(), args[0]),
		source.DidYouMean(args[0], names, fmt.Sprintf("It has %s.", source.And(names)))}
}

// plainFlagError says in a sentence what is wrong with an option.
func plainFlagError(c *cobra.Command, err error) error {
	var unknown *pflag.NotExistError
	var bare *pflag.ValueRequiredError
	var wrong *pflag.InvalidValueError
	var form *pflag.InvalidSyntaxError
	switch {
	case errors.As(err, &unknown):
		name := unknown.GetSpecifiedName()
		dashes := "--"
		if unknown.GetSpecifiedShortnames() != "" {
			dashes = "-"
		}
		var names []string
		c.Flags().VisitAll(func(f *pflag.Flag) {
			if !f.Hidden {
				names = append(names, "--"+f.Name)
			}
		})
		return refusal{fmt.Sprintf("%s has no option %s%s.", c.CommandPath(), dashes, name),
			source.DidYouMean("--"+name, names, fmt.Sprintf("It has %s.", source.And(names)))}
	case errors.As(err, &bare):
		takes, _ := pflag.UnquoteUsage(bare.GetFlag())
		return refusal{fmt.Sprintf("The option --%s needs a value.", bare.GetFlag().Name),
			fmt.Sprintf("It is written --%s %s. See %s --help.", bare.GetFlag().Name, takes, c.CommandPath())}
	case errors.As(err, &wrong):
		return refusal{fmt.Sprintf("%q is not a value of the option --%s.", wrong.GetValue(), wrong.GetFlag().Name), cause(wrong)}
	case errors.As(err, &form):
		return refusal{fmt.Sprintf("%s is not an option.", form.GetSpecifiedFlag()), fmt.Sprintf("See %s --help.", c.CommandPath())}
	}
	return refusal{strings.TrimSuffix(err.Error(), ".") + ".", fmt.Sprintf("See %s --help.", c.CommandPath())}
}

// cause is what an option takes instead.
func cause(err *pflag.InvalidValueError) string {
	var r refusal
	if errors.As(err, &r) {
		return r.message
	}
	return fmt.Sprintf("Write --%s alone.", err.GetFlag().Name) // only yes/no options have nothing to say themselves
}

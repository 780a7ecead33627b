package celltest

import (
	"fmt"

	"crus/engine/vocab"
)

// opaque draws a condition that CEL has and no cell can express; empty where nothing is there to make one of.
func (d *drawer) opaque() string {
	forms := d.counting()
	if !d.listing {
		forms = append(forms, d.listed()...)
	}
	if len(forms) == 0 {
		return ""
	}
	return one(d, forms)()
}

// counting gives forms that calculate with counts, or read their digits.
func (d *drawer) counting() []func() string {
	counts := d.readable(ofKind(vocab.Count))
	if len(counts) == 0 {
		return nil
	}
	count := func() string { return d.path(one(d, counts)) }
	forms := []func() string{
		func() string {
			return fmt.Sprintf("%s + %s %s %d", count(), count(), one(d, orders()), d.between(-3, 9))
		},
		func() string { return fmt.Sprintf("%s * 2 - 1 %s %d", count(), one(d, orders()), d.between(-3, 9)) },
		func() string { return fmt.Sprintf("string(%s).startsWith('%d')", count(), d.between(0, 3)) },
		func() string { return fmt.Sprintf("size(string(%s)) > 1", count()) },
		func() string { return fmt.Sprintf("double(%s) / 4.0 %s 1.5", count(), one(d, orders())) },
		func() string { return fmt.Sprintf("abs(%s) %s %d", count(), one(d, orders()), d.between(0, 9)) },
	}
	if d.may(Failing) {
		forms = append(forms, func() string { return fmt.Sprintf("%s %% %s == 1", count(), count()) })
	}
	return forms
}

// listed gives forms that make something of a list besides looking through it.
func (d *drawer) listed() (forms []func() string) {
	two := func(of []*measure) (*measure, string) {
		m := one(d, of)
		like := d.like(m)
		if like == "" {
			like = d.value(m)
		}
		return m, d.path(m) + ", " + like
	}
	if signs := d.readable(ofKind(vocab.YesNo)); len(signs) > 0 {
		list := func() string {
			_, pair := two(signs)
			return fmt.Sprintf("[%s, %s]", pair, d.path(one(d, signs)))
		}
		forms = append(forms,
			func() string { return list() + ".exists_one(x, x)" },
			func() string {
				return fmt.Sprintf("size(%s.filter(x, x)) %s %d", list(), one(d, orders()), d.between(1, 2))
			},
			func() string { return fmt.Sprintf("%s[%d]", list(), d.between(0, 2)) },
			func() string { return fmt.Sprintf("true in %s.map(x, !x)", list()) },
		)
	}
	if counts := d.readable(ofKind(vocab.Count)); len(counts) > 0 {
		forms = append(forms, func() string {
			m, pair := two(counts)
			return fmt.Sprintf("%s in [%s].map(x, x * 2)", d.value(m), pair)
		})
	}
	if quantities := d.readable(ofKind(vocab.Quantity)); len(quantities) > 0 {
		forms = append(forms, func() string {
			m, pair := two(quantities)
			return fmt.Sprintf("[%s].filter(x, x %s %s).size() == %d", pair, one(d, orders()), d.value(m), d.between(0, 2))
		})
	}
	return forms
}

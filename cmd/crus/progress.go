package main

import (
	"io"
	"time"

	"github.com/schollz/progressbar/v3"
)

// patience is how long a piece of work goes on before its progress is shown.
const patience = 500 * time.Millisecond

// progress shows a person at a terminal how far a piece of work is.
type progress struct {
	what  string
	to    io.Writer // nil: nobody looks
	began time.Time
	bar   *progressbar.ProgressBar
}

func (a *app) progress(what string) *progress {
	p := &progress{what: what, began: time.Now()}
	if a.errTerminal {
		p.to = a.errors
	}
	return p
}

// at shows that so much is done.
func (p *progress) at(done, all int) {
	if p.to == nil || time.Since(p.began) < patience {
		return
	}
	if p.bar == nil {
		p.bar = progressbar.NewOptions(all, progressbar.OptionSetWriter(p.to), progressbar.OptionSetDescription(p.what),
			progressbar.OptionSetWidth(30), progressbar.OptionThrottle(100*time.Millisecond), progressbar.OptionShowCount(), progressbar.OptionClearOnFinish())
	}
	_ = p.bar.Set(done) // nowhere to report to
}

// of shows that so many assessments are done of about so many, or of nobody knows how many where that is -1; with the rate
// and the time left.
func (p *progress) of(done, all int64) {
	if p.to == nil || time.Since(p.began) < patience {
		return
	}
	if p.bar == nil {
		p.bar = progressbar.NewOptions64(all, progressbar.OptionSetWriter(p.to), progressbar.OptionSetDescription(p.what), progressbar.OptionSetWidth(20),
			progressbar.OptionThrottle(100*time.Millisecond), progressbar.OptionShowIts(), progressbar.OptionSetItsString("assessments"),
			progressbar.OptionSetPredictTime(true), progressbar.OptionClearOnFinish())
	}
	if all > 0 {
		p.bar.ChangeMax64(max(all, done+1)) // at the end it is taken away
	}
	_ = p.bar.Set64(done) // nowhere to report to
}

// clear takes the bar away for now, so that something else can be written.
func (p *progress) clear() {
	if p.bar != nil {
		_ = p.bar.Clear() // nowhere to report to
	}
}

// end takes the bar away.
func (p *progress) end() {
	if p.bar != nil {
		_ = p.bar.Finish() // nowhere to report to
	}
}

// Package pdf prints a page of HTML with the browser that is installed.
package pdf

import (
	"context"
	"encoding/base64"
	"errors"
	"os"
	"os/exec"
	"runtime"
	"time"

	"github.com/chromedp/chromedp"
)

// ErrNoBrowser says that there is no browser to print with.
var ErrNoBrowser = errors.New("Chromium or Chrome is not installed")

// printTime is how long a browser may take to start and to print.
const printTime = 60 * time.Second

// Print prints a page of HTML as PDF. An error is one of [ErrNoBrowser], or says what the browser could not do.
func Print(html []byte) ([]byte, error) {
	path := installed()
	if path == "" && runtime.GOOS == "linux" {
		return nil, ErrNoBrowser
	}
	dir, err := os.MkdirTemp("", "crus-print-")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(dir)
	options := append(chromedp.DefaultExecAllocatorOptions[:], chromedp.UserDataDir(dir), chromedp.Flag("disable-quic", true))
	if os.Geteuid() == 0 { // its sandbox does not run as root
		options = append(options, chromedp.NoSandbox)
	}
	if path != "" {
		options = append(options, chromedp.ExecPath(path))
	}
	ctx, cancel := context.WithTimeout(context.Background(), printTime)
	defer cancel()
	ctx, cancel = chromedp.NewExecAllocator(ctx, options...)
	defer cancel()
	ctx, cancel = chromedp.NewContext(ctx)
	defer cancel() // waits until the browser is gone, so that its folder can be removed
	out, err := printAt(ctx, "data:text/html;charset=utf-8;base64,"+base64.StdEncoding.EncodeToString(html))
	switch {
	case errors.Is(err, exec.ErrNotFound):
		return nil, ErrNoBrowser
	case err != nil:
		return nil, err
	}
	return out, nil
}

// installed finds a browser on the path; on other systems than Linux, where it may lie elsewhere, chromedp looks too.
func installed() string {
	for _, name := range []string{"chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome"} {
		if path, err := exec.LookPath(name); err == nil {
			return path
		}
	}
	return ""
}

func printAt(ctx context.Context, address string) ([]byte, error) {
	if err := chromedp.Do(ctx, chromedp.Navigate(address)); err != nil {
		return nil, err
	}
	return chromedp.Run(ctx, chromedp.PrintToPDF(chromedp.PDFPreferCSSPageSize()))
}

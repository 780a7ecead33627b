# make test is what the README and .ci/run call; the other targets are for developers.

GO ?= go
STATICCHECK := honnef.co/go/tools/cmd/staticcheck@v0.8.2
FUZZTIME ?= 60s

.PHONY: build test test-long bench bench-replay lint oracle tools

build:
	$(GO) build -o crus ./cmd/crus

test: oracle tools
	$(GO) vet ./...
	$(GO) test ./...

# The race detector, a hundred thousand pairs through replay, and every fuzz target for $(FUZZTIME): about an hour.
test-long: test
	$(GO) test -race -timeout 60m ./...
	$(GO) test ./engine/replay -run '^TestAgreesWithReason$$' -pairs 100000 -timeout 40m
	@set -e; for pkg in $$($(GO) list ./...); do \
		for target in $$($(GO) test -list '^Fuzz' $$pkg | grep '^Fuzz' || true); do \
			echo "$$pkg $$target"; \
			$(GO) test -run '^$$' -fuzz "^$$target\$$" -fuzztime $(FUZZTIME) -fuzzminimizetime 2s $$pkg; \
		done; \
	done

# Replay against cel-go and against conditions written by hand; the last line tells how many times faster it is, how many
# assessments a second both processors manage, and the most memory.
bench-replay:
	@out=$$($(GO) test ./engine/replay -run '^$$' -bench '^BenchmarkComparison$$' -benchtime 1x) || { echo "$$out"; exit 1; }; \
		echo "$$out" | sed -n '/^|/p; /^ratio/p'

bench:
	$(GO) test -run '^$$' -bench . -benchmem ./...

# ST1005 wants errors without capital and full stop; here an error is a sentence for a clinician.
lint:
	@unformatted=$$(gofmt -l cmd engine rulesets); if [ -n "$$unformatted" ]; then echo "gofmt would change:"; echo "$$unformatted"; exit 1; fi
	$(GO) vet ./...
	$(GO) run $(STATICCHECK) -checks inherit,-ST1005 ./...

# Independent implementations of CEL and UCUM that the tests are held against.
oracle: testdata/oracle/node_modules/.package-lock.json

testdata/oracle/node_modules/.package-lock.json: testdata/oracle/package.json testdata/oracle/package-lock.json | tools
	npm ci --prefix testdata/oracle --no-audit --no-fund
	@touch $@

# What the tests need besides Go: installed where it is missing.
tools:
	@.ci/tools

// An independent CEL implementation (npm package @bufbuild/cel) evaluates conditions, for the tests
// to compare with. Reads JSON lines: first {"units": {name: [num, den]}, "scales": {name: [grade, ...]}},
// then {"expr", "vars": {root: {name: value}}} with each value null or {"int" | "double" | "bool" | "string": v}.
// Writes a line each: true, false, or "error: ...".
import { createInterface } from "node:readline";
import { celFunc, CelScalar, isCelError, run } from "@bufbuild/cel";

const { INT, DOUBLE, STRING, BOOL, DYN } = CelScalar;
const funcs = [
  celFunc("recorded", [DYN], BOOL, (x) => x !== null),
  celFunc("abs", [DOUBLE], DOUBLE, Math.abs),
  celFunc("least", [DOUBLE, DOUBLE], DOUBLE, (a, b) => Math.min(a, b)),
  celFunc("greatest", [DOUBLE, DOUBLE], DOUBLE, (a, b) => Math.max(a, b)),
  // a quantity times a whole number: CEL itself does not mix the two
  celFunc("_*_", [DOUBLE, INT], DOUBLE, (a, n) => a * Number(n)),
];
let ready = false;

function declare({ units, scales }) {
  for (const [name, [num, den]] of Object.entries(units)) {
    funcs.push(celFunc(name, [INT], DOUBLE, (x) => (Number(x) * num) / den));
    funcs.push(celFunc(name, [DOUBLE], DOUBLE, (x) => (x * num) / den));
  }
  for (const [name, grades] of Object.entries(scales)) {
    funcs.push(celFunc(name, [STRING], INT, (g) => {
      const rank = grades.indexOf(g);
      if (rank < 0) throw new Error(`no grade ${g}`);
      return BigInt(rank);
    }));
  }
}

function value(v) {
  if (v === null) return null;
  if ("int" in v) return BigInt(v.int);
  return v.double ?? v.bool ?? v.string;
}

for await (const line of createInterface({ input: process.stdin })) {
  const message = JSON.parse(line);
  if (!ready) {
    declare(message);
    ready = true;
    continue;
  }
  const vars = {};
  for (const [root, fields] of Object.entries(message.vars)) {
    vars[root] = Object.fromEntries(Object.entries(fields).map(([k, v]) => [k, value(v)]));
  }
  const result = run(message.expr, vars, { funcs });
  console.log(JSON.stringify(isCelError(result) ? `error: ${result.message}` : result));
}

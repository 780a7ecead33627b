// Converts between UCUM units with @lhncbc/ucum-lhc, an implementation that the program shares
// nothing with. Reads JSON lines {"value": 5, "from": "cm", "to": "mm"} on standard input and writes
// one line for each: {"value": 50}, or {"error": "..."} where the package refuses.
import { createInterface } from "node:readline";
import ucum from "@lhncbc/ucum-lhc";

const utils = ucum.UcumLhcUtils.getInstance();

for await (const line of createInterface({ input: process.stdin })) {
  const { value, from, to } = JSON.parse(line);
  const { status, toVal, msg } = utils.convertUnitTo(from, value, to);
  console.log(JSON.stringify(status === "succeeded" ? { value: toVal } : { error: msg.join(" ") || status }));
}

// npm run fuzz -- --calls 1000000 --seed 1
import { fuzz } from "./fuzz";
import { atMost, flag, tell } from "./report";

const calls = flag("calls", 100_000);
const got = fuzz(calls, flag("seed", 1));
got.faults.slice(0, 20).forEach((fault) => console.log(fault));
console.log(`slowest: ${got.slowestCall}`);
tell("fuzz", [
  { path: "random calls", measured: got.calls, unit: "calls", bar: "all", met: true },
  {
    path: "of them answered without an error",
    measured: got.answered,
    unit: "calls",
    bar: "some",
    met: got.answered > 0,
  },
  atMost(
    "thrown, not finite, blank or text or TRUE read as a number, arguments changed, other answer on replay",
    got.faults.length,
    0,
    "calls",
  ),
  atMost("slowest call, by its rows", got.slowest, 50, "ms"),
  atMost("heap after the last call", got.heapMB, 300, "MB"),
]);

// How many random orders of a shop CUTPLAN proves least, and how long it takes: npm run bench -- plans. ORDERS sets how many.
import { bestPlan } from "../../src/plan/bestPlan";
import { cutProblem } from "../../src/plan/cutProblem";
import { random, randomOrder } from "../plan/fixture";

const orders = Number(process.env["ORDERS"] ?? 200);
for (const stocks of [[6000], [3000, 4000, 6000]]) {
  for (const lines of [5, 20, 50]) {
    const next = random(lines + stocks.length);
    const times: number[] = [];
    let [proven, gap] = [0, 0];
    for (let run = 0; run < orders; run += 1) {
      const problem = cutProblem(randomOrder(next, lines, stocks));
      const before = process.cpuUsage();
      const { cost, bound, isProven } = bestPlan(problem);
      times.push(process.cpuUsage(before).user / 1000);
      proven += isProven ? 1 : 0;
      gap += (cost / bound - 1) / orders;
    }
    times.sort((a, b) => a - b);
    const at = (share: number): string => times[Math.min(orders - 1, Math.floor(share * orders))]!.toFixed(0);
    console.log(
      `${String(lines)} lines, ${String(stocks.length)} stocks: ${String(proven)} of ${String(orders)} proven least, mean gap ${(100 * gap).toFixed(4)} %, ms of processor ${at(0.5)} median, ${at(0.95)} at 95 %, ${at(1)} most`,
    );
  }
}

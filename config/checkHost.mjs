// npm run check-host -- https://…: whether Excel can use what is served there, and what is missing where it cannot.
import { hostProblems } from "./hostProblems.mjs";

const [address = ""] = process.argv.slice(2);
let origin;
try {
  origin = new URL(address).origin;
} catch {
  console.error("usage: npm run check-host -- https://addins.example.com");
  process.exit(2);
}
const problems = await hostProblems(origin);
for (const problem of problems) console.log(problem);
console.log(
  problems.length === 0 ? `${origin} serves all that Excel asks for.` : `${problems.length} to mend on ${origin}.`,
);
process.exitCode = problems.length === 0 ? 0 : 1;

// Sizes of what Excel loads, gzip, with a budget each: over it, the build fails.
import { readFileSync } from "node:fs";
import { gzipSync } from "node:zlib";

const budgets = { "functions.js": 184, "core.js": 202, "pane.js": 16, "more.js": 9, "coach.js": 11 };
let over = false;
for (const [file, most] of Object.entries(budgets)) {
  const raw = readFileSync(`dist/${file}`);
  const kB = gzipSync(raw, { level: 9 }).length / 1000;
  over ||= kB > most;
  console.log(
    `${file}: ${(raw.length / 1000).toFixed(1)} kB, ${kB.toFixed(1)} kB gzip of ${most} kB${kB > most ? ": over budget" : ""}`,
  );
}
if (over) process.exit(1);

// npm run laws -- --cases 20000 --seed 1
import { laws } from "./laws";
import { atMost, flag, tell } from "./report";
import { chance } from "./sheet";

const cases = flag("cases", 20_000);
const seed = flag("seed", 1);
tell(
  "laws",
  laws.map(({ name, broken }) => {
    const pick = chance(seed);
    const found: string[] = [];
    for (let i = 0; i < cases; i += 1) {
      const what = broken(pick);
      if (what !== undefined) found.push(what);
    }
    found.slice(0, 5).forEach((what) => console.log(`${name}\n  ${what}`));
    return atMost(name, found.length, 0, `of ${String(cases)}`);
  }),
);

/**
 * Speed of the material look-up, a small script: npm run bench
 * Bars: p95 under 1 ms a look-up, found or refused; load (table read, index built) under 5 ms.
 */
export {};

const begin = performance.now();
const { findMaterial } = await import("../../src/material/findMaterial");
const load = performance.now() - begin;
const { searchMaterials } = await import("../../src/material/searchMaterials");

const found = [
  "304",
  "S17400",
  "1.4301",
  "X5CrNi18-10",
  "17-4 H1150",
  "4140 prehard",
  "6061-T6",
  "A500 GR B",
  "A36/A572-50",
  "bronze",
  "grade 2 titanium",
  "EN AW-6082 T6",
  "A276 316",
];
const refused = ["1.4302", "4141", "1050", "6061-O", "Monday", "AISI 304 annealed plus something", "A572/A36/304"];

function percentile(run: () => unknown, times: number): { readonly median: number; readonly p95: number } {
  const taken: number[] = [];
  for (let i = 0; i < times; i++) {
    const at = performance.now();
    try {
      run();
    } catch {
      // a refusal is an answer
    }
    taken.push(performance.now() - at);
  }
  taken.sort((a, b) => a - b);
  return { median: taken[Math.floor(times / 2)]!, p95: taken[Math.floor(times * 0.95)]! };
}

const show = (name: string, { median, p95 }: { readonly median: number; readonly p95: number }): void => {
  console.log(
    `${name.padEnd(44)} median ${(median * 1000).toFixed(1).padStart(7)} µs   p95 ${(p95 * 1000).toFixed(1).padStart(7)} µs`,
  );
};

console.log(`load ${load.toFixed(2)} ms`);
for (const text of [...found, ...refused])
  show(
    `findMaterial("${text}")`,
    percentile(() => findMaterial(text, []), 400),
  );
for (const text of ["304", "17-4P", "ti", "steel", "1.43"])
  show(
    `searchMaterials("${text}")`,
    percentile(() => searchMaterials(text, 20), 100),
  );

import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { makeSample } from "./makeSample";
import { sampleBooks } from "./samples/books";

/** npm run samples: writes the workbooks of docs/samples; with --check, fails on one that is not what it would write. */

const folder = "docs/samples";

async function main(check: boolean): Promise<void> {
  mkdirSync(folder, { recursive: true });
  for (const sample of sampleBooks) {
    const path = `${folder}/${sample.file}`;
    const bytes = await makeSample(sample);
    if (existsSync(path) && readFileSync(path).equals(bytes)) continue;
    if (check) {
      console.error(`stale: ${path}. Run npm run samples and commit what it writes.`);
      process.exitCode = 1;
    } else {
      writeFileSync(path, bytes);
      console.log(`wrote ${path}`);
    }
  }
}

void main(process.argv.includes("--check"));

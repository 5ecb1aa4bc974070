// build -- --origin https://host: puts that origin in place of https://localhost:3000 in manifest and metadata.
import { readFileSync, writeFileSync } from "node:fs";
import { hostFiles } from "./hostFiles.mjs";
import { rebase } from "./rebase.mjs";

const at = process.argv.indexOf("--origin");
const origin = at < 0 ? undefined : process.argv[at + 1];
try {
  writeFileSync("dist/manifest.xml", rebase(readFileSync("manifest.xml", "utf8"), origin));
  writeFileSync("dist/functions.json", rebase(readFileSync("functions/functions.json", "utf8"), origin));
  for (const [file, text] of Object.entries(hostFiles())) writeFileSync(`dist/${file}`, text);
  console.log(
    `dist/ is ready for ${origin}: serve the folder there with the headers of its host files, and load dist/manifest.xml in Excel`,
  );
} catch (error) {
  console.error(error.message);
  process.exit(1);
}

// docs/rooms.svg: who imports whom, room by room, as dependency-cruiser sees it. An arrow is an import.
import { spawnSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { instance } from "@viz-js/viz";
import { bin } from "./steps.mjs";

const folders = ["src", "functions", "taskpane"];
const collapsed = `^(${folders.join("|")})/[^/]+`;
const { stdout, status, stderr } = spawnSync(
  process.execPath,
  [
    bin("dependency-cruiser/bin/dependency-cruise.mjs"),
    "--config",
    ".dependency-cruiser.cjs",
    "--include-only",
    `^(${folders.join("|")})/`,
    "--collapse",
    collapsed,
    "--output-type",
    "dot",
    ...folders,
  ],
  { encoding: "utf8", maxBuffer: 1e8 },
);
if (status !== 0) {
  console.error(stderr);
  process.exit(status ?? 1);
}
const viz = await instance();
writeFileSync("docs/rooms.svg", `${viz.renderString(stdout, { format: "svg" }).trim()}\n`);
console.log("wrote docs/rooms.svg");

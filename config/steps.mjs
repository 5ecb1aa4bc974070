// The steps of the commands: programs run with this very Node, one after the other or beside each other.
import { spawn, spawnSync } from "node:child_process";
import { join } from "node:path";

export const bin = (name) => join("node_modules", ...name.split("/"));

const failed = (title, status) => {
  console.error(`\nfailed: ${title}`);
  process.exit(status ?? 1);
};

/** Runs one step; ends the command when it fails. */
export const step = (title, args) => {
  console.log(`\n> ${title}`);
  const { status } = spawnSync(process.execPath, args, { stdio: "inherit" });
  if (status !== 0) failed(title, status);
};

/** Runs one step while others run; what it says is printed when it ends, so that two steps never mix their lines. */
const quietly = (title, args) =>
  new Promise((done) => {
    const child = spawn(process.execPath, args, { stdio: ["ignore", "pipe", "pipe"] });
    const said = [];
    for (const stream of [child.stdout, child.stderr]) stream.on("data", (part) => said.push(part));
    child.on("close", (status) => {
      console.log(`\n> ${title}`);
      process.stdout.write(Buffer.concat(said));
      if (status !== 0) failed(title, status);
      done();
    });
  });

/** Lanes of steps, [title, arguments], side by side; within a lane one step after the other. */
export const lanes = (...all) =>
  Promise.all(
    all.map(async (steps) => {
      for (const [title, args] of steps) await quietly(title, args);
    }),
  );

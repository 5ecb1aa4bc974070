import { readFileSync } from "node:fs";
import { expect, it } from "vitest";

/** What `npm ci` installs: each package in one version, by its digest, from the registry and nowhere else. */
interface Lock {
  readonly packages: Readonly<
    Record<
      string,
      { readonly version?: string; readonly resolved?: string; readonly integrity?: string; readonly link?: true }
    >
  >;
}
const lock = JSON.parse(readFileSync("package-lock.json", "utf8")) as Lock;
const packages = Object.entries(lock.packages).filter(([path]) => path !== "");

it("every package of the lockfile has a digest and comes from the registry", () => {
  expect(packages.length).toBeGreaterThan(100);
  for (const [path, { resolved, integrity, link }] of packages) {
    expect(integrity, path).toMatch(/^sha(?:512|384|256|1)-/);
    expect(link, path).toBeUndefined();
    // Where no address is kept, npm asks the registry that it is set to.
    if (resolved !== undefined) expect(resolved, path).toMatch(/^https:\/\/registry\.npmjs\.org\//);
  }
});

it("package.json asks for exact versions", () => {
  const { dependencies, devDependencies } = JSON.parse(readFileSync("package.json", "utf8")) as Record<
    "dependencies" | "devDependencies",
    Readonly<Record<string, string>>
  >;
  for (const [name, version] of Object.entries({ ...dependencies, ...devDependencies }))
    expect(version, name).toMatch(/^\d+\.\d+\.\d+$/);
});

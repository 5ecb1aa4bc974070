import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { OfficeAddinManifest } from "office-addin-manifest";
import { describe, expect, it } from "vitest";
import { wantBuilt } from "../../config/built.mjs";
import { rebase } from "../../config/rebase.mjs";
import { manifestProblems } from "./problems";

const xml = readFileSync("manifest.xml", "utf8");
const { version } = JSON.parse(readFileSync("package.json", "utf8")) as { version: string };
const facts = {
  version,
  namespace: "SAW",
  files: (path: string) => existsSync(join("dist", path)),
  iconSize: (path: string) => readFileSync(join("dist", path)).readUInt32BE(16),
};

describe("manifest.xml", () => {
  it("is read by office-addin-manifest as a task pane add-in for Excel", async () => {
    const info = await OfficeAddinManifest.readManifestFile("manifest.xml");
    expect([info.officeAppType, info.displayName, info.hosts, info.permissions]).toEqual([
      "TaskPaneApp",
      "Kerfsheet",
      ["Workbook"],
      "ReadWriteDocument",
    ]);
  });

  it("has every element in order, every resource defined and used, every file in dist", async () => {
    wantBuilt("dist");
    expect(await manifestProblems(xml, facts)).toEqual([]);
  });

  it("asks for the requirement sets that carry every error code and the shared runtime", () => {
    expect(xml).toMatch(/Name="CustomFunctionsRuntime" MinVersion="1.3"/);
    expect(xml).toMatch(/Name="SharedRuntime" MinVersion="1.1"/);
    expect(xml).toMatch(/lifetime="long"/);
  });

  const faults: readonly (readonly [string, (x: string) => string, RegExp])[] = [
    [
      "an element out of order",
      (x) =>
        x
          .replace(/\s*<Id>[^<]*<\/Id>/, "")
          .replace("<ProviderName>", "<ProviderName>")
          .replace(/(<Version>[^<]*<\/Version>)/, "$1<Id>7d1f3c52-8e0b-4a46-9c57-2b64f0a1e9d3</Id>"),
      /out of order/,
    ],
    [
      "a resource that nothing uses",
      (x) => x.replace("</bt:ShortStrings>", '<bt:String id="Spare" DefaultValue="x"/></bt:ShortStrings>'),
      /Spare: defined, not used/,
    ],
    [
      "a resource that is missing",
      (x) => x.replace('id="Functions.Script.Url"', 'id="Functions.Other.Url"'),
      /used, not defined/,
    ],
    [
      "a plain http address",
      (x) => x.replace("https://localhost:3000/functions.js", "http://localhost:3000/functions.js"),
      /not https/,
    ],
    ["a file that is not there", (x) => x.replace('functions.js"', 'funktions.js"'), /not in dist/],
    ["another version than the package", (x) => x.replace(`<Version>${version}.0`, "<Version>9.9.9.0"), /Version/],
    [
      "two pages for one runtime",
      (x) => x.replace('<Runtime resid="Taskpane.Url"', '<Runtime resid="GetStarted.LearnMoreUrl"'),
      /share one page/,
    ],
    ["another namespace", (x) => x.replace('DefaultValue="SAW"', 'DefaultValue="SAWS"'), /Namespace/],
    [
      "a text that is too long",
      (x) => x.replace('DefaultValue="Open Kerfsheet"', `DefaultValue="${"x".repeat(126)}"`),
      /too long/,
    ],
  ];
  it.each(faults)("%s is found", async (_, spoil, says) => {
    expect((await manifestProblems(spoil(xml), facts)).join("\n")).toMatch(says);
  });
});

describe("build -- --origin", () => {
  const json = readFileSync("functions/functions.json", "utf8");

  it("replaces the development address in manifest and metadata, and nothing else", () => {
    for (const text of [xml, json]) {
      const moved = rebase(text, "https://addins.example.com");
      expect(moved).not.toContain("localhost");
      expect(moved.replaceAll("https://addins.example.com", "https://localhost:3000")).toBe(text);
    }
  });

  it.each([
    "http://addins.example.com",
    "https://addins.example.com/kerf",
    "https://addins.example.com/",
    "addins.example.com",
    "",
    undefined,
    "javascript:alert(1)",
  ])("refuses %s", (origin) => {
    expect(() => rebase(xml, origin)).toThrow(/https/);
  });
});

import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { hostFiles } from "../../config/hostFiles.mjs";
import { call } from "../../functions/bind/call";
import { Memo } from "../../functions/bind/memo";
import { parseCall } from "../../functions/bind/parseCall";
import { repeats, slots } from "../../functions/bind/slots";
import { catalogue } from "../../functions/catalogue";
import { CellError } from "../../functions/kinds/cell";
import { openHost, type Host } from "./host";
import { browserPath, openBrowser, type Opened } from "./open";

/** The add-in under the published scripts of Excel on the web, inside the stand-in of host.ts, served with the headers that the build writes. */

/** The file of paths and headers, read as a static host reads it. */
const written = hostFiles()._headers;
const rules = written.split(/\n(?=\/)/).map((group) => {
  const [path, ...lines] = group.trim().split("\n");
  const headers = lines.map(
    (line) =>
      line
        .trim()
        .split(/: (.*)/s)
        .slice(0, 2) as [string, string],
  );
  return { end: path!.replace("/*", ""), headers };
});
const headersOf = (path: string): Readonly<Record<string, string>> =>
  Object.fromEntries(rules.filter(({ end }) => path.endsWith(end)).flatMap(({ headers }) => headers));

const tops = [
  "https://excel.cloud.microsoft/open/onedrive",
  "https://m365.cloud.microsoft/",
  "https://contoso.sharepoint.com/book",
  "https://onedrive.live.com/edit",
  "https://teams.microsoft.com/v2/",
];
/** The list of frames before Excel on the web moved to new addresses. */
const older =
  "frame-ancestors 'self' https://*.officeapps.live.com https://*.office.com https://*.office365.com https://*.sharepoint.com";
const olderHeaders = (path: string): Readonly<Record<string, string>> => {
  const headers = headersOf(path);
  return {
    ...headers,
    "Content-Security-Policy": headers["Content-Security-Policy"]!.replace(/frame-ancestors.*$/, older),
  };
};
const ready = "_SetOsfControlContainerReadyForCustomFunctions";
const activated = async (host: Host): Promise<boolean> => {
  for (let i = 0; i < 100 && !host.isBlocked(); i += 1) {
    if ((await host.calls()).includes(ready)) return true;
    await host.page.waitForTimeout(100);
  }
  return false;
};
/** As the host sends arguments: rows of cells, blanks in a form of its own, nothing for what is left out. */
const area = (...rows: readonly unknown[]) => ({ name: "AREA", args: [rows.map((cell) => [cell]), null] });

describe.skipIf(browserPath === undefined)("the add-in inside Excel on the web, as far as a stand-in shows it", () => {
  let opened: Opened;
  let host: Host;
  beforeAll(async () => {
    opened = await openBrowser();
    host = await openHost(opened.browser, tops[0]!, headersOf);
    expect(await activated(host)).toBe(true);
  }, 60_000);
  afterAll(async () => opened.close());

  it.each(tops)("functions answer under %s", async (top) => {
    const framed = await openHost(opened.browser, top, headersOf);
    expect(await activated(framed)).toBe(true);
    expect(await framed.invoke([area("round 7")])).toEqual([{ ok: true, value: [[expect.closeTo(38.48451, 5)]] }]);
    await framed.page.close();
  });

  it.each([
    [tops[0]!, false],
    [tops[1]!, false],
    [tops[2]!, true],
    [tops[3]!, false],
    [tops[4]!, false],
  ])("with the older list of frames, under %s: %s", async (top, answers) => {
    const framed = await openHost(opened.browser, top, olderHeaders);
    expect(await activated(framed)).toBe(answers);
    await framed.page.close();
  });

  it("every example of every function gives what the core gives, by the host's own messages", async () => {
    const calls = catalogue.flatMap((entry) =>
      entry.examples.map((formula) => ({ entry, formula, args: parseCall(formula).args })),
    );
    const replies = await host.invoke(
      calls.map(({ entry, args }) => ({
        name: entry.name,
        args: slots(entry).map((slot, i) => {
          // Repeating arguments come as one list.
          if (repeats(slot)) return args.slice(i);
          return slot.role === "units" ? (args[i]?.[0]?.[0] ?? null) : (args[i] ?? null);
        }),
      })),
    );
    calls.forEach(({ entry, args, formula }, i) => {
      const wanted = call(entry, args, new Memo()).map((row) =>
        row.map((cell) =>
          cell instanceof CellError
            ? expect.objectContaining({ code: cell.code })
            : typeof cell === "number"
              ? expect.closeTo(cell, 8)
              : cell,
        ),
      );
      expect(replies[i], formula).toEqual({ ok: true, value: wanted });
    });
  });

  it("a refusal comes with its sentence; in five rows each has its own answer", async () => {
    const error = { code: "#N/A", type: "CustomFunctionError" };
    const [wrong, several] = await host.invoke([area("roud 7"), area("round 7", "flat 6x1", "", "roud", error)]);
    expect(wrong).toEqual({ ok: false, value: expect.stringContaining('unknown word "roud"') as string });
    const { ok, value } = several!;
    expect([ok, value]).toMatchObject([
      true,
      [[expect.closeTo(38.48451, 5)], [expect.closeTo(6, 9)], [""], [{ code: "#VALUE!" }], [{ code: "#N/A" }]],
    ]);
  });

  it("a blank in each form in which hosts send it, and arguments left out, mean not given", async () => {
    const rate = (pitch: unknown) => ({
      name: "CUTRATE",
      args: [[["round 7"]], [["17-4PH"]], [["bi-metal"]], pitch, null, null, null],
    });
    const replies = await host.invoke([rate(null), rate([[""]]), rate([[null]]), rate([[0]])]);
    for (const { ok, value } of replies) expect([ok, value]).toEqual([true, [[expect.closeTo(2.2293, 4)]]]);
  });

  it('"all" gives one row with every result', async () => {
    const entry = catalogue.find(({ name }) => name === "CUTDATA")!;
    const given = [[["round 7"]], [["4140"]], [["bi-metal"]], [["all"]]];
    const args = slots(entry).map((_, i) => given[i] ?? null);
    const [{ value } = { value: undefined }] = await host.invoke([{ name: "CUTDATA", args }]);
    const [wanted] = call(entry, given, new Memo());
    expect(value).toEqual([wanted!.map((cell) => (typeof cell === "number" ? expect.closeTo(cell, 8) : cell))]);
  });

  it("the pane asks for the selection by the same messages, and says in a sentence what the host does not answer", async () => {
    const calls = await host.calls();
    expect(calls.filter((name) => name === "executeMethod").length).toBeGreaterThan(1);
    const text = await host.paneText();
    expect(text).toContain("Material");
    expect(text).toMatch(/did not accept it \(PropertyNotLoaded\), so nothing was done/);
    const pane = host.page.frames().find((f) => f.url().includes("taskpane.html"))!;
    await pane.getByRole("tab", { name: "Workbook" }).click();
    await pane.getByRole("button", { name: "List", exact: true }).click();
    await expect.poll(() => host.paneText()).toMatch(/did not accept it|nothing was done/);
  });

  it("requests only its own files and Microsoft's scripts; its policy refuses only what those do", () => {
    const foreign = [...host.requests].filter(
      (url) =>
        !url.startsWith("https://addins.example.com/") &&
        !url.startsWith("https://appsforoffice.microsoft.com/lib/1/hosted/") &&
        !url.startsWith("https://excel.cloud.microsoft/") &&
        !url.startsWith("https://usc-excel.officeapps.live.com/"),
    );
    expect(foreign).toEqual([]);
    // Known, and harmless: the telemetry of office.js reads an XML text (docs/acceptance.md, row 30).
    const known = /^refused (?:require-trusted-types-for trusted-types-sink|style-src|frame-src|default-src)/;
    expect(host.violations.filter((line) => !known.test(line))).toEqual([]);
  });
});

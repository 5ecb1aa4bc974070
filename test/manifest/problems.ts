import { parseStringPromise } from "xml2js";

/** Structural checks of an add-in-only manifest: the official validator needs the network, these do not. */

interface Node {
  readonly "#name": string;
  readonly $?: Readonly<Record<string, string>>;
  readonly $$?: readonly Node[];
  readonly _?: string;
}

/** Child elements in the order that the schema asks for. */
const order: Readonly<Record<string, readonly string[]>> = {
  OfficeApp: [
    "Id",
    "AlternateId",
    "Version",
    "ProviderName",
    "DefaultLocale",
    "DisplayName",
    "Description",
    "IconUrl",
    "HighResolutionIconUrl",
    "SupportUrl",
    "AppDomains",
    "Hosts",
    "Requirements",
    "DefaultSettings",
    "Permissions",
    "Dictionary",
    "VersionOverrides",
    "ExtendedOverrides",
  ],
  VersionOverrides: ["Description", "Requirements", "Hosts", "Resources", "WebApplicationInfo", "EquivalentAddins"],
  Host: ["Runtimes", "AllFormFactors", "DesktopFormFactor"],
  DesktopFormFactor: ["GetStarted", "FunctionFile", "ExtensionPoint"],
  GetStarted: ["Title", "Description", "LearnMoreUrl"],
  ExtensionPoint: ["OfficeTab", "Script", "Page", "Metadata", "Namespace"],
  Resources: ["bt:Images", "bt:Urls", "bt:ShortStrings", "bt:LongStrings"],
  Control: ["Label", "Supertip", "Icon", "Action", "Enabled", "Items"],
  Group: ["Label", "Icon", "Control"],
};

const walk = (node: Node, visit: (node: Node) => void): void => {
  visit(node);
  for (const child of node.$$ ?? []) walk(child, visit);
};

const longest: Readonly<Record<string, number>> = { "bt:ShortStrings": 125, "bt:LongStrings": 250 };

export interface Facts {
  readonly version: string;
  readonly namespace: string;
  readonly files: (path: string) => boolean;
  readonly iconSize: (path: string) => number;
}

export async function manifestProblems(xml: string, { version, namespace, files, iconSize }: Facts): Promise<string[]> {
  const root = {
    "#name": "OfficeApp",
    ...((await parseStringPromise(xml, {
      explicitChildren: true,
      preserveChildrenOrder: true,
      explicitRoot: false,
    })) as object),
  } as Node;
  const out: string[] = [];
  const defined = new Map<string, string>();
  const used: string[] = [];
  const runtimePages = new Set<string | undefined>();
  walk(root, (n) => {
    const name = n["#name"];
    const children = (n.$$ ?? []).map((c) => c["#name"]);
    const wanted = order[name];
    if (wanted !== undefined) {
      let last = -1;
      for (const child of children) {
        const at = wanted.indexOf(child);
        if (at < 0) out.push(`${name}: unexpected ${child}`);
        else if (at < last) out.push(`${name}: ${child} out of order`);
        else last = at;
      }
    }
    if (/^bt:(Image|Url|String)$/.test(name) && n.$?.["id"] !== undefined)
      defined.set(n.$["id"], n.$["DefaultValue"] ?? "");
    if (n.$?.["resid"] !== undefined) used.push(n.$["resid"]);
    if (n.$?.["resid"] !== undefined && n.$["resid"].length > 32)
      out.push(`${n.$["resid"]}: longer than 32 characters`);
    for (const child of n.$$ ?? [])
      if ((child.$?.["DefaultValue"] ?? "").length > (longest[name] ?? 2048))
        out.push(`${child.$?.["id"]}: text too long`);
    const url = n.$?.["DefaultValue"];
    if (url !== undefined && /^[a-z]+:\/\//.test(url)) {
      const path = new URL(url).pathname.slice(1);
      if (!url.startsWith("https://")) out.push(`${url}: not https`);
      else if (!files(path)) out.push(`${path}: not in dist`);
      else if (path.endsWith(".png")) {
        const size = Number(/(\d+)\.png$/.exec(path)?.[1]);
        if (iconSize(path) !== size) out.push(`${path}: is ${iconSize(path)} pixels wide`);
      }
    }
    if (name === "Runtime") runtimePages.add(n.$?.["resid"]);
    if (name === "Page" || name === "Action")
      runtimePages.add(n.$$?.find((c) => c["#name"] === "SourceLocation")?.$?.["resid"]);
    if (name === "AppDomains" && children.length === 0) out.push("AppDomains: empty");
  });
  for (const id of used) if (!defined.has(id)) out.push(`${id}: used, not defined`);
  for (const id of defined.keys()) if (!used.includes(id)) out.push(`${id}: defined, not used`);
  if (runtimePages.size !== 1) out.push("Runtime, Page and Action must share one page");
  const text = (name: string): string => (root.$$ ?? []).find((c) => c["#name"] === name)?._ ?? "";
  if (!/^[0-9a-f]{8}-([0-9a-f]{4}-){3}[0-9a-f]{12}$/i.test(text("Id"))) out.push("Id: not a GUID");
  if (text("Version") !== `${version}.0`) out.push(`Version: ${text("Version")} is not ${version}.0`);
  if (defined.get("Functions.Namespace") !== namespace) out.push(`Namespace: not ${namespace}`);
  for (const size of [16, 32, 80]) if (!xml.includes(`<bt:Image size="${size}"`)) out.push(`no icon of ${size} pixels`);
  return out;
}

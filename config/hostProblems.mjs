// Asks a deployed address for each file that Excel loads, and says what is missing: the file, its type, its headers.
import { always, frames, shared } from "./headers.mjs";

const page = { type: /^text\/html/, policy: true };
const script = { type: /^(?:text|application)\/javascript/, shared: true };
const files = {
  "/taskpane.html": page,
  "/help.html": page,
  "/support.html": page,
  "/privacy.html": page,
  "/functions.json": { type: /^application\/json/, shared: true },
  "/functions.js": script,
  "/core.js": script,
  "/pane.js": script,
  "/more.js": script,
  "/trusted.js": script,
  "/pane.css": { type: /^text\/css/ },
  "/assets/icon-16.png": { type: /^image\/png/ },
  "/assets/icon-32.png": { type: /^image\/png/ },
  "/assets/icon-64.png": { type: /^image\/png/ },
  "/assets/icon-80.png": { type: /^image\/png/ },
};

/** What a policy allows for one directive; undefined where the policy does not name it. */
const directive = (policy, name) =>
  policy
    .split(";")
    .map((part) => part.trim().split(/\s+/))
    .find(([first]) => first === name)
    ?.slice(1);

/** What is wrong with the headers of a page that Excel frames. */
const policyProblems = (headers) => {
  const policy = headers.get("content-security-policy");
  const problems = [];
  if (headers.get("x-frame-options") !== null)
    problems.push("sends X-Frame-Options, which keeps Excel on the web from showing it: take it away");
  if (policy === null) return [...problems, "sends no Content-Security-Policy: send the one of the build"];
  const allowed = directive(policy, "frame-ancestors");
  const missing =
    allowed === undefined ? [] : frames.map(([frame]) => frame).filter((frame) => !allowed.includes(frame));
  if (missing.length > 0) problems.push(`may not be framed by ${missing.join(", ")}: no function runs there`);
  const scripts = directive(policy, "script-src") ?? directive(policy, "default-src") ?? [];
  if (!scripts.some((source) => source === "https://appsforoffice.microsoft.com" || source === "*"))
    problems.push("does not allow scripts of https://appsforoffice.microsoft.com, where office.js comes from");
  return problems;
};

const problemsOf = async (origin, path, wants) => {
  let response;
  try {
    response = await fetch(origin + path, { redirect: "manual" });
  } catch (error) {
    return [`cannot be asked: ${error.cause?.code ?? error.message}`];
  }
  if (response.status >= 300 && response.status < 400)
    return [`is sent on to ${response.headers.get("location")}: Excel wants it at its own address`];
  if (response.status !== 200) return [`answers ${response.status}: it is not there`];
  const { headers } = response;
  const type = headers.get("content-type") ?? "nothing";
  const problems = wants.type.test(type) ? [] : [`comes as ${type}`];
  if (wants.shared === true && headers.get("access-control-allow-origin") !== shared["Access-Control-Allow-Origin"])
    problems.push("lacks Access-Control-Allow-Origin: *, so Excel on the web cannot read it: no function exists there");
  if (headers.get("x-content-type-options") !== always["X-Content-Type-Options"])
    problems.push("lacks X-Content-Type-Options: nosniff");
  if (wants.policy === true) problems.push(...policyProblems(headers));
  if (path === "/functions.json") problems.push(...(await listProblems(response, origin)));
  return problems;
};

/** The list of functions must be the one built for this address. */
const listProblems = async (response, origin) => {
  try {
    const { functions } = await response.json();
    const elsewhere = functions.filter(({ helpUrl }) => !helpUrl.startsWith(`${origin}/`));
    return elsewhere.length === 0
      ? []
      : [`was built for another address (${new URL(elsewhere[0].helpUrl).origin}): build it with --origin ${origin}`];
  } catch {
    return ["is no list of functions"];
  }
};

/** Every problem of a deployed address, a line each; none where Excel can use it. */
export const hostProblems = async (origin) => {
  const found = await Promise.all(
    Object.entries(files).map(async ([path, wants]) =>
      (await problemsOf(origin, path, wants)).map((problem) => `${path} ${problem}`),
    ),
  );
  return found.flat();
};

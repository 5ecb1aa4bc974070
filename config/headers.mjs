// Security headers of the pages, by path. Whoever serves dist/ has to send the pane's: the build writes them for the usual
// servers (config/hostFiles.mjs), and check-host asks a deployed address for them.

/**
 * The windows that may show the pane. The pane's page also runs the functions: where it may not be framed, no cell
 * calculates. Each with its reason; read in Microsoft's documentation or, where said, in public threads.
 */
export const frames = [
  ["'self'", "the try-it page beside its grid"],
  ["https://*.officeapps.live.com", "the frame of Excel on the web itself (documentation)"],
  [
    "https://*.cloud.microsoft",
    "excel.cloud.microsoft and m365.cloud.microsoft, the top windows of Excel on the web (documentation)",
  ],
  ["https://*.office.com", "the older top windows of Excel on the web (documentation)"],
  ["https://*.office365.com", "workbooks opened from mail on the web (documentation)"],
  ["https://*.sharepoint.com", "workbooks in document libraries (documentation, public threads)"],
  ["https://*.sharepoint.us", "document libraries of the United States government's cloud (documentation)"],
  ["https://*.live.com", "workbooks in personal storage, onedrive.live.com (public threads)"],
  ["https://teams.microsoft.com", "workbooks opened in Teams (public threads)"],
  ["https://*.teams.microsoft.com", "Teams under its regional addresses (public threads)"],
];

const frameAncestors = `frame-ancestors ${frames.map(([frame]) => frame).join(" ")}`;

/** The pane as Excel loads it: own files, and office.js from its address; nothing else. */
export const panePolicy = `default-src 'none'; script-src 'self' https://appsforoffice.microsoft.com; style-src 'self'; img-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none'; require-trusted-types-for 'script'; ${frameAncestors}`;

/**
 * The try-it page. Tried with each allowance taken away in turn: the grid needs inline styles and images in data: addresses,
 * and nothing else; its scripts come from this machine only.
 */
export const gridPolicy =
  "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; connect-src 'self'; frame-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'self'";

/** Headers of every file. */
export const always = {
  "Content-Security-Policy": panePolicy,
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "no-referrer",
};

/** Excel on the web reads the list of functions and their script from an origin of its own. */
export const shared = { "Access-Control-Allow-Origin": "*" };

export const headers = (path) => ({
  ...always,
  ...(/^\/tryit\/(?:index\.html)?(?:\?.*)?$/.test(path) ? { "Content-Security-Policy": gridPolicy } : {}),
  ...(/\.(?:json|js)(?:\?|$)/.test(path) ? shared : {}),
});

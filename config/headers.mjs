// Security headers of the pages, by path. The pane's policy is what a production host should send as well.
const frameAncestors =
  "frame-ancestors 'self' https://*.officeapps.live.com https://*.office.com https://*.office365.com https://*.sharepoint.com";

/** The pane as Excel loads it: own files, and office.js from its address; nothing else. */
export const panePolicy = `default-src 'none'; script-src 'self' https://appsforoffice.microsoft.com; style-src 'self'; img-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none'; require-trusted-types-for 'script'; ${frameAncestors}`;

/**
 * The try-it page. Tried with each allowance taken away in turn: the grid needs inline styles and images in data: addresses,
 * and nothing else; its scripts come from this machine only.
 */
export const gridPolicy =
  "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; connect-src 'self'; frame-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'self'";

export const headers = (path) => ({
  "Content-Security-Policy": /^\/tryit\/(?:index\.html)?(?:\?.*)?$/.test(path) ? gridPolicy : panePolicy,
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "no-referrer",
  ...(/\.(?:json|js)(?:\?|$)/.test(path) ? { "Access-Control-Allow-Origin": "*" } : {}),
});

// What the usual servers read to send the headers of config/headers.mjs, as text by file name. Every number of them comes
// from there; `npm run build -- --origin …` writes them into dist/.
import { always, shared } from "./headers.mjs";

const lines = (headers, line) => Object.entries(headers).map(([name, value]) => line(name, value));
const attribute = (text) => text.replace(/&/g, "&amp;").replace(/"/g, "&quot;").replace(/</g, "&lt;");

/** Static hosts that read a file of paths with their headers beneath. */
const pathsAndHeaders = () =>
  [
    "/*",
    ...lines(always, (name, value) => `  ${name}: ${value}`),
    "/*.json",
    ...lines(shared, (name, value) => `  ${name}: ${value}`),
    "/*.js",
    ...lines(shared, (name, value) => `  ${name}: ${value}`),
    "",
  ].join("\n");

/** Static hosts that read a JSON file of routes. */
const routes = () =>
  `${JSON.stringify({ globalHeaders: { ...always, ...shared }, mimeTypes: { ".json": "application/json", ".js": "text/javascript" } }, null, 2)}\n`;

const nginx = () =>
  [
    "# Inside the server block that serves this folder.",
    ...lines({ ...always, ...shared }, (name, value) => `add_header ${name} "${value}" always;`),
    "",
  ].join("\n");

const iis = () =>
  [
    '<?xml version="1.0" encoding="utf-8"?>',
    "<configuration>",
    "  <system.webServer>",
    "    <httpProtocol>",
    "      <customHeaders>",
    ...lines({ ...always, ...shared }, (name, value) => `        <add name="${name}" value="${attribute(value)}" />`),
    "      </customHeaders>",
    "    </httpProtocol>",
    "    <staticContent>",
    '      <remove fileExtension=".json" />',
    '      <mimeMap fileExtension=".json" mimeType="application/json" />',
    "    </staticContent>",
    "  </system.webServer>",
    "</configuration>",
    "",
  ].join("\n");

/** Text by file name. */
export const hostFiles = () => ({
  _headers: pathsAndHeaders(),
  "staticwebapp.config.json": routes(),
  "nginx.conf": nginx(),
  "web.config": iis(),
});

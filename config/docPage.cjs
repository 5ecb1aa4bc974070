// A page of docs as one that the add-in's host serves: what the manifest and the help page point at.
const { marked } = require("marked");

const shell = (title, body) => `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8" />
<meta name="viewport" content="width=device-width, initial-scale=1" />
<title>Kerfsheet: ${title}</title>
<link rel="stylesheet" href="pane.css" />
</head>
<body class="help">
<main>
${body}</main>
</body>
</html>
`;

/** Links to what lies beside the page stay; those into the repository are only its words, the licence has a page of its own. */
const linked = (markdown) =>
  markdown
    .replaceAll("](../LICENSE)", "](LICENSE.txt)")
    .replace(/\]\((privacy|support|terms)\.md\)/g, "]($1.html)")
    .replace(/\[([^\]]*)\]\(\.\.?\/[^)]*\)/g, "$1");

/** Markdown as a page; its first heading is the title. */
module.exports = (content) => {
  const markdown = content.toString();
  const title = /^# (.*)$/m.exec(markdown)[1].toLowerCase();
  return shell(title, marked.parse(linked(markdown)));
};

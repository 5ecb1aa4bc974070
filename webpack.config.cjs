const path = require("node:path");
const docPage = require("./config/docPage.cjs");
const Copy = require("copy-webpack-plugin");
const MiniCss = require("mini-css-extract-plugin");
const Terser = require("terser-webpack-plugin");
const { optimize } = require("webpack");

const here = (p) => path.resolve(__dirname, p);
const ts = (configFile) => ({
  test: /\.ts$/,
  loader: "ts-loader",
  options: { transpileOnly: true, onlyCompileBundledFiles: true, configFile: here(configFile), instance: configFile },
});
const packed = { test: /[\\/]src[\\/]data[\\/](?:sections\w+|materials)\.ts$/, loader: here("config/packRows.cjs") };
const packedWords = { test: /[\\/]src[\\/]data[\\/]lineWords\.ts$/, loader: here("config/packWords.cjs") };
const shared = (name) => ({
  name,
  mode: "production",
  context: __dirname,
  devtool: false,
  resolve: { extensions: [".ts", ".js", ".mjs"] },
  performance: { hints: false },
  cache: {
    type: "filesystem",
    cacheDirectory: here(".cache/webpack"),
    buildDependencies: { config: [__filename, here("package-lock.json"), here("tsconfig.base.json")] },
  },
  stats: "errors-warnings",
});

/** What Excel loads: one classic script that needs nothing but a global CustomFunctions. */
const functions = {
  ...shared("functions"),
  target: ["web", "es2020"],
  entry: { functions: "./functions/main.ts" },
  output: { path: here("dist"), filename: "[name].js" },
  module: {
    rules: [
      ts("functions/tsconfig.json"),
      packed,
      packedWords,
      {
        test: /[\\/]((functions[\\/](catalogue[\\/]\w+|shop[\\/]labels))|(src[\\/]data[\\/]\w+Constants))\.ts$/,
        loader: here("config/dropDocs.cjs"),
      },
    ],
  },
};

const fill = (parts) => (content) =>
  Object.entries(parts).reduce((text, [mark, part]) => text.replaceAll(`<!-- ${mark} -->`, part), content.toString());
const office =
  '<script src="trusted.js"></script>\n    <script src="https://appsforoffice.microsoft.com/lib/1/hosted/office.js"></script>';
const pageScripts = (base) =>
  `<link rel="icon" href="${base}assets/icon-32.png" />\n    <link rel="stylesheet" href="${base}pane.css" />\n    <script defer src="${base}core.js"></script>\n    <script defer src="${base}pane.js"></script>`;

/** What only the part about trouble reads: it is loaded when it is asked for. */
const coachOnly = /[\\/](symptomRemedies|coachRows|symptomSection)\.ts$/;

/** The pane: view code over a second chunk of core, catalogue and data; two pages from one template. */
const pane = {
  ...shared("pane"),
  target: ["web", "es2020"],
  // In Excel the page of the pane runs the functions too: both share one load of the core.
  entry: { pane: ["./functions/main.ts", "./taskpane/main.ts"], trusted: "./taskpane/trusted.ts" },
  // The policy lets no text become the address of a script: the pane's own later part goes through a policy of its own.
  output: { path: here("dist"), filename: "[name].js", trustedTypes: { policyName: "kerfsheet" } },
  optimization: {
    splitChunks: {
      cacheGroups: {
        default: false,
        defaultVendors: false,
        core: {
          name: "core",
          chunks: "all",
          enforce: true,
          test: (m) => {
            const file = m.nameForCondition?.() ?? "";
            return /[\\/](src|functions|node_modules)[\\/]/.test(file) && !coachOnly.test(file);
          },
        },
      },
    },
  },
  module: {
    rules: [ts("taskpane/tsconfig.json"), packed, packedWords, { test: /\.css$/, use: [MiniCss.loader, "css-loader"] }],
  },
  plugins: [
    new MiniCss({ filename: "[name].css" }),
    new Copy({
      patterns: [
        { from: "taskpane/pane.html", to: "taskpane.html", transform: fill({ office, scripts: pageScripts("") }) },
        {
          from: "taskpane/pane.html",
          to: "tryit/pane.html",
          transform: fill({ office: "", scripts: pageScripts("../") }),
        },
        { from: "functions/functions.json", to: "functions.json" },
        { from: "taskpane/assets", to: "assets" },
        { from: "taskpane/help.html", to: "help.html", noErrorOnMissing: true },
        { from: "docs/privacy.md", to: "privacy.html", transform: docPage },
        { from: "docs/support.md", to: "support.html", transform: docPage },
        { from: "LICENSE", to: "LICENSE.txt", toType: "file" },
      ],
    }),
  ],
};

/** The try-it page: the grid, large and only ever served locally, never part of the add-in. */
const tryit = {
  ...shared("tryit"),
  target: ["web", "es2020"],
  entry: { page: "./taskpane/tryit/main.ts" },
  output: { path: here("dist/tryit"), filename: "[name].js", chunkFilename: "[name].js", publicPath: "" },
  optimization: {
    minimizer: [
      new Terser({ minify: Terser.esbuildMinify, terserOptions: { target: "es2020" }, extractComments: false }),
    ],
  },
  module: {
    rules: [
      ts("taskpane/tryit/tsconfig.json"),
      { test: /\.css$/, use: [MiniCss.loader, "css-loader"] },
      { test: /\.m?js$/, resolve: { fullySpecified: false } },
    ],
  },
  plugins: [
    new MiniCss({ filename: "[name].css" }),
    new Copy({
      patterns: [
        { from: "taskpane/tryit/index.html", to: "index.html" },
        { from: "docs/samples/*.xlsx", to: "samples/[name][ext]" },
      ],
    }),
  ],
};

/** Programs that run under Node. */
const node = {
  ...shared("node"),
  target: "node20",
  entry: {
    generate: "./functions/reference/generate.ts",
    recalc: "./functions/workbook/recalc.ts",
    samples: "./functions/workbook/samples.ts",
  },
  output: { path: here("build"), filename: "[name].cjs" },
  optimization: { minimize: false },
  // A program is one file; what it loads late is still run late.
  plugins: [new optimize.LimitChunkCountPlugin({ maxChunks: 1 })],
  module: { rules: [ts("config/tsconfig.json")] },
};

module.exports = [functions, pane, tryit, node];

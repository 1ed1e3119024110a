const { existsSync } = require("node:fs");
const path = require("node:path");
const { EsbuildPlugin } = require("esbuild-loader");
const HtmlWebpackPlugin = require("html-webpack-plugin");
const MiniCssExtractPlugin = require("mini-css-extract-plugin");

const source = path.join(__dirname, "src");
const dist = path.join(__dirname, "dist");

/** Hosts run functions.js in script engines of several ages; pages need a current browser anyway. */
const FUNCTIONS_TARGET = "es2019";
const PAGES_TARGET = "es2022";

function shared(target) {
  return {
    mode: "production",
    devtool: false,
    resolve: { extensions: [".ts", ".js"] },
    module: {
      rules: [
        { test: /\.ts$/, loader: "esbuild-loader", options: { target } },
        { test: /\.css$/, use: [MiniCssExtractPlugin.loader, "css-loader"] },
        { test: /\.(svg|png|woff2?)$/, type: "asset/resource" },
      ],
    },
    // The default minifier takes a minute and a half over the grid of the trial page.
    optimization: { minimizer: [new EsbuildPlugin({ target, css: true, legalComments: "none" })] },
    performance: { hints: false },
    stats: "errors-warnings",
    cache: {
      type: "filesystem",
      buildDependencies: { config: [path.join(__dirname, "webpack.config.js")] },
    },
  };
}

/** One self-contained script under a fixed name: the manifest and saved workbooks lead to it. */
const functions = {
  ...shared(FUNCTIONS_TARGET),
  name: "functions",
  target: ["web", "es2019"],
  entry: { functions: path.join(source, "functions", "associate.ts") },
  output: { path: dist, filename: "functions.js" },
};

/** A page is a folder of src with an index.ts and an index.html. */
const pageFiles = { trial: "index.html", taskpane: "taskpane.html" };
const pageNames = Object.keys(pageFiles).filter((name) =>
  existsSync(path.join(source, name, "index.ts")),
);

/** The reference pages are written by the build; their script and style keep fixed names. */
const REFERENCE = "reference";
const named = (extension) => (pathData) =>
  pathData.chunk.name === REFERENCE
    ? `reference/page.${extension}`
    : `assets/[name].[contenthash:8].${extension}`;

const pages = {
  ...shared(PAGES_TARGET),
  name: "pages",
  target: ["web", "es2022"],
  entry: {
    ...Object.fromEntries(pageNames.map((name) => [name, path.join(source, name, "index.ts")])),
    [REFERENCE]: path.join(source, "reference-pages", "index.ts"),
  },
  output: {
    path: dist,
    filename: named("js"),
    chunkFilename: "assets/[name].[contenthash:8].js",
    assetModuleFilename: "assets/[name].[contenthash:8][ext]",
    // Relative to the page, so that the folder can be served from anywhere.
    publicPath: "auto",
  },
  plugins: [
    new MiniCssExtractPlugin({
      filename: named("css"),
      chunkFilename: "assets/[name].[contenthash:8].css",
    }),
    ...pageNames.map(
      (name) =>
        new HtmlWebpackPlugin({
          template: path.join(source, name, "index.html"),
          filename: pageFiles[name],
          chunks: [name],
        }),
    ),
  ],
};

module.exports = [functions, pages];

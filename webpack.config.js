const path = require("node:path");
const { NormalModuleReplacementPlugin } = require("webpack");
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
        {
          test: /\.ts$/,
          loader: "ts-loader",
          // Types are checked once for everything, by "npm run types"; here each file is only put
          // into JavaScript of the age that its host reads.
          options: {
            transpileOnly: true,
            compilerOptions: {
              target,
              module: "esnext",
              moduleResolution: "bundler",
              noEmit: false,
            },
          },
        },
        // It does not say so itself, and of its tests the bundle needs one.
        { test: /node_modules.robust-predicates/, sideEffects: false },
        { test: /\.css$/, use: [MiniCssExtractPlugin.loader, "css-loader"] },
        { test: /screen.palette\.css$/, loader: path.join(__dirname, "build", "palette-css.ts") },
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
  entry: { functions: path.join(source, "hosts", "excel-functions.ts") },
  output: { path: dist, filename: "functions.js" },
};

const numbersReadFile = path.join(source, "trial", "numbers-read.ts");

/** The grid's own reading of numbers takes every comma for a thousands mark. */
const numbersRead = new NormalModuleReplacementPlugin(/^numfmt$/, (resource) => {
  if (resource.contextInfo.issuer !== numbersReadFile) resource.request = numbersReadFile;
});

/** A page is a folder of src with an index.ts and, unless the build writes its markup, an index.html. */
function page({ name, folder, html }) {
  // The reference pages are written by the build, so their script and style keep fixed names.
  const file = (extension) =>
    html === undefined ? `${name}/page.${extension}` : `assets/[name].[contenthash:8].${extension}`;
  const chunk = (extension) => `assets/[name].[contenthash:8].${extension}`;
  const index = path.join(source, folder, "index.html");
  return {
    ...shared(PAGES_TARGET),
    name,
    target: ["web", "es2022"],
    entry: { [name]: path.join(source, folder, "index.ts") },
    output: {
      path: dist,
      filename: file("js"),
      chunkFilename: chunk("js"),
      assetModuleFilename: "assets/[name].[contenthash:8][ext]",
      // Relative to the page, so that the folder can be served from anywhere.
      publicPath: "auto",
    },
    plugins: [
      numbersRead,
      new MiniCssExtractPlugin({ filename: file("css"), chunkFilename: chunk("css") }),
      ...(html === undefined
        ? []
        : [new HtmlWebpackPlugin({ template: index, filename: html, chunks: [name] })]),
    ],
  };
}

module.exports = [
  functions,
  page({ name: "trial", folder: "trial", html: "index.html" }),
  page({ name: "workshop", folder: "workshop-page", html: "workshop.html" }),
  page({ name: "taskpane", folder: "taskpane", html: "taskpane.html" }),
  page({ name: "reference", folder: "reference-pages" }),
];

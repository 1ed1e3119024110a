import { rmSync } from "node:fs";
import { createServer as createHttpServer, type RequestListener, type Server } from "node:http";
import { createServer as createHttpsServer } from "node:https";
import { getHttpsServerOptions } from "office-addin-dev-certs";
import sirv from "sirv";
import { hallNotice, isBuilt, roomAddresses } from "./hall";
import { headersFor } from "./headers";
import { packedCopy } from "./packed";
import { dist, EXCEL_PORT, PAGES_PORT } from "./settings";

/** Answers with the built folder, and with the headers that a host of it should send. */
export function answering(folder: string): RequestListener {
  // Looked up anew each time: a build may run beside it.
  return withHeaders(sirv(folder, { dev: true, etag: true }));
}

/** The same from a packed copy: compressed for whoever takes it so. */
export function answeringPacked(copy: string): RequestListener {
  return withHeaders(sirv(copy, { etag: true, gzip: true, brotli: true }));
}

function withHeaders(files: ReturnType<typeof sirv>): RequestListener {
  return (request, response) => {
    const path = new URL(request.url ?? "/", "http://localhost").pathname;
    for (const [name, value] of Object.entries(headersFor(path))) response.setHeader(name, value);
    files(request, response, () => {
      response.statusCode = 404;
      response.setHeader("Content-Type", "text/plain; charset=utf-8");
      response.end(`There is no ${path} here.\n`);
    });
  };
}

/** Only this machine is answered, unless a host of its own is given. */
export function listen(server: Server, port: number, host = "localhost"): Promise<Server> {
  return new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, host, () => resolve(server));
  });
}

/** The bundler takes seconds to load alone: what happens is said before. */
async function buildFirst(): Promise<void> {
  console.log("Building all pages and workbooks into dist/: a minute or two …");
  const started = Date.now();
  const { build } = await import("./build");
  await build();
  console.log(`Built after ${((Date.now() - started) / 1000).toFixed(0)} s.`);
}

/** How often the hall's laptop looks whether its network has changed. */
const LOOK_EVERY = 3000;

/** Serves what was built at home; whoever is in the network may read, nothing can be written. */
async function serveHall(): Promise<void> {
  if (isBuilt(dist)) console.log("dist/ is built and newer than its sources: served as it is.");
  else await buildFirst();
  // Forty phones share one wireless network.
  const copy = packedCopy(dist);
  process.once("exit", () => rmSync(copy, { recursive: true, force: true }));
  for (const end of ["SIGINT", "SIGTERM"] as const) process.once(end, () => process.exit());
  await listen(createHttpServer(answeringPacked(copy)), PAGES_PORT, "0.0.0.0");
  let told = "";
  const tell = () => {
    const rooms = roomAddresses();
    const found = JSON.stringify(rooms);
    if (found === told) return;
    told = found;
    console.log(`\n${hallNotice(rooms, PAGES_PORT, process.stdout.isTTY)}`);
  };
  tell();
  // A hotspot that is opened later, or another address after the lid was closed.
  setInterval(tell, LOOK_EVERY);
}

async function main(kind: string): Promise<void> {
  if (kind === "hall") return serveHall();
  await buildFirst();
  if (kind === "excel") {
    const { validateManifest } = await import("./manifest");
    await validateManifest();
    // Makes a certificate for localhost on first use; the system asks before it trusts it.
    const server = createHttpsServer(await getHttpsServerOptions(), answering(dist));
    await listen(server, EXCEL_PORT);
    console.log(`\nThe add-in is served at https://localhost:${EXCEL_PORT}`);
    console.log("Load dist/manifest.xml into Excel as the README says. Stop with Ctrl+C.");
    return;
  }
  await listen(createHttpServer(answering(dist)), PAGES_PORT);
  console.log(`\nOpen http://localhost:${PAGES_PORT} in a browser. Stop with Ctrl+C.`);
}

if (require.main === module) {
  main(process.argv[2] ?? "pages").catch((error: unknown) => {
    const code = (error as NodeJS.ErrnoException).code;
    const hint = code === "EADDRINUSE" ? " Set PAGES_PORT or EXCEL_PORT to use another port." : "";
    console.error(`${error instanceof Error ? error.message : String(error)}${hint}`);
    process.exitCode = 1;
  });
}

import { rmSync } from "node:fs";
import { createServer as createHttpServer, type RequestListener, type Server } from "node:http";
import { createServer as createHttpsServer } from "node:https";
import { networkInterfaces } from "node:os";
import { getHttpsServerOptions } from "office-addin-dev-certs";
import sirv from "sirv";
import { renderUnicodeCompact } from "uqr";
import { build } from "./build";
import { headersFor } from "./headers";
import { validateManifest } from "./manifest";
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

/** Addresses under which other machines of the room reach this one. */
export function roomAddresses(found = networkInterfaces()): string[] {
  return Object.values(found)
    .flatMap((addresses) => addresses ?? [])
    .filter(({ family, internal }) => family === "IPv4" && !internal)
    .map(({ address }) => address);
}

async function main(kind: string): Promise<void> {
  await build();
  if (kind === "excel") {
    await validateManifest();
    // Makes a certificate for localhost on first use; the system asks before it trusts it.
    const server = createHttpsServer(await getHttpsServerOptions(), answering(dist));
    await listen(server, EXCEL_PORT);
    console.log(`\nThe add-in is served at https://localhost:${EXCEL_PORT}`);
    console.log("Load dist/manifest.xml into Excel as the README says. Stop with Ctrl+C.");
    return;
  }
  if (kind === "hall") {
    // Forty phones share one wireless network.
    const copy = packedCopy(dist);
    process.once("exit", () => rmSync(copy, { recursive: true, force: true }));
    for (const end of ["SIGINT", "SIGTERM"] as const) process.once(end, () => process.exit());
    // Whoever is in the network may read the pages; nothing can be written.
    await listen(createHttpServer(answeringPacked(copy)), PAGES_PORT, "0.0.0.0");
    const rooms = roomAddresses();
    if (rooms.length === 0)
      console.log("\nThis computer is in no network yet: join one, and start this again.");
    for (const room of rooms) {
      const address = `http://${room}:${PAGES_PORT}/workshop`;
      console.log(`\nWorkshop: ${address}\n${renderUnicodeCompact(address)}`);
    }
    console.log("Answers every machine in this network. Stop with Ctrl+C.");
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

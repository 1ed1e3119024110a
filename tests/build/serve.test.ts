import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import {
  createServer as createHttpServer,
  get as getPlainly,
  type IncomingHttpHeaders,
  type Server,
} from "node:http";
import { createServer as createHttpsServer, get } from "node:https";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { generateCertificates } from "office-addin-dev-certs";
import { brotliDecompressSync, gunzipSync } from "node:zlib";
import { packedCopy } from "../../build/packed";
import { answering, answeringPacked, listen } from "../../build/serve";

let folder: string;
let server: Server;
let address: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "serve-"));
  mkdirSync(join(folder, "assets"));
  writeFileSync(join(folder, "index.html"), "<!doctype html><title>Page</title>");
  writeFileSync(join(folder, "functions.html"), "<!doctype html><title>Functions</title>");
  writeFileSync(join(folder, "functions.json"), "{}");
  writeFileSync(join(folder, "assets", "trial.0123abcd.js"), "1");
  server = await listen(createHttpServer(answering(folder)), 0);
  address = `http://localhost:${(server.address() as AddressInfo).port}`;
});

afterAll(() => {
  server.closeAllConnections();
  server.close();
  rmSync(folder, { recursive: true });
});

test("the pages come with a policy without inline script or eval, and are asked for again", async () => {
  const answer = await fetch(`${address}/`);
  expect(await answer.text()).toContain("Page");
  const policy = answer.headers.get("content-security-policy") ?? "";
  expect(policy).toContain("default-src 'none'; script-src 'self';");
  expect(policy).toContain("frame-ancestors 'none'");
  expect(policy).not.toContain("eval");
  expect(answer.headers.get("cache-control")).toBe("no-cache");
  expect(answer.headers.get("x-content-type-options")).toBe("nosniff");
});

test("an unchanged file is answered with nothing but that", async () => {
  const first = await fetch(`${address}/functions.json`);
  const etag = first.headers.get("etag") ?? "";
  expect(etag).not.toBe("");
  expect(first.headers.get("access-control-allow-origin")).toBe("*");
  const again = await fetch(`${address}/functions.json`, { headers: { "If-None-Match": etag } });
  expect(again.status).toBe(304);
});

test("hashed files are kept for a year", async () => {
  const answer = await fetch(`${address}/assets/trial.0123abcd.js`);
  expect(answer.headers.get("cache-control")).toBe("public, max-age=31536000, immutable");
});

test("pages inside Excel may load the host's script and be framed", async () => {
  const policy =
    (await fetch(`${address}/functions.html`)).headers.get("content-security-policy") ?? "";
  expect(policy).toContain("script-src 'self' https://appsforoffice.microsoft.com;");
  expect(policy).not.toContain("frame-ancestors");
});

test("what is not there is said so, and nothing outside the folder is", async () => {
  expect((await fetch(`${address}/nowhere.html`)).status).toBe(404);
  expect((await fetch(`${address}/..%2f..%2fetc/hostname`)).status).toBe(404);
});

test("the same server answers over https with a development certificate", async () => {
  const [ca, cert, key] = ["ca.crt", "localhost.crt", "localhost.key"].map((name) =>
    join(folder, name),
  );
  await generateCertificates(ca, cert, key);
  const secure = await listen(
    createHttpsServer({ cert: readFileSync(cert), key: readFileSync(key) }, answering(folder)),
    0,
  );
  try {
    const { port } = secure.address() as AddressInfo;
    const status = await new Promise((resolve, reject) => {
      get(`https://localhost:${port}/functions.json`, { ca: readFileSync(ca) }, (answer) => {
        answer.resume();
        resolve(answer.statusCode);
      }).on("error", reject);
    });
    expect(status).toBe(200);
  } finally {
    secure.closeAllConnections();
    secure.close();
  }
});

describe("for a room", () => {
  const script = "ground();\n".repeat(500);
  let copy: string;
  let packed: Server;

  beforeAll(async () => {
    writeFileSync(join(folder, "assets", "large.0123abcd.js"), script);
    copy = packedCopy(folder);
    packed = await listen(createHttpServer(answeringPacked(copy)), 0);
  });

  afterAll(() => {
    packed.closeAllConnections();
    packed.close();
    rmSync(copy, { recursive: true });
  });

  /** As it came, not unpacked on the way. */
  function asked(path: string, encodings: string) {
    const { port } = packed.address() as AddressInfo;
    return new Promise<{ headers: IncomingHttpHeaders; bytes: Buffer }>((resolve, reject) => {
      const headers = { "Accept-Encoding": encodings };
      getPlainly(`http://localhost:${port}${path}`, { headers }, (answer) => {
        const parts: Buffer[] = [];
        answer.on("data", (part: Buffer) => parts.push(part));
        answer.on("end", () => resolve({ headers: answer.headers, bytes: Buffer.concat(parts) }));
      }).on("error", reject);
    });
  }

  test.each([
    ["gzip", gunzipSync],
    ["br", brotliDecompressSync],
  ])(
    "a text is sent in %s to whoever takes it so, with its type and headers",
    async (way, open) => {
      const { headers, bytes } = await asked("/assets/large.0123abcd.js", way);
      expect(headers["content-encoding"]).toBe(way);
      expect(headers.vary).toContain("Accept-Encoding");
      expect(headers["content-type"]).toContain("javascript");
      expect(headers["cache-control"]).toBe("public, max-age=31536000, immutable");
      expect(bytes.length).toBeLessThan(script.length / 10);
      expect(open(bytes).toString()).toBe(script);
    },
  );

  test("and as it is to whoever does not", async () => {
    const { headers, bytes } = await asked("/assets/large.0123abcd.js", "identity");
    expect(headers["content-encoding"]).toBeUndefined();
    expect(bytes.toString()).toBe(script);
  });

  test("the built folder itself stays as it was built", () => {
    expect(readdirSync(join(folder, "assets"))).toEqual(["large.0123abcd.js", "trial.0123abcd.js"]);
  });
});

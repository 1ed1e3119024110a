import type { Browser, BrowserContext, BrowserContextOptions } from "playwright-core";
import { launchBrowser, serve, type Served } from "./browser";

/** The built pages and people who visit them, each at a browser of their own, gone after each test. */
export interface People {
  /** Where the pages are while the tests run. */
  address(): string;
  someone(options: BrowserContextOptions): Promise<BrowserContext>;
}

export function people(): People {
  let browser: Browser;
  let site: Served;
  const contexts: BrowserContext[] = [];

  beforeAll(async () => {
    browser = await launchBrowser();
    site = await serve();
  });

  afterEach(async () => {
    await Promise.all(contexts.splice(0).map((context) => context.close()));
  });

  afterAll(async () => {
    await browser?.close();
    await site?.close();
  });

  return {
    address: () => site.address,
    someone: async (options) => {
      const context = await browser.newContext({ acceptDownloads: true, ...options });
      contexts.push(context);
      return context;
    },
  };
}

import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { chromium, type BrowserContext, type Page } from "playwright-core";

/** Where Debian puts it; `CHROMIUM` names another one. */
const EXECUTABLE: string = process.env["CHROMIUM"] ?? "/usr/bin/chromium";

/** A page, and everything it complained about so far. */
export interface OpenPage {
  readonly page: Page;
  /** Errors and warnings of the console, uncaught errors, what the page's policy forbade, failed requests, and requests that leave this machine. */
  readonly complaints: readonly string[];
}

/** A running browser, with a profile and a folder of files of its own. */
export interface OpenBrowser {
  readonly context: BrowserContext;
  /** Writes a file that pages can load, and says its address. */
  readonly serve: (name: string, text: string) => string;
  /** Opens an address in a new page and waits until it is loaded, fonts included. */
  readonly open: (address: string) => Promise<OpenPage>;
  /** Ends the browser and deletes its files. */
  readonly close: () => Promise<void>;
}

function listen(page: Page): string[] {
  const complaints: string[] = [];
  page.on("console", (message) => {
    if (["error", "warning"].includes(message.type())) complaints.push(`${message.type()}: ${message.text()}`);
  });
  page.on("pageerror", (error) => complaints.push(`uncaught: ${error.message}`));
  page.on("requestfailed", (request) => complaints.push(`failed: ${request.url()}`));
  page.on("request", (request) => {
    if (/^(?:https?|wss?|ftp):/.test(request.url())) complaints.push(`left the machine: ${request.url()}`);
  });
  return complaints;
}

/**
 * Starts a headless Chromium that works from files alone.
 *
 * @returns the browser; close it when done
 */
export async function openBrowser(): Promise<OpenBrowser> {
  const temporary = mkdtempSync(join(tmpdir(), "miterwright-browser-"));
  const context = await chromium.launchPersistentContext(join(temporary, "profile"), {
    executablePath: EXECUTABLE,
    headless: true,
    args: [
      "--no-sandbox",
      "--disable-gpu",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
    ],
  });
  // Before any script of a page: what its Content-Security-Policy forbids is a complaint, also where the console does not say so.
  await context.addInitScript(
    'addEventListener("securitypolicyviolation", ({ violatedDirective, blockedURI, sample }) => { console.error(`forbidden by the policy: ${violatedDirective} ${blockedURI} ${sample}`); });',
  );
  return {
    context,
    serve: (name, text) => {
      const path = join(temporary, name);
      writeFileSync(path, text);
      return pathToFileURL(path).href;
    },
    open: async (address) => {
      const page = await context.newPage();
      const complaints = listen(page);
      await page.goto(address, { waitUntil: "load" });
      await page.evaluate("document.fonts.ready.then(() => undefined)");
      return { page, complaints };
    },
    close: async () => {
      await context.close();
      rmSync(temporary, { recursive: true });
    },
  };
}

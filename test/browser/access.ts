import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";

/** What axe found, in the form in which it answers. */
interface Violation {
  readonly id: string;
  readonly impact: string;
  readonly nodes: readonly { readonly html: string }[];
}

/** What axe finds on a page, with where it is. */
async function violations(page: Page, isMeant: (impact: string) => boolean): Promise<string[]> {
  // Evaluated from outside: a page whose policy is strict takes no script of ours.
  await page.evaluate(`${readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8")};0`);
  // Preloading would fetch style sheets, which a page that comes from a file may not.
  const run = "axe.run({ preload: false }).then(({ violations }) => violations)";
  const found = await page.evaluate<readonly Violation[]>(run);
  return found
    .filter(({ impact }) => isMeant(impact))
    .map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 200)).join(" | ")}`);
}

/** Every violation on a page that axe calls serious or critical. */
export async function seriousViolations(page: Page): Promise<string[]> {
  return violations(page, (impact) => ["serious", "critical"].includes(impact));
}

/** Every violation on a page. */
export async function everyViolation(page: Page): Promise<string[]> {
  return violations(page, () => true);
}

import type { Page } from "playwright-core";
import { planFrame, type FramePlan } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { shopSheet } from "miterwright/sheet";
import { fitStock } from "miterwright/stock";
import { tray, WRITTEN } from "./cases.js";

/** A shop sheet, and on how many pages it must stay. */
export interface SheetCase {
  readonly name: string;
  readonly html: string;
  /** Most pages of each format. */
  readonly pages: { readonly A4: number; readonly Letter: number };
}

function sheetCase(name: string, pages: SheetCase["pages"], plan: FramePlan): SheetCase {
  const fits = plan.stockJobs.map((job) => fitStock(job, { stepLimit: 1e5 }));
  const title = `Saltmarsh Observatory: ${name}`;
  const note = "For the tide-pool model on the long table.";
  return { name, html: shopSheet(plan, { formats: WRITTEN.formats, fits, title, note }), pages };
}

/**
 * The sheets that are printed. A plain frame, one of a square-cut molding that lies flat, stays on two pages.
 *
 * @returns the sheets
 */
export function listSheets(): SheetCase[] {
  const two = { A4: 2, Letter: 2 };
  const three = { A4: 3, Letter: 3 };
  const plainSquare = molding({ width: 42, thickness: 18 });
  return [
    sheetCase("plain square", two, tray({ sides: 4, profile: plainSquare, contents: [], clearance: 0 })),
    sheetCase("rabbeted square", two, tray({ sides: 4, contents: [], clearance: 0 })),
    sheetCase("plain hexagon", two, tray({ sides: 6, profile: plainSquare, contents: [], clearance: 0 })),
    sheetCase("rabbeted hexagon", two, tray({ sides: 6, contents: [], clearance: 0 })),
    sheetCase("plain octagon", two, tray({ sides: 8, contents: [], clearance: 0 })),
    sheetCase(
      "nine-sided tray",
      { A4: 3, Letter: 4 },
      tray({ sides: 9, slope: 20, sticks: [{ id: "larch", length: 2400 }] }),
    ),
    sheetCase(
      "propped dozen",
      { A4: 3, Letter: 4 },
      tray({ sides: 12, slope: 45, lay: "propped", sticks: [{ id: "larch", length: 1200 }] }),
    ),
    sheetCase("steep triangle", three, tray({ sides: 3, slope: 80, contents: [] })),
    sheetCase(
      "level measures",
      three,
      planFrame({ sides: 8, slope: -30, opening: { side: 200 }, measured: { levelWidth: 40, lap: 6, depth: 9 } }),
    ),
  ];
}

/**
 * Prints the page that is open.
 *
 * @param page - a page
 * @param format - the paper
 * @param path - where to put the PDF; nowhere by default
 * @returns how many pages it takes
 */
export async function printedPages(page: Page, format: keyof SheetCase["pages"], path?: string): Promise<number> {
  const pdf = await page.pdf({ format, printBackground: true, ...(path === undefined ? {} : { path }) });
  return pdf.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
}

/**
 * The index of a batch: every cut of every frame in the order of work, grouped by setting, and what is cut from which stick.
 */
import { drawStock } from "miterwright/drawing";
import { type ShopChange, type ShopGroup, type ShopOrder } from "miterwright/frame";
import { arrisLabel, surfaceLabel } from "miterwright/words";
import type { StockFit, StockJob } from "miterwright/stock";
import type { Formats } from "miterwright/units";

/** The sticks of one molding. */
export interface MoldingFit {
  readonly molding: string;
  readonly job: StockJob;
  readonly fit: StockFit;
}

/** What the index is made from. */
export interface Batch {
  /** The sheets, by the names of their jobs. */
  readonly sheets: readonly { readonly name: string; readonly file: string; readonly frames: number }[];
  readonly order: ShopOrder;
  readonly fits: readonly MoldingFit[];
  /** What is wrong, in sentences. */
  readonly issues: readonly string[];
  readonly formats: Formats;
}

const STYLE = `:root { font: 1rem/1.4 sans-serif; color-scheme: light dark }
body { max-width: 60rem; margin: 1rem auto; padding: 0 1rem }
table { border-collapse: collapse; width: 100% }
th, td { padding: 0.2rem 0.5rem; border-bottom: 1px solid; text-align: left; vertical-align: top }
section, tr { break-inside: avoid }
svg { max-width: 100%; height: auto }
.scroll { overflow-x: auto }`;

const CUTS = { crosscut: "crosscut the blank", "first-end": "first end", "second-end": "second end" } as const;

/** What is set anew for a group. */
const CHANGES = { saw: "the saw", bevel: "bevel", miter: "miter", lay: "how the sticks lie" } as const;

/** How good a fit is. */
const GOOD = {
  optimal: "no cheaper way exists",
  feasible: "a cheaper way may exist",
  short: "not enough for all pieces",
} as const;

/** Text as it may stand between two tags: the names of jobs are anybody's words. */
function escape(text: string): string {
  return text.replace(/[&<>"]/g, (sign) => ({ "&": "&amp;", "<": "&lt;", ">": "&gt;" })[sign] ?? "&quot;");
}

const list = (items: readonly string[]): string => `<ul>${items.map((item) => `<li>${item}</li>`).join("")}</ul>`;

function table(heads: readonly string[], rows: readonly (readonly string[])[]): string {
  const cells = (tag: string, texts: readonly string[]): string =>
    `<tr>${texts.map((text) => `<${tag}>${text}</${tag}>`).join("")}</tr>`;
  return `<div class="scroll"><table><thead>${cells("th", heads)}</thead><tbody>${rows.map((row) => cells("td", row)).join("")}</tbody></table></div>`;
}

function groupSection({ miter, bevel, down, cradled, changes, cuts }: ShopGroup, { formats }: Batch): string {
  const { length, angle } = formats;
  const swung = miter.toward === "none" ? "square" : `miter ${angle(miter.degrees)} to the ${miter.toward}`;
  const tilted = bevel.toward === "none" ? "blade upright" : `blade ${angle(bevel.degrees)} to the ${bevel.toward}`;
  const anew: readonly ShopChange[] = changes;
  const rows = cuts.map(({ name, kind, times, length: size, arris, atFence, kept }) => [
    escape(name),
    CUTS[kind],
    `${times} times`,
    size === null ? "" : `${length(size)}${arris === null ? "" : ` along the ${arrisLabel(arris)}`}`,
    surfaceLabel(atFence),
    kept,
  ]);
  return `<section><h3>${swung}, ${tilted}</h3><p>Sticks lie with their ${surfaceLabel(down)} ${cradled ? "in the cradle" : "on the table"}. Set anew: ${anew.map((change) => CHANGES[change]).join(", ") || "nothing"}.</p>
${table(["frame", "cut", "how often", "length", "at the fence", "kept side"], rows)}</section>`;
}

function fitSection({ molding, job, fit }: MoldingFit, { formats }: Batch): string {
  const bought = fit.sticks.map(({ stick, count }) => `${count} of ${escape(stick)}`).join(", ");
  const missing = fit.unplaced.map(({ piece, count }) => `${count} of ${escape(piece)}`).join(", ");
  return `<section><h3>${escape(molding)}</h3><p>Sticks: ${bought || "none"} (${GOOD[fit.status]}).${missing === "" ? "" : ` <strong>Not enough: no room for ${missing}.</strong>`}</p>
${fit.layouts.length === 0 ? "" : drawStock(job, fit, { formats }).svg}</section>`;
}

/**
 * Writes the index.
 *
 * @param batch - sheets, cuts, sticks, and what is wrong
 * @returns an HTML page
 */
export function indexPage(batch: Batch): string {
  const { sheets, order, fits, issues } = batch;
  const groups = order.rounds.map(({ times, groups: inTurn }) => {
    const words = times === 1 ? "" : `<p>These ${inTurn.length} settings in turn, ${times} times:</p>`;
    return words + inTurn.map((group) => groupSection(group, batch)).join("\n");
  });
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
<title>Frames of this batch</title><link rel="icon" href="data:,"><style>${STYLE}</style></head>
<body><h1>Frames of this batch</h1>
${issues.length === 0 ? "" : `<h2>Not done</h2>${list(issues.map(escape))}`}
<h2>Sheets</h2>
${list(sheets.map(({ name, file, frames }) => `<a href="${escape(file)}">${escape(name)}</a>, ${frames} of it`))}
<p>Read the hazards on each sheet before its first cut. The saw's manual and qualified advice come first.</p>
<h2>Cuts, by setting</h2>
${groups.join("\n")}
<h2>Sticks, by molding</h2>
${fits.map((fit) => fitSection(fit, batch)).join("\n")}
</body></html>
`;
}

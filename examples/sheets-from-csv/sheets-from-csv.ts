/**
 * For a workshop: a batch of shop sheets from a table of jobs, with an index of all cuts grouped by setting and of the sticks to take for them.
 *
 *     npx tsx examples/sheets-from-csv/sheets-from-csv.ts [jobs.csv] [moldings.csv] [folder]
 *
 * A row that is not sound is reported with its number, its field and what is wrong, and the others go on; the exit code is then 1.
 */
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { shopOrder, stockJob } from "miterwright/frame";
import { shopSheet } from "miterwright/sheet";
import { verifyFit, fitStock, type StockJob } from "miterwright/stock";
import { obstacleText } from "miterwright/words";
import { formatters } from "miterwright/units";
import { indexPage, type MoldingFit } from "./index-page.js";
import { readJobs, readMoldings, type Molding, type PlannedJob } from "./read-jobs.js";
import type { RowIssue } from "./read-table.js";

const here = (name: string): string => fileURLToPath(new URL(name, import.meta.url));
const [jobsFile = here("jobs.csv"), moldingsFile = here("moldings.csv"), folder = "out/sheets"] = process.argv.slice(2);
const formats = formatters({ unit: "mm" });

function issueSentence(table: string, { row, field, sentence }: RowIssue): string {
  return `${table}, row ${row}${field === undefined ? "" : `, ${field}`}: ${sentence}.`;
}

/** The sticks for all frames of one molding. Every job takes the same kerf and trim of them, since roughs are cut off square. */
function fitMolding({ name, stick }: Molding, jobs: readonly PlannedJob[]): MoldingFit {
  const own = jobs.map((job) => {
    const { kerf, rough } = job.plan.brief;
    const { pieces, ...rest } = stockJob(job.plan.geometry, { kerf, rough, sticks: [stick], frames: job.frames });
    return { pieces: pieces.map((piece) => ({ ...piece, id: job.name })), rest };
  });
  const job: StockJob = { ...own[0]!.rest, pieces: own.flatMap(({ pieces }) => pieces) };
  const fit = fitStock(job, { stepLimit: 1e6 });
  const check = verifyFit(job, fit);
  if (!check.ok) throw new Error(`The sticks of ${name} do not work out: ${JSON.stringify(check.faults)}`);
  return { molding: name, job, fit };
}

const moldings = readMoldings(readFileSync(moldingsFile, "utf8"));
const jobs = readJobs(readFileSync(jobsFile, "utf8"), moldings.sound);
const order = shopOrder(jobs.sound);
const fits = moldings.sound.flatMap((molding) => {
  const own = jobs.sound.filter((job) => job.molding === molding.name);
  return own.length === 0 ? [] : [fitMolding(molding, own)];
});

const issues = [
  ...moldings.issues.map((issue) => issueSentence("Moldings", issue)),
  ...jobs.issues.map((issue) => issueSentence("Jobs", issue)),
  ...order.left.map(
    ({ name, obstacles }) => `${name}: ${obstacles.map((obstacle) => obstacleText(obstacle, { formats })).join(" ")}`,
  ),
  ...fits.flatMap(({ molding, fit }) => (fit.status === "short" ? [`${molding}: there are not enough sticks.`] : [])),
];

mkdirSync(folder, { recursive: true });
const sheets = jobs.sound.map(({ name, row, frames, plan }) => {
  // The row makes it unique, whatever is left of the name.
  const file = `${[row, ...(name.toLowerCase().match(/[a-z0-9]+/g) ?? [])].join("-")}.html`;
  const note = `${frames} of it. The cuts of the whole batch by setting, and its sticks, are on the index.`;
  writeFileSync(join(folder, file), shopSheet(plan, { formats, title: name, note }));
  return { name, file, frames };
});
writeFileSync(join(folder, "index.html"), indexPage({ sheets, order, fits, issues, formats }));
console.log(`${sheets.length} sheets and an index written to ${folder}`);
for (const issue of issues) console.error(issue);
process.exitCode = issues.length === 0 ? 0 : 1;

import { STEPS } from "../../docs/bench/field-table.js";
import { describe, expect, test } from "vitest";
import { numberHazards } from "miterwright/frame";
import { fitStock } from "miterwright/stock";
import { CARDS } from "../../docs/bench/cards/index.js";
import { stockMarkup } from "../../docs/bench/cards/stock-card.js";
import { exampleJob } from "../../docs/bench/example-job.js";
import { readmePictures } from "../../docs/pictures/draw.js";
import { readProjectFile } from "../house/project.js";
import { dryFitMarkup, formMarkup, rowMarkup, wordList } from "../../docs/bench/form-markup.js";
import type { JobState, Row } from "../../docs/bench/job-state.js";
import { planJob } from "../../docs/bench/plan-job.js";
import { wordsIn, WORDS } from "../../docs/bench/words.js";
import { writersOf } from "../../docs/bench/writers.js";
import { codesOf, codesRead } from "../laws/codes.js";
import { jobOf, TRAY } from "./jobs.js";
import { meaningOf, tradeWordsIn } from "./trade-words.js";

/** Every card of a job, by its name. */
function cardsOf(state: JobState): Record<string, string | null> {
  const { plan } = planJob(state);
  const writers = writersOf(state.values);
  return Object.fromEntries(
    CARDS.map((card) => [card.id, card.write({ plan: plan!, writers, width: 400 })?.html ?? null]),
  );
}

/** What a reader sees of markup. */
function textOf(markup: string): string {
  return markup
    .replace(/<(title|desc)>.*?<\/\1>/gs, " ")
    .replace(/<[^>]*>/g, " ")
    .replace(/\s+/g, " ");
}

const JOBS: readonly JobState[] = [
  exampleJob(),
  jobOf({ ...TRAY, lay: "propped" }),
  jobOf({ ...TRAY, slope: "-20", saw: "miter", rough: "square", roughAllowance: "12" }),
  jobOf({ ...TRAY, slope: "", sides: "4", holds: "cutFrom" }),
  jobOf({ ...TRAY, known: "level", levelWidth: "48", lap: "6" }),
  jobOf({ ...TRAY, miterReach: "1", bevelLeft: "1" }),
  jobOf({ ...TRAY, sides: "60" }),
  jobOf(
    { ...TRAY, species: "black walnut", clearance: "1", hangs: "wire", screwDepth: "30", cost: "12" },
    {
      layers: [
        { name: "pane", thickness: "2", material: "glass", cost: "8" },
        { thickness: "4", material: "molding" },
      ],
    },
  ),
];

test("no card has a code of the plan's data", () => {
  for (const state of JOBS) {
    const codes = codesOf(planJob(state).plan);
    for (const [id, markup] of Object.entries(cardsOf(state)))
      expect([id, codesRead((markup ?? "").replace(/<[^>]*>/g, " "), codes)]).toEqual([id, []]);
  }
});

test("the card of the panel counts its sides from 1", () => {
  const { panel } = planJob(JOBS[0]!).plan!;
  const { against, side } = panel!.cuts[0]!;
  const text = textOf(cardsOf(JOBS[0]!)["panel"]!);
  expect(text).toMatch(new RegExp(`new side, on the panel blank 1 ${side + 1} ${against + 1} `));
  expect(text).toContain("Sides are numbered counter-clockwise from 1, the side at the bottom.");
});

describe("no trade word stands on the page without its meaning", () => {
  test("in any card", () => {
    const met = new Set<string>();
    for (const state of JOBS) {
      for (const markup of Object.values(cardsOf(state))) {
        const text = textOf(markup ?? "");
        const list = wordList(text)?.html ?? "";
        for (const word of tradeWordsIn(text)) {
          met.add(word);
          expect(list).toContain(`<dt>${meaningOf(word)}</dt>`);
        }
      }
    }
    // Else the check above would have had nothing to look at.
    expect([...met]).toEqual(expect.arrayContaining(["bevel", "cradle", "fence", "miter", "rabbet", "stop"]));
  });

  test("in the form", () => {
    const sections = formMarkup().html.split("<section").slice(1);
    expect(sections.length).toBe(STEPS.length);
    for (const section of sections) {
      for (const word of tradeWordsIn(textOf(section))) expect(section).toContain(`<dt>${meaningOf(word)}</dt>`);
    }
  });

  test("and meanings use no word without one", () => {
    for (const { word, means } of WORDS) {
      for (const used of tradeWordsIn(means))
        expect(wordsIn(word).map(({ word: name }) => name)).toContain(meaningOf(used));
    }
  });
});

describe("the cards", () => {
  test("say the plan's numbers", () => {
    const cards = cardsOf(exampleJob());
    const { plan } = planJob(exampleJob());
    const { longest } = plan!.geometry.pieces[0];
    expect(textOf(cards["answer"]!)).toContain("miter scale 16.6° bevel scale 11.31° 9 pieces, each 191 mm");
    expect(longest.length).toBeCloseTo(191, 0);
    // The README shows the same frame, in its picture and in its ten lines.
    expect(readmePictures()["plan.svg"]).toContain(">side 191 mm<");
    expect(readProjectFile("README.md")).toContain('//=> "191 mm"');
    expect(textOf(cards["lengths"]!)).toContain("outer edge at the back 191 mm measure here");
    expect(textOf(cards["steps"]!)).toContain(
      "Lay the stick with its face on the table and its outer edge at the fence.",
    );
    expect(textOf(cards["hazards"]!)).toMatch(
      /Warning\. The pieces are too short .* \(length 191 mm, limit 300 mm\).* Caution\. .* Notice\. /,
    );
    const [first] = plan!.sawing.operations;
    const numbers = numberHazards(plan!).flatMap(({ number, steps }) => (steps.includes(first!.step) ? number : []));
    expect(textOf(cards["steps"]!)).toContain(
      `Heed hazards ${numbers.slice(0, -1).join(", ")} and ${numbers.at(-1)!} above.`,
    );
    // People read no codes.
    const codes = plan!.hazards.map(({ code }) => code).filter((code) => code.includes("-"));
    for (const code of codes) expect(`${textOf(cards["hazards"]!)} ${textOf(cards["steps"]!)}`).not.toContain(code);
    expect(textOf(cards["checks"]!)).toContain("slope of every side against the bench 35°");
    expect(textOf(cards["panel"]!)).toContain("It has 9 equal sides of 154.5 mm");
  });

  test("say what a year does, once the wood is known", () => {
    expect(cardsOf(jobOf(TRAY))["year"]).toBe(null);
    const year = textOf(cardsOf(jobOf({ ...TRAY, species: "white ash" }))["year"]!);
    expect(year).toMatch(/In the dry season, at 6% moisture, the joints open inside by 0\.\d+ mm/);
  });

  test("say what it weighs, costs and hangs by, as far as that is known", () => {
    const bare = cardsOf(jobOf(TRAY));
    expect(bare["hanging"]).toBe(null);
    expect(textOf(bare["materials"]!)).toMatch(/board feet/);
    expect(textOf(bare["materials"]!)).not.toMatch(/mass|cost in all/);
    const full = jobOf(
      { ...TRAY, slope: "", species: "black walnut", cost: "12.50", hangs: "wire" },
      { layers: [{ name: "pane", thickness: "2", material: "glass" }] },
    );
    const { materials } = planJob(full).plan!;
    const cards = cardsOf(full);
    expect(textOf(cards["materials"]!)).toContain(`mass in all ${Number(materials.mass.total!.toPrecision(3))} kg`);
    expect(textOf(cards["materials"]!)).toContain(`at least ${materials.cost!.total!.toFixed(2)}; not known: pane`);
    expect(textOf(cards["hanging"]!)).toContain("By a wire between two hangers");
  });

  test("draw the cradle where the lay needs one", () => {
    expect(cardsOf(jobOf({ ...TRAY, lay: "propped" }))["steps"]).toContain("make the cradle");
    expect(cardsOf(jobOf(TRAY))["steps"]).not.toContain("make the cradle");
  });

  test("say why no lay works", () => {
    const cards = cardsOf(jobOf({ ...TRAY, miterReach: "1", bevelLeft: "1" }));
    expect(textOf(cards["answer"]!)).toContain("No way to lay the stick suits this saw.");
    expect(cards["steps"]).toBe(null);
    expect(textOf(cards["lays"]!)).toContain("more than this saw has: it goes to 1°, and the cut needs ");
  });

  test("hold anybody's words without becoming markup", () => {
    const name = "<img src=x onerror=alert(1)>";
    const state = jobOf(TRAY, { layers: [{ name, thickness: "2" }], sticks: [{ length: "2400", name }] });
    const { plan } = planJob(state);
    const fit = fitStock(plan!.stockJobs[0]!);
    const stock = stockMarkup(plan!.stockJobs[0]!, fit, writersOf(state.values), 400).html;
    for (const markup of [...Object.values(cardsOf(state)), stock]) expect(markup ?? "").not.toContain("<img");
    expect(stock).toContain("&lt;img src=x onerror=alert(1)&gt;");
  });

  test("say what the sticks cost in all, as far as costs were typed", () => {
    const said = (sticks: readonly Row[]): string => {
      const state = jobOf(TRAY, { sticks });
      const [job] = planJob(state).plan!.stockJobs;
      return textOf(stockMarkup(job!, fitStock(job!), writersOf(state.values), 400).html);
    };
    expect(said([{ length: "700", name: "ash", cost: "4.2" }])).toMatch(
      /Take 3 × ash: .* in all\. They cost 12\.60 in all\./,
    );
    expect(said([{ length: "700", name: "ash" }])).not.toContain("They cost");
    expect(
      said([
        { length: "700", name: "ash", count: "1", cost: "0.5" },
        { length: "700", name: "elm" },
      ]),
    ).toContain("They cost 0.50, and elm with no cost typed.");
  });

  test("say how good a stick plan is", () => {
    const state = jobOf(TRAY, { sticks: [{ length: "700", count: "2" }] });
    const [job] = planJob(state).plan!.stockJobs;
    const fit = fitStock(job!);
    const said = (change: object): string =>
      textOf(stockMarkup(job!, { ...fit, ...change }, writersOf(state.values), 400).html);
    expect(fit.status).toBe("short");
    expect(said({})).toContain("The rack is too small: however it is cut up, 2 pieces are missing.");
    expect(said({ shortage: "not-found", unplaced: [{ piece: "side", count: 1 }] })).toContain("1 still missing");
    expect(said({ status: "optimal" })).toContain("This is proven");
    expect(said({ status: "feasible", relativeGap: 0.0123, stopped: "asked" })).toContain(
      "The search was stopped. A cheaper way may exist; it would save 1.2 % at the most.",
    );
    expect(said({ status: "feasible", relativeGap: 0.5, stopped: "time" })).toContain("The search ran out of time.");
  });
});

test("every input has a label, an explanation and a place for its error", () => {
  const markup = formMarkup().html + dryFitMarkup().html + rowMarkup("sticks", 0).html + rowMarkup("layers", 3).html;
  const ids = [...markup.matchAll(/<(?:input|select|textarea)\s+id="([^"]+)"/g)].map(([, id]) => id!);
  expect(ids.length).toBeGreaterThan(40);
  expect(new Set(ids).size).toBe(ids.length);
  for (const id of ids) {
    for (const part of [`for="${id}"`, `id="${id}-explain"`, `id="${id}-error"`]) expect(markup).toContain(part);
    expect(markup).toContain(`aria-describedby="${id}-explain ${id}-error"`);
  }
});

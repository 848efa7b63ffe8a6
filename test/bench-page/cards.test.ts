import { describe, expect, test } from "vitest";
import { numberHazards } from "miterwright/frame";
import { fitStock } from "miterwright/stock";
import { STEPS } from "../../docs/bench/field-table.js";
import { exampleJob } from "../../docs/bench/example-job.js";
import { rowMarkup, wordList } from "../../docs/bench/field-markup.js";
import { dryFitMarkup, formMarkup } from "../../docs/bench/form-markup.js";
import type { JobState, Row } from "../../docs/bench/job-state.js";
import { FORM, LANGUAGE } from "../../docs/bench/language.js";
import { planJob } from "../../docs/bench/plan-job.js";
import { wordsIn } from "../../docs/bench/words.js";
import { readmePictures } from "../../docs/pictures/draw.js";
import { readProjectFile } from "../house/project.js";
import { codesOf, codesRead } from "../laws/codes.js";
import { jobOf, TRAY } from "./jobs.js";
import { cardsOf, tellPage, textOf } from "./page-cards.js";
import { meaningOf, tradeWordsIn } from "./trade-words.js";
import { penOf } from "../../docs/bench/writers.js";

const { page } = LANGUAGE;
/** The form as it is written into the page. */
const FORM_MARKUP: string = formMarkup({ form: FORM, page }).html;

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
    for (const [section, markup] of Object.entries(cardsOf(state)))
      expect([section, codesRead((markup ?? "").replace(/<[^>]*>/g, " "), codes)]).toEqual([section, []]);
  }
});

test("the card of the panel counts its sides from 1", () => {
  const { panel } = planJob(JOBS[0]!).plan!;
  const { against, side } = panel!.cuts[0]!;
  const text = textOf(cardsOf(JOBS[0]!)["panel"]!);
  expect(text).toMatch(new RegExp(`the panel blank's edges 1 ${side + 1} ${against + 1} `));
  expect(text).toContain("Sides are numbered counter-clockwise from 1, the side at the bottom.");
});

describe("no trade word stands on the page without its meaning", () => {
  test("in any card", () => {
    const met = new Set<string>();
    for (const state of JOBS) {
      for (const markup of Object.values(cardsOf(state))) {
        const text = textOf(markup);
        const list = wordList(wordsIn(text, FORM.dictionary), page)?.html ?? "";
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
    const sections = FORM_MARKUP.split("<section").slice(1);
    expect(sections.length).toBe(STEPS.length);
    for (const section of sections) {
      const explained = /data-words="([^"]*)"/.exec(section)![1]!.split("|");
      for (const word of tradeWordsIn(textOf(`<section${section}`))) expect(explained).toContain(meaningOf(word));
    }
  });

  test("and meanings use no word without one", () => {
    for (const { word, means } of FORM.dictionary) {
      for (const used of tradeWordsIn(means))
        expect(wordsIn(word, FORM.dictionary).map(({ word: name }) => name)).toContain(meaningOf(used));
    }
  });
});

describe("the cards", () => {
  test("say the plan's numbers", () => {
    const cards = cardsOf(exampleJob());
    const { plan } = planJob(exampleJob());
    const { longest } = plan!.geometry.pieces[0];
    expect(textOf(cards["glance"]!)).toContain("miter scale 16.6° bevel scale 11.31° pieces 9, longest line 191 mm");
    expect(longest.length).toBeCloseTo(191, 0);
    // The README shows the same frame, in its picture and in its ten lines.
    expect(readmePictures()["plan.svg"]).toContain(">side 191 mm<");
    expect(readProjectFile("README.md")).toContain('//=> "191 mm"');
    expect(textOf(cards["frame"]!)).toContain("outer edge at the back 191 mm measure here");
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
    expect(textOf(cards["checks"]!)).toContain("slope of every side against the bench dry 35°");
    expect(textOf(cards["contents"]!)).toContain("Panel: 9 equal sides of 154.5 mm");
  });

  test("number hazards and steps as the report does, and mark hazards by their signals", () => {
    const state = exampleJob();
    const { hazards, steps } = cardsOf(state);
    const { plan } = planJob(state);
    const items = [...hazards!.matchAll(/<li\s+value="(\d+)"\s+class="signal-(\w+)"/g)].map(([, n, signal]) => [
      n,
      signal,
    ]);
    expect(items).toEqual(numberHazards(plan!).map(({ number, hazard }) => [String(number), hazard.signal]));
    expect([...steps!.matchAll(/<li\s+value="(\d+)"/g)].map(([, n]) => Number(n))).toEqual(
      plan!.sawing.operations.map(({ step }) => step),
    );
  });

  test("set off what is set at every step, before what is done", () => {
    const { steps } = cardsOf(exampleJob());
    const [first] = steps!.split("</li>");
    expect(textOf(first!)).toMatch(/Cut the first end, 9 pieces miter scale 16\.6° to the \w+ bevel scale 11\.31°/);
    expect(first!.indexOf("<dl")).toBeLessThan(first!.indexOf("<ul"));
  });

  test("leave out columns that are filled in with a pencil", () => {
    const { checks } = cardsOf(exampleJob());
    const heads = [...checks!.matchAll(/role="columnheader"\s*>([^<]*)</g)].map(([, head]) => head!.trim());
    expect(heads).toEqual(["what", "when", "must be", "within"]);
  });

  test("say what a year does, once the wood is known", () => {
    expect(cardsOf(jobOf(TRAY))["year"]).toBe(null);
    const year = textOf(cardsOf(jobOf({ ...TRAY, species: "white ash" }))["year"]!);
    expect(year).toMatch(/In the dry season, at 6 % moisture, the joints open inside by 0\.\d+ mm/);
  });

  test("say what it weighs, costs and hangs by, as far as that is known", () => {
    const bare = cardsOf(jobOf(TRAY));
    expect(bare["hangers"]).toBe(null);
    expect(textOf(bare["glance"]!)).toContain("molding needed");
    expect(textOf(bare["glance"]!)).not.toMatch(/mass|cost/);
    const full = jobOf(
      { ...TRAY, slope: "", species: "black walnut", cost: "12.50", hangs: "wire" },
      { layers: [{ name: "pane", thickness: "2", material: "glass" }] },
    );
    const { materials } = planJob(full).plan!;
    const cards = cardsOf(full);
    expect(textOf(cards["glance"]!)).toContain(`mass ${Number(materials.mass.total!.toPrecision(3))} kg`);
    expect(textOf(cards["glance"]!)).toContain(`cost at least ${materials.cost!.total!.toFixed(2)}, without pane`);
    expect(textOf(cards["materials"]!)).toMatch(/Before waste it is [\d.]+ board feet/);
    expect(textOf(cards["hangers"]!)).toContain("By a wire between two hangers");
  });

  test("draw the cradle where the lay needs one", () => {
    expect(cardsOf(jobOf({ ...TRAY, lay: "propped" }))["cradle"]).toMatch(/<svg.*Make a cradle|Make a cradle.*<svg/s);
    expect(cardsOf(jobOf(TRAY))["cradle"]).toBe(null);
  });

  test("say why no lay works, and leave the rest to the status", () => {
    const state = jobOf({ ...TRAY, miterReach: "1", bevelLeft: "1" });
    const { cards, notReady } = tellPage(planJob(state).plan!, penOf(state.values));
    expect(notReady).toEqual(["Not ready to cut. No way to lay the stick suits this saw; the table says why."]);
    expect(cards["glance"]).not.toContain("Not ready");
    expect(cards["steps"]).toBe(null);
    expect(textOf(cards["saw"]!)).toContain("more than this saw has: it goes to 1°, and the cut needs ");
  });

  test("hold anybody's words without becoming markup", () => {
    const name = "<img src=x onerror=alert(1)>";
    const state = jobOf(TRAY, { layers: [{ name, thickness: "2" }], sticks: [{ length: "2400", name }] });
    const fit = fitStock(planJob(state).plan!.stockJobs[0]!);
    const cards = cardsOf(state, LANGUAGE, fit);
    for (const markup of Object.values(cards)) expect(markup ?? "").not.toContain("<img");
    for (const section of ["stock", "contents"]) expect(cards[section]).toContain("&lt;img src=x onerror=alert(1)&gt;");
  });

  test("say what the sticks cost in all, as far as costs were typed, and how good that is", () => {
    const said = (sticks: readonly Row[]): string => {
      const state = jobOf(TRAY, { sticks });
      const fit = fitStock(planJob(state).plan!.stockJobs[0]!);
      return textOf(cardsOf(state, LANGUAGE, fit)["stock"]!);
    };
    expect(said([{ length: "700", name: "ash", cost: "4.2" }])).toMatch(
      /Take 3 × ash\. They cost 12\.60 in all\. No cheaper way .* Of 2100 mm of sticks/,
    );
    expect(said([{ length: "700", name: "ash" }])).not.toContain("They cost");
    expect(said([{ length: "700", count: "2" }])).toContain(
      "The sticks can't give all pieces: still missing 2 × side.",
    );
  });
});

test("every input has a label, an explanation and a place for its error", () => {
  const markup =
    FORM_MARKUP + dryFitMarkup(FORM).html + rowMarkup("sticks", 0, page).html + rowMarkup("layers", 3, page).html;
  const ids = [...markup.matchAll(/<(?:input|select|textarea)\s+id="([^"]+)"/g)].map(([, id]) => id!);
  expect(ids.length).toBeGreaterThan(40);
  expect(new Set(ids).size).toBe(ids.length);
  for (const id of ids) {
    for (const part of [`for="${id}"`, `id="${id}-explain"`, `id="${id}-error"`]) expect(markup).toContain(part);
    expect(markup).toContain(`aria-describedby="${id}-explain ${id}-error"`);
  }
});

import { describe, expect, test } from "vitest";
import { planFrame } from "miterwright/frame";
import { fitStock } from "miterwright/stock";
import { LANGUAGE } from "../../docs/bench/language.js";
import { penOf, type Pen } from "../../docs/bench/writers.js";
import { BRIEF, CHANGES, CODED, pastFormatters, textsOf } from "../coded-numbers.js";
import { tellPage } from "./page-cards.js";

const PEN: Pen = { ...LANGUAGE, formats: CODED, fine: CODED };

describe.each(Object.entries(CHANGES))("%s", (_, changes) => {
  const plan = planFrame({ ...BRIEF, ...changes });

  test("shows none past them on the page", () => {
    const [job] = plan.stockJobs;
    const { cards: told, notReady } = tellPage(plan, PEN, job === undefined ? null : fitStock(job));
    const cards = [...notReady, ...Object.values(told).map((html) => html ?? "")];
    expect(cards.flatMap(pastFormatters)).toEqual([]);
  });

  test("ties numbers to their fractions and units on the page", () => {
    const inches = planFrame({ ...BRIEF, ...changes, unit: "in" });
    const { cards: told } = tellPage(inches, penOf({ unit: "in", fineness: "usual" }));
    const cards = Object.values(told).map((html) => html ?? "");
    // A drawing sets every text on one line.
    const texts = cards.map((html) => html.replace(/<svg.*?<\/svg>/gs, ""));
    const all = texts.flatMap(textsOf);
    expect(all.filter((text) => /\d \d+\/\d+/.test(text))).toEqual([]);
    expect(all.some((text) => /\d\u00a0\d+\/\d+&quot;/.test(text))).toBe(true);
  });
});

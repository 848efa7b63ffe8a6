import { drawStock } from "miterwright/drawing";
import { fitStock, type StockFit, type StockJob } from "miterwright/stock";
import { count, defineFigure, length, type Figure } from "./figure.js";
import { finish } from "./pad.js";
import type { Reader } from "./reader.js";

const SIZE = { width: 360, height: 345 };
/** Steps of the search: enough for any job of the figure, and over before a slider is felt to stick. */
const WORK = 1e6;
/** The shortest offcut that goes back into the rack, in millimeters. */
const KEEP = 300;

const LEAST_COST = { optimal: "proven", feasible: "not proven", short: "not reached" } as const;

/** The library's drawing of a plan, made a part of a picture of the figure's size. */
function drawPlan(job: StockJob, fit: StockFit, reader: Reader): string {
  const { svg, title, description } = drawStock(job, fit, {
    formats: reader,
    width: SIZE.width,
  });
  const part = svg
    .replace(/<title>.*?<\/desc>/s, "")
    .replace(
      / width="[^"]*" height="[^"]*" role="img"/,
      ` width="${SIZE.width}" height="${SIZE.height}" preserveAspectRatio="xMidYMin meet"`,
    );
  const paper = `<rect width="${SIZE.width}" height="${SIZE.height}" fill="#fff"/>`;
  return finish([paper, part], SIZE, title, description);
}

/** Pieces of up to three lengths cut out of sticks of one. */
export const stockFigure: Figure = defineFigure({
  name: "stock",
  legend: "Change the pieces and the sticks",
  size: SIZE,
  controls: {
    stick: length("Sticks, each", 2400, 1500, 4000, 10),
    kerf: length("Kerf", 3, 0, 6, 0.1),
    rail: length("Rails, each", 865, 100, 1500),
    rails: count("How many rails", 8, 1, 12),
    stile: length("Stiles, each", 612.5, 100, 1500, 0.5),
    stiles: count("How many stiles", 8, 1, 12),
    batten: length("Battens, each", 338, 100, 1500),
    battens: count("How many battens", 7, 0, 12),
  },
  draw: ({ stick, kerf, rail, rails, stile, stiles, batten, battens }, reader) => {
    const job: StockJob = {
      pieces: [
        { id: "rail", length: rail, count: rails },
        { id: "stile", length: stile, count: stiles },
        ...(battens === 0 ? [] : [{ id: "batten", length: batten, count: battens }]),
      ],
      sticks: [{ id: "stick", length: stick }],
      kerf,
      keep: KEEP,
    };
    const fit = fitStock(job, { stepLimit: WORK });
    return {
      svg: drawPlan(job, fit, reader),
      facts: [
        ["sticks", String(fit.layouts.reduce((sum, { times }) => sum + times, 0))],
        ["cost: their length", reader.length(fit.cost)],
        ["bound", reader.length(fit.bound)],
        ["least cost", LEAST_COST[fit.status]],
        [`offcuts of ${reader.length(KEEP)} or more`, reader.length(fit.keptLength)],
        ["lost", reader.length(fit.wasteLength)],
      ],
    };
  },
});

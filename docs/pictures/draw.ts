/**
 * Draws the pictures that the README shows, from the demo frame of the main example: `npx tsx docs/pictures/draw.ts`.
 */
import { writeFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { drawPlanView, drawSection } from "miterwright/drawing";
import { planFrame } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { formatters } from "miterwright/units";

/**
 * The pictures by their file names.
 *
 * @returns SVG texts
 */
export function readmePictures(): Readonly<Record<string, string>> {
  const plan = planFrame({
    sides: 9,
    slope: 35,
    opening: { contains: { width: 340, height: 260, allowance: 2 } },
    clearance: 1.5,
    profile: molding({ width: 60, thickness: 24, rabbet: { width: 8, depth: 16 } }),
    contents: [
      { name: "glass", thickness: 2 },
      { name: "relief model", thickness: 3 },
    ],
  });
  const options = { formats: formatters({ unit: "mm" }) };
  return { "plan.svg": `${drawPlanView(plan, options).svg}\n`, "section.svg": `${drawSection(plan, options).svg}\n` };
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  for (const [name, svg] of Object.entries(readmePictures())) {
    writeFileSync(new URL(name, import.meta.url), svg);
  }
}

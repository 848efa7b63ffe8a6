import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { readmePictures } from "../../docs/pictures/draw.js";

test("the README shows the pictures that the library draws", () => {
  const readme = readFileSync("README.md", "utf8");
  for (const [name, svg] of Object.entries(readmePictures())) {
    expect(readme).toContain(`(docs/pictures/${name})`);
    // A picture is long: on a difference it is enough to say which one is old (npx tsx docs/pictures/draw.ts).
    expect([name, readFileSync(`docs/pictures/${name}`, "utf8") === svg]).toEqual([name, true]);
  }
});

import { describe, expect, test } from "vitest";
import { briefSchema, planFrame, tryParseBrief } from "miterwright/frame";
import { plain } from "./briefs.js";

const sound = { sides: 6, profile: plain, opening: { side: 200 } };

/**
 * What a consumer of the interface does with any vendor's schema. Standard Schema, https://standardschema.dev, version 1 (value from memory): the property is
 * `~standard`, with `version` 1, a `vendor` and `validate`, whose result has `value`, or `issues` with a `message` and a `path` of keys or of `{ key }`.
 */
async function consume(schema: unknown, input: unknown): Promise<unknown> {
  const { version, vendor, validate } = (schema as { "~standard": Record<string, unknown> })["~standard"];
  expect([version, typeof vendor]).toEqual([1, "string"]);
  const result = (await (validate as (value: unknown) => unknown)(input)) as {
    value?: unknown;
    issues?: readonly { message: string; path?: readonly (PropertyKey | { key: PropertyKey })[] }[];
  };
  if (result.issues === undefined) return result.value;
  return result.issues.map(({ message, path = [] }) => [
    path.map((step) => (typeof step === "object" ? step.key : step)),
    message,
  ]);
}

describe("the schema of a brief", () => {
  test("gives the brief with its defaults to a consumer of the interface", async () => {
    expect(await consume(briefSchema, sound)).toEqual(planFrame(sound).brief);
  });

  test("gives every issue with the keys that lead to it", async () => {
    const wrong = {
      ...sound,
      sides: 2,
      contents: [
        { name: "glass", thickness: 2 },
        { name: "", thickness: 0 },
      ],
    };
    const outcome = tryParseBrief(wrong);
    const messages = outcome.ok ? [] : outcome.issues.map(({ message }) => message);
    expect(messages).toHaveLength(3);
    expect(await consume(briefSchema, wrong)).toEqual([
      [["sides"], messages[0]],
      [["contents", 1, "name"], messages[1]],
      [["contents", 1, "thickness"], messages[2]],
    ]);
    expect(await consume(briefSchema, null)).toEqual([[[], "Expected the brief to be an object, got null"]]);
  });
});

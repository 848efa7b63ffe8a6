import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { preciseCompoundMiter, preciseCorner, preciseSawSetting, type PreciseLay } from "miterwright/precise";
import { someDigits, spread } from "./arbitraries.js";
import { cosine, fix, inverseTangent, over, root, sine, text, times } from "./oracle.js";

const component = spread(-1, 1);
const degrees = (bound: number): fc.Arbitrary<number> => spread(-bound, bound);

describe("preciseSawSetting", () => {
  test("lays the normal down by the angle slope - rotation", () => {
    const along = spread(0.01, 1);
    fc.assert(
      fc.property(
        fc.record({ along, across: component, through: component }),
        fc.constantFrom(1, -1),
        degrees(90),
        degrees(360),
        someDigits,
        (plane, sign, slope, lay, digits) => {
          const tilt = fix(slope) - fix(lay);
          const [a, x, y] = [fix(plane.along), fix(plane.across), fix(plane.through)];
          const out = times(x, cosine(tilt)) - times(y, sine(tilt));
          const up = times(x, sine(tilt)) + times(y, cosine(tilt));
          const cut = { ...plane, along: sign * plane.along };
          expect(preciseSawSetting(cut, { slope, lay, digits })).toEqual({
            miter: text(inverseTangent(over(-out, a)), digits),
            bevel: text(inverseTangent(over(up, root(times(a, a) + times(out, out)))), digits),
          });
        },
      ),
      { numRuns: 60 },
    );
  });

  test("gives the named lays as the angles they stand for", () => {
    const plane = { along: 0.6, across: -0.5, through: 0.25 };
    const lays: readonly (readonly [PreciseLay, number])[] = [
      ["propped", 0],
      ["flat", 37.5],
      ["face-down", 37.5 - 180],
      ["sight-edge-down", 37.5 - 90],
      ["outer-edge-down", 37.5 + 90],
    ];
    for (const [name, rotation] of lays) {
      const named = preciseSawSetting(plane, { slope: 37.5, lay: name });
      expect(named).toEqual(preciseSawSetting(plane, { slope: 37.5, lay: rotation }));
      expect(named).toEqual(preciseSawSetting(plane, { slope: 37.5, lay: `${rotation}` }));
    }
    expect(
      new Set(lays.map(([name]) => JSON.stringify(preciseSawSetting(plane, { slope: 37.5, lay: name })))).size,
    ).toBe(5);
  });

  test("is the compound miter flat, and the plain one propped", () => {
    const board = { slope: "33.3", thickness: 1 };
    const { first, second } = preciseCorner({ turn: "51.2", first: board, second: board, digits: 80 });
    const { miter, bevel } = preciseCompoundMiter({ turn: "51.2", slope: "33.3", digits: 40 });
    for (const { plane, slope } of [first, second]) {
      expect(preciseSawSetting(plane, { slope, lay: "flat", digits: 40 })).toEqual({ miter, bevel });
      expect(preciseSawSetting(plane, { slope, lay: "propped", digits: 40 }).miter).toBe("25.6");
    }
  });

  test("says 0 where parts cancel although no arithmetic can see it", () => {
    const plane = { along: "0.5", across: "-0.5", through: "0.5" };
    const { miter, bevel } = preciseSawSetting(plane, { slope: 45, lay: "propped" });
    expect(bevel).toBe("0");
    expect(miter).toBe("54.735610317245345684622999669981217981503421550454");
  });

  test("takes only the normal's direction", () => {
    const options = { slope: "12", lay: "60" } as const;
    const short = preciseSawSetting({ along: "0.03", across: "-0.02", through: "0.01" }, options);
    expect(preciseSawSetting({ along: "0.6", across: "-0.4", through: "0.2" }, options)).toEqual(short);
  });
});

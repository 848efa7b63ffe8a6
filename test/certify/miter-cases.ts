import { compoundMiter, sawSetting, type CutPlane, type Lay } from "miterwright/miter";
import { deriveCompoundMiter } from "../../src/precise/compound-miter.js";
import { deriveSawSetting } from "../../src/precise/saw-setting.js";
import type { Real } from "../../src/precise/real-field.js";
import { settingTerms } from "./cancellation.js";
import type { Case } from "./comparison.js";
import { exactly } from "./exact.js";
import { someSides, someSlope, someTurn, type Random } from "./random.js";

const ANGLES = ["miter", "bevel", "dihedral", "planMiter"] as const;

/** The compound miter by number of sides or by turn. */
function compoundCase(corner: { readonly sides: number } | { readonly turn: number }, slope: number): Case {
  return {
    input: { ...corner, slope },
    compare: (field) => {
      const got = compoundMiter({ ...corner, slope });
      const turn =
        "sides" in corner ? field.div(field.exact(360), field.exact(corner.sides)) : field.exact(exactly(corner.turn));
      const want = deriveCompoundMiter(field, turn, exactly(slope));
      return ANGLES.map((name) => ({ quantity: `compound ${name}`, got: got[name], want: want[name], angle: true }));
    },
  };
}

/** What cancels when a normal is tilted: out = across cos - through sin, up = across sin + through cos. */
function tiltedTerms({ along, across, through }: CutPlane, tilt: number): ReturnType<typeof settingTerms> {
  const [sin, cos] = [Math.sin((tilt * Math.PI) / 180), Math.cos((tilt * Math.PI) / 180)];
  const out = Math.abs(across * cos) + Math.abs(through * sin);
  const up = Math.abs(across * sin) + Math.abs(through * cos);
  return settingTerms([along, across * cos - through * sin, across * sin + through * cos], [Math.abs(along), out, up]);
}

/** A saw setting. */
function settingCase(plane: CutPlane, slope: number, lay: Lay): Case {
  return {
    input: { plane, slope, lay },
    compare: (field) => {
      const got = sawSetting(plane, { slope, lay });
      const tilts = {
        propped: exactly(slope),
        flat: 0,
        "face-down": 180,
        "sight-edge-down": 90,
        "outer-edge-down": -90,
      };
      const tilt: Real =
        typeof lay === "number"
          ? field.sub(field.exact(exactly(slope)), field.exact(exactly(lay)))
          : field.exact(tilts[lay]);
      const [along, across, through] = [plane.along, plane.across, plane.through].map((x) => field.exact(exactly(x)));
      const want = deriveSawSetting(field, { along: along!, across: across!, through: through! }, tilt);
      const terms = tiltedTerms(plane, tilt.mid.toNumber());
      return [
        { quantity: "setting miter", got: got.miter, want: want.miter, angle: true, terms: terms.miter },
        { quantity: "setting bevel", got: got.bevel, want: want.bevel, angle: true, terms: terms.bevel },
      ];
    },
  };
}

const SLOPES = [0, 1e-300, 1e-9, 0.1, 15, 30, 45, 60, 75, 89.9, 90 - 1e-9, 90];
const BOTH_SLOPES = [...SLOPES, ...SLOPES.map((slope) => -slope)];

/** Settings that need more of the rotation than slope - lay, rounded, has. */
const HARD_SETTINGS: readonly Case[] = [
  settingCase(
    { along: 0.2735978114125451, across: 0.9618387761246514, through: -0.0032258848860395074 },
    65.3543414608201,
    -200.46224398089197,
  ),
  settingCase(
    { along: -3.037886432928688e-7, across: -0.0014327869863134215, through: 0.9999989735601528 },
    -3.8286674321645044,
    261.8383964979055,
  ),
  settingCase(
    { along: 0.029762775080518018, across: -0.9939210740378392, through: -0.10599564049042103 },
    89.99999999999952,
    -264.7543370739251,
  ),
];

export function miterGrid(): Case[] {
  const sides = [3, 4, 5, 6, 7, 8, 12, 100, 1_000_000];
  const turns = [1e-300, 1e-9, 1, 45, 60, 90, 120, 179, 180 - 1e-9, -90, -1e-9];
  const corners = [...sides.map((n) => ({ sides: n })), ...turns.map((turn) => ({ turn }))];
  const compound = corners.flatMap((corner) => BOTH_SLOPES.map((slope) => compoundCase(corner, slope)));
  const lays: readonly Lay[] = ["propped", "flat", "face-down", "sight-edge-down", "outer-edge-down", 22.5, -150];
  const plane = { along: 0.6, across: -0.64, through: 0.48 };
  const settings = BOTH_SLOPES.flatMap((slope) => lays.map((lay) => settingCase(plane, slope, lay)));
  return [...compound, ...settings, ...HARD_SETTINGS];
}

export function someCompoundMiter(random: Random): Case {
  const corner = random.chance(0.5) ? { sides: someSides(random) } : { turn: someTurn(random) };
  return compoundCase(corner, someSlope(random));
}

export function someSetting(random: Random): Case {
  const component = (): number =>
    random.pick([1, -1]) * (random.chance(0.7) ? random.between(0, 1) : random.power(-18, 0));
  const parts = [component(), component(), component()] as const;
  const length = Math.hypot(...parts);
  const plane = { along: parts[0] / length, across: parts[1] / length, through: parts[2] / length };
  const lay = random.chance(0.6)
    ? random.pick(["propped", "flat", "face-down", "sight-edge-down", "outer-edge-down"] as const)
    : random.between(-360, 360);
  return settingCase(plane, someSlope(random), lay);
}

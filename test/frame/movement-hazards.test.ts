import { describe, expect, test } from "vitest";
import { planFrame, type FramePlan, type ProfileBrief } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { rabbeted } from "./briefs.js";

const solid = { name: "lid", thickness: 6, material: { species: "white oak" } } as const;
const pane = (material: "glass" | "acrylic"): { name: string; thickness: number; material: "glass" | "acrylic" } => ({
  name: "pane",
  thickness: 2,
  material,
});

function planOf(changes: Partial<ProfileBrief>): FramePlan {
  return planFrame({ sides: 4, profile: rabbeted, opening: { side: 400 }, ...changes } as ProfileBrief);
}
const raised = (changes: Partial<ProfileBrief>, code: string): FramePlan["hazards"] =>
  planOf(changes).hazards.filter((hazard) => hazard.code === code);

describe("hazards", () => {
  test.each<[string, Partial<ProfileBrief>, Partial<ProfileBrief>]>([
    ["season-gap", { species: "white oak" }, {}],
    ["season-gap", { species: "white oak" }, { species: "white oak", acceptedGap: 1.2 }],
    ["season-gap", { species: "white oak" }, { species: "white oak", moisture: { made: 8, seasons: [8.2, 7.9] } }],
    ["season-gap", { species: "white oak", sides: 12 }, { species: "white oak", sides: 60 }],
    ["panel-room", { contents: [solid], clearance: 2 }, { contents: [solid], clearance: 3.1 }],
    ["panel-room", { contents: [pane("acrylic")] }, { contents: [pane("acrylic")], clearance: 0.3 }],
    ["panel-room", { contents: [pane("acrylic")], clearance: 0.1 }, { contents: [pane("glass")], clearance: 0.1 }],
    ["panel-room", { contents: [solid] }, { contents: [{ name: "print", thickness: 1 }] }],
    [
      "panel-lap",
      {
        contents: [solid],
        profile: molding({ width: 40, thickness: 20, rabbet: { width: 4, depth: 10 } }),
        clearance: 3,
      },
      { contents: [solid], clearance: 3 },
    ],
  ])("%s is raised by %j and not by %j", (code, raising, quiet) => {
    expect(raised(raising, code).length).toBeGreaterThan(0);
    expect(raised(quiet, code)).toEqual([]);
  });

  test("carry their numbers, the kinds of these and where the figures are printed", () => {
    const moving = { species: "white oak", contents: [solid, pane("acrylic"), pane("glass")] } as const;
    const { movement, contents, hazards } = planOf(moving);
    const handbook = "Forest Products Laboratory, Wood Handbook, FPL-GTR-190, tables 4-3 (p. 4-6) and 13-5 (p. 13-16)";
    expect(hazards.find(({ code }) => code === "season-gap")).toMatchObject({
      signal: "notice",
      numbers: { inside: movement!.inside, outside: movement!.outside, limit: 0.25, made: 8 },
      kinds: { inside: "length", outside: "length", limit: "length", made: "percent" },
      source: `${handbook}; W. Noyes, Handwork in Wood, fig. 289`,
    });
    const rooms = hazards.filter(({ code }) => code === "panel-room");
    expect(rooms.map(({ source }) => source)).toEqual([
      handbook,
      "ASTM D696, as data sheets of acrylic sheet quote it",
      "EN 572-1, as bulletins of the glass trade quote it",
    ]);
    expect(rooms.map(({ numbers }) => numbers["needed"])).toEqual(contents.room.map(({ needed }) => needed));
    expect(rooms[0]!.names).toEqual({ layer: "lid" });
  });

  test("name the brief where the figures are its own", () => {
    const own = { radial: 4, tangential: 9 };
    const figures = "the brief's own figures";
    const contents = [
      { name: "lid", thickness: 6, material: { species: own } },
      { name: "sheet", thickness: 3, material: { expansion: 1e-4 } },
    ];
    const { hazards } = planOf({ species: own, contents });
    expect(
      hazards.filter(({ code }) => /^(?:season|panel)-/.test(code)).map(({ code, source }) => [code, source]),
    ).toEqual([
      ["season-gap", `${figures}; W. Noyes, Handwork in Wood, fig. 289`],
      ["panel-room", figures],
      ["panel-room", figures],
    ]);
  });

  test("say by how much a panel slips out of its lip", () => {
    const profile = molding({ width: 40, thickness: 20, rabbet: { width: 4, depth: 10 } });
    const [lap] = raised({ contents: [solid], profile, clearance: 3 }, "panel-lap");
    expect(lap).toMatchObject({ signal: "caution", kinds: { lapLeft: "length", retreat: "length" } });
    expect(lap!.numbers["lapLeft"]).toBeCloseTo(1 - lap!.numbers["retreat"]!, 12);
    expect(lap!.numbers["lapLeft"]).toBeLessThan(0);
  });
});

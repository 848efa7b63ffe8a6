import type { HazardFence } from "../../core/hazard.js";
import type { Pose } from "../../core/geometry-types.js";
import type { HazardValue, HazardWords } from "./hazard-words.js";

/** What to call the fence that the stick lies at, where a saw has two. */
const FENCES: Readonly<Record<HazardFence, string>> = { saw: "the fence", gauge: "the gauge's fence" };

/** Why a square frame does not take what it should contain. */
const POSES: Readonly<Record<Pose, string>> = {
  "side-down": "The frame is square, and what it should contain is not.",
  "corner-down": "The frame stands on a corner, and what it should contain stands upright.",
};

/** What to do instead. */
const FILL: string =
  "Fill the opening with a panel or a mat as large as it is and fix the contents to that, or choose contents that are square.";

/** The directions in which the contents fall short. */
function places({ numbers }: HazardValue): string {
  if (numbers["leftAndRight"] === undefined) return "above and below";
  return numbers["aboveAndBelow"] === undefined
    ? "at the left and the right"
    : "at the left, at the right, above and below";
}

/** In English. */
export const englishHazards: HazardWords = {
  "short-piece": ({ signal }) =>
    signal === "danger"
      ? "The pieces are too short to be cut safely even with a hold-down: cut them by hand, or choose a larger frame or another joint."
      : "The pieces are too short to be held by hand at the saw: use a hold-down that keeps both hands away from the blade.",
  "short-rest": () =>
    "When the last piece of a stick is cut, what is left beyond the blade can be too short to hold: hold the piece, with a hold-down where it is short too, and never the rest.",
  "trapped-piece": ({ fence, hold }) => {
    const how = hold === "held-down" ? "Keep the piece itself down with a hold-down" : "Hold the piece itself";
    return `The cut frees the piece between the blade and a stop that stays where it is: move the stop away before the cut. ${how} against ${FENCES[fence]} until the blade has stopped.`;
  },
  "rip-fence": () => "Push the rip fence out of the way of every crosscut: a piece between it and the blade is thrown.",
  "piece-under-bevel": ({ fence }) =>
    `The piece that is kept lies under the leaning blade, which can throw it if it creeps: clamp it to ${FENCES[fence]}, and keep your hands off it.`,
  "offcut-under-bevel": () =>
    "The offcut lies under the leaning blade and cannot fall away: never put a stop or a fence on its side, and let the blade stop before you reach for it.",
  "depth-not-known": () =>
    "It is not said how deep this saw cuts, and this cut takes more of the blade than usual saws have: look it up in the saw's manual before you lay the stick so.",
  "thrown-offcut": ({ offcut }) => {
    const what = offcut === "wedge" ? "wedge that falls off between two pieces" : "offcut at the end of a blank";
    return `The ${what} is small and can be thrown by the blade: keep its side of the blade clear, stand aside, and let the blade stop before you remove it.`;
  },
  tip: ({ fence }) =>
    `The stick's center of gravity is not above its cradle: widen the cradle's base or clamp stick and cradle to ${FENCES[fence]}.`,
  "balance-not-known": ({ fence }) =>
    `With level measures alone it is not known whether the stick's center of gravity is above its cradle: make the cradle's base wide, and clamp stick and cradle to ${FENCES[fence]}.`,
  fasteners: () => "The blade cuts into the cradle: keep screws, nails and clamps out of its path.",
  feather: ({ at }) =>
    ({
      table:
        "The finished end meets the stop with a thin edge on the table, where it creeps under the stop: give the stop a square face that reaches the table, and push gently.",
      fence:
        "The finished end meets the stop with a thin edge at the fence, where it creeps behind the stop: give the stop a square face that is tight to the fence, and push gently.",
      "table-and-fence":
        "The finished end meets the stop with a thin edge on the table, where it creeps under the stop and at the fence, where it creeps behind the stop: give the stop a square face that reaches the table and a square face that is tight to the fence, and push gently.",
    })[at],
  "flip-error": () =>
    "Between the two ends the stick is flipped and its other edge comes to the fence: check which edge is at the fence before every cut.",
  capacity: ({ lay, because }) => {
    const reasons = because.join(" ");
    if (lay === "none-works") return `No way to lay the stick suits this saw. ${reasons}`;
    return lay === "asked-for"
      ? `The stick can't be cut lying as was asked for. ${reasons}`
      : `The stick can't be cut lying as was asked for. ${reasons} It can be cut in another position: see every way to lay the stick.`;
  },
  "long-stick": () =>
    "The sticks are long: support them beyond the saw's table on both sides, level with it, or crosscut them into blanks first.",
  "short-stick": () =>
    "No stick on offer is long enough for a piece: find longer ones, or choose a smaller frame or more sides.",
  "deep-panel": () =>
    "The panel is deep at the gauge, which then stands off the front of the table when the cut begins: cut it on a sled with a fence of its own, or with a guided saw along a straightedge.",
  "short-panel-edge": () =>
    "The panel bears on the gauge with a short edge, and holding it brings hands to the blade: clamp it to a sled, or cut it by hand.",
  "narrow-rip": () =>
    "The panel blank is narrow between fence and blade: never reach in there. Feed the last stretch of the cut with a push stick, and keep both hands at least as far from the front of the blade as that stretch is long.",
  dust: () => "Wear eye and ear protection, and keep wood dust out of your lungs with extraction and a mask.",
  reach: ({ numbers }) => {
    const where =
      numbers["slopeSearched"] === undefined
        ? "with the angle that has to be 0 left at 0"
        : "while its sides stand near their slope";
    return `No marks of the saw's scales close the ring ${where}: even those that cost least open the last joint visibly. Set finer than the marks, and prove the setting on scrap by closing a ring of test pieces.`;
  },
  "end-grain": () =>
    "The joints are nearly end grain to end grain, which glue alone does not hold: reinforce them with keys, splines or dowels.",
  "missed-lip": (values) => `${POSES[values.pose]} Centered, the contents miss the lip ${places(values)}. ${FILL}`,
  "lip-not-known": (values) =>
    `${POSES[values.pose]} Centered, the contents end before the rabbet's wall ${places(values)}, and no lip is given that reaches so far. ${FILL}`,
  "unfilled-opening": (values) =>
    `${POSES[values.pose]} Centered, the contents leave the opening free ${places(values)}.`,
  "no-contents-left": () => "The clearance leaves nothing of the opening: take less of it, or a larger opening.",
  "seating-impossible": ({ because }) => `${because.join(" ")} Choose another rabbet, slope or molding before you cut.`,
  "seating-not-known": () =>
    "With level measures alone it is not known how the tilted rabbet holds the contents: try them in an offcut of the molding, propped at its slope.",
  "narrow-lip": () =>
    "The contents bear on little of the lip: they can slip past it when they slide to one side, when the wood moves or when the frame is knocked.",
  "shallow-rabbet": ({ because }) => because.join(" "),
  "glass-tolerance": () =>
    "Behind the contents there is just room for what holds them, and not enough when the glass is as thick as its tolerance allows: measure it before the frame is cut.",
  "glass-handling": () =>
    "Glass cuts: wear gloves that it does not cut through and eye protection, and take its edges off. Where people can fall against it or pass under it, local codes ask for safety glazing: tempered or laminated glass, or acrylic.",
  "pane-on-arris": ({ bearsOn }) =>
    bearsOn === "sight-edge"
      ? "At this slope the pane bears on the sight edge at the back alone, a line of wood against glass: take that edge off or bed the pane on a strip, and press it nowhere else."
      : "At this slope the pane bears on the ledge with the edge of the glass alone: bed it on a strip there, and press it nowhere else.",
  "large-pane": () =>
    "The pane is large for its thickness and bends until it breaks: carry it upright, take thicker glass or acrylic, and ask the glazier.",
  "art-on-glass": ({ layer }) =>
    `The layer "${layer}" lies against glass: damp gathers between them, and what sticks to the glass is spoiled. Keep them apart with a mat or a spacer.`,
  heavy: ({ signal }) =>
    signal === "danger"
      ? "The frame is so heavy that it can kill when it falls: have somebody qualified choose wall, fixings and hangers by the local codes, and hang nothing of the kind over people."
      : "The frame is heavy: lift and hang it with two people, into studs or masonry, and not over a bed, a seat or a way through unless somebody qualified has seen wall and fixings.",
  "long-screws": ({ points }) =>
    points === "near-face"
      ? "The hangers' screws leave little wood before their points and can split it or push it out of the face: use shorter ones."
      : "The hangers' screws are longer than the wood is thick where they go in, and come out at the other side: use shorter ones.",
  "narrow-hanger-seat": () =>
    "The surface that the hangers are screwed to is narrower than most hangers, and thin wood splits: use narrow ones and drill for the screws, or screw a strip across.",
  "leaning-hanger-seat": () =>
    "The hangers do not lie flat to the wall but on a surface that leans: put wedges under them so that the pull does not pry them off, and check that the frame's back still touches the wall.",
  "no-hanger-seat": () =>
    "No surface of the molding lies toward the wall at this slope, so a hanger has nothing to lie on: hang the frame by a cleat or a bracket of its own.",
  "flat-wire": () =>
    "The wire is so flat that each half of it pulls more than the whole frame weighs: leave it longer, or use two hooks.",
  "hook-shows": () => "At this angle the hook shows above the frame: use a flatter wire or two hooks.",
  "mass-not-known": () =>
    "Not all that hangs has a known mass: weigh the finished frame before you choose wire, hangers and hooks.",
  "season-gap": () =>
    "The seasons open the joints more than is accepted: fit them halfway between, take narrower or quarter-sawn stock, or reinforce them.",
  "panel-room": ({ layer, lack }) =>
    lack === "slight"
      ? `The clearance leaves "${layer}" hardly enough room to grow: leave it a little more, and let no glue touch its edges.`
      : `The clearance leaves too little room for "${layer}" to grow: it then bends, or bursts the joints. Give it the room, fix it at its middle alone, and let no glue touch its edges.`,
  "panel-lap": ({ layer }) =>
    `When "${layer}" and the lip have drawn back, the lip no longer laps it at some side: it shows its edge and can fall out. Take a wider rabbet or less clearance.`,
};

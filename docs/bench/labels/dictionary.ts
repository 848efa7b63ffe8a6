/** A word of the trade, and what it means. */
export interface Word {
  /** The word. */
  readonly word: string;
  /** Its other forms, as they stand in texts. */
  readonly forms?: readonly string[];
  /** What it means, for someone who has never made a frame. */
  readonly means: string;
}

/** Every trade word that the page and its sheet use, in English. */
export const englishDictionary: readonly Word[] = [
  { word: "across corners", means: "the widest distance between two corners of the shape" },
  {
    word: "across flats",
    means:
      "the narrowest the shape can be: from side to opposite side, with an odd number of sides from a corner to the side opposite",
  },
  { word: "apothem", means: "the distance from the center to the middle of a side" },
  { word: "back", means: "the surface of the molding that faces away from the viewer" },
  { word: "backing", means: "the board behind a picture that holds it in the frame" },
  { word: "bevel", means: "how far the saw's blade leans from upright" },
  {
    word: "board foot",
    forms: ["board feet"],
    means: "lumber of a foot by a foot by an inch, or as much of another shape",
  },
  {
    word: "bevel block",
    forms: ["bevel blocks"],
    means: "a wedge that holds a piece at its slope while the glue sets",
  },
  {
    word: "blank",
    forms: ["blanks"],
    means: "a length parted from the stick a little too long, whose ends are finished later",
  },
  { word: "caul", forms: ["cauls"], means: "a block between clamp and wood that spreads the clamp's pressure" },
  { word: "circumradius", means: "the distance from the center to a corner" },
  { word: "clearance", means: "room kept free at every side, so that the contents can move" },
  { word: "cradle", means: "a wedge that holds a stick on the saw at the slope it will have in the frame" },
  { word: "crosscut", forms: ["crosscuts"], means: "a cut square across the stick" },
  { word: "dry", forms: ["dry fit", "dry frame"], means: "put together without glue" },
  { word: "end grain", means: "the cut end of the wood's fibers, where glue alone holds badly" },
  { word: "face", means: "the surface of the molding that shows" },
  { word: "hold-down", forms: ["hold-downs"], means: "a clamp that keeps the wood down so that no hand has to" },
  { word: "push stick", means: "a notched stick that pushes the wood the last way past the blade instead of a hand" },
  {
    word: "rip fence",
    means: "the long fence of a table saw along which wood is cut lengthwise; it has no part in cuts across the stick",
  },
  { word: "sled", means: "a board that slides on a table saw and carries the wood past the blade" },
  { word: "fence", means: "the straight guide on the saw that the stick lies against" },
  {
    word: "flip",
    forms: ["flipped", "flip end for end"],
    means: "change the two ends of the stick about, the same surface staying down",
  },
  { word: "gauge", means: "the sliding guide of a table saw that pushes the wood past the blade and can be swung" },
  { word: "joint", forms: ["joints"], means: "where two sides meet at a corner" },
  { word: "kerf", means: "the width of the cut that the blade makes" },
  {
    word: "keys",
    forms: ["splines", "dowels"],
    means: "pieces of wood let into a joint to strengthen it: thin slips (keys, splines) or round pegs (dowels)",
  },
  { word: "lap", forms: ["laps"], means: "how far the lip reaches over the edge of the contents" },
  { word: "ledge", means: "the surface of the rabbet that the contents rest on" },
  { word: "level", means: "parallel to the bench, like the bubble of a level" },
  { word: "lip", means: "the part of the molding in front of the rabbet, which laps over the contents" },
  { word: "long point", forms: ["long points"], means: "the longer end of an edge that is cut at an angle" },
  {
    word: "miter",
    forms: ["miters", "mitered"],
    means:
      "how far a cut is swung from square, across the surface that lies on the saw's table; also a joint of two such cuts",
  },
  { word: "miter gauge", means: "the gauge of a table saw, with a scale for the miter" },
  { word: "molding", means: "the strip of wood that the frame's sides are cut from" },
  { word: "offcut", forms: ["offcuts"], means: "what is left of a stick after the pieces are cut" },
  { word: "opening", means: "the space inside the frame where the contents lie" },
  { word: "outer edge", means: "the edge of the molding farthest from the picture" },
  { word: "panel", means: "the flat piece that goes into the frame: picture, glass, mirror or bottom" },
  { word: "panel blank", means: "the sheet with four square corners from which the panel is cut" },
  {
    word: "plan miter",
    forms: ["plan miters"],
    means: "the miter of the same corner in a flat frame: 90 degrees less half of its inside angle",
  },
  { word: "plumb", means: "straight up and down" },
  { word: "profile", means: "what the molding looks like cut straight across" },
  { word: "propped", means: "held at the slope it will have in the frame" },
  { word: "rabbet", means: "the step in the back of the molding that holds the contents" },
  {
    word: "rabbet's wall",
    forms: ["rabbet wall", "wall of the rabbet"],
    means: "the surface of the rabbet that the edge of the contents faces",
  },
  { word: "scale", forms: ["scales"], means: "the marks on the saw that show an angle" },
  { word: "scrap", means: "waste wood, to try a setting on" },
  { word: "sight edge", means: "the edge of the molding next to the picture" },
  {
    word: "slope",
    forms: ["slopes", "sloping"],
    means: "the angle between a side and the bench: 0 lies flat, 90 stands upright",
  },
  { word: "splayed", means: "with sides that slope, like a tray" },
  { word: "spring angle", means: "the angle between the back of a molding and the wall it leans on" },
  { word: "stick", forms: ["sticks"], means: "a length of molding as it is bought" },
  {
    word: "stop",
    means: "a block fixed at the saw that the end of the wood touches, so that all pieces become equally long",
  },
  { word: "wedge", means: "a piece that is thinner at one side than at the other" },
  {
    word: "width taken level",
    forms: ["taken level"],
    means:
      "how wide the molding is once it stands at its slope, measured level from the rabbet's wall to the outermost point",
  },
];

import type { StockJob } from "miterwright/stock";
import type { Instance } from "./generate.js";

/** A stick of a known job: its length, its cost, and how many there are; without that, as many as wanted. */
type KnownStick = readonly [length: number, cost: number, count?: number];

/** A job that other solvers have worked on. */
interface KnownJob {
  readonly name: string;
  /** Width of the saw cut, in millimeters or in sixteenths of an inch as the lengths are. */
  readonly kerf: number;
  readonly sticks: readonly KnownStick[];
  /** Every length that is wanted, and how many pieces of it. */
  readonly pieces: readonly (readonly [length: number, count: number])[];
  /** Cost of the best plan that any of the solvers found. */
  readonly best: number;
  /** Largest cost that one of them proved to be needed; below `best` where nobody knows the optimum. */
  readonly needed: number;
}

/**
 * Invented jobs of trade size. The first five have sticks of one length, counted; the others have sticks of several lengths
 * with a cost each, and a few cheap offcuts from the rack. `best` and `needed` are what other solvers came to.
 */
const KNOWN: readonly KnownJob[] = [
  {
    name: "one length 1",
    kerf: 3,
    sticks: [[2400, 1]],
    // prettier-ignore
    pieces: [[1981, 3], [1440, 5], [1430, 2], [1391, 4], [1320, 12], [1177, 7], [1085, 9], [1021, 5], [857, 7], [840, 8], [799, 6], [769, 1], [743, 5], [684, 3], [670, 4], [598, 4], [594, 5], [500, 7], [450, 3], [446, 5], [410, 5], [381, 2], [350, 5], [320, 7], [235, 1], [230, 4]],
    best: 46,
    needed: 46,
  },
  {
    name: "one length 2",
    kerf: 3,
    sticks: [[3000, 1]],
    // prettier-ignore
    pieces: [[1349, 6], [1308, 9], [1210, 2], [1157, 5], [1110, 7], [759, 3], [748, 5], [643, 5], [605, 3], [553, 5], [433, 5]],
    best: 18,
    needed: 18,
  },
  {
    name: "one length 3",
    kerf: 3,
    sticks: [[2400, 1]],
    // prettier-ignore
    pieces: [[1860, 6], [1245, 3], [1105, 4], [890, 7], [820, 4], [802, 2], [706, 9], [615, 4], [570, 6], [530, 5], [475, 10], [445, 2], [325, 6], [280, 4], [263, 5], [244, 7], [205, 5]],
    best: 25,
    needed: 25,
  },
  {
    name: "one length 4",
    kerf: 3,
    sticks: [[3000, 1]],
    // prettier-ignore
    pieces: [[2190, 2], [2081, 2], [1490, 3], [1390, 4], [1190, 3], [1074, 1], [981, 5], [890, 7], [820, 4], [677, 2], [605, 3], [545, 3], [365, 3], [315, 4], [113, 3]],
    best: 16,
    needed: 16,
  },
  {
    name: "one length 5",
    kerf: 2,
    sticks: [[1536, 1]],
    // prettier-ignore
    pieces: [[932, 6], [807, 4], [608, 4], [528, 7], [492, 4], [413, 4], [354, 1], [298, 6], [277, 5], [231, 4], [165, 6], [133, 5]],
    best: 17,
    needed: 17,
  },
  {
    name: "own costs 1",
    kerf: 3,
    sticks: [
      [2400, 780],
      [3000, 960],
      [3600, 1150],
      [1135, 110, 1],
      [1320, 130, 1],
      [1447, 140, 2],
    ],
    // prettier-ignore
    pieces: [[1395, 5], [1337, 7], [1320, 9], [1300, 8], [930, 7], [909, 11], [875, 6], [815, 10], [804, 5], [762, 6], [635, 10], [575, 6], [440, 11], [350, 5], [254, 5], [248, 8], [204, 6]],
    best: 30230,
    needed: 30230,
  },
  {
    name: "own costs 2",
    kerf: 3,
    sticks: [
      [2400, 780],
      [3000, 960],
      [3600, 1150],
      [1302, 130, 1],
      [865, 80, 1],
      [1732, 170, 1],
      [1540, 150, 2],
    ],
    // prettier-ignore
    pieces: [[1800, 5], [1655, 3], [1386, 4], [1305, 5], [1304, 2], [1250, 6], [1103, 1], [1070, 8], [1053, 5], [1030, 5], [930, 3], [885, 5], [881, 2], [875, 2], [855, 3], [842, 3], [816, 3], [809, 3], [808, 5], [800, 4], [702, 5], [695, 1], [475, 7], [460, 2], [425, 1], [370, 5], [363, 2], [350, 5], [316, 3], [195, 3]],
    best: 30200,
    needed: 30140,
  },
  {
    name: "own costs 3",
    kerf: 3,
    sticks: [
      [2400, 780],
      [3000, 960],
      [3600, 1150],
      [1901, 190, 2],
      [1331, 130, 2],
    ],
    // prettier-ignore
    pieces: [[1170, 4], [1150, 5], [1138, 9], [1040, 4], [890, 8], [810, 6], [785, 8], [765, 4], [669, 9], [621, 7], [400, 7], [310, 7], [302, 7], [160, 6]],
    best: 19430,
    needed: 19280,
  },
  {
    name: "own costs 4",
    kerf: 3,
    sticks: [
      [2400, 780],
      [3000, 960],
      [3600, 1150],
      [1782, 170, 2],
      [1182, 120, 1],
      [782, 80, 2],
      [1580, 150, 2],
      [1028, 100, 1],
    ],
    // prettier-ignore
    pieces: [[1355, 7], [1307, 8], [1297, 2], [1059, 6], [970, 5], [937, 5], [460, 5], [425, 7]],
    best: 12140,
    needed: 12140,
  },
  {
    name: "own costs 5",
    kerf: 2,
    sticks: [
      [1536, 780],
      [1920, 960],
      [2304, 1150],
      [681, 100, 2],
      [584, 90, 1],
    ],
    // prettier-ignore
    pieces: [[1251, 9], [942, 9], [941, 10], [825, 10], [607, 12], [557, 14], [467, 13], [425, 8], [374, 10], [344, 12], [282, 19]],
    best: 37180,
    needed: 37180,
  },
];

/** A job with what is known about its cost. */
export interface KnownInstance extends Instance {
  /** No plan that is sound costs less. */
  readonly needed: number;
  /** A plan of this cost exists. */
  readonly best: number;
}

function instanceOf({ name, kerf, sticks, pieces, best, needed }: KnownJob): KnownInstance {
  const job: StockJob = {
    pieces: pieces.map(([length, count]) => ({ id: `p${length}`, length, count })),
    sticks: sticks.map(([length, cost, count], k) => ({ id: `s${k}`, length, cost, count })),
    kerf,
  };
  const known = { name, job, needed, best };
  return best === needed ? { ...known, optimum: best } : known;
}

/**
 * The jobs that other solvers have worked on.
 *
 * @returns the jobs with what is known about them
 */
export function knownJobs(): KnownInstance[] {
  return KNOWN.map(instanceOf);
}

/** What stands on the page before any script runs. */
export interface TemplateWords {
  /** What search engines show. */
  readonly description: string;
  /** Title of the window. */
  readonly title: string;
  /** The page's heading. */
  readonly heading: string;
  /** What the page does. */
  readonly lead: string;
  /** Shown where there is no JavaScript. */
  readonly noScript: string;
  /** How the page works: its heading. */
  readonly howHeading: string;
  /** What it asks. */
  readonly howAsked: string;
  /** What it answers. */
  readonly howAnswered: string;
  /** Where the job is kept. */
  readonly howKept: string;
  /** The button that fills in an example. */
  readonly example: string;
  /** Name of the form. */
  readonly form: string;
  /** The button that empties the form. */
  readonly clear: string;
  /** The button that leads to the plan. */
  readonly toPlan: string;
  /** Name of the part that says how far the plan is. */
  readonly status: string;
  /** What it says first. */
  readonly start: string;
  /** The button that prints the sheet. */
  readonly printSheet: string;
  /** The button that prints the profile. */
  readonly printSection: string;
  /** The button that copies the link. */
  readonly copyLink: string;
  /** The button that saves a file. */
  readonly saveFile: string;
  /** The button that opens a file. */
  readonly openFile: string;
  /** Label of the link. */
  readonly link: string;
  /** The button that stops the search. */
  readonly stop: string;
  /** Heading of the dry fit. */
  readonly dryFitHeading: string;
  /** What to enter there. */
  readonly dryFitLead: string;
}

/** In English. */
export const englishTemplate: TemplateWords = {
  description: "Plan a whole mitered frame, flat or splayed, and print its shop sheet.",
  title: "Bench page: plan a frame - Miterwright",
  heading: "Bench page",
  lead: "Plan a frame of any number of equal sides, lying flat or splayed (with sloping sides): from what goes in to the last joint. Answer from top to bottom; the plan follows as you type. Nothing leaves this page.",
  noScript: "This page computes in your browser, so it needs JavaScript.",
  howHeading: "How this works",
  howAsked:
    "Four answers make a plan: what goes in, how many sides, which molding (the strip of wood), and how steep. Say which lengths of it you have, and you also see how they are cut up. Everything else has a usual answer already, which you can change under “Finer points”.",
  howAnswered:
    "You get the two angles of every cut, the lengths at every edge that can be measured, the steps at the saw, drawings, what to check and to beware of, and a shop sheet to print. Every trade word is explained where it stands.",
  howKept:
    "The job is kept in the address of this page and nowhere else: copy the link, or save a file, and open it again on any machine.",
  example: "Fill in an example",
  form: "The job",
  clear: "Empty the form",
  toPlan: "See the plan",
  status: "How far the plan is",
  start: "Answer the questions and the plan appears here.",
  printSheet: "Print the shop sheet",
  printSection: "Print the profile at full size",
  copyLink: "Copy link to this job",
  saveFile: "Save as a file",
  openFile: "Open a file",
  link: "Link to this job",
  stop: "Stop, and take the best so far",
  dryFitHeading: "A gap at the dry fit",
  dryFitLead: "Enter what you see when the pieces are put together without glue, and read the new setting.",
};

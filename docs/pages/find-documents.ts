import { DocumentReflection, IndexEvent, type Application, type ProjectReflection } from "typedoc";

/** A page of the site that TypeDoc does not know. */
export interface OtherPage {
  /** How the search names it. */
  readonly name: string;
  /** Its path from the site's root. */
  readonly path: string;
  /** What it is about, in the words that readers may look for. */
  readonly text: string;
}

/** How much a document's headings and words weigh beside a name, which weighs 10. */
const WEIGHTS = { headings: 70, document: 6 };

/** The headings of a text in Markdown. */
function headingsOf(markdown: string): string {
  return [...markdown.matchAll(/^#+ (.+)$/gm)].map(([, words]) => words).join("\n");
}

/** What a text in Markdown says in words: no code, no pictures, no addresses. */
function wordsOf(markdown: string): string {
  return markdown
    .replace(/^```.*?^```$/gms, "")
    .replace(/<svg.*?<\/svg>/gs, "")
    .replace(/<[^>]*>/g, "")
    .replace(/\]\([^)]*\)/g, "")
    .replace(/[^\p{L}\p{N}'-]+/gu, " ");
}

/**
 * Lets the search find documents by their headings and their words, and pages that are none of TypeDoc's.
 *
 * @param app - what builds the site
 * @param project - its project, once it is there
 * @param others - the other pages
 */
export function findDocuments(app: Application, project: ProjectReflection, others: readonly OtherPage[]): void {
  const addresses = new Map<DocumentReflection, string>(
    others.map(({ name, path, text }) => [new DocumentReflection(name, project, [{ kind: "text", text }], {}), path]),
  );
  app.renderer.on(IndexEvent.PREPARE_INDEX, (event: IndexEvent) => {
    const router = app.renderer.router!;
    const addressOf = router.getFullUrl.bind(router);
    router.getFullUrl = (target) => addresses.get(target as DocumentReflection) ?? addressOf(target);
    event.searchResults.push(...addresses.keys());
    Object.assign(event.searchFieldWeights, WEIGHTS);
    for (const [index, reflection] of event.searchResults.entries()) {
      if (!(reflection instanceof DocumentReflection)) continue;
      const markdown = reflection.content.map(({ text }) => text).join("");
      event.searchFields[index] = { headings: headingsOf(markdown), document: wordsOf(markdown) };
    }
  });
}

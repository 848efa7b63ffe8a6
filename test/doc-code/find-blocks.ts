/** One fenced block of TypeScript in a doc comment or a page. */
export interface Block {
  /** The file that holds it, by its path from the root. */
  readonly file: string;
  /** Line of the file on which the code starts, from 1. */
  readonly line: number;
  /** What stands before every code line, to be written again when values are: `" * "`, or a list's indent. */
  readonly prefix: string;
  /** The code, without the prefix. */
  readonly code: string;
  /** Whether the fence says `no-run`. */
  readonly noRun: boolean;
}

/** What was found in one file. */
export interface Found {
  readonly blocks: readonly Block[];
  /** Sentences about code that would escape the tests. */
  readonly faults: readonly string[];
}

/** What leads a line of a doc comment: `  * `. In a page, an indent counts as the prefix. */
const COMMENT_LEAD = /^\s*\*(?: |$)/;
const PAGE_LEAD = /^\s*/;
const FENCE = /^(`{3,}|~{3,})(.*)$/;
/** Words that mean the same as `ts`, or that would be run if they were TypeScript. */
const OTHER_NAMES = /^(?:typescript|tsx|mts|cts|js|javascript|jsx|mjs|cjs)\b/i;

/**
 * Finds the ```ts blocks of a source file's doc comments or of a Markdown page.
 *
 * @param file - path from the root; the ending says which of the two it is
 * @param text - the file's text
 * @returns the blocks, and what looks like code but would not be run
 */
export function findBlocks(file: string, text: string): Found {
  const leadPattern = file.endsWith(".md") ? PAGE_LEAD : COMMENT_LEAD;
  const blocks: Block[] = [];
  const faults: string[] = [];
  let open: { readonly fence: string; readonly info: string; readonly line: number; readonly lead: string } | undefined;
  let code: string[] = [];
  let exampleAt: number | undefined;
  const closeExample = (): void => {
    if (exampleAt !== undefined) faults.push(`${file}:${exampleAt}: an @example without a \`\`\`ts block`);
    exampleAt = undefined;
  };

  for (const [index, line] of text.split("\n").entries()) {
    const lead = leadPattern.exec(line)?.[0];
    if (open !== undefined) {
      const inside = lead !== undefined && (file.endsWith(".ts") || line.startsWith(open.lead) || line.trim() === "");
      const content = inside ? line.slice(Math.min(open.lead.length, line.length)) : "";
      if (!inside) faults.push(`${file}:${open.line - 1}: a fence that is not closed`);
      else if (content.trimEnd() !== open.fence) {
        code.push(content);
        continue;
      }
      if (/^ts\b/.test(open.info)) {
        const noRun = open.info === "ts no-run";
        blocks.push({ file, line: open.line, prefix: open.lead, code: code.join("\n"), noRun });
      }
      open = undefined;
      continue;
    }
    if (lead === undefined) {
      closeExample();
      continue;
    }
    const content = line.slice(lead.length);
    if (/^@\w/.test(content)) closeExample();
    if (/^@example\b/.test(content) && file.endsWith(".ts")) exampleAt = index + 1;
    const [, fence, rest] = FENCE.exec(content) ?? [];
    if (fence === undefined) continue;
    const info = rest!.trim();
    if (OTHER_NAMES.test(info) || (/^ts\b/.test(info) && info !== "ts" && info !== "ts no-run"))
      faults.push(`${file}:${index + 1}: write \`\`\`ts or \`\`\`ts no-run instead of \`\`\`${info}`);
    if (/^ts\b/.test(info)) exampleAt = undefined;
    open = { fence, info, line: index + 2, lead };
    code = [];
  }
  if (open !== undefined) faults.push(`${file}:${open.line - 1}: a fence that is not closed`);
  return { blocks, faults };
}

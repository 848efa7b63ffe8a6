import { isolateText } from "../../core/isolate.js";
import { markdownOf, escapeMarkdown } from "../tables/table-markdown.js";
import type { Block, ListBlock, Report, Step } from "../report.js";

function listLines({ marker, isStrong, items }: Pick<ListBlock, "marker" | "isStrong" | "items">): string[] {
  const told = items.map((item) => (isStrong ? `**${escapeMarkdown(item)}**` : escapeMarkdown(item)));
  if (marker === "none") return told.flatMap((line, index) => (index === 0 ? [line] : ["", line]));
  return told.map((line, index) => (marker === "bullet" ? `- ${line}` : `${index + 1}. ${line}`));
}

function stepLines({ step, title, heed, lines }: Step): string[] {
  const items = heed === null ? lines : [heed, ...lines];
  return [`### ${step}. ${escapeMarkdown(title)}`, "", ...listLines({ marker: "bullet", isStrong: false, items }), ""];
}

/** A block as lines of Markdown; a figure is its caption. */
function blockLines(block: Block): string[] {
  switch (block.kind) {
    case "facts":
      return block.facts.map(({ name, value }) => `- ${escapeMarkdown(name)}: **${escapeMarkdown(value)}**`);
    case "table":
      return markdownOf(block).split("\n");
    case "list":
      return listLines(block);
    case "hazards":
      return block.hazards.map(({ number, title, sentence, behind }) => {
        const numbers = behind === "" ? "" : ` (${escapeMarkdown(behind)})`;
        return `${number}. **${escapeMarkdown(title)}.** ${escapeMarkdown(sentence)}${numbers}`;
      });
    case "steps":
      return block.steps.flatMap(stepLines);
    case "figure":
      return block.caption === null ? [] : [`*${escapeMarkdown(block.caption)}*`];
  }
}

/** A report as Markdown, without its figures. */
export function reportMarkdown({ title, sections }: Report): string {
  const body = sections.flatMap((section) => [
    `## ${escapeMarkdown(section.title)}`,
    "",
    ...section.blocks.map(blockLines).flatMap((lines) => (lines.length === 0 ? [] : [...lines, ""])),
  ]);
  return [`# ${escapeMarkdown(isolateText(title))}`, "", ...body].join("\n").trimEnd();
}

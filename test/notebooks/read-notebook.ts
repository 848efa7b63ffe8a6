import { listFiles, readProjectFile } from "../house/project.js";

/** One output of a cell: a rich display by media type, printed text, or an error (nbformat 4.5). Long texts are stored line by line. */
export interface Output {
  readonly output_type: "execute_result" | "display_data" | "stream" | "error";
  readonly name?: "stdout" | "stderr";
  readonly data?: Readonly<Record<string, string | readonly string[]>>;
  readonly text?: string | readonly string[];
}

/** A cell of a notebook. */
export interface Cell {
  readonly cell_type: "code" | "markdown" | "raw";
  readonly id: string;
  readonly source: string | readonly string[];
  readonly execution_count?: number | null;
  readonly outputs?: readonly Output[];
}

/** A notebook, as its file holds it. */
export interface Notebook {
  readonly cells: readonly Cell[];
  readonly metadata: Readonly<Record<string, unknown>>;
  readonly nbformat: number;
  readonly nbformat_minor: number;
}

/** The notebooks of the examples, by path from the root. */
export function listNotebooks(): string[] {
  return listFiles("examples/notebooks", ".ipynb");
}

/** Reads a notebook of the project, by its path from the root. */
export function readNotebook(path: string): Notebook {
  return JSON.parse(readProjectFile(path)) as Notebook;
}

/** A text that may be stored line by line. */
export function joinText(text: string | readonly string[] | undefined): string {
  return typeof text === "string" ? text : (text ?? []).join("");
}

/** The cells that run. */
export function codeCells(notebook: Notebook): readonly Cell[] {
  return notebook.cells.filter(({ cell_type }) => cell_type === "code");
}

/** The function whose result a cell shows last, where it is one of the library's that draws or tabulates. */
export function shownBy(cell: Cell): "draw" | "tabulate" | undefined {
  // Prettier puts a statement that is broken into lines at the margin again.
  const last = joinText(cell.source)
    .split("\n")
    .filter((line) => /^\S/.test(line) && !/^[)}\]]/.test(line))
    .at(-1);
  const verb = /^(draw|tabulate)\w*\(/.exec(last ?? "")?.[1];
  return verb as "draw" | "tabulate" | undefined;
}

/** What is wrong with the outputs of a notebook that was run, as sentences; each names its cell. */
export function outputFaults(notebook: Notebook): string[] {
  return codeCells(notebook).flatMap((cell, index) => {
    const outputs = cell.outputs ?? [];
    const kinds = outputs.flatMap(({ data }) => Object.keys(data ?? {}));
    const wanted = {
      draw: ["image/svg+xml", "text/plain"],
      tabulate: ["text/html", "text/markdown", "text/plain"],
    };
    const verb = shownBy(cell);
    const missing = (verb === undefined ? [] : wanted[verb]).filter((kind) => !kinds.includes(kind));
    return [
      ...(cell.execution_count === index + 1 ? [] : [`${cell.id} was not run in its turn`]),
      ...(outputs.some(({ output_type }) => output_type === "error") ? [`${cell.id} ended in an error`] : []),
      ...missing.map((kind) => `${cell.id} shows no ${kind}`),
    ];
  });
}

/** Outputs with what was printed in one piece: how a kernel cuts it differs from run to run. */
function mergeStreams(outputs: readonly Output[]): Output[] {
  const merged: Output[] = [];
  for (const output of outputs) {
    const last = merged.at(-1);
    if (output.output_type === "stream" && last?.output_type === "stream" && last.name === output.name) {
      const lines = (joinText(last.text) + joinText(output.text)).match(/.*\n|.+$/g) ?? [];
      merged[merged.length - 1] = { ...last, text: lines };
    } else merged.push(output);
  }
  return merged;
}

/** A notebook with the outputs of another run of it. */
export function withOutputs(notebook: Notebook, run: Notebook): Notebook {
  const fresh = new Map(run.cells.map((cell) => [cell.id, cell]));
  const cells = notebook.cells.map((cell): Cell => {
    const { outputs, execution_count } = fresh.get(cell.id) ?? cell;
    return cell.cell_type === "code"
      ? { ...cell, execution_count: execution_count ?? null, outputs: mergeStreams(outputs ?? []) }
      : cell;
  });
  return { ...notebook, cells };
}

import { readFileSync } from "node:fs";
import ts from "typescript";

/** Where a name is declared, and what stands there. */
export interface Definition {
  readonly file: string;
  readonly text: string;
}

/** Asks TypeScript's language service, as an editor does, where names of a program are declared; maps of declarations lead it on. */
export function definitionsOf(program: string, names: readonly string[]): Record<string, Definition> {
  const text = readFileSync(program, "utf8");
  const sys = ts.sys;
  // The tsserver protocol follows declaration maps; the plain language service does not.
  const logger: ts.server.Logger = {
    close: () => undefined,
    hasLevel: () => false,
    loggingEnabled: () => false,
    perftrc: () => undefined,
    info: () => undefined,
    startGroup: () => undefined,
    endGroup: () => undefined,
    msg: () => undefined,
    getLogFileName: () => undefined,
  };
  const host = { ...sys, setTimeout, clearTimeout, setImmediate, clearImmediate } as unknown as ts.server.ServerHost;
  const found: Record<string, Definition> = {};
  const responses: ts.server.protocol.Response[] = [];
  const session = new ts.server.Session({
    host,
    logger,
    cancellationToken: ts.server.nullCancellationToken,
    useSingleInferredProject: true,
    useInferredProjectPerProjectRoot: false,
    typingsInstaller: ts.server.nullTypingsInstaller,
    byteLength: (value) => Buffer.byteLength(value),
    hrtime: (start) => process.hrtime(start),
    canUseEvents: false,
  });
  session.send = (message) => {
    responses.push(message as ts.server.protocol.Response);
  };
  const ask = (command: string, args: object): unknown =>
    session.executeCommand({ seq: 0, type: "request", command, arguments: args }).response;
  ask("compilerOptionsForInferredProjects", {
    options: { module: "Node16", moduleResolution: "Node16", target: "ES2022", strict: true, types: [] },
  });
  ask("open", { file: program, fileContent: text });
  for (const name of names) {
    const offset = text.lastIndexOf(name);
    const line = text.slice(0, offset).split("\n").length;
    const column = offset - text.lastIndexOf("\n", offset - 1);
    const [definition] = ask("definition", {
      file: program,
      line,
      offset: column,
    }) as ts.server.protocol.DefinitionInfo[];
    if (definition === undefined) continue;
    const { file, start } = definition;
    const declared = readFileSync(file, "utf8").split("\n")[start.line - 1]!;
    found[name] = { file, text: /^\w+/.exec(declared.slice(start.offset - 1))?.[0] ?? declared };
  }
  return found;
}

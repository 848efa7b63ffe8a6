/*
 * Finishes what tsup built: maps for the declarations, no path of this machine in the maps of the scripts, and the schema of a brief. Run by `npm run build`.
 */
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { basename, join, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";
import { briefJsonSchema } from "./brief-schema.js";
import { writeDeclarationMaps } from "./declaration-maps.js";

const folder = (name: string): string => fileURLToPath(new URL(`../../${name}`, import.meta.url));

/** The parts of a map that name files. */
interface SourceMap {
  readonly file?: string;
  readonly sources: readonly string[];
}

/** The maps of the CommonJS build name their files from the root of the disk. */
function makeRelative(dist: string): void {
  for (const name of readdirSync(dist).filter((file) => /\.c?js\.map$/.test(file))) {
    const path = join(dist, name);
    const map = JSON.parse(readFileSync(path, "utf8")) as SourceMap;
    const sources = map.sources.map((source) =>
      source.startsWith(dist) ? relative(dist, source).split(sep).join("/") : source,
    );
    writeFileSync(path, JSON.stringify({ ...map, file: basename(name, ".map"), sources }));
  }
}

makeRelative(folder("dist"));
writeDeclarationMaps(folder("dist"), folder("src"));
writeFileSync(join(folder("dist"), "brief.schema.json"), `${JSON.stringify(briefJsonSchema(), null, 2)}\n`);

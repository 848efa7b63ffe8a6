import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import jsdoc from "eslint-plugin-jsdoc";
import { defineConfig, globalIgnores } from "eslint/config";
import tseslint from "typescript-eslint";

const ENUM = { selector: "TSEnumDeclaration", message: "Use a union of words." };

/** Functions that an entry shows: only their docs need tags. Those of other functions say in a line or two what the names don't. */
const PUBLIC = readdirSync(join(import.meta.dirname, "src"))
  .map((module) => join(import.meta.dirname, "src", module, "index.ts"))
  .filter((entry) => existsSync(entry))
  .flatMap((entry) => [...readFileSync(entry, "utf8").matchAll(/^export \{([^}]*)\}/gm)])
  .flatMap(([, names]) => names.match(/(?<!type )\b\w+(?=\s*(?:,|$))/g) ?? []);
const PUBLIC_FUNCTION = `ExportNamedDeclaration > FunctionDeclaration[id.name=/^(${PUBLIC.join("|")})$/]`;

export default defineConfig(
  globalIgnores(["dist/", "site/", "out/", "coverage/"]),
  tseslint.configs.strictTypeChecked,
  tseslint.configs.stylisticTypeChecked,
  {
    languageOptions: {
      parserOptions: { projectService: { allowDefaultProject: ["*.js"] }, tsconfigRootDir: import.meta.dirname },
    },
    rules: {
      "@typescript-eslint/consistent-type-imports": "error",
      "@typescript-eslint/explicit-module-boundary-types": "error",
      "@typescript-eslint/restrict-template-expressions": ["error", { allowNumber: true }],
      "@typescript-eslint/no-unnecessary-condition": ["error", { allowConstantLoopConditions: true }],
      // `options["name"]` is how an unchecked record is read; the compiler asks for it (noPropertyAccessFromIndexSignature).
      "@typescript-eslint/dot-notation": "off",
      "@typescript-eslint/consistent-indexed-object-style": "off",
      // `isolatedDeclarations` wants types that this rule calls inferrable.
      "@typescript-eslint/no-inferrable-types": "off",
      "@typescript-eslint/non-nullable-type-assertion-style": "off",
      "@typescript-eslint/no-non-null-assertion": "off",
      // There are no enums here (see below), and this rule takes records with any string key for one.
      "@typescript-eslint/no-unsafe-enum-assignment": "off",
      // A range test written `!(x > 0)` also refuses NaN, which `x <= 0` lets through.
      "@typescript-eslint/no-unnecessary-boolean-literal-compare": "off",
      "no-restricted-syntax": ["error", ENUM],
    },
  },
  {
    files: ["src/**/*.ts"],
    rules: { "max-params": ["error", 4] },
  },
  {
    // The sciences that plans call most: what copies a record there is paid for at every corner.
    files: ["src/{core,miter,polygon,profile}/**/*.ts"],
    rules: {
      "no-restricted-syntax": [
        "error",
        ENUM,
        {
          selector: "ObjectExpression > SpreadElement",
          message: "Write the record out: a spread is ten times slower.",
        },
      ],
    },
  },
  {
    files: ["src/**/*.ts"],
    ...jsdoc.configs["flat/recommended-typescript-error"],
  },
  {
    files: ["src/**/*.ts"],
    rules: {
      "jsdoc/require-jsdoc": [
        "error",
        {
          publicOnly: true,
          contexts: [
            "TSInterfaceDeclaration",
            "TSTypeAliasDeclaration",
            "ExportNamedDeclaration > VariableDeclaration",
          ],
        },
      ],
      "jsdoc/require-param": ["error", { checkDestructuredRoots: false, contexts: [PUBLIC_FUNCTION] }],
      "jsdoc/check-tag-names": ["error", { typed: false }],
      "jsdoc/require-description": "error",
      "jsdoc/require-param-description": "error",
      "jsdoc/require-returns": ["error", { contexts: [PUBLIC_FUNCTION] }],
      "jsdoc/require-yields": ["error", { contexts: [PUBLIC_FUNCTION] }],
      "jsdoc/require-returns-description": "error",
      "jsdoc/require-throws-type": "off",
      "jsdoc/tag-lines": ["error", "any", { startLines: 1 }],
      "jsdoc/sort-tags": [
        "error",
        {
          reportTagGroupSpacing: false,
          reportIntraTagGroupSpacing: false,
          tagSequence: [
            { tags: ["typeParam", "template"] },
            { tags: ["param"] },
            { tags: ["returns"] },
            { tags: ["throws"] },
            { tags: ["example"] },
            { tags: ["see"] },
          ],
        },
      ],
    },
  },
  { files: ["*.js", "**/*.mjs"], extends: [tseslint.configs.disableTypeChecked] },
);

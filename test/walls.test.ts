import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { ENGINE_DOOR, MAY_IMPORT, PURE_LAYERS } from "./layers.ts";
import { filesUnder, ROOT } from "./source-files.ts";
import { type Cruise, cruiseTree, impurities, RULES } from "./walls.ts";

const LAYERS = Object.keys(MAY_IMPORT);

describe("the walls of src/", () => {
  let cruise: Cruise;
  beforeAll(async () => {
    cruise = await cruiseTree(ROOT);
  });

  it("are seen whole: every source file on disk is a module of the walk", () => {
    expect([...cruise.seen].sort()).toEqual(filesUnder(ROOT, "src", /\.tsx?$/));
  });

  it("stand", () => {
    expect(cruise.breaches.map((breach) => breach.text)).toEqual([]);
  });

  it("leave no layer unlisted", () => {
    const folders = new Set(filesUnder(ROOT, "src", /\.tsx?$/).map((path) => path.split("/")[1] ?? ""));
    expect([...folders].filter((folder) => !LAYERS.includes(folder))).toEqual([]);
  });

  it("keep clock, chance and the outside world out of the pure layers", () => {
    const found = PURE_LAYERS.flatMap((layer) =>
      filesUnder(ROOT, "src", new RegExp(`^src/${layer}/.*\\.ts$`)),
    )
      .filter((path) => !path.endsWith(".test.ts"))
      .flatMap((path) =>
        impurities(path, readFileSync(join(ROOT, path), "utf8")).map((use) => `${path}:${use}`),
      );
    expect(found).toEqual([]);
  });
});

/** Files of a tree with one breach a rule. The layer that may not be imported is looked up, not derived by the rules. */
function plantedTree(): Record<string, string> {
  const files: Record<string, string> = {};
  for (const [layer, may] of Object.entries(MAY_IMPORT)) {
    files[`src/${layer}/sample.ts`] = "export interface Sample { readonly ohms: number }\n";
    const stranger = LAYERS.find((other) => other !== layer && other !== "shipped" && !may.includes(other));
    const breach = `import type { Sample } from "../${stranger}/sample.ts";\nexport type Planted = Sample;\n`;
    files[`src/${layer}/planted.ts`] = breach;
    files[`src/${layer}/planted.test.ts`] = breach;
  }
  files["src/board/reads-files.ts"] =
    'import { readFileSync } from "node:fs";\nexport const read = readFileSync;\n';
  files["src/numeric/uses-package.ts"] = 'import { z } from "zod";\nexport const schema = z;\n';
  files["src/server/routes.ts"] =
    'import type { Sample } from "../store/sample.ts";\nexport type Row = Sample;\n';
  files[ENGINE_DOOR] = 'import type { Sample } from "../store/sample.ts";\nexport type Stored = Sample;\n';
  files["src/units/needs-test.ts"] =
    'import type { Planted } from "./planted.test.ts";\nexport type P = Planted;\n';
  files["src/meter/hen.ts"] =
    'import type { Egg } from "./egg.ts";\nexport interface Hen { egg: Egg | null }\n';
  files["src/meter/egg.ts"] =
    'import type { Hen } from "./hen.ts";\nexport interface Egg { hen: Hen | null }\n';
  files["src/money/alone.ts"] = "export const alone = 1;\n";
  return files;
}

describe("a planted breach", () => {
  const root = mkdtempSync(join(tmpdir(), "faultwright-walls-"));
  let cruise: Cruise;
  beforeAll(async () => {
    for (const [path, text] of Object.entries(plantedTree())) {
      mkdirSync(dirname(join(root, path)), { recursive: true });
      writeFileSync(join(root, path), text);
    }
    writeFileSync(join(root, "package.json"), '{ "type": "module", "dependencies": { "zod": "*" } }');
    symlinkSync(join(ROOT, "node_modules"), join(root, "node_modules"), "dir");
    cruise = await cruiseTree(root);
  });
  afterAll(() => rmSync(root, { recursive: true, force: true }));

  it.each(RULES.map((rule) => rule.name))("of %s is caught", (name) => {
    expect(cruise.breaches.map((breach) => breach.rule)).toContain(name);
  });

  it("of purity is caught for Node's modules and for packages", () => {
    const pure = cruise.breaches.filter((breach) => breach.rule === "pure").map((breach) => breach.text);
    expect(pure).toEqual([
      "pure: src/board/reads-files.ts → fs",
      expect.stringMatching(/^pure: src\/numeric\/uses-package\.ts → .*zod/),
    ]);
  });

  it.each([
    ["Math.random()", "Math.random"],
    ["Date.now()", "Date.now"],
    ["new Date()", "new Date()"],
    ["performance.now()", "performance"],
    ["process.env", "process"],
    ['fetch("x")', "fetch"],
    ["setTimeout(() => 1, 2)", "setTimeout"],
  ])("of purity is caught: %s", (source, name) => {
    expect(impurities("planted.ts", `export const planted = () => ${source};`)).toEqual([`1: ${name}`]);
  });

  it("is not seen where a parsed time or an own field of that name stands", () => {
    const fine = "export const fine = (a: { process: string }) => [new Date(a.process), { fetch: 1 }];";
    expect(impurities("fine.ts", fine)).toEqual([]);
  });
});

describe("ARCHITECTURE.md", () => {
  it("shows the layer table as it is enforced", () => {
    const rows = readFileSync(join(ROOT, "ARCHITECTURE.md"), "utf8").matchAll(
      /^\| `(\w+)\/` \| [^|]*\| ([^|]*)\|$/gm,
    );
    const shown = Object.fromEntries(
      [...rows].map(([, layer = "", may = ""]) => [
        layer,
        may.trim() === "nothing" ? [] : may.trim().split(" "),
      ]),
    );
    expect(shown).toEqual(MAY_IMPORT);
  });
});

import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { filesUnder, ROOT } from "./source-files.ts";
import { LONGEST_FUNCTION, longFunctions, RULES } from "./tidy.ts";

const FOLDERS = ["src", "test", "bench", "evaluate", "scripts", "docs"].filter((folder) =>
  existsSync(join(ROOT, folder)),
);
const TREE = [
  ...FOLDERS.flatMap((folder) => filesUnder(ROOT, folder, /\.(ts|tsx|mjs|css|html|md)$/)),
  ...[
    "README.md",
    "ARCHITECTURE.md",
    "CONTRIBUTING.md",
    "CHANGELOG.md",
    "vite.config.ts",
    "vitest.config.ts",
  ],
];

function read(path: string): string {
  return readFileSync(join(ROOT, path), "utf8");
}

/**
 * Functions that are over the limit and known to be, with their length: `path#name`. The list may only shrink, and
 * so may each number.
 */
const KNOWN_LONG: Readonly<Record<string, number>> = {};

describe("the tree", () => {
  it.each(RULES.map((rule) => [rule.name, rule] as const))("keeps the rule: %s", (_, rule) => {
    const found = TREE.filter(rule.applies).flatMap((path) =>
      rule.find(read(path), path).map((breach) => `${path}: ${breach}. ${rule.advice}`),
    );
    expect(found).toEqual([]);
  });

  it(`keeps functions within ${LONGEST_FUNCTION} lines, but for those on a list that only shrinks`, () => {
    const sources = TREE.filter(
      (path) => /\.(ts|tsx|mjs)$/.test(path) && !/\.(test|fixture|contract)\./.test(path),
    );
    const found = sources.flatMap((path) => longFunctions(read(path), path));
    const grown = found.filter(({ name, lines }) => lines > (KNOWN_LONG[name] ?? LONGEST_FUNCTION));
    expect(grown).toEqual([]);
    const cured = Object.keys(KNOWN_LONG).filter((name) => !found.some((long) => long.name === name));
    expect(cured).toEqual([]);
  });
});

/** For each rule a text that breaks it and one, as close as may be, that does not. */
const PLANTED: Readonly<Record<string, { path: string; bad: string[]; good: string[] }>> = {
  "one word for one thing": {
    path: "src/board/planted.ts",
    bad: [
      "// this component",
      "const deviceCount = 1;",
      "const nodes = 1;",
      "// a ticket",
      "// the next test-step",
    ],
    good: [
      'import { x } from "node:fs";',
      "// Node 20",
      "const part = noded;",
      "node dist/cli.mjs",
      "ReactNode",
    ],
  },
  "no file over 400 lines": {
    path: "src/board/planted.ts",
    bad: ["x\n".repeat(401)],
    good: ["x\n".repeat(400)],
  },
  "nothing left for later": { path: "src/board/planted.ts", bad: ["// TODO"], good: ["// to do a job"] },
  "every test runs": {
    path: "src/board/planted.test.ts",
    bad: ["it.only('x')", "describe.skip('x')", "it.skipIf(x)"],
    good: ["it.each([])", "text.skip()"],
  },
  "no way round the type checker": {
    path: "src/board/planted.ts",
    bad: ["x as any", "x as unknown as Y", "// @ts-ignore"],
    good: ["x as const", "  // Parsed above.\n  x as unknown as Y"],
  },
  "diagnosis knows neither money nor minutes": {
    path: "src/diagnosis/planted.ts",
    bad: ["const partPrice = 1;", "minutes", "// costs"],
    good: ["const odds = 1;", "const reprices = 1;"],
  },
  "a paper has one title": {
    path: "docs/planted.md",
    bad: ["# One\n# Two\n", "no title\n"],
    good: ["# One\n```sh\n# a remark\n```\n## Two\n"],
  },
  "a paper that is named is here": {
    path: "docs/planted.md",
    bad: ["see NOWHERE.md", "![x](nowhere.png)"],
    good: ["see README.md and [style](style.md)", "boards/*.md"],
  },
  "nothing of the place where it was written": {
    path: "src/board/planted.ts",
    bad: ["see /root/me", "see /mnt/me", "as the issue says", "registry.example.org"],
    good: ["../root/x", "this issue", "the route /jobs/1"],
  },
};

describe("a planted sample", () => {
  for (const [name, { path, bad, good }] of Object.entries(PLANTED)) {
    const rule = RULES.find((candidate) => candidate.name === name);
    it.each(bad)(`breaks "${name}": %j`, (text) => {
      expect(rule?.applies(path)).toBe(true);
      expect(rule?.find(text, path)).toHaveLength(1);
    });
    it.each(good)(`keeps "${name}": %j`, (text) => {
      expect(rule?.find(text, path)).toEqual([]);
    });
  }

  it.each([
    ["src/board/board-utils.ts", 1],
    ["src/board/helpers.ts", 1],
    ["src/board/ParseBoard.ts", 1],
    ["src/board/index.ts", 1],
    ["src/web/index.html", 0],
    ["src/board/parse-board.test.ts", 0],
  ])("of a file name: %s has %i breaches", (path, breaches) => {
    const rule = RULES.find((candidate) => candidate.name.startsWith("a file is named"));
    expect(rule?.applies(path)).toBe(true);
    expect(rule?.find("", path)).toHaveLength(breaches);
  });

  it("of a long function is caught, by its name", () => {
    const text = `export function endless() {\n${"  1;\n".repeat(LONGEST_FUNCTION)}}\n`;
    expect(longFunctions(text, "src/x.ts")).toEqual([
      { name: "src/x.ts#endless", lines: LONGEST_FUNCTION + 2 },
    ]);
    expect(longFunctions(text.replace("  1;\n  1;\n", ""), "src/x.ts")).toEqual([]);
  });

  it("stands for every rule", () => {
    const unproved = RULES.map((rule) => rule.name).filter((name) => !Object.hasOwn(PLANTED, name));
    expect(unproved).toEqual(["a file is named for what it is, in kebab-case"]);
  });
});

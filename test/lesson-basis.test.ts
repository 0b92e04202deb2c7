/** Lessons kept in a browser are read anew once anything that they were counted with has changed. */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, it } from "vitest";
import { LESSON_LAYERS, lessonBasis } from "../scripts/lesson-basis.mjs";
import { MAY_IMPORT } from "./layers.ts";

it("every layer that reading a job again rests on is in the basis", () => {
  const reached = new Set<string>(["job"]);
  for (const layer of reached) for (const next of MAY_IMPORT[layer] ?? []) reached.add(next);
  expect([...reached].sort()).toEqual(LESSON_LAYERS);
});

it("one figure of one table makes another basis, a test makes none", () => {
  const folder = mkdtempSync(join(tmpdir(), "faultwright-basis-"));
  try {
    for (const layer of LESSON_LAYERS) cpSync(join("src", layer), join(folder, layer), { recursive: true });
    const before = lessonBasis(folder);
    expect(lessonBasis("src")).toBe(before);
    writeFileSync(join(folder, "priors", "more.test.ts"), "// nothing");
    expect(lessonBasis(folder)).toBe(before);
    const table = join(folder, "priors", "mode-shares.ts");
    writeFileSync(table, readFileSync(table, "utf8").replace(/0\.\d+/, "0.123"));
    expect(lessonBasis(folder)).not.toBe(before);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

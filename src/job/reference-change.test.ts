import { expect, it } from "vitest";
import { plain } from "../messages/said.ts";
import { RECTIFIER } from "./rectifier-job.fixture.ts";
import { changedReferences, type ReferenceChange } from "./reference-change.ts";

const CHECK = { mode: "ohms", red: "PBUS", black: "NBUS" } as const;
type Content = Parameters<typeof changedReferences>[0];

function changed(content: Content, change: ReferenceChange): Content {
  const made = changedReferences(content, change);
  if (!made.ok) throw new Error(made.problem);
  return made.value;
}

it("readings of good boards written down one by one are one reference of their geometric mean, and forgotten together", () => {
  const once = changed(RECTIFIER, { do: "good-read", ...CHECK, text: "100k" });
  expect(once.references).toEqual([{ ...CHECK, reading: 100_000, spread: 0, count: 1 }]);
  // the same net by another pin
  const twice = changed(once, { do: "good-read", ...CHECK, red: "C1.plus", text: "121k" });
  expect(twice.references).toMatchObject([{ ...CHECK, reading: 110_000, count: 2 }]);
  expect(changed(twice, { do: "good-forgotten", ...CHECK })).toEqual(RECTIFIER);
  const swapped = changed(twice, { do: "good-forgotten", ...CHECK, red: "NBUS", black: "PBUS" });
  expect(swapped.references).toHaveLength(1);
});

it("what is no figure, or no place, is refused in one line", () => {
  const refused = (change: Partial<Extract<ReferenceChange, { do: "good-read" }>>) => {
    const made = changedReferences(RECTIFIER, { do: "good-read", ...CHECK, text: "1k", ...change });
    return made.ok ? "" : plain(made.problem);
  };
  expect(refused({ text: "OL" })).toBe('"OL": a figure above 0 is kept; write it as 0.47, 4k7 or 22u');
  expect(refused({ red: "VBUS" })).toMatch(/^red: there is no net "VBUS"/);
  expect(refused({ black: "C1.plus" })).toBe("red and black are both on PBUS; two places are needed");
});

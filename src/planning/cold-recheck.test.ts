import { expect, it } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import { plain } from "../messages/said.ts";
import { DEFAULT_TERMS } from "../money/terms.ts";
import { coldRecheck, recheckOf } from "./cold-recheck.ts";
import type { PlanningInput } from "./planning-input.ts";
import { provenEmpty, smallDriveBoard } from "./scene.fixture.ts";

const BOARD = smallDriveBoard();
const SAFE = provenEmpty(BOARD);

function input(...log: readonly JobEvent[]): PlanningInput {
  const timeline = foldLog(BOARD, [], [...SAFE, ...log]);
  if (!timeline.ok) throw new Error(timeline.problem);
  const { now } = timeline.value;
  return { board: BOARD, bench: now, timeline: timeline.value, terms: DEFAULT_TERMS, equipment: [] };
}
const read = (red: string, black: string): JobEvent => ({
  do: "measure",
  mode: "diode",
  red,
  black,
  reading: 0.6,
});
const pairs = (of: PlanningInput) =>
  coldRecheck(of).row.map((one) => (one.do === "measure" ? `${one.red} ${one.black}` : one.do));

it("nothing is read again where nothing was worked on, or power has been on since", () => {
  expect(pairs(input())).toEqual([]);
  expect(
    pairs(
      input(
        { do: "replace", part: "BR1" },
        { do: "power", feed: "mains", observed: "runs" },
        { do: "unpower" },
      ),
    ),
  ).toEqual([]);
});

it("a reading away from the work stands: only the rails that the work was at are read, both ways", () => {
  const fuse = input(read("PBUS", "NBUS"), { do: "replace", part: "F1" });
  expect(pairs(fuse)).not.toContain("PBUS NBUS");
  const bridge = input(read("PBUS", "NBUS"), { do: "replace", part: "BR1" });
  expect(pairs(bridge)).toEqual(expect.arrayContaining(["PBUS NBUS", "NBUS PBUS"]));
});

it("what is read after the work is not asked for again", () => {
  const half = input({ do: "replace", part: "BR1" }, read("L_B", "PBUS"), read("PBUS", "NBUS"));
  expect(pairs(half)).toEqual(["NBUS PBUS"]);
});

it("a pin put back is read across its part alone, and the same reading is in the row once", () => {
  const back = input({ do: "lift", place: "C1.plus" }, { do: "refit", place: "C1.plus" });
  expect(new Set(pairs(back)).size).toBe(pairs(back).length);
  expect(plain(coldRecheck(back).why)).not.toMatch(/both ways, because/);
});

it("each lead of a power part that was fitted is held against the heatsink; a fuse has none", () => {
  expect(plain(coldRecheck(input({ do: "replace", part: "BR1" })).why)).toMatch(
    /each lead of BR1 to the heatsink/,
  );
  expect(plain(coldRecheck(input({ do: "replace", part: "F1" })).why)).not.toContain("heatsink");
});

it("of one part alone only what lies across it is read", () => {
  const two = input({ do: "replace", part: "F1" }, { do: "resolder", part: "BR1" });
  expect(recheckOf(two, "BR1")).toHaveLength(4);
  expect(recheckOf(two, "C1")).toEqual([]);
});

import type { Lesson } from "./lesson.ts";

/** A lesson in which one fuse on one board was expected and found as told. */
export function lessonWith(changes: Partial<Lesson>): Lesson {
  return {
    family: "fan",
    boardName: "PCB 12",
    identity: changes.boardName ?? "PCB 12",
    cause: "surge",
    seen: { fuse: 1 },
    stayedAway: 0,
    modes: [],
    parts: [],
    knockOns: [],
    paces: [],
    prices: [],
    good: [],
    again: false,
    ...changes,
  };
}

/** Of a board that is looked at whether or not it failed. */
export const unbrought = (count: number, expected: number) => ({
  count,
  expected,
  rate: expected,
  bringing: 0,
  expectedSquares: 0,
  unseen: 0,
  unseenSquares: 0,
});

export const fuse = (count: number, expected: number) => ({
  modes: [{ sort: "fuse", shape: "fuse", mode: "open" as const, ...unbrought(count, expected) }],
  parts: [{ part: "F1", sort: "fuse", ...unbrought(count, expected) }],
});

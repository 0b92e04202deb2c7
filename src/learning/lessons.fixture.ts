import type { Lesson } from "./lesson.ts";

/** A lesson in which one fuse on one board was expected and found as told. */
export function lessonWith(changes: Partial<Lesson>): Lesson {
  return {
    family: "fan",
    boardName: "PCB 12",
    cause: "surge",
    seen: { fuse: 1 },
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

export const fuse = (count: number, expected: number) => ({
  modes: [{ sort: "fuse", shape: "fuse", mode: "open" as const, count, expected }],
  parts: [{ part: "F1", sort: "fuse", count, expected }],
});

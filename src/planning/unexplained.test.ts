import { expect, test } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import { smallDriveBoard } from "./scene.fixture.ts";
import { readingToRepeat } from "./unexplained.ts";

const RAIL = { do: "measure", mode: "diode", red: "V5", black: "NBUS" } as const;
const BUS = { do: "measure", mode: "ohms", red: "PBUS", black: "NBUS" } as const;

function repeated(log: readonly JobEvent[], unexplained: readonly number[]) {
  const folded = foldLog(smallDriveBoard(), [], log);
  if (!folded.ok) throw new Error(folded.problem);
  return readingToRepeat(folded.value, unexplained);
}

test("of readings that nothing explains the newest is taken again", () => {
  const log = [
    { ...RAIL, reading: 0.1 },
    { ...BUS, reading: 3 },
  ];
  expect(repeated(log, [0, 1])).toEqual(BUS);
  expect(repeated(log, [0])).toEqual(RAIL);
  expect(repeated(log, [])).toBeNull();
});

test("what came out twice is no slip, and what was read of a part since replaced cannot be read again", () => {
  const twice = [
    { ...RAIL, reading: 0.1 },
    { ...RAIL, reading: 0.1 },
  ];
  expect(repeated(twice, [0, 1])).toBeNull();
  expect(
    repeated(
      [
        { ...RAIL, reading: 0.1 },
        { do: "replace", part: "U3" },
      ],
      [0],
    ),
  ).toBeNull();
});

test("where two readings came out as before the others are believed", () => {
  const log = [RAIL, BUS, RAIL, BUS, { ...BUS, black: "U" }].map((one) => ({ ...one, reading: 1 }));
  expect(repeated(log.slice(0, 3), [0, 1, 2])).toEqual(BUS);
  expect(repeated(log, [0, 1, 2, 3, 4])).toBeNull();
});

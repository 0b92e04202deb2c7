import { expect, test } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import { plain } from "../messages/said.ts";
import { DEFAULT_TERMS } from "../money/terms.ts";
import { beforePower } from "./before-power.ts";
import { makeSafe } from "./make-safe.ts";
import type { PlanningInput } from "./planning-input.ts";
import { nextOnMains } from "./power-ladder.ts";
import { provenEmpty, smallDriveBoard } from "./scene.fixture.ts";

const BOARD = smallDriveBoard();
const SAFE = provenEmpty(BOARD);
const nextPower = (given: PlanningInput) => nextOnMains(given)?.action ?? null;

function input(
  log: readonly JobEvent[],
  absent: readonly string[] = [],
  equipment = ["lamp-100"],
): PlanningInput {
  const timeline = foldLog(BOARD, absent, log);
  if (!timeline.ok) throw new Error(timeline.problem);
  return {
    board: BOARD,
    bench: timeline.value.now,
    timeline: timeline.value,
    terms: DEFAULT_TERMS,
    equipment,
  };
}

test("a lifted pin goes back before power, a good part is restored, a doubtful one replaced", () => {
  const lifted = input([...SAFE, { do: "lift", place: "C4.plus" }]);
  expect(beforePower(lifted, new Map())?.action).toEqual({ do: "refit", place: "C4.plus" });
  const off = input([...SAFE, { do: "remove", part: "BR1" }]);
  expect(beforePower(off, new Map([["BR1", 0.1]]))?.action).toEqual({ do: "restore", part: "BR1" });
  expect(beforePower(off, new Map([["BR1", 0.9]]))?.action).toEqual({ do: "replace", part: "BR1" });
});

test("a part that never came with the board is not asked for", () => {
  expect(beforePower(input(SAFE, ["M1"]), new Map())).toBeNull();
});

test("a fitted part is measured cold, both ways, before power, and so is the bus that it hangs on; once that is done power may come", () => {
  const fitted: JobEvent[] = [...SAFE, { do: "replace", part: "BR1" }];
  const recheck = beforePower(input(fitted), new Map());
  expect([recheck?.action, ...(recheck?.row ?? [])]).toEqual([
    { do: "measure", mode: "diode", red: "L_B", black: "PBUS" },
    { do: "measure", mode: "diode", red: "PBUS", black: "L_B" },
    { do: "measure", mode: "diode", red: "N_IN", black: "PBUS" },
    { do: "measure", mode: "diode", red: "PBUS", black: "N_IN" },
    { do: "measure", mode: "diode", red: "PBUS", black: "NBUS" },
    { do: "measure", mode: "diode", red: "NBUS", black: "PBUS" },
  ]);
  expect(plain(recheck?.why ?? "")).toMatch(
    /across BR1, because.*the bus both ways, because BR1 hangs on it.*to the heatsink/,
  );
  const measured: JobEvent[] = [
    ...fitted,
    { do: "measure", mode: "diode", red: "L_B", black: "PBUS", reading: 0.45 },
    { do: "measure", mode: "diode", red: "PBUS", black: "NBUS", reading: "OL" },
    { do: "measure", mode: "diode", red: "NBUS", black: "PBUS", reading: 0.9 },
  ];
  expect(beforePower(input(measured), new Map())).toBeNull();
});

test("a discharge resistor is off before anything else, so before power", () => {
  const clipped = input([...SAFE, { do: "clip", at: ["C1.plus", "C1.minus"], ohms: 2200 }]);
  expect(makeSafe(clipped)?.action).toEqual({ do: "unclip", at: ["C1.plus", "C1.minus"], ohms: 2200 });
});

test("power goes through the lamp first, then mains once the bus has been read, and never twice the same way on an unchanged board", () => {
  const lamp: JobEvent[] = [
    ...SAFE,
    { do: "power", feed: "lamp", watts: 100, observed: "lamp-dim" },
    { do: "measure", mode: "dcv", red: "PBUS", black: "NBUS", reading: 290 },
    { do: "unpower" },
  ];
  expect(nextPower(input(SAFE))).toEqual({ do: "power", feed: "lamp", watts: 100 });
  expect(nextPower(input(lamp))).toEqual({ do: "power", feed: "mains" });
  const bright: JobEvent[] = [
    ...SAFE,
    { do: "power", feed: "lamp", watts: 100, observed: "lamp-bright" },
    { do: "unpower" },
  ];
  expect(nextPower(input(bright))).toBeNull();
  expect(nextPower(input([...bright, ...SAFE, { do: "replace", part: "BR1" }]))).toMatchObject({
    feed: "lamp",
  });
  expect(nextPower(input(SAFE, [], []))).toEqual({ do: "power", feed: "mains" });
});

import { expect, test } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import { parseBoard } from "../board/parse-board.ts";
import { smallDrive } from "../board/small-drive.fixture.ts";
import { storesOfCharge } from "../board/stores-of-charge.ts";
import { dischargeState } from "./discharge.ts";

function stateAfter(log: readonly JobEvent[]) {
  const board = parseBoard(smallDrive());
  if (!board.ok) throw new Error(board.problem);
  const timeline = foldLog(board.value, [], log);
  if (!timeline.ok) throw new Error(timeline.problem);
  return dischargeState(board.value, timeline.value, storesOfCharge(board.value));
}

const volts = (red: string, black: string, reading: number): JobEvent => ({
  do: "measure",
  mode: "dcv",
  red,
  black,
  reading,
});
const parts = (stores: readonly { readonly part: string }[]) => stores.map(({ part }) => part).sort();
/** every store of the small drive, at its own pins */
const ALL = ["C1", "C2", "C3", "CX1"].map((ref) => volts(`${ref}.plus`, `${ref}.minus`, 0.2));

test("an empty log proves nothing: each capacitor of the series pair and the film capacitors are still to be measured", () => {
  const state = stateAfter([]);
  expect(state.open).toBe(false);
  expect(parts(state.unproven)).toEqual(["C1", "C2", "C3", "CX1"]);
});

test("below 10 V at every store's own pins opens the cold checks, and the sign of the reading does not matter", () => {
  expect(stateAfter(ALL).open).toBe(true);
  const swapped = [volts("C1.minus", "C1.plus", -9.9), ...ALL.slice(1)];
  expect(stateAfter(swapped).open).toBe(true);
});

test("volts across the whole bus prove the film capacitor across it, and neither capacitor of the series pair", () => {
  const state = stateAfter([volts("PBUS", "NBUS", 0.1)]);
  expect(parts(state.proven)).toEqual(["C3"]);
});

test("ten volts or more is charged, and the last reading counts", () => {
  const charged = stateAfter([...ALL, volts("C1.plus", "C1.minus", 10)]);
  expect(charged.charged.map(({ store, volts: v }) => [store.part, v])).toEqual([["C1", 10]]);
  expect(charged.open).toBe(false);
  expect(stateAfter([volts("C1.plus", "C1.minus", 160), ...ALL]).open).toBe(true);
});

test("after power everything is to be proven again, and a reading under power proves nothing", () => {
  const after: JobEvent[] = [...ALL, { do: "power", feed: "mains", observed: "quiet" }];
  expect(stateAfter(after).open).toBe(false);
  const live = stateAfter([...after, volts("C1.plus", "C1.minus", 1), { do: "unpower" }]);
  expect(parts(live.unproven)).toContain("C1");
  expect(stateAfter([...after, { do: "unpower" }, ...ALL]).open).toBe(true);
});

test("a store whose pin is lifted is proven at the pin, not at the pad it left", () => {
  const state = stateAfter([...ALL, { do: "power", feed: "mains" }, { do: "unpower" }, ...ALL.slice(0, 2)]);
  expect(parts(state.unproven)).toEqual(["C3", "CX1"]);
  const lifted = stateAfter([
    ...ALL,
    { do: "lift", place: "C3.plus" },
    { do: "power", feed: "mains" },
    { do: "unpower" },
    volts("PBUS", "NBUS", 0.1),
  ]);
  expect(parts(lifted.unproven)).toContain("C3");
});

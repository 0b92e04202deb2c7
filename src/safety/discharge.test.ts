import { describe, expect, test } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import { parseBoard } from "../board/parse-board.ts";
import { smallDrive } from "../board/small-drive.fixture.ts";
import { storesOfCharge } from "../board/stores-of-charge.ts";
import { dischargeState, type StoreState } from "./discharge.ts";

const BOARD = (() => {
  const parsed = parseBoard(smallDrive());
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
})();

function stateAfter(log: readonly JobEvent[], absent: readonly string[] = []) {
  const timeline = foldLog(BOARD, absent, log);
  if (!timeline.ok) throw new Error(timeline.problem);
  const state = dischargeState(BOARD, timeline.value, storesOfCharge(BOARD));
  const named = (wanted: StoreState["state"]) =>
    state.stores.flatMap(({ store, state: is }) => (is === wanted ? [store.part] : [])).sort();
  return { ...state, proven: named("empty"), unproven: named("unknown"), charged: named("charged") };
}

const volts = (red: string, black: string, reading: number): JobEvent => ({
  do: "measure",
  mode: "dcv",
  red,
  black,
  reading,
});
/** every store of the small drive, at its own pins */
const ALL = ["C1", "C2", "C3", "CX1"].map((ref) => volts(`${ref}.plus`, `${ref}.minus`, 0.2));

test("an empty log proves nothing: each capacitor of the series pair and the film capacitors are still to be measured", () => {
  const state = stateAfter([]);
  expect(state.open).toBe(false);
  expect(state.unproven).toEqual(["C1", "C2", "C3", "CX1"]);
});

test("below 10 V at every store's own pins opens the cold checks, and the sign of the reading does not matter", () => {
  expect(stateAfter(ALL).open).toBe(true);
  const swapped = [volts("C1.minus", "C1.plus", -9.9), ...ALL.slice(1)];
  expect(stateAfter(swapped).open).toBe(true);
});

test("volts across the whole bus prove the film capacitor across it, and neither capacitor of the series pair", () => {
  const state = stateAfter([volts("PBUS", "NBUS", 0.1)]);
  expect(state.proven).toEqual(["C3"]);
});

test("ten volts or more is charged, and the last reading counts", () => {
  const charged = stateAfter([...ALL, volts("C1.plus", "C1.minus", 10)]);
  expect(charged.charged).toEqual(["C1"]);
  expect(charged.inTheWay).toMatchObject([
    { store: { part: "C1" }, volts: 10, readAt: 4, because: "arrived" },
  ]);
  expect(charged.open).toBe(false);
  expect(stateAfter([volts("C1.plus", "C1.minus", 160), ...ALL]).open).toBe(true);
});

test("after power everything is to be proven again, and a reading under power proves nothing", () => {
  const after: JobEvent[] = [...ALL, { do: "power", feed: "mains", observed: "quiet" }];
  expect(stateAfter(after).open).toBe(false);
  const live = stateAfter([...after, volts("C1.plus", "C1.minus", 1), { do: "unpower" }]);
  expect(live.unproven).toContain("C1");
  expect(stateAfter([...after, { do: "unpower" }, ...ALL]).open).toBe(true);
});

test("a store whose pin is lifted is proven at the pin, not at the pad it left", () => {
  const state = stateAfter([...ALL, { do: "power", feed: "mains" }, { do: "unpower" }, ...ALL.slice(0, 2)]);
  expect(state.unproven).toEqual(["C3", "CX1"]);
  const lifted = stateAfter([
    ...ALL,
    { do: "lift", place: "C3.plus" },
    { do: "power", feed: "mains" },
    { do: "unpower" },
    volts("PBUS", "NBUS", 0.1),
  ]);
  expect(lifted.unproven).toContain("C3");
});

test("more than the meter's range is charged, with volts nobody knows", () => {
  const over = stateAfter([
    ...ALL,
    { do: "measure", mode: "dcv", red: "C1.plus", black: "C1.minus", reading: "OL" },
  ]);
  expect(over.inTheWay).toMatchObject([{ state: "charged", volts: null, readAt: 4 }]);
});

describe("the proof is lost", () => {
  const OFF: JobEvent = { do: "unpower" };

  test.each<[string, JobEvent[]]>([
    ["by mains", [{ do: "power", feed: "mains" }, OFF]],
    ["by a lamp", [{ do: "power", feed: "lamp", watts: 100 }, OFF]],
    [
      "by a bench supply at two places of a rail",
      [{ do: "power", feed: "bench", volts: 15, limitAmps: 0.5, at: ["V15", "NBUS"] }, OFF],
    ],
    ["by a motor that turned while it was plugged in", [{ do: "note", text: "fan spun", turned: "M1" }]],
    ["by volts between two phases of a board that is off", [volts("U", "V", 14)]],
    ["by AC volts there", [{ do: "measure", mode: "acv", red: "U", black: "V", reading: 22 }]],
  ])("%s, of every store", (_how, events) => {
    expect(stateAfter([...ALL, ...events]).unproven).toEqual(["C1", "C2", "C3", "CX1"]);
    expect(stateAfter([...ALL, ...events, ...ALL]).open).toBe(true);
  });

  test("not by what a meter picks up, nor by a motor that lies unplugged beside the board", () => {
    expect(stateAfter([...ALL, volts("U", "V", 0.4)]).open).toBe(true);
    const unplugged: JobEvent[] = [
      { do: "remove", part: "M1" },
      { do: "note", text: "turned it", turned: "M1" },
    ];
    expect(stateAfter([...ALL, ...unplugged]).open).toBe(true);
  });

  test("not by undone power: it never was", () => {
    const undone: JobEvent[] = [
      { do: "power", feed: "mains", id: "p" },
      { do: "undo", of: "p" },
    ];
    expect(stateAfter([...ALL, ...undone]).open).toBe(true);
  });
});

describe("a capacitor that comes back on the board", () => {
  const put = (...events: readonly JobEvent[]) => stateAfter([...ALL, ...events]);

  test("is to be measured again, whether it was off by one pin or whole", () => {
    expect(put({ do: "lift", place: "C1.plus" }).open).toBe(true);
    expect(put({ do: "lift", place: "C1.plus" }, { do: "refit", place: "C1.plus" }).unproven).toEqual(["C1"]);
    expect(put({ do: "remove", part: "C1" }, { do: "restore", part: "C1" }).unproven).toEqual(["C1"]);
    expect(put({ do: "lift", place: "Q1.c" }, { do: "refit", place: "Q1.c" }).open).toBe(true);
  });

  test("a new one is measured by itself, a used one may have charged the others", () => {
    expect(put({ do: "replace", part: "C1" }).unproven).toEqual(["C1"]);
    expect(put({ do: "replace", part: "C1", used: true }).unproven).toEqual(["C1", "C2", "C3", "CX1"]);
  });

  test("one that came off unread shares what it holds with all others; in the hand it is measured at its own pins", () => {
    const went: JobEvent[] = [
      { do: "overrule", why: "I bled it", of: "proof" },
      { do: "remove", part: "C1" },
    ];
    const back = stateAfter([...went, ...ALL.slice(1), { do: "restore", part: "C1" }]);
    expect(back.unproven).toEqual(["C1", "C2", "C3", "CX1"]);
    const inHand = stateAfter([...went, { do: "power", feed: "mains" }, { do: "unpower" }, ...ALL.slice(1)]);
    expect(inHand.inTheWay).toMatchObject([{ store: { part: "C1" }, off: true, state: "unknown" }]);
    expect(stateAfter([...went, { do: "power", feed: "mains" }, { do: "unpower" }, ...ALL]).open).toBe(true);
  });

  test("one that never came is no store until it is brought", () => {
    expect(stateAfter(ALL.slice(1), ["C1"]).open).toBe(true);
    expect(stateAfter([...ALL.slice(1), { do: "restore", part: "C1" }], ["C1"]).unproven).toContain("C1");
  });
});

describe("the proof overruled", () => {
  const OVERRULED: JobEvent = { do: "overrule", why: "bled through my own resistor", of: "proof" };

  test("holds until the next power, with its reason", () => {
    const state = stateAfter([OVERRULED]);
    expect(state.open).toBe(true);
    expect(state.overruled).toEqual({ why: "bled through my own resistor", logIndex: 0 });
    expect(
      stateAfter([OVERRULED, { do: "lift", place: "C1.plus" }, { do: "refit", place: "C1.plus" }]).open,
    ).toBe(true);
    expect(stateAfter([OVERRULED, { do: "power", feed: "mains" }, { do: "unpower" }]).open).toBe(false);
    expect(stateAfter([OVERRULED, { do: "note", text: "", turned: "M1" }]).open).toBe(false);
  });

  test("covers a store that was known to be charged, and none that reads charged afterwards", () => {
    expect(stateAfter([volts("C1.plus", "C1.minus", 160), OVERRULED]).open).toBe(true);
    expect(stateAfter([OVERRULED, volts("C1.plus", "C1.minus", 160)]).open).toBe(false);
  });

  test("without saying of what, it is of the proof where the next step needs a dead board and the proof stood in its way", () => {
    const plain: JobEvent = { do: "overrule", why: "I know this board" };
    const cold: JobEvent = { do: "measure", mode: "diode", red: "V5", black: "NBUS", reading: "OL" };
    expect(stateAfter([plain]).open).toBe(false);
    expect(stateAfter([plain, cold]).open).toBe(true);
    expect(stateAfter([...ALL, plain, cold, { do: "replace", part: "C1" }]).open).toBe(false);
    expect(stateAfter([{ ...plain, of: "proposal" }, cold]).open).toBe(false);
  });
});

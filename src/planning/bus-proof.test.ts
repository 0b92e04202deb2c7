import { expect, it } from "vitest";
import type { MeasureEvent, Observed } from "../bench/event.ts";
import type { Board } from "../board/board.ts";
import type { Fault } from "../board/fault.ts";
import { parseBoard } from "../board/parse-board.ts";
import { liveStates } from "../live/live-of-log.ts";
import { viewOf } from "../priors/circuit-view.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { busShown, couldProveBus } from "./bus-proof.ts";

function boardNamed(id: string): Board {
  const parsed = parseBoard(SHIPPED.find((one) => one.id === id)?.board);
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
}
const WASHER = boardNamed("washing-machine-drive");
const PTC_BOARD = boardNamed("greenhouse-fan-drive");
const BARE = { lifted: new Set<string>(), off: new Set<string>(), clips: [], powered: true };
const WATTS = 100;

const volts = (red: string, black: string, reading: number): MeasureEvent => ({
  do: "measure",
  mode: "dcv",
  red,
  black,
  reading,
});
const rail = (reading: number) => volts("V15", "NBUS", reading);
const bus = (reading: number) => volts("PBUS", "NBUS", reading);

it("the bus itself read at its volts shows it, whatever the lamp does; read too low it is missing, whatever a rail shows", () => {
  for (const board of [WASHER, PTC_BOARD])
    for (const seen of ["lamp-dark", "lamp-dim"] as const) {
      expect(busShown(board, WATTS, [seen], [bus(310)])).toBe("stands");
      expect(busShown(board, WATTS, [seen], [bus(130), rail(15)])).toBe("missing");
    }
});

it("a good rail shows it only with the lamp gone dark, in the end", () => {
  const shown = (...seen: readonly Observed[]) => busShown(WASHER, WATTS, seen, [rail(15)]);
  expect(shown("lamp-dark")).toBe("stands");
  expect(shown("lamp-dim", "lamp-dark")).toBe("stands");
  expect(shown("lamp-dim")).toBe("unread");
  expect(shown("lamp-dark", "lamp-dim")).toBe("unread");
  expect(shown("quiet")).toBe("unread");
  expect(busShown(WASHER, WATTS, ["lamp-dark"], [rail(0.2)])).toBe("unread");
});

it("behind a PTC no rail shows it: hot, the PTC takes the volts and the lamp stays dark", () => {
  expect(busShown(PTC_BOARD, WATTS, ["lamp-dark"], [rail(15)])).toBe("unread");
  expect(couldProveBus(PTC_BOARD, WATTS, ["V15", "NBUS"])).toBe(false);
  expect(couldProveBus(PTC_BOARD, WATTS, ["PBUS", "NBUS"])).toBe(true);
  expect(couldProveBus(WASHER, WATTS, ["V15", "NBUS"])).toBe(true);
});

it("worked out for leaks of any size across the bus: the rails are right from a third of it on, and wherever the lamp is dark with them the bus stands", () => {
  const [ref = ""] = viewOf(WASHER).roles.busCapacitors;
  const live = liveStates(WASHER, BARE, { do: "power", feed: "lamp", watts: WATTS });
  const under = (ohms: number) => {
    const leak: Fault = { of: "part", part: ref, junction: null, mode: "leaky", value: ohms };
    const state = live.state([leak]);
    const read = (net: string) => state.volts(net, "NBUS")?.dc ?? 0;
    return { seen: state.observed, bus: read("PBUS"), rail: read("V15") };
  };
  const all = [300, 600, 1000, 3000, 6000, 10_000, 30_000].map(under);
  const railsRight = all.filter(({ rail: read }) => Math.abs(read / 15 - 1) < 0.05);
  expect(Math.min(...railsRight.map((one) => one.bus))).toBeLessThan(110);
  const dark = railsRight.filter(({ seen }) => seen.at(-1) === "lamp-dark");
  expect(dark.length).toBeGreaterThan(1);
  for (const one of railsRight) {
    const shown = busShown(WASHER, WATTS, one.seen, [rail(one.rail)]);
    expect(shown).toBe(dark.includes(one) ? "stands" : "unread");
    if (shown === "stands") expect(one.bus).toBeGreaterThan(280);
  }
});

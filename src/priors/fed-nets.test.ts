/** A bench supply on a rail below its 0 V: clipped the right way round it feeds the rail as it would any other. */
import { describe, expect, it } from "vitest";
import { parseBoard } from "../board/parse-board.ts";
import { parseFault } from "../board/parse-fault.ts";
import { smallDrive } from "../board/small-drive.fixture.ts";
import { LiveBoard } from "../live/live-board.ts";
import { BARE, dc } from "../live/on-power.fixture.ts";
import { feedNets } from "./fed-nets.ts";
import { outcomeChances } from "./power-outcomes.ts";

const RAW = smallDrive();
const parsed = parseBoard({
  ...RAW,
  parts: {
    ...RAW.parts,
    C91: {
      kind: "capacitor",
      pins: { plus: "NBUS", minus: "VN12" },
      value: { farads: 1e-7, type: "ceramic" },
    },
    C92: {
      kind: "capacitor",
      pins: { plus: "NBUS", minus: "VN12" },
      value: { farads: 1e-7, type: "ceramic" },
    },
    U91: { kind: "ic", pins: { vcc: "NBUS", gnd: "VN12" }, stage: "sensor" },
  },
  rails: { ...(RAW.rails as object), VN12: { net: "VN12", volts: -12 } },
});
if (!parsed.ok) throw new Error(parsed.problem);
const board = parsed.value;

function fed(volts: number, fault: string | null) {
  const feed = { kind: "bench", volts, limitAmps: 1, at: ["NBUS", "VN12"] } as const;
  const found = fault === null ? null : parseFault(fault, board);
  if (found?.ok === false) throw new Error(found.problem);
  return new LiveBoard(board, BARE, feed).state(found === null ? [] : [found.value]);
}
const rise = (state: ReturnType<typeof fed>, part: string) =>
  (state.temperature(part, { ambient: 20, by: "camera" })?.celsius ?? 20) - 20;

describe("a low voltage into a negative rail", () => {
  it("goes to its limit in a short, which gets warm alone; the rail reads below its 0 V", () => {
    const short = fed(0.4, "C91:short@0.3");
    expect(short.observed).toEqual(["limiting"]);
    expect(dc(short, "VN12", "NBUS")).toBeCloseTo(-0.3, 1);
    expect(short.feedAmps?.amps).toBeCloseTo(1, 1);
    expect(rise(short, "C91")).toBeGreaterThan(10);
    for (const part of ["C92", "U91"]) expect(rise(short, part)).toBeLessThan(3);
  });

  it("draws next to nothing from a good one, whose own volts stand on it when it is given them", () => {
    expect(fed(0.4, null).observed).toEqual(["quiet"]);
    expect(dc(fed(12, null), "VN12", "NBUS")).toBeCloseTo(-12, 1);
  });

  it("is a feed of that rail, not of the bus, and a short across it is said to take the supply to its limit", () => {
    const at = ["NBUS", "VN12"] as const;
    expect(feedNets(board, at)).toMatchObject({ rail: { name: "VN12" }, back: "NBUS", bus: false });
    const short = parseFault("C91:short", board);
    if (!short.ok) throw new Error(short.problem);
    const setup = { feed: "bench", at, volts: 0.4, limitAmps: 1 } as const;
    expect(outcomeChances(board, [short.value], setup).get("limiting")).toBeGreaterThan(0.9);
    expect(outcomeChances(board, [], setup).get("limiting")).toBeLessThan(0.1);
  });
});

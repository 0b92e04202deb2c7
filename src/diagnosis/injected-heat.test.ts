import { describe, expect, it } from "vitest";
import type { PowerEvent } from "../bench/event.ts";
import { parseBoard } from "../board/parse-board.ts";
import { railGroups } from "../board/rail-groups.ts";
import { smallDrive } from "../board/small-drive.fixture.ts";
import { injectedAmps, injectedLog, type ShortOfRail } from "./injected-heat.ts";
import type { InjectedRail } from "./rail-readings.ts";

const board = (() => {
  const parsed = parseBoard(smallDrive());
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
})();

function injected(told: Partial<InjectedRail>, volts = 1): InjectedRail {
  const group = railGroups(board).find(({ name }) => name === "V5");
  if (group === undefined) throw new Error("the drive has a 5 V rail");
  const power: PowerEvent = { do: "power", feed: "bench", volts, limitAmps: 1, at: ["V5", "NBUS"] };
  const bench = { lifted: new Set<string>(), off: new Set<string>(), clips: [], powered: true };
  return {
    group,
    somehow: false,
    power,
    bench,
    logIndex: 0,
    seen: [],
    amps: [],
    warmths: [],
    ohms: null,
    ...told,
  };
}

const warm = (part: string, reading: number): InjectedRail["warmths"][number] => ({
  event: { do: "measure", mode: "temperature", part, by: "camera", afterPower: 60, reading },
  logIndex: 1,
});
const drawn = (amps: number) => ({ amps: [{ amps, logIndex: 1 }] });

const ceramic = (ohms: number): ShortOfRail => ({ part: "C5", ohms, spreadLn: 0.8, bends: false });
const chip = (ohms: number): ShortOfRail => ({ part: "U3", ohms, spreadLn: 1, bends: true });

/** By how many times these readings are likelier of the one than of the other. */
const times = (told: InjectedRail, one: ShortOfRail, other: ShortOfRail): number =>
  Math.exp(injectedLog(board, told, one) - injectedLog(board, told, other));

describe("a low voltage fed into a shorted rail", () => {
  it("the part that stands out is the short, whichever it is", () => {
    const hotCeramic = injected({ warmths: [warm("C5", 45), warm("U3", 23)] });
    expect(times(hotCeramic, ceramic(1.5), chip(10))).toBeGreaterThan(20);
    const hotChip = injected({ warmths: [warm("C5", 23), warm("U3", 45)] });
    expect(times(hotChip, chip(1.5), ceramic(1.5))).toBeGreaterThan(20);
  });

  it("a short of 0.02 ohm stays cold: nothing warm does not clear it as it clears one of an ohm", () => {
    const cold = injected({ seen: ["limiting"], warmths: [warm("C5", 22), warm("U3", 22)] });
    const sure = { spreadLn: 0.2 };
    expect(times(cold, { ...ceramic(0.02), ...sure }, { ...ceramic(0.8), ...sure })).toBeGreaterThan(20);
  });

  it("goes to its limit through tenths of an ohm and not through ten", () => {
    expect(times(injected({ seen: ["limiting"] }), ceramic(0.2), chip(10))).toBeGreaterThan(10);
    expect(times(injected({ seen: ["quiet"] }), chip(10), ceramic(0.2))).toBeGreaterThan(10);
  });

  it("a chip draws more than its ohms let expect once its junctions conduct, a ceramic draws a straight line", () => {
    // 8 ohm across the rail, so about 0.12 A at 1 V
    const [straight, more] = [0.12, 0.24].map((amps) => injected({ ohms: 8, ...drawn(amps) }));
    expect(times(more, chip(8), ceramic(8))).toBeGreaterThan(4);
    expect(times(straight, ceramic(8), chip(8))).toBeGreaterThan(1.5);
    // below half a volt neither does
    const low = injected({ ohms: 8, ...drawn(0.042) }, 0.35);
    expect(times(low, chip(8), ceramic(8))).toBeCloseTo(
      times(injected({ ohms: 8 }, 0.35), chip(8), ceramic(8)),
      0,
    );
  });

  it("a cell of 1.2 V through 1 ohm never gives more than 1.2 A", () => {
    const cell = { volts: 1.2, limitAmps: 1.2, ohms: 1 };
    expect(injectedAmps(cell, 0)).toBeLessThan(1.2);
    expect(injectedAmps(cell, 1)).toBeLessThan(0.6);
  });
});

describe("a shorted rail fed by the board's own supply", () => {
  it("is compared by warmth alone: nobody knows its amps", () => {
    const hot = injected({ somehow: true, warmths: [warm("C5", 42), warm("U3", 23)] });
    expect(times(hot, ceramic(1.5), chip(10))).toBeGreaterThan(20);
    expect(times(hot, ceramic(1.5), ceramic(0.02))).toBeCloseTo(1, 6);
  });
});

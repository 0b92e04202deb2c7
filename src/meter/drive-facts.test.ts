/** What the trade knows (common practice, no source) of drives without boost, read on the shipped boards. */
import { describe, expect, it } from "vitest";
import type { Board } from "../board/board.ts";
import { parseBoard } from "../board/parse-board.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { asking, BARE, within } from "./on-the-bench.fixture.ts";

function shipped(id: string): Board {
  const parsed = parseBoard(SHIPPED.find((one) => one.id === id)?.board);
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
}

const off = (...refs: readonly string[]) => ({ ...BARE, off: new Set(refs) });
const washer = asking(shipped("washing-machine-drive"), off("MOT1"));
const drive = asking(shipped("small-frequency-drive"), off("MOT1"));
const three = asking(shipped("small-frequency-drive-3ph"), off("MOT1"));
const LINES = [
  ["L1_IN", "L2_IN"],
  ["L2_IN", "L3_IN"],
  ["L3_IN", "L1_IN"],
] as const;
const bothWays = ([a, b]: readonly [string, string]): [string, string][] => [
  [a, b],
  [b, a],
];

describe("the plug test without boost", () => {
  it("ends at OL both ways on a healthy board, after climbing", () => {
    for (const [red, black] of bothWays(["L_IN", "N_IN"])) {
      for (const ask of [washer, drive]) expect(ask("diode", red, black)).toBe("OL");
      expect(within(washer.whole("diode", red, black, "", 0.5).raw, 0.9, 1.8)).toBe(true);
    }
    for (const [red, black] of LINES.flatMap(bothWays)) expect(three("diode", red, black)).toBe("OL");
  });

  it("reads two bridge junctions where the bus is shorted, and the charge resistor on top of them", () => {
    expect(within(washer("diode", "L_IN", "N_IN", "C5:short"), 0.85, 1.02)).toBe(true);
    const [bare, limited] = [washer, drive].map((ask) => Number(ask("diode", "N_IN", "L_IN", "C5:short")));
    expect(limited - bare).toBeGreaterThan(0.02);
    for (const [red, black] of LINES.flatMap(bothWays))
      expect(within(three("diode", red, black, "C9:short"), 0.87, 1.06)).toBe(true);
  });

  it("of three wires reads OL at both pairs of an open fuse, and the bus at the third", () => {
    const shown = LINES.map(([red, black]) => three("diode", red, black, "C9:short,F1:open"));
    expect(shown.map((one) => one === "OL")).toEqual([true, false, true]);
  });

  it("of three wires shows one junction, one way only, where a bridge junction is shorted", () => {
    const [one, other] = bothWays(["L1_IN", "L2_IN"]).map(([red, black]) =>
      three("diode", red, black, "BR1.ac1plus:short"),
    );
    expect([one, other].filter((shown) => shown === "OL")).toHaveLength(1);
    expect([one, other].some((shown) => within(shown, 0.4, 0.55))).toBe(true);
  });
});

describe("six junctions of a three-phase bridge", () => {
  it("lie within 50 mV of each other to plus and from minus", () => {
    for (const pairs of [
      ["L1_C", "L2_C", "L3_C"].map((line) => [line, "BR_P"] as const),
      ["L1_C", "L2_C", "L3_C"].map((line) => ["NBUS", line] as const),
    ]) {
      const volts = pairs.map(([red, black]) => Number(three("diode", red, black)));
      expect(Math.max(...volts) - Math.min(...volts)).toBeLessThan(0.05);
      expect(Math.min(...volts)).toBeGreaterThan(0.42);
    }
  });
});

describe("the charge circuit", () => {
  it("shows the resistor while its relay rests, nothing when it burnt, a wire when the contact is welded", () => {
    for (const ask of [drive, three]) {
      expect(within(ask("ohms", "BR_P", "PBUS"), 45, 49)).toBe(true);
      expect(ask.whole("ohms", "BR_P", "PBUS", "R9:open").raw).toBeGreaterThan(10_000);
      expect(within(ask("ohms", "BR_P", "PBUS", "K1.contact:short"), 0, 0.5)).toBe(true);
    }
  });
});

describe("the brake", () => {
  it("reads its resistor at the terminals, and no path to minus but the switch's diode", () => {
    expect(within(drive("ohms", "PBUS", "BRAKE"), 95, 105)).toBe(true);
    expect(drive("diode", "BRAKE", "NBUS")).toBe("OL");
    expect(within(drive("diode", "NBUS", "BRAKE"), 0.35, 0.55)).toBe(true);
  });

  it("whose switch is shorted makes the bus read its resistor, and the bus clean again without it", () => {
    expect(within(drive("ohms", "PBUS", "NBUS", "Q2.ce:short"), 95, 105)).toBe(true);
    const without = asking(shipped("small-frequency-drive"), off("MOT1", "R25"));
    expect(without("diode", "PBUS", "NBUS", "Q2.ce:short")).toBe("OL");
    expect(within(without("diode", "BRAKE", "NBUS", "Q2.ce:short"), 0, 0.01)).toBe(true);
  });
});

describe("bus capacitors in series", () => {
  it("hide a short of one from the bus, and show it at the middle", () => {
    expect(three("diode", "PBUS", "NBUS", "C7:short")).toBe("OL");
    expect(within(three("diode", "PBUS", "BUS_M", "C7:short"), 0, 0.01)).toBe(true);
    expect(three("diode", "PBUS", "BUS_M")).toBe("OL");
  });
});

describe("control terminals", () => {
  it("stand on a 0 V of their own: megohms from there to the bus, and to no wire of the mains", () => {
    expect(within(drive("ohms", "CCOM", "NBUS"), 9e6, 9.8e6)).toBe(true);
    for (const net of ["L_IN", "PBUS", "PE"]) expect(drive("diode", "CCOM", net)).toBe("OL");
  });

  it("keep a short of their 24 V to themselves", () => {
    const short = "V24~CCOM:leaky@0.5";
    expect(drive("continuity", "V24", "CCOM", short)).toBe("beep");
    expect(drive("continuity", "V15", "NBUS", short)).toBe("silent");
  });
});

describe("what a washing machine's board switches", () => {
  it("is off while nothing drives it: triacs and relays open, loads at their plugs in ohms", () => {
    for (const [from, to] of [
      ["L_F", "O_PUMP"],
      ["L_F", "O_LOCK"],
      ["L_F", "L_LOCK"],
      ["L_LOCK", "O_FILL"],
      ["L_LOCK", "O_HEATER"],
      ["L_LOCK", "O_RINSE"],
    ])
      expect([to, washer("diode", from, to)]).toEqual([to, "OL"]);
    expect(within(washer("ohms", "O_HEATER", "N_IN"), 25, 29)).toBe(true);
    expect(within(washer("ohms", "O_PUMP", "N_IN"), 150, 170)).toBe(true);
    expect(within(washer("ohms", "O_FILL", "N_IN"), 3_600, 4_000)).toBe(true);
  });

  it("shows a shorted triac as a wire from the line to its load", () => {
    expect(within(washer("diode", "L_F", "O_PUMP", "TR2:short"), 0, 0.01)).toBe(true);
    expect(within(washer("ohms", "L_F", "N_IN", "TR2:short"), 150, 170)).toBe(true);
  });

  it("hears its tacho by the coil at the plug", () => {
    expect(within(washer("ohms", "TACHO", "NBUS"), 115, 125)).toBe(true);
    expect(washer.whole("ohms", "TACHO", "NBUS", "L3:open").raw).toBeGreaterThan(1_000);
  });
});

/**
 * Published tables and the trade's facts agree with what the shipped boards would show, healthy, motor unplugged.
 * Published: B1 brushless drive manual, B3 and B4 drive and module service manuals, B7 welder service manual, B8 drive guide,
 * B9 knowledge base of an industrial drive, B6 pump drive service manual. The rest is common practice, no source.
 */
import { describe, expect, it } from "vitest";
import type { BenchState } from "../bench/bench-state.ts";
import { parseBoard } from "../board/parse-board.ts";
import { parseFaultList } from "../board/parse-fault.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import type { MeterReading, Predictor } from "./prediction.ts";
import { makePredictor } from "./predictor.ts";
import { DEFAULT_METER } from "./settings.ts";

/** 90 % of readings lie within so many deviations each way. */
const NINETY = 1.645;
const PHASES = ["U", "V", "W"] as const;

interface Bridge {
  /** what the bridge's AC pins stand on */
  readonly lines: readonly string[];
  readonly plus: string;
  readonly minus: string;
  readonly reactor: readonly string[];
  /** ohms between bridge and bus */
  readonly charge: number;
  readonly gates: readonly (readonly [string, string])[];
  /** none on a board whose one switch works into a coil */
  readonly phases: readonly string[];
}
const BRIDGES: Readonly<Record<string, Bridge>> = {
  "greenhouse-fan-drive": {
    lines: ["L_B", "N_C"],
    plus: "PBUS",
    minus: "NBUS",
    reactor: [],
    charge: 0,
    phases: PHASES,
    gates: [
      ...PHASES.map((phase) => [`G_H${phase}`, phase] as const),
      ...PHASES.map((phase) => [`G_L${phase}`, `E_${phase}`] as const),
    ],
  },
  "outdoor-unit-inverter": {
    lines: ["L_B", "N_C"],
    plus: "BR_P",
    minus: "BR_N",
    reactor: ["L1"],
    charge: 0,
    phases: PHASES,
    gates: [["G_PFC", "NBUS"]],
  },
  "washing-machine-drive": {
    lines: ["L_B", "N_C"],
    plus: "PBUS",
    minus: "NBUS",
    reactor: [],
    charge: 0,
    phases: PHASES,
    gates: [],
  },
  "small-frequency-drive": {
    lines: ["L_C", "N_C"],
    plus: "BR_P",
    minus: "NBUS",
    reactor: [],
    charge: 47,
    phases: PHASES,
    gates: [["G_BR", "NBUS"]],
  },
  "small-frequency-drive-3ph": {
    lines: ["L1_C", "L2_C", "L3_C"],
    plus: "BR_P",
    minus: "NBUS",
    reactor: [],
    charge: 47,
    phases: PHASES,
    gates: [["G_BR", "NBUS"]],
  },
  // the work coil stands where a boost has its reactor
  "induction-hob": {
    lines: ["L_B", "N_C"],
    plus: "BR_P",
    minus: "NBUS",
    reactor: ["L2"],
    charge: 0,
    phases: [],
    gates: [["G_Q", "NBUS"]],
  },
};

describe.each(SHIPPED.map(({ id, board }) => [id, board] as const))("a healthy %s", (id, content) => {
  const parsed = parseBoard(content);
  if (!parsed.ok) throw new Error(parsed.problem);
  const board = parsed.value;
  const { lines, plus, minus, reactor, charge, gates, phases } = BRIDGES[id];
  const motors = [...board.parts].filter(([, part]) => part.kind === "motor").map(([ref]) => ref);

  const bench = (off: readonly string[]): Predictor => {
    const state: BenchState = {
      lifted: new Set(),
      off: new Set([...motors, ...off]),
      clips: [],
      powered: false,
    };
    return makePredictor(board, state, DEFAULT_METER);
  };
  const whole = bench([]);
  const read = (red: string, black: string, mode: "diode" | "ohms" | "continuity" = "diode", faults = "") => {
    const list = parseFaultList(faults, board);
    if (!list.ok) throw new Error(list.problem);
    const reading = whole.predict({ mode, red, black }, list.value);
    if (!reading.solved) throw new Error(reading.why);
    return reading;
  };
  const volts = (red: string, black: string): MeterReading["shown"] => read(red, black).shown;
  const inBand = (red: string, black: string, low: number, high: number): void => {
    const shown = volts(red, black);
    expect([red, black, shown, typeof shown === "number" && shown >= low && shown <= high]).toEqual([
      red,
      black,
      shown,
      true,
    ]);
  };
  const narrow = (red: string, black: string): void => {
    expect([red, black, 2 * NINETY * read(red, black).alike < 0.08]).toEqual([red, black, true]);
  };
  const bridge = lines.flatMap((ac) => [[ac, plus] as const, [minus, ac] as const]);
  const legs = phases.flatMap((phase) => [[phase, "PBUS"] as const, ["NBUS", phase] as const]);

  it("agrees with B1: open from plus to minus, 0.3 to 2.0 V back, six junctions of 0.3 to 0.7 V", () => {
    expect(volts("PBUS", "NBUS")).toBe("OL");
    inBand("NBUS", "PBUS", 0.3, 2);
    for (const [red, black] of legs) inBand(red, black, 0.3, 0.7);
  });

  it("conducts as in B3 to B5 and no other way, siblings within a factor of two", () => {
    for (const [red, black] of [...bridge, ...legs]) {
      expect([red, black, typeof volts(red, black)]).toEqual([red, black, "number"]);
      expect([black, red, volts(black, red)]).toEqual([black, red, "OL"]);
    }
    for (const red of phases)
      for (const black of phases)
        if (red !== black) expect([red, black, volts(red, black)]).toEqual([red, black, "OL"]);
    const ohms = phases.map((phase) => read(phase, "PBUS", "ohms").raw);
    for (const one of ohms) for (const other of ohms) expect(one / other).toBeLessThan(2);
  });

  it("agrees with B7 and B9 at the bridge and the switches", () => {
    for (const [red, black] of bridge) inBand(red, black, 0.2, 0.8);
    for (const [red, black] of [...bridge, ...legs]) inBand(red, black, 0.4, 0.7);
  });

  it("agrees with B8: open to earth from both rails and every mains wire", () => {
    for (const net of ["PBUS", "NBUS", plus, minus, ...lines]) expect(volts(net, "PE")).toBe("OL");
  });

  it("lies in the narrow band of B6, which the 0.5 to 0.8 V of a generic table contradicts", () => {
    for (const [red, black] of bridge) {
      inBand(red, black, 0.3, 0.5);
      expect(Number(volts(red, black))).toBeLessThan(0.5);
    }
  });

  it("has bridge junctions of 0.42 to 0.55 V, switch diodes of 0.35 to 0.55 V, phases within 50 mV", () => {
    for (const [red, black] of bridge) {
      inBand(red, black, 0.42, 0.55);
      narrow(red, black);
    }
    for (const [red, black] of legs) {
      inBand(red, black, 0.35, 0.55);
      narrow(red, black);
    }
    for (const row of [legs.filter(([, b]) => b === "PBUS"), legs.filter(([a]) => a === "NBUS")]) {
      const shown = row.map(([red, black]) => Number(volts(red, black)));
      for (const one of shown) for (const other of shown) expect(one - other).toBeLessThan(0.05);
    }
  });

  it("shows a gate's 10 kohm in the blocking direction", () => {
    for (const [gate, emitter] of gates)
      expect(Math.abs(read(gate, emitter, "ohms").raw / 10_000 - 1)).toBeLessThan(0.02);
  });

  it("beeps at every ceramic of a shorted rail, and at none of them when healthy", () => {
    const ceramics = [...board.parts].filter(
      ([, part]) => part.kind === "capacitor" && part.value.type === "ceramic",
    );
    for (const { name, net, against } of board.rails) {
      const onRail = ceramics.filter(
        ([, part]) => part.pins.get("plus") === net && part.pins.get("minus") === (against ?? board.zero),
      );
      expect([name, onRail.length > 0]).toEqual([name, true]);
      const fault = `${onRail[0][0]}:short`;
      for (const [ref] of onRail) {
        expect(read(`${ref}.plus`, `${ref}.minus`, "continuity").shown).toBe("silent");
        expect(read(`${ref}.plus`, `${ref}.minus`, "continuity", fault).shown).toBe("beep");
      }
    }
  });

  it("reads the boost switch's diode between bridge minus and plus only through the reactor or coil; without, the small supply's", () => {
    if (reactor.length === 0) {
      inBand("NBUS", "PBUS", 0.46, 0.52);
      return;
    }
    inBand(minus, plus, 0.39, 0.45);
    const apart = bench(reactor).predict({ mode: "diode", red: minus, black: plus }, []);
    expect(apart.solved && Number(apart.shown)).toBeGreaterThan(0.8);
  });

  it("shows the resistor between bridge and bus as its ohms, which its milliampere adds to the bus's reading", () => {
    const more = Number(volts(minus, plus)) - Number(volts("NBUS", "PBUS"));
    if (reactor.length > 0) return;
    expect(Math.abs(more - 1e-3 * charge)).toBeLessThan(0.006);
    expect(Math.abs(read(plus, "PBUS", "ohms").raw - charge)).toBeLessThan(0.5);
  });

  it("has gate pull-downs where it has gates, and a rail at each 0 V of its own", () => {
    const driven = [...board.parts.values()].filter(({ kind }) => kind === "igbt" || kind === "mosfet");
    for (const part of driven.filter(({ stage }) => stage !== "inverter"))
      expect(gates.map(([gate]) => gate)).toContain(part.pins.get("g"));
    for (const { name, net, against } of board.rails) {
      const back = against ?? board.zero;
      expect([name, volts(back, net) !== "OL"]).toEqual([name, true]);
      expect([name, volts(net, back) === "OL" || Number(volts(net, back)) > 0.3]).toEqual([name, true]);
    }
  });
});

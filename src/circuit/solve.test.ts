import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Equations, type Problem } from "./equations.ts";
import { frameOf } from "./frame.ts";
import { type Netlist, setSaturation, type Values } from "./netlist.ts";
import { solveCircuit } from "./solve.ts";

type Wire = readonly [from: number, to: number, size: number];

interface Built {
  readonly netlist: Netlist;
  readonly values: Values;
}

/** Resistors in ohms, junctions as drops in volts at 1 mA (25 mV per e-fold), npn transistors as base, collector, emitter. */
function build(
  nets: number,
  ohms: readonly Wire[],
  drops: readonly Wire[] = [],
  npn: readonly Wire[] = [],
): Built {
  const ends = (wires: readonly Wire[]) => ({
    from: Int32Array.from(wires, ([from]) => from),
    to: Int32Array.from(wires, ([, to]) => to),
  });
  const netlist: Netlist = {
    nets,
    names: Array.from({ length: nets }, (_, i) => `net${i}`),
    resistors: ends(ohms),
    henries: new Float64Array(ohms.length),
    junctions: { ...ends(drops), emissionVolts: new Float64Array(drops.length).fill(0.0257) },
    capacitors: ends([]),
    bjts: {
      base: Int32Array.from(npn, ([b]) => b),
      collector: Int32Array.from(npn, ([, c]) => c),
      emitter: Int32Array.from(npn, ([, , e]) => e),
      sign: new Int8Array(npn.length).fill(1),
      forwardGain: 100,
      reverseGain: 2,
      emissionVolts: 0.0257,
    },
  };
  const values: Values = {
    siemens: Float64Array.from(ohms, ([, , r]) => 1 / r),
    saturation: new Float64Array(drops.length),
    critical: new Float64Array(drops.length),
    farads: new Float64Array(0),
    bjtSaturation: new Float64Array(npn.length).fill(1e-14),
    extra: [],
  };
  drops.forEach(([, , volts], i) => {
    setSaturation(netlist, values, i, 1e-3 * Math.exp(-volts / 0.0257));
  });
  return { netlist, values };
}

function probe({ netlist, values }: Built, plus: number, minus: number, volts = 3, ohms = 3000): Problem {
  const source = { plus, minus, amps: volts / ohms, siemens: 1 / ohms };
  return { netlist, values, source, frame: frameOf(netlist, [plus, minus]), companions: null };
}

function seen(problem: Problem, warm: Float64Array | null = null): number {
  const answer = solveCircuit(problem, warm);
  if (!answer.solved) throw new Error(`${answer.rung} failed at ${answer.worstNet}`);
  const at = (net: number) => (net < 0 ? 0 : answer.volts[net]);
  return at(problem.source.plus) - at(problem.source.minus);
}

const SIX = fc.integer({ min: -1, max: 5 });
const resistors = fc.array(fc.tuple(SIX, SIX, fc.double({ min: 0.01, max: 1e6, noNaN: true })), {
  minLength: 4,
  maxLength: 14,
});
const junctions = fc.array(fc.tuple(SIX, SIX, fc.double({ min: 0.2, max: 0.8, noNaN: true })), {
  maxLength: 8,
});
const transistors = fc.array(fc.constantFrom<Wire>([0, 1, 2], [3, 4, -1], [5, 0, 3]), { maxLength: 2 });
const FIXED = { seed: 7, numRuns: 200 } as const;

describe("a solved circuit", () => {
  it("divides a source as the resistors say", () => {
    const divider = build(2, [
      [0, 1, 1000],
      [1, -1, 1000],
    ]);
    expect(seen(probe(divider, 0, -1, 3, 1000))).toBeCloseTo(2, 8);
  });

  it("obeys Kirchhoff's current law at every net, whatever the circuit", () => {
    fc.assert(
      fc.property(resistors, junctions, transistors, (ohms, drops, npn) => {
        const problem = probe(build(6, ohms, drops, npn), 0, -1);
        const answer = solveCircuit(problem, null);
        expect(answer.solved).toBe(true);
        if (!answer.solved) return;
        const check = new Equations(problem);
        check.startAt(answer.volts);
        check.currents();
        expect(check.worst().amps).toBeLessThan(1e-11);
      }),
      FIXED,
    );
  });

  it("gives the same reading from a warm start as from a cold one", () => {
    fc.assert(
      fc.property(resistors, junctions, (ohms, drops) => {
        const built = build(6, ohms, drops);
        const other = solveCircuit(probe(built, 2, 1), null);
        expect(other.solved).toBe(true);
        if (!other.solved) return;
        const problem = probe(built, 0, -1);
        expect(Math.abs(seen(problem, other.volts) - seen(problem))).toBeLessThan(1e-7);
      }),
      FIXED,
    );
  });

  it("superposes sources where all branches are linear", () => {
    fc.assert(
      fc.property(resistors, fc.double({ min: 0.1, max: 5, noNaN: true }), (ohms, factor) => {
        const built = build(6, ohms);
        expect(
          Math.abs(seen(probe(built, 0, -1, 3 * factor)) - factor * seen(probe(built, 0, -1, 3))),
        ).toBeLessThan(1e-7);
      }),
      FIXED,
    );
  });

  it("is reciprocal where all branches are linear: a current there is seen here as from here there", () => {
    fc.assert(
      fc.property(resistors, (ohms) => {
        const built = build(6, [...ohms, [0, -1, 1e4], [3, -1, 1e4]]);
        const one = solveCircuit(
          { ...probe(built, 0, -1), source: { plus: 0, minus: -1, amps: 1e-3, siemens: 0 } },
          null,
        );
        const other = solveCircuit(
          { ...probe(built, 3, -1), source: { plus: 3, minus: -1, amps: 1e-3, siemens: 0 } },
          null,
        );
        expect(one.solved && other.solved && Math.abs(one.volts[3] - other.volts[0])).toBeLessThan(1e-7);
      }),
      FIXED,
    );
  });
});

describe("the way to an answer", () => {
  it("is named, with its iterations and the current it misses", () => {
    const answer = solveCircuit(probe(build(1, [], [[0, -1, 0.6]]), 0, -1), null);
    expect(answer.solved && answer.rung).toBe("cold newton");
    expect(answer.solved && answer.iterations).toBeGreaterThan(0);
    expect(answer.solved && answer.residualAmps).toBeLessThan(1e-12);
  });

  it("ends in a named failure, never a number, where a branch is no number", () => {
    const built = build(2, [
      [0, 1, Number.NaN],
      [1, -1, 5],
    ]);
    const answer = solveCircuit(probe(built, 0, -1), null);
    expect(answer.solved).toBe(false);
    expect(!answer.solved && answer.worstNet).toMatch(/^net/);
  });

  it("shows one drop across a totem pole, not none", () => {
    // Collector of the upper at net 0, base driven through 10k from it, emitter to ground.
    const built = build(2, [[0, 1, 10_000]], [], [[1, 0, -1]]);
    const volts = seen(probe(built, 0, -1));
    expect(volts).toBeGreaterThan(0.5);
    expect(volts).toBeLessThan(0.9);
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { solveDense } from "../numeric/dense-lu.ts";
import { Equations, type Problem } from "./equations.ts";
import { JUNCTION_LEAK_SIEMENS, junctionAmps, junctionSiemens, limitJunction } from "./junction.ts";
import { NET_LEAK_SIEMENS } from "./netlist.ts";
import { BEND, network, probe, type Wire } from "./network.fixture.ts";
import { inEliminationOrder } from "./numbering.ts";
import { solveCircuit } from "./solve.ts";

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
    const divider = network(2, [
      [0, 1, 1000],
      [1, -1, 1000],
    ]);
    expect(seen(probe(divider, 0, -1, 3, 1000))).toBeCloseTo(2, 8);
  });

  it("obeys Kirchhoff's current law at every net, whatever the circuit", () => {
    fc.assert(
      fc.property(resistors, junctions, transistors, (ohms, drops, npn) => {
        const problem = probe(network(6, ohms, drops, npn), 0, -1);
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
        const built = network(6, ohms, drops);
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
        const built = network(6, ohms);
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
        const built = network(6, [...ohms, [0, -1, 1e4], [3, -1, 1e4]]);
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

/**
 * Newton's method as the textbook has it, a dense matrix and every junction linearised between its nets, limited on the way up
 * only: slow, and nothing shared with the solver but the law.
 */
function byTextbook({ netlist, values, source }: Problem): Float64Array {
  const { nets, resistors, junctions } = netlist;
  const volts = new Float64Array(nets + 1);
  const last = new Float64Array(values.saturation.length);
  for (let step = 0; step < 500; step++) {
    const matrix = new Float64Array(nets * nets);
    const rhs = new Float64Array(nets);
    const stamp = (from: number, to: number, siemens: number, amps: number): void => {
      for (const [row, sign] of [
        [from, 1],
        [to, -1],
      ]) {
        if (row < 0) continue;
        rhs[row] -= sign * amps;
        if (from >= 0) matrix[row * nets + from] += sign * siemens;
        if (to >= 0) matrix[row * nets + to] -= sign * siemens;
      }
    };
    const across = (from: number, to: number) => volts[from < 0 ? nets : from] - volts[to < 0 ? nets : to];
    for (let net = 0; net < nets; net++) stamp(net, -1, NET_LEAK_SIEMENS, NET_LEAK_SIEMENS * volts[net]);
    const linear = (from: number, to: number, siemens: number, amps: number) =>
      stamp(from, to, siemens, siemens * across(from, to) - amps);
    linear(source.plus, source.minus, source.siemens, source.amps);
    values.siemens.forEach((siemens, i) => {
      linear(resistors.from[i], resistors.to[i], siemens, 0);
    });
    values.saturation.forEach((saturation, i) => {
      const wanted = across(junctions.from[i], junctions.to[i]);
      last[i] = limitJunction(wanted, last[i], BEND, values.critical[i]);
      const slope = junctionSiemens(saturation, BEND, last[i]) + JUNCTION_LEAK_SIEMENS;
      const amps = junctionAmps(saturation, BEND, last[i]) + JUNCTION_LEAK_SIEMENS * last[i];
      stamp(junctions.from[i], junctions.to[i], slope, amps + slope * (wanted - last[i]));
    });
    expect(solveDense(nets, matrix, rhs)).toBe(true);
    rhs.forEach((change, net) => {
      volts[net] += change;
    });
    if (step > 0 && rhs.every((change) => Math.abs(change) < 1e-10)) break;
  }
  return volts;
}

describe("the same answer another way", () => {
  it("is that of Newton's method as the textbook has it, however junctions are linearised on the way", () => {
    fc.assert(
      fc.property(resistors, junctions, (ohms, drops) => {
        const problem = probe(network(6, ohms, drops), 0, -1);
        expect(Math.abs(seen(problem) - byTextbook(problem)[0])).toBeLessThan(1e-7);
      }),
      FIXED,
    );
  });

  it("does not depend on how nets are numbered", () => {
    fc.assert(
      fc.property(resistors, junctions, transistors, (ohms, drops, npn) => {
        const built = network(6, ohms, drops, npn);
        const { netlist, numberOf } = inEliminationOrder(built.netlist);
        const numbered = probe({ ...built, netlist }, numberOf(0), -1);
        expect(netlist.names[numberOf(3)]).toBe("net3");
        expect(Math.abs(seen(numbered) - seen(probe(built, 0, -1)))).toBeLessThan(1e-7);
      }),
      FIXED,
    );
  });

  it("comes from a sweep, each point started from the one before, as from 0 V", () => {
    fc.assert(
      fc.property(resistors, junctions, transistors, (ohms, drops, npn) => {
        const built = network(6, ohms, drops, npn);
        const start = probe(built, 0, -1, 1);
        let volts: Float64Array | null = null;
        for (const openVolts of [1, 1.0001, 1.0002, 1.1, 0.4]) {
          const problem = { ...start, source: { ...start.source, amps: openVolts / 3000 } };
          const answer = solveCircuit(problem, volts);
          expect(answer.solved).toBe(true);
          if (!answer.solved) return;
          expect(Math.abs(answer.volts[0] - seen(problem))).toBeLessThan(1e-7);
          volts = answer.volts;
        }
      }),
      FIXED,
    );
  });
});

describe("the way to an answer", () => {
  it("is short where a junction's current falls by four decades: the tangent's current is taken, not its voltage", () => {
    const diode = network(1, [], [[0, -1, 0.6]]);
    const milliamp = solveCircuit(probe(diode, 0, -1, 3, 3000), null);
    expect(milliamp.solved).toBe(true);
    if (!milliamp.solved) return;
    const answer = solveCircuit(probe(diode, 0, -1, 3, 3e7), milliamp.volts);
    expect(answer.solved && answer.rung).toBe("warm newton");
    expect(answer.solved && answer.iterations).toBeLessThan(8);
  });

  it("is named, with its iterations and the current it misses", () => {
    const answer = solveCircuit(probe(network(1, [], [[0, -1, 0.6]]), 0, -1), null);
    expect(answer.solved && answer.rung).toBe("cold newton");
    expect(answer.solved && answer.iterations).toBeGreaterThan(0);
    expect(answer.solved && answer.residualAmps).toBeLessThan(1e-12);
  });

  it("ends in a named failure, never a number, where a branch is no number", () => {
    const built = network(2, [
      [0, 1, Number.NaN],
      [1, -1, 5],
    ]);
    const answer = solveCircuit(probe(built, 0, -1), null);
    expect(answer.solved).toBe(false);
    expect(!answer.solved && answer.worstNet).toMatch(/^net/);
  });

  it("shows one drop across a totem pole, not none", () => {
    // Collector of the upper at net 0, base driven through 10k from it, emitter to ground.
    const built = network(2, [[0, 1, 10_000]], [], [[1, 0, -1]]);
    const volts = seen(probe(built, 0, -1));
    expect(volts).toBeGreaterThan(0.5);
    expect(volts).toBeLessThan(0.9);
  });
});

/** What a circuit answers about small changes holds whatever was solved since it settled. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Change, Linearised } from "./linearised.ts";
import { network, probe } from "./network.fixture.ts";
import { solveCircuit } from "./solve.ts";

const SIX = fc.integer({ min: -1, max: 5 });
const resistors = fc.array(fc.tuple(SIX, SIX, fc.double({ min: 1, max: 1e5, noNaN: true })), {
  minLength: 6,
  maxLength: 14,
});
const junctions = fc.array(fc.tuple(SIX, SIX, fc.double({ min: 0.3, max: 0.8, noNaN: true })), {
  maxLength: 6,
});
const FIXED = { seed: 7, numRuns: 100 } as const;

describe("a circuit linearised at its answer", () => {
  it("sees from the probes what a small current does, before and after another circuit was solved", () => {
    fc.assert(
      fc.property(resistors, junctions, (ohms, drops) => {
        const problem = probe(network(6, ohms, drops, [[1, 2, 3]]), 0, -1);
        const answer = solveCircuit(problem, null);
        const other = probe(
          network(
            4,
            [
              [0, 1, 5],
              [1, 3, 70],
            ],
            [[0, 2, 0.5]],
          ),
          0,
          3,
        );
        const nudged = { ...problem, source: { ...problem.source, amps: problem.source.amps * (1 + 1e-5) } };
        const near = answer.solved ? solveCircuit(nudged, answer.volts) : answer;
        expect(answer.solved && near.solved).toBe(true);
        if (!answer.solved || !near.solved) return;
        const fresh = new Linearised(problem, answer.volts).transfer(0, -1)[0];
        solveCircuit(other, null);
        const late = new Linearised(problem, answer.volts).transfer(0, -1)[0];
        const perAmp = (near.volts[0] - answer.volts[0]) / (1e-5 * problem.source.amps);
        expect(Math.abs(late - fresh)).toBeLessThan(2e-4 * fresh + 1e-9);
        expect(Math.abs(late - perAmp)).toBeLessThan(1e-2 * late + 1);
      }),
      FIXED,
    );
  });

  it("is not mistaken for another that was asked in between", () => {
    const [one, other] = [1e3, 1e5].map((ohms) =>
      probe(
        network(2, [
          [0, 1, ohms],
          [1, -1, 50],
        ]),
        0,
        -1,
      ),
    );
    const first = solveCircuit(one, null);
    if (!first.solved) throw new Error("a divider has an answer");
    const linearised = new Linearised(one, first.volts);
    const before = linearised.impedance(0, 1);
    const second = solveCircuit(other, null);
    if (!second.solved) throw new Error("a divider has an answer");
    const late = new Linearised(other, second.volts);
    expect(linearised.impedance(1, -1)).toBeLessThan(50);
    // 3000 ohms of the meter beside 100,050 of the divider
    expect(late.transfer(0, -1)[0]).toBeCloseTo(1 / (1 / 3000 + 1 / 100_050), 2);
    expect(linearised.impedance(0, 1)).toBe(before);
  });

  it("moves to where a leak takes it as a whole solve does, with another solve in between", () => {
    fc.assert(
      fc.property(
        resistors,
        junctions,
        fc.double({ min: 1e4, max: 1e6, noNaN: true }),
        (ohms, drops, leak) => {
          const built = network(6, [...ohms, [0, 1, 1e3], [1, -1, 1e3]], drops);
          const problem = probe(built, 0, -1);
          const answer = solveCircuit(problem, null);
          expect(answer.solved).toBe(true);
          if (!answer.solved) return;
          const linearised = new Linearised(problem, answer.volts);
          const change: Change = { from: 1, to: -1, siemens: 1 / leak, junction: -1 };
          const first = linearised.moved([change], 1e-9)?.slice();
          const leaking = network(6, [...ohms, [0, 1, 1e3], [1, -1, 1e3], [1, -1, leak]], drops);
          const whole = solveCircuit(probe(leaking, 0, -1), null);
          expect(whole.solved).toBe(true);
          const again = linearised.moved([change], 1e-9);
          if (!whole.solved || first === undefined || again === null) return;
          expect(Math.abs(again[0] - first[0])).toBeLessThan(1e-12);
          expect(Math.abs(again[0] - whole.volts[0])).toBeLessThan(1e-4);
        },
      ),
      FIXED,
    );
  });
});

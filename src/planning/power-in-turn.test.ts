import fc from "fast-check";
import { expect, test } from "vitest";
import { handModel } from "./hand-model.fixture.ts";
import { mostValue } from "./power-in-turn.ts";
import { FINDING_OUT_RATES, jobValue } from "./value.ts";

const row = fc.record({
  p: fc.double({ min: 0, max: 1, noNaN: true }),
  cost: fc.double({ min: 0, max: 200, noNaN: true }),
  possible: fc.boolean(),
  breaks: fc.double({ min: 0, max: 80, noNaN: true }),
});

test("no outcomes of any step are together worth more than every fault known from the start", () => {
  fc.assert(
    fc.property(
      fc.array(
        fc.tuple(row, fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 3, maxLength: 3 })),
        {
          minLength: 1,
          maxLength: 9,
        },
      ),
      fc.constantFrom(...FINDING_OUT_RATES),
      fc.double({ min: 0, max: 20, noNaN: true }),
      (rows, minutesPerBit, testMoney) => {
        const model = handModel(
          rows.map(([one]) => one),
          140,
          testMoney,
        );
        const worth = [0, 1, 2].reduce((sum, outcome) => {
          const weights = model.weights.map((weight, g) => {
            const shares = rows[g]?.[1] ?? [];
            const all = shares.reduce((total, share) => total + share, 0);
            return all > 0 ? (weight * (shares[outcome] ?? 0)) / all : outcome === 0 ? weight : 0;
          });
          return sum + jobValue(weights, model, minutesPerBit);
        }, 0);
        expect(worth).toBeLessThanOrEqual(mostValue(model) + 1e-9);
      },
    ),
    { seed: 7 },
  );
});

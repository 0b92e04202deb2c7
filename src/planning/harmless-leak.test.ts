/** A leak that only warms is believed in and left alone. */
import { expect, test } from "vitest";
import type { Belief } from "../diagnosis/belief.ts";
import { isHarmless } from "../priors/harmless.ts";
import { propose } from "./propose.ts";
import { provenEmpty, scene, smallDriveBoard } from "./scene.fixture.ts";

const BOARD = smallDriveBoard();

/** What is proposed where just this leak is believed, and nothing is left that a check could tell. */
function proposed(leak: string) {
  const { input, belief, priors, predictor } = scene(BOARD, provenEmpty(BOARD));
  const fault = priors.faults.findIndex(({ reportAs, fault: { value } }) => `${reportAs}@${value}` === leak);
  const prior = priors.faults[fault];
  if (prior === undefined) throw new Error(`the table has no ${leak}`);
  const sure: Belief = {
    ...belief,
    explanations: [
      {
        faults: [{ fault, since: -1 }],
        presentNow: [fault],
        probability: 1,
        silent: new Float64Array(priors.faults.length),
        nothingBeside: 1,
        readingLogLikelihood: new Map(),
      },
    ],
    unexplained: [],
  };
  return { harmless: isHarmless(BOARD, prior), action: propose(input, sure, priors, predictor).action };
}

test("a bus capacitor that leaks through a hundred kilohms is no reason to buy one; through a hundred ohms it is", () => {
  const high = proposed("C1:leaky@100000");
  expect(high.harmless).toBe(true);
  expect(high.action).not.toMatchObject({ part: "C1" });
  const low = proposed("C1:leaky@100");
  expect(low.harmless).toBe(false);
  expect(low.action).toMatchObject({ part: "C1" });
});

/** A board is not written off for a part that nobody sells before that part was measured by itself. */
import { expect, test } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import type { Belief } from "../diagnosis/belief.ts";
import { plain } from "../messages/said.ts";
import { isObtainable } from "../money/prices.ts";
import { propose } from "./propose.ts";
import { provenEmpty, scene, smallDriveBoard } from "./scene.fixture.ts";

const BOARD = smallDriveBoard();
const { priors } = scene(BOARD, []);
const SUPPLY = priors.faults.findIndex(({ reportAs }) => reportAs === "U3.supply:short");
const LIFT: JobEvent = { do: "lift", place: "U3.vdd" };
const BY_ITSELF: JobEvent = { do: "measure", mode: "diode", red: "NBUS", black: "U3.vdd", reading: 0 };

/** What is proposed where nothing but the controller's shorted supply is believed. */
function proposed(...log: JobEvent[]) {
  const given = scene(BOARD, [...provenEmpty(BOARD), ...log]);
  const sure: Belief = {
    ...given.belief,
    explanations: [
      {
        faults: [{ fault: SUPPLY, since: -1 }],
        presentNow: [SUPPLY],
        probability: 1,
        silent: new Float64Array(priors.faults.length),
        nothingBeside: 1,
        readingLogLikelihood: new Map(),
      },
    ],
    unexplained: [],
  };
  return propose(given.input, sure, given.priors, given.predictor);
}

test("however sure the readings in circuit are, the controller is lifted first and measured, and then the board is given up", () => {
  const controller = BOARD.parts.get("U3");
  expect(SUPPLY).toBeGreaterThanOrEqual(0);
  expect(controller !== undefined && isObtainable(controller)).toBe(false);
  expect(proposed().action).toEqual(LIFT);
  expect(plain(proposed().why)).toContain("measured by itself");
  expect(proposed(LIFT).action).toMatchObject({ do: "measure", mode: "diode", red: "NBUS", black: "U3.vdd" });
  expect(proposed(LIFT, BY_ITSELF).action).toEqual({ do: "close", verdict: "not-repairable" });
});

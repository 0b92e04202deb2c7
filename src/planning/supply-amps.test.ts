import { expect, it } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import { planningHypotheses } from "./hypotheses.ts";
import { repairModel } from "./repair-model.ts";
import { provenEmpty, scene, smallDriveBoard } from "./scene.fixture.ts";
import { supplyProposal } from "./supply-amps.ts";

const BOARD = smallDriveBoard();
const FED: JobEvent = {
  do: "power",
  feed: "bench",
  volts: 15,
  limitAmps: 0.1,
  at: ["V15", "NBUS"],
  observed: "quiet",
};

function asked(...log: readonly JobEvent[]) {
  const { input, belief, priors } = scene(BOARD, [...provenEmpty(BOARD), ...log]);
  const hypotheses = planningHypotheses(belief, new Set());
  const model = repairModel(hypotheses, BOARD, input.timeline.now, input.terms, priors, 0);
  return supplyProposal(input, hypotheses, model)?.action ?? null;
}

it("the amps on the bench supply's own display are written down before it goes off: nothing is touched for it", () => {
  expect(asked(FED)).toEqual({ do: "measure", mode: "amps", red: "V15", black: "NBUS" });
  const read: JobEvent = { do: "measure", mode: "amps", red: "V15", black: "NBUS", reading: 0.04 };
  expect(asked(FED, read)).toBeNull();
});

it("a cell has no display: nothing is asked of it", () => {
  expect(asked({ ...FED, volts: 1.2, limitAmps: 1.2, ohms: 1 } as JobEvent)).toBeNull();
});

it("a supply at its limit, or one that made smoke, is switched off at once", () => {
  expect(asked({ ...FED, observed: "limiting" })).toBeNull();
  expect(asked({ ...FED, observed: "smoke" })).toBeNull();
  expect(asked({ do: "power", feed: "mains", observed: "quiet" })).toBeNull();
});

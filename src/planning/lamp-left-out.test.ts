import { expect, it } from "vitest";
import type { JobEvent, PowerEvent } from "../bench/event.ts";
import { planningHypotheses } from "./hypotheses.ts";
import { powerFinding } from "./power-step.ts";
import { repairModel } from "./repair-model.ts";
import { provenEmpty, scene, smallDriveBoard } from "./scene.fixture.ts";

const BOARD = smallDriveBoard();

/** The feed of the next power-up where the mains would break something so often, at these losses. */
function feed(anyBreaks: number, lossMoney: { lamp: number; mains: number }, ...work: readonly JobEvent[]) {
  const { input, belief, priors } = scene(BOARD, [...provenEmpty(BOARD), ...work]);
  const hypotheses = planningHypotheses(belief, new Set());
  const model = repairModel(hypotheses, BOARD, input.timeline.now, input.terms, priors, 0);
  const risk = (power: PowerEvent) => ({
    anyBreaks: power.feed === "mains" ? anyBreaks : anyBreaks / 3,
    lossMoney: power.feed === "mains" ? lossMoney.mains : lossMoney.lamp,
  });
  const action = powerFinding(input, hypotheses, model, risk, false)?.step.action;
  return action?.do === "power" ? action.feed : null;
}
const LITTLE = { lamp: 0.2, mains: 0.5 };

it("the lamp is left out where it would spare less than its minutes cost and hardly anything can break", () => {
  expect(feed(0.03, LITTLE)).toBe("mains");
  // it spares more than four minutes of the bench
  expect(feed(0.03, { lamp: 0.2, mains: 5 })).toBe("lamp");
});

it("whatever it costs, the lamp comes first where something may well break: parts burst beside hands", () => {
  expect(feed(0.1, LITTLE)).toBe("lamp");
  expect(feed(0.6, { lamp: 0.2, mains: 0.5 })).toBe("lamp");
});

it("after work on the path of the mains' power the lamp comes first; after work on the logic it may not", () => {
  expect(feed(0.03, LITTLE, { do: "replace", part: "Q1" })).toBe("lamp");
  expect(feed(0.03, LITTLE, { do: "resolder", part: "BR1" })).toBe("lamp");
  expect(feed(0.03, LITTLE, { do: "clean", stage: "input" })).toBe("lamp");
  expect(feed(0.03, LITTLE, { do: "replace", part: "U2" })).toBe("mains");
});

import { expect, it } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import { storesOfCharge } from "../board/stores-of-charge.ts";
import { planningHypotheses } from "./hypotheses.ts";
import { lowerRungs } from "./lower-rungs.ts";
import { PowerRisk } from "./power-risk.ts";
import { powerFinding } from "./power-step.ts";
import { repairModel } from "./repair-model.ts";
import { provenEmpty, scene, smallDriveBoard } from "./scene.fixture.ts";

const BOARD = smallDriveBoard();

/** A leg that leaks, and cannot be told cold whether it breaks down under volts. */
const SUSPECT: readonly JobEvent[] = [
  ...provenEmpty(BOARD),
  { do: "measure", mode: "diode", red: "PBUS", black: "U", reading: 0.12 },
];

function at(equipment: readonly string[], log: readonly JobEvent[] = SUSPECT) {
  const { input, belief, priors } = scene(BOARD, log, { equipment });
  const hypotheses = planningHypotheses(belief, new Set());
  const stores = storesOfCharge(BOARD).length;
  const model = repairModel(hypotheses, BOARD, input.timeline.now, input.terms, priors, stores);
  const risk = new PowerRisk(input, belief, priors);
  const next = powerFinding(input, hypotheses, model, (power) => risk.under(power), false);
  return { rungs: lowerRungs(input, hypotheses, model, risk, next), next, risk, model };
}

it("a bench without a supply has no rung below the lamp, and none is weighed", () => {
  expect(at(["lamp-100"]).rungs).toEqual({ all: [], first: null });
});

it("only rungs that could say stop are weighed, each with less to lose than the mains", () => {
  const { rungs, risk } = at(["bench-supply"]);
  expect(rungs.all.length).toBeGreaterThan(0);
  const mains = risk.under({ do: "power", feed: "mains" }).lossMoney;
  for (const { action, lossMoney } of rungs.all) {
    expect(action).toMatchObject({ do: "power", feed: "bench" });
    expect(lossMoney).toBeLessThan(mains);
  }
});

it("the ladder is not climbed where what a lower rung spares is worth less than its minutes", () => {
  const { rungs, next, risk, model } = at(["lamp-100", "bench-supply"], provenEmpty(BOARD));
  const above = next === null ? 0 : risk.under(next.rung.action).lossMoney;
  const minutes = Math.min(...rungs.all.map(({ allMinutes }) => allMinutes)) * model.perMinute;
  // nothing could be spared beyond all that the lamp would lose
  expect(above).toBeLessThan(minutes);
  expect(rungs.first).toBeNull();
});

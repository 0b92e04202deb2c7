import { expect, it } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import { plain } from "../messages/said.ts";
import { planningHypotheses } from "./hypotheses.ts";
import { PowerRisk } from "./power-risk.ts";
import { provenEmpty, scene, smallDriveBoard } from "./scene.fixture.ts";

const BOARD = smallDriveBoard();
const LAMP = { do: "power", feed: "lamp", watts: 100 } as const;
const MAINS = { do: "power", feed: "mains" } as const;

/** The first leg reads shorted through. */
const LEG: readonly JobEvent[] = [
  ...provenEmpty(BOARD),
  { do: "measure", mode: "diode", red: "PBUS", black: "U", reading: 0.001 },
  { do: "measure", mode: "diode", red: "U", black: "NSH", reading: 0.001 },
];

/** A new fuse is in: the mains would reach what is behind it. */
const NEW_FUSE: JobEvent = { do: "replace", part: "F1" };

function riskAfter(log: readonly JobEvent[], equipment: readonly string[]): PowerRisk {
  const { input, belief, priors } = scene(BOARD, log, { equipment });
  return new PowerRisk(input, belief, priors);
}

it("with a leg left shorted the mains would cost several times what the lamp does, part by part, each with its cause", () => {
  const risk = riskAfter([...LEG, NEW_FUSE], ["lamp-100"]);
  const [lamp, mains] = [risk.under(LAMP), risk.under(MAINS)];
  expect(mains.anyBreaks).toBeGreaterThan(0.5);
  expect(lamp.lossMoney).toBeLessThan(mains.lossMoney / 2);
  expect(risk.breaks(LAMP, lamp).length).toBeGreaterThan(0);
  expect(plain(risk.breaks(LAMP, lamp)[0].because)).toMatch(/likeliest cause|nothing else wrong/);
});

it("while the fuse may be open the mains may break nothing, and is foretold less", () => {
  expect(riskAfter(LEG, []).under(MAINS).anyBreaks).toBeLessThan(
    riskAfter([...LEG, NEW_FUSE], []).under(MAINS).anyBreaks,
  );
});

it("what the belief loses under a feed is what each set of faults loses, weighed", () => {
  const { input, belief, priors } = scene(BOARD, LEG, { equipment: [] });
  const risk = new PowerRisk(input, belief, priors);
  const hypotheses = planningHypotheses(belief, new Set());
  const mean = (power: typeof LAMP | typeof MAINS) => {
    const losses = risk.losses(power, hypotheses);
    const total = hypotheses.list.reduce((sum, { weight }) => sum + weight, 0);
    return hypotheses.list.reduce((sum, { weight }, h) => sum + weight * losses[h], 0) / total;
  };
  expect(mean(LAMP)).toBeLessThan(mean(MAINS) / 2);
});

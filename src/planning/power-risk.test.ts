import { expect, it } from "vitest";
import type { JobEvent } from "../bench/event.ts";
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

function riskAfter(log: readonly JobEvent[], equipment: readonly string[]): PowerRisk {
  const { input, belief, priors } = scene(BOARD, log, { equipment });
  return new PowerRisk(input, belief, priors);
}

it("with a leg left shorted the mains would cost several times what the lamp does, and the card says both", () => {
  const risk = riskAfter(LEG, ["lamp-100"]);
  const [lamp, mains] = [risk.under(LAMP), risk.under(MAINS)];
  expect(mains.anyBreaks).toBeGreaterThan(0.5);
  expect(lamp.lossMoney).toBeLessThan(mains.lossMoney / 2);
  const { advice, breaks } = risk.forecast(LAMP);
  expect(advice).toMatch(/Through the lamp .* straight on the mains .*EUR on the average/);
  expect(advice).toContain("Series lamp 100 W");
  expect(breaks.length).toBeGreaterThan(0);
  expect(risk.forecast(MAINS).advice).toContain("right fuse");
});

it("without a lamp the card says what one would spare", () => {
  expect(riskAfter(LEG, []).forecast(MAINS).advice).toContain("no series lamp");
});

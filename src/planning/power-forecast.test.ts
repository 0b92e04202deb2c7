import { expect, it } from "vitest";
import type { JobEvent, PowerEvent } from "../bench/event.ts";
import { plain } from "../messages/said.ts";
import { findings } from "./finding-steps.ts";
import { planningHypotheses } from "./hypotheses.ts";
import { powerForecast, whyPower } from "./power-forecast.ts";
import { PowerRisk } from "./power-risk.ts";
import { repairModel } from "./repair-model.ts";
import { provenEmpty, scene, smallDriveBoard } from "./scene.fixture.ts";

const BOARD = smallDriveBoard();
const LAMP: PowerEvent = { do: "power", feed: "lamp", watts: 100 };
const MAINS: PowerEvent = { do: "power", feed: "mains" };

function cardOf(action: PowerEvent, equipment: readonly string[], ...log: readonly JobEvent[]) {
  const { input, belief, priors, predictor } = scene(BOARD, [...provenEmpty(BOARD), ...log], { equipment });
  const hypotheses = planningHypotheses(belief, new Set());
  const model = repairModel(hypotheses, BOARD, input.timeline.now, input.terms, priors, 0);
  const risk = new PowerRisk(input, belief, priors);
  const { steps } = findings(input, belief, hypotheses, predictor);
  return {
    forecast: powerForecast(input, action, risk, hypotheses, model, steps),
    why: whyPower(input, action, null),
    risk,
  };
}

it("each feed that the bench has stands beside this one with chance and money, gentlest first; none that it has not", () => {
  const { forecast, risk } = cardOf(LAMP, ["lamp-100"]);
  expect(forecast.feeds.map(({ what, chosen }) => [plain(what), chosen])).toEqual([
    ["lamp, 100 W", true],
    ["mains", false],
  ]);
  expect(forecast.feeds[1].lossMoney).toBe(risk.under(MAINS).lossMoney);
  expect(forecast.feeds[0].lossMoney).toBeLessThan(forecast.feeds[1].lossMoney);
  const supplied = cardOf(MAINS, ["lamp-100", "bench-supply"]).forecast.feeds;
  expect(supplied.map(({ what }) => plain(what))).toEqual([
    "30 V, 0.1 A into the bus",
    "lamp, 100 W",
    "mains",
  ]);
  expect(cardOf(MAINS, []).forecast.feeds.map(({ what }) => plain(what))).toEqual(["mains"]);
});

it("two or three cold checks are named that would see most of what this power-up would lose", () => {
  const { lowers } = cardOf(MAINS, ["lamp-100"]).forecast;
  expect(lowers.length).toBeGreaterThan(0);
  expect(lowers.length).toBeLessThanOrEqual(3);
  for (const { what, share, minutes } of lowers) {
    expect(plain(what)).toMatch(/red on .*black on|look at/);
    expect(share).toBeGreaterThan(0);
    expect(share).toBeLessThanOrEqual(1);
    expect(minutes).toBeGreaterThan(0);
  }
});

it("money already spent stands on the card with the chance that this power-up shows it lost", () => {
  expect(cardOf(MAINS, []).forecast.spent).toBeNull();
  const bought: JobEvent = { do: "replace", part: "BR1", price: 2.5 };
  const { spent } = cardOf(MAINS, [], bought).forecast;
  expect(spent?.money).toBe(2.5);
  expect(spent?.probability).toBeGreaterThan(0);
  expect(spent?.probability).toBeLessThan(1);
});

it("the card says which lamp and what it passes, or what a lamp would spare, and when to go on or stop", () => {
  const lamp = cardOf(LAMP, ["lamp-100"]);
  expect(plain(lamp.forecast.advice)).toMatch(/Series lamp 100 W/);
  expect(plain(lamp.forecast.rung.goOn)).toContain("the bus stands at its volts");
  expect(plain(lamp.why)).toContain("the lamp holds the mains back");
  expect(plain(cardOf(MAINS, []).forecast.advice)).toMatch(/no series lamp/);
  expect(plain(cardOf(MAINS, ["lamp-100"]).forecast.advice)).toContain("right fuse");
});

it("where the lamp went dark and nothing was read, the card says why it is wanted again", () => {
  const dark: readonly JobEvent[] = [
    { ...LAMP, observed: "lamp-dark" },
    { do: "unpower" },
    ...provenEmpty(BOARD),
  ];
  expect(plain(cardOf(LAMP, ["lamp-100"], ...dark).why)).toMatch(
    /shows that the bus stands: gone dark proves nothing/,
  );
});

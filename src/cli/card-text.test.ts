import { expect, it } from "vitest";
import { insulationAnswers } from "../job/insulation-words.ts";
import type { BenchView, CardView } from "../wire/bench-view.ts";
import { cardText } from "./card-text.ts";

const FORECAST: NonNullable<CardView["forecast"]> = {
  rung: { proves: "the whole", goOn: "it runs", stop: "it trips" },
  ladder: [
    { name: "mains through a series lamp", state: "done", note: null },
    { name: "mains with its motor and load", state: "now", note: null },
    { name: "bench supply into a rail", state: "shut", note: "wants a bench supply" },
  ],
  feeds: [
    { what: "lamp, 100 W", anyBreaks: 0.02, lossMoney: 0.64, chosen: false },
    { what: "mains", anyBreaks: 0.06, lossMoney: 12.3, chosen: true },
  ],
  lowers: [{ what: "diode, red on PBUS, black on U", minutes: 0.4, share: 0.42 }],
  spent: { money: 32, probability: 0.11 },
  anyBreaks: 0.06,
  breaks: [{ part: "BR1", probability: 0.03, because: "C1 shorted may be left (2 %)" }],
  advice: "On the mains only through the right fuse.",
};

const CARD: CardView = {
  action: { do: "power", feed: "mains" },
  gate: null,
  answers: [],
  headline: "Power up on the mains",
  red: null,
  black: null,
  mode: null,
  clipModes: [],
  probesOn: null,
  row: [],
  rowWords: [],
  minutes: 3,
  money: 0,
  why: "It is due.",
  expect: [],
  cautions: [],
  wait: null,
  good: null,
  restsOn: [],
  atStake: null,
  forecast: FORECAST,
  firstMinute: null,
  others: [],
  outlook: { expectedMargin: 50, repairProbability: 0.9 },
};

const SAFE: BenchView["safety"] = {
  stores: [],
  open: true,
  words: "All proven empty.",
  overruled: null,
  powerWaits: null,
  motorWaits: null,
  resistors: [],
  turns: [],
};

const MONEY: BenchView["money"] = {
  currency: "EUR",
  spent: { minutes: 0, labour: "0.00", parts: [], total: "0.00" },
  toGo: null,
  advice: "",
  askAgain: null,
  givenUp: { rows: [], total: "0.00", result: "0.00" },
  quote: {
    offers: [],
    advised: "repair",
    reason: "",
    grounds: "chance",
    repairProbability: 1,
    answered: null,
  },
  bill: { soFar: true, basis: "", lines: [], net: "0.00", taxPercent: 0, tax: "0.00", total: "0.00" },
};

const VIEW: Omit<BenchView, "card"> = {
  boardName: "a drive",
  currency: "EUR",
  powered: false,
  safety: SAFE,
  suspects: [],
  explanations: [],
  remainder: 0,
  healthyProbability: 0,
  signs: [],
  recheck: [],
  baselines: [],
  unexplained: [],
  whole: true,
  compared: [],
  log: [],
  grids: [],
  places: [],
  lifted: [],
  off: [],
  revision: null,
  money: MONEY,
  beepOhms: 40,
  minutesSpent: 0,
  moneySpent: 0,
  waiting: null,
  verdict: null,
};

const text = (card: CardView) => cardText({ ...VIEW, card }, false);

it("before power the terminal says what each feed breaks and loses, what would see it first, and what opens each rung", () => {
  const told = text(CARD);
  expect(told).toMatch(/2\.0 % +0\.6 EUR +lamp, 100 W\n/);
  expect(told).toMatch(/6\.0 % +12 EUR +mains \(this step\)/);
  expect(told).toMatch(/32 EUR spent so far; this shows it lost with 11 %/);
  expect(told).toMatch(/42 % +0\.4 min +diode, red on PBUS, black on U/);
  expect(told).toMatch(/not yet +bench supply into a rail +wants a bench supply/);
  expect(told).toMatch(/NOW +mains with its motor and load/);
  expect(told).toContain("Go on when it runs. Stop when it trips.");
});

it("at the motor's gate the terminal says what to type, and how to go on without", () => {
  const told = text({ ...CARD, gate: "motor", answers: insulationAnswers(), forecast: null });
  expect(told).toContain("Type over 50 | 10 to 50 | 2 to 10 | under 2 | not read, or the figure.");
  expect(told).toContain("To drive it unread: overrule motor WHY");
});

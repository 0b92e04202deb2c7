import { expect, test } from "vitest";
import { amount, expectations } from "./expectations.ts";
import type { Hypotheses } from "./hypotheses.ts";
import type { FindingStep } from "./steps.ts";

test("ohms are said to the tenth that a hand meter shows, larger quantities to three digits", () => {
  expect(amount(0.281, "ohm")).toBe("0.3 ohm");
  expect(amount(0, "ohm")).toBe("0 ohm");
  expect(amount(51.23, "ohm")).toBe("51.2 ohm");
  expect(amount(10_240, "ohm")).toBe("10.2 kohm");
  expect(amount(0.44, "V")).toBe("0.44 V");
});

test("on the mains no lamp glows and nothing limits; through a lamp it may", () => {
  const list = ["runs", "lamp-dark", "limiting"].map((_, h) => ({
    ...{ core: h, beside: -1, unlisted: false },
    weight: 1 / 3,
    dead: [],
  }));
  const hypotheses: Hypotheses = {
    priors: [],
    cores: list.map(() => ({ present: [], faults: [] })),
    list,
    remainder: 0,
  };
  const seen = (feed: "mains" | "lamp") => {
    const step: FindingStep = {
      action: { do: "power", feed },
      ...{ row: [], minutes: 3, allMinutes: 3, inHand: null, lossMoney: 0, lead: null },
      outcomes: ["runs", "lamp-dark", "limiting"].map((word) => ({ word, low: null, high: null })),
      shares: list.map((_, h) => Float64Array.from(list, (__, k) => (h === k ? 1 : 0))),
    };
    return expectations(step, hypotheses).map((one) => one.if);
  };
  expect(seen("mains")).toEqual(["runs"]);
  expect(seen("lamp")).toEqual(["runs", "lamp-dark"]);
});

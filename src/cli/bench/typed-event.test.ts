import { describe, expect, it } from "vitest";
import type { Action } from "../../planning/proposal.ts";
import { type Proposed, parseLine } from "./typed-event.ts";

const stamp = () => ({ id: "e", at: "2026-03-01T09:30:00Z" });
const TIMED = { id: "e", at: "2026-03-01T09:30:00Z" };
const CHECK: Action = { do: "measure", mode: "diode", red: "PBUS", black: "NBUS" };
const SECOND: Action = { do: "measure", mode: "diode", red: "NBUS", black: "PBUS" };
const CARD = { action: CHECK, row: [SECOND] };

function typed(line: string, card: Proposed | null = CARD) {
  const parsed = parseLine(line, { card, stamp, isPart: (word) => word === "U1" });
  return parsed.ok ? parsed.value : parsed.problem;
}

describe("a line at the prompt", () => {
  it("answers the check proposed, and the row after it", () => {
    expect(typed("0.47")).toEqual([{ ...CHECK, reading: 0.47, ...TIMED }]);
    expect(typed("0.47 climbing OL")).toEqual([
      { ...CHECK, reading: 0.47, settling: "climbing", ...TIMED },
      { ...SECOND, reading: "OL", ...TIMED },
    ]);
    expect(typed("0.1 0.2 0.3")).toMatch(/3 readings for 2 checks/);
  });

  it("says that a step is done, seen or survived", () => {
    expect(typed("done", { action: { do: "lift", place: "Q1.c" }, row: [] })).toEqual([
      { do: "lift", place: "Q1.c", ...TIMED },
    ]);
    expect(typed("bulged", { action: { do: "look", part: "C1" }, row: [] })).toEqual([
      { do: "look", part: "C1", finding: "bulged", ...TIMED },
    ]);
    const power = { action: { do: "power", feed: "lamp", watts: 100 }, row: [] } as const;
    expect(typed("lamp-dim runs", power)).toEqual([
      { do: "power", feed: "lamp", watts: 100, observed: ["lamp-dim", "runs"], ...TIMED },
    ]);
    expect(typed("done", power)).toEqual([
      { do: "power", feed: "lamp", watts: 100, observed: ["quiet"], ...TIMED },
    ]);
    expect(typed("exploded", power)).toMatch(/say what happened/);
    expect(typed("lamp-dark LED1=on K1=off", power)).toEqual([
      {
        do: "power",
        feed: "lamp",
        watts: 100,
        observed: ["lamp-dark"],
        signs: { LED1: true, K1: false },
        ...TIMED,
      },
    ]);
    expect(typed("yes", { action: { do: "lift", place: "Q1.c" }, row: [] })).toMatch(/type done/);
  });

  it("says what a motor reads to earth, in steps or as a figure, or that it cannot be read", () => {
    const action = { do: "answer", question: "motor-insulation", answer: "not read" } as const;
    const asked = { action, row: [] };
    expect(typed("over 50", asked)).toEqual([{ ...action, answer: "over 50", ...TIMED }]);
    expect(typed("12", asked)).toEqual([{ ...action, answer: "12", ...TIMED }]);
    expect(typed("done", asked)).toEqual([{ ...action, ...TIMED }]);
    expect(typed("overrule motor it runs on another board", asked)).toEqual([
      { do: "overrule", of: "motor", why: "it runs on another board", ...TIMED },
    ]);
  });

  it("takes events of its own, with times only where `at` is no place", () => {
    expect(typed("measure ohms PBUS NBUS 10k")).toEqual([
      { do: "measure", mode: "ohms", red: "PBUS", black: "NBUS", reading: 10000, ...TIMED },
    ]);
    expect(typed("clip PBUS NBUS 1k")).toEqual([{ do: "clip", at: ["PBUS", "NBUS"], ohms: 1000, id: "e" }]);
    expect(typed("power bench 15 0.5 V15 NBUS limiting")).toEqual([
      {
        do: "power",
        feed: "bench",
        volts: 15,
        limitAmps: 0.5,
        at: ["V15", "NBUS"],
        observed: ["limiting"],
        id: "e",
      },
    ]);
    expect(typed("overrule the customer wants it tried")).toEqual([
      { do: "overrule", why: "the customer wants it tried", ...TIMED },
    ]);
    expect(typed("clean logic")).toEqual([{ do: "clean", stage: "logic", ...TIMED }]);
    expect(typed("resolder U1")).toEqual([{ do: "resolder", part: "U1", ...TIMED }]);
    expect(typed("quote repair accepted 120 150.5")).toEqual([
      { do: "quote", offer: "repair", answer: "accepted", price: 120, cap: 150.5, ...TIMED },
    ]);
    expect(typed("quote decline refused")).toEqual([
      { do: "quote", offer: "decline", answer: "refused", ...TIMED },
    ]);
    expect(typed("replace Q1 4.2")).toEqual([{ do: "replace", part: "Q1", price: 4.2, ...TIMED }]);
    expect(typed('{"do":"note","id":"mine","text":"hi"}')).toEqual([
      { do: "note", text: "hi", ...TIMED, id: "mine" },
    ]);
  });

  it("refuses the rest in words that name what is wrong", () => {
    expect(typed("exploded")).toMatch(/is no reading/);
    expect(typed("measure diod PBUS NBUS 1")).toMatch(/MODE RED BLACK/);
    expect(typed("beep")).toMatch(/type its digits/);
    expect(typed("power lamp bright")).toMatch(/^watts:/);
    expect(typed("look C1 melted")).toMatch(/^finding:/);
    expect(typed("close maybe")).toMatch(/^verdict:/);
    expect(typed("replace Q1 cheap")).toMatch(/^price:/);
    expect(typed("{broken")).toMatch(/not JSON/);
    expect(typed("0.47", null)).toMatch(/nothing is proposed/);
  });
});

import { describe, expect, test } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import { parseBoard } from "../board/parse-board.ts";
import { smallDrive } from "../board/small-drive.fixture.ts";
import { plain } from "../messages/said.ts";
import { cautionsNow } from "./cautions.ts";

const board = (() => {
  const parsed = parseBoard(smallDrive());
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
})();

type Cautioned = Parameters<typeof cautionsNow>[0][number];

function saidAfter(log: readonly JobEvent[], ...actions: readonly Cautioned[]): string {
  const folded = foldLog(board, [], log);
  if (!folded.ok) throw new Error(folded.problem);
  return plain(cautionsNow(actions, board, folded.value).join(" "));
}

function cautionsCount(action: Cautioned): number {
  const folded = foldLog(board, [], []);
  if (!folded.ok) throw new Error(folded.problem);
  return cautionsNow([action], board, folded.value).length;
}

const said = (action: Cautioned): string => saidAfter([], action);

test("every step under mains danger defers to local codes and licensed practice", () => {
  for (const action of [
    { do: "power", feed: "mains" },
    { do: "unpower" },
    { do: "clip" },
    { do: "measure", mode: "dcv" },
  ] as const)
    expect(said(action)).toContain("Local codes");
});

test("the lamp's caution says what the lamp does not do", () => {
  expect(said({ do: "power", feed: "lamp" })).toContain("not the energy stored in the bus");
  expect(said({ do: "power", feed: "mains" })).not.toContain("lamp limits");
});

test("an insulation tester is warned of where ohms are measured on a populated board, in the row too", () => {
  expect(said({ do: "measure", mode: "ohms" })).toContain("No insulation tester");
  expect(saidAfter([], { do: "measure", mode: "diode" }, { do: "measure", mode: "ohms" })).toContain(
    "No insulation tester",
  );
});

test("a part is replaced with the warning about pads and insulation; a look needs none", () => {
  expect(said({ do: "replace", part: "Q1" })).toContain("insulation pad");
  expect(said({ do: "replace", part: "RS1" })).not.toContain("insulation pad");
  expect(said({ do: "replace", part: "RS1" })).toContain("Pads lift");
  expect(said({ do: "look" })).toBe("");
});

test("a board that is handed back counts as charged until it has been proven empty once more", () => {
  expect(said({ do: "close" })).toContain("prove every capacitor empty once more");
});

const PROOF = { do: "measure", mode: "dcv", red: "C1.plus", black: "C1.minus", reading: 0.3 } as const;
const COLD = { do: "measure", mode: "diode", red: "V5", black: "NBUS", reading: 0.5 } as const;
const POWERED = [
  { do: "power", feed: "lamp", watts: 100, observed: "lamp-dark" },
  { do: "unpower" },
] as const;

test("that the bus creeps back is said at the first cold check after the proof, and not again until power changes", () => {
  const next = { do: "measure", mode: "diode" } as const;
  expect(saidAfter([PROOF], next)).toContain("creep back up");
  expect(saidAfter([PROOF, COLD], next)).toBe("");
  expect(saidAfter([PROOF, COLD, ...POWERED, PROOF], next)).toContain("creep back up");
});

test("an iron in a board that was left a while hears of the bus each time", () => {
  expect(saidAfter([PROOF, COLD, COLD], { do: "lift" })).toContain("creep back up");
});

test("how volts are measured is said once, and again after the next power-up", () => {
  const again = { do: "measure", mode: "dcv" } as const;
  for (const words of ["Unplug it", "Highest DC range, one hand", "CAT III", "Local codes"]) {
    expect(saidAfter([], again)).toContain(words);
    expect(saidAfter([{ ...PROOF, reading: 90 }], again)).not.toContain(words);
    expect(saidAfter([PROOF, ...POWERED], again)).toContain(words);
  }
});

test("what the technician chose himself was no step at which anything was said", () => {
  const own: JobEvent[] = [{ do: "overrule", why: "I know this board" }, PROOF];
  expect(saidAfter(own, { do: "measure", mode: "dcv" })).toContain("Highest DC range");
});

describe("power", () => {
  const MAINS = { do: "power", feed: "mains" } as const;
  const withTools = (equipment: readonly string[], action: Cautioned = MAINS) => {
    const folded = foldLog(board, [], []);
    if (!folded.ok) throw new Error(folded.problem);
    return cautionsNow([action], board, folded.value, equipment).map(plain);
  };

  test("hot ground, bursting parts and the residual-current breaker's limits are said at power and nowhere else", () => {
    const mains = withTools([]).join(" ");
    for (const words of ["mains potential", "parts can burst", "does not see a touch"]) {
      expect(mains).toContain(words);
      for (const action of [
        { do: "measure", mode: "dcv" },
        { do: "measure", mode: "ohms" },
        { do: "lift", place: "Q1.c" },
        { do: "clip" },
        { do: "unpower" },
      ] as const)
        expect(said(action)).not.toContain(words);
    }
  });

  test("who has an isolation transformer hears how it is used, who has an oscilloscope where its earth clip goes", () => {
    expect(withTools(["isolation-transformer"]).join(" ")).toContain("feeds this board alone");
    expect(withTools(["isolation-transformer"]).join(" ")).not.toContain("Best is an isolation");
    expect(withTools([]).join(" ")).not.toContain("oscilloscope");
    expect(withTools(["oscilloscope"]).join(" ")).toContain("No earth clip");
  });

  test("is cautioned each time, in few lines", () => {
    expect(saidAfter([...POWERED], MAINS)).toContain("Hands off");
    expect(withTools(["oscilloscope", "isolation-transformer"], { do: "power", feed: "lamp" }).length).toBe(
      6,
    );
    expect(withTools([]).length).toBe(4);
  });

  test("once it is on, only what a hand would do is warned of", () => {
    const live = [POWERED[0]];
    expect(saidAfter(live, { do: "measure", mode: "dcv" })).toBe(
      "Hands off while it is live: only read the meter that hangs on it.",
    );
  });
});

test("no step on a board that is off carries more than four lines", () => {
  for (const action of [
    { do: "measure", mode: "dcv" },
    { do: "replace", part: "Q1" },
    { do: "replace", part: "C1" },
    { do: "remove", part: "M1" },
    { do: "clip" },
    { do: "clean" },
  ] as const)
    expect(cautionsCount(action)).toBeLessThanOrEqual(4);
});

describe("a motor", () => {
  test("is tested for insulation by itself, with its leads joined; the words stand at the step that unplugs it", () => {
    expect(said({ do: "remove", part: "M1" })).toContain("its leads joined");
    expect(said({ do: "lift", place: "M1.u" })).toContain("Never on the board");
    expect(said({ do: "remove", part: "Q1" })).not.toContain("insulation tester");
  });

  test("that is plugged in is not turned: it charges the bus", () => {
    expect(said({ do: "restore", part: "M1" })).toContain("charges the bus");
    expect(said({ do: "restore", part: "M1" })).not.toContain("Hot iron");
  });
});

test("a capacitor may bring charge with it, a resistor does not", () => {
  expect(said({ do: "replace", part: "C1" })).toContain("in the hand too");
  expect(said({ do: "replace", part: "RS1" })).not.toContain("in the hand too");
});

test("a resistor that comes off may be hot; nobody is told then how to discharge", () => {
  expect(said({ do: "unclip" })).toContain("still be hot");
  expect(said({ do: "unclip" })).not.toContain("screwdriver");
});

test("a low voltage into a shorted rail: limit and volts first, what may burst, never above the rail's own", () => {
  const inject = said({ do: "power", feed: "bench", volts: 0.35, at: ["V5", "NBUS"] });
  for (const words of [
    "current limit",
    "0.4 V",
    "burst",
    "never exceed the rail's own voltage",
    "eye protection",
  ])
    expect(inject).toContain(words);
  expect(inject).toContain("Local codes");
  expect(said({ do: "power", feed: "bench", volts: 15, at: ["V15", "NBUS"] })).not.toContain("0.4 V");
});

test("milliohms without a meter made for them are a current fed in: its limit is said", () => {
  expect(said({ do: "measure", mode: "ohms", wires: 4 })).toContain("current limit");
  expect(said({ do: "measure", mode: "ohms" })).not.toContain("current limit");
});

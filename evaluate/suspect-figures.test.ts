import { describe, expect, it } from "vitest";
import type { ColdSession } from "./cold-session.ts";
import { markFigures } from "./suspect-figures.ts";

function session(
  dead: readonly string[],
  probabilities: readonly (readonly [string, number])[],
  change: Partial<ColdSession> = {},
): ColdSession {
  return {
    board: "b",
    cause: "age",
    seed: 1,
    differences: [],
    faults: dead,
    dead,
    tellable: dead,
    snapshots: [{ readings: 0, probabilities }],
    ended: "power",
    ...change,
  };
}

const crowd = (p: number, count: number) => Array.from({ length: count }, (_, i) => [`X${i}`, p] as const);

describe("figures of suspects", () => {
  it("log-loss is summed over a board's parts, and a fault nobody named costs as much as is ever claimed", () => {
    const named = markFigures(
      [
        session(
          ["R1"],
          [
            ["R1", 0.5],
            ["R2", 0.5],
          ],
        ),
      ],
      "end",
    );
    expect(named.logLoss.value).toBeCloseTo(2 * Math.LN2, 9);
    const unnamed = markFigures([session(["N1~N2"], [])], "end");
    expect(unnamed.logLoss.value).toBeCloseTo(Math.log(1e4), 9);
  });

  it("a belief of 15 % where every second part is faulty is wrong by 35 %, once a hundred claims are there", () => {
    const dead = Array.from({ length: 60 }, (_, i) => `X${2 * i}`);
    const sure = markFigures([session(dead, crowd(0.15, 120))], "end");
    expect(sure.expectedError.value).toBeCloseTo(0.35, 9);
    expect(sure.largestError).toBeCloseTo(0.35, 9);
    const few = markFigures([session(dead.slice(0, 30), crowd(0.15, 60))], "end");
    expect(few.largestError).toBe(0);
  });

  it("one wrong suspect before the true ones is allowed, two are not; boards that no check tells are left out", () => {
    const ranked = (order: readonly string[]) =>
      session(
        ["A", "B"],
        order.map((name, at) => [name, 0.9 - at / 10] as const),
      );
    const silent = session(["A"], [["B", 0.5]], { tellable: [] });
    const figures = markFigures([ranked(["X", "A", "B"]), ranked(["X", "Y", "A", "B"]), silent], "end");
    expect(figures.rankedBoards).toBe(2);
    expect(figures.ranked.value).toBe(0.5);
  });

  it("a session that ended before a mark counts there with its last belief", () => {
    const short = session(["A"], [], {
      snapshots: [
        { readings: 0, probabilities: [["A", 0.1]] },
        { readings: 3, probabilities: [["A", 0.9]] },
      ],
    });
    const figures = markFigures([short], 5);
    expect(figures.going).toBe(0);
    expect(figures.logLoss.value).toBeCloseTo(-Math.log(0.9), 9);
  });
});

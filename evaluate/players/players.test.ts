import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { parseBoard } from "../../src/board/parse-board.ts";
import { powerSwitches } from "../../src/board/power-switches.ts";
import { AssessmentSession } from "../../src/job/assess.ts";
import { faultsOnArrival } from "../../src/practice/hidden-course.ts";
import { trialJob } from "../trial.ts";
import { allKnowing } from "./all-knowing.ts";
import { Course, type Outcome } from "./course.ts";
import { enginePlayer } from "./engine-player.ts";
import { fixedWalk } from "./fixed-walk.ts";
import { practiceBench } from "./hidden-bench.ts";
import { isBad, walkChecks } from "./walk-rules.ts";

const board = (() => {
  const parsed = parseBoard(JSON.parse(readFileSync("boards/greenhouse-fan-drive.json", "utf8")));
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
})();

async function played(seed: number, player: (course: Course) => Promise<void>): Promise<Outcome> {
  const job = trialJob(board, seed);
  const session = new AssessmentSession();
  const bench = practiceBench(job, session.priors(job), seed, (_board, state) =>
    session.predictor(job, state),
  );
  const course = new Course(job, bench);
  await player(course);
  return course.outcome();
}

test("the walk begins at the fuse and ends at the rails", () => {
  const checks = walkChecks(board);
  expect(board.parts.get(checks[0].part)?.kind).toBe("fuse");
  expect(checks.at(-1)).toMatchObject({ mode: "diode", black: board.zero, bad: "short" });
  const checked = new Set(checks.map(({ part }) => part));
  for (const { part } of powerSwitches(board)) expect(checked).toContain(part);
});

test("a fuse that reads open is bad, a bus of kilohms is not", () => {
  const [fuse] = walkChecks(board);
  expect(isBad(fuse, "OL")).toBe(true);
  expect(isBad(fuse, 0.2)).toBe(false);
  const bus = walkChecks(board).find(({ part, mode }) => part === "" && mode === "ohms");
  if (bus === undefined) throw new Error("the walk has no check across the bus");
  expect(isBad(bus, 0.4)).toBe(true);
  expect(isBad(bus, 230_000)).toBe(false);
});

test("who knows the truth repairs a curable board, in fewer minutes than the walk, and nothing is left", async () => {
  for (const seed of [1, 8]) {
    const [best, walk] = [await played(seed, allKnowing), await played(seed, fixedWalk)];
    expect(best.verdict).toBe("repaired");
    expect(best.left).toEqual([]);
    expect(best.profit).toBeGreaterThanOrEqual(walk.profit);
    expect(best.lifts).toBe(0);
  }
});

test("the engine solders an inrush resistor that reads open before it buys one", async () => {
  const job = trialJob(board, 1);
  const table = new AssessmentSession().priors(job);
  const alone = Array.from({ length: 3000 }, (_, i) => i + 1).find((seed) => {
    const arrived = faultsOnArrival({ job, table, seed });
    return arrived.length === 1 && table.faults[arrived[0].row].reportAs === "RT1:open";
  });
  if (alone === undefined) throw new Error("no seed hides an open RT1 alone");
  const session = new AssessmentSession();
  const bench = practiceBench(job, session.priors(job), alone, (_board, state) =>
    session.predictor(job, state),
  );
  const course = new Course(job, bench);
  await enginePlayer(course, session);
  const hands = course.log.flatMap((event) =>
    (event.do === "resolder" || event.do === "replace") && event.part === "RT1" ? [event.do] : [],
  );
  expect(hands[0]).toBe("resolder");
  expect(course.verdict).toBe("repaired");
}, 120_000);

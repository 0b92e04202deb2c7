/**
 * A board that nobody has described, four answers known (supply, boost or none, module or discrete, rails): the twelve readings that sort most
 * dead boards can be taken on it and say whether its power path will stand the mains.
 */
import { describe, expect, it } from "vitest";
import { SWEEP_READINGS, sweepChecks } from "../evaluate/sweep-checks.ts";
import type { JobEvent } from "../src/bench/event.ts";
import { foldLog } from "../src/bench/fold.ts";
import type { Board } from "../src/board/board.ts";
import type { Fault } from "../src/board/fault.ts";
import { parseBoard } from "../src/board/parse-board.ts";
import { parseFault } from "../src/board/parse-fault.ts";
import { composeBoard } from "../src/compose/compose-board.ts";
import { AssessmentSession, beliefOf } from "../src/job/assess.ts";
import { parseJob } from "../src/job/parse-job.ts";
import { makePredictor } from "../src/meter/predictor.ts";
import { DEFAULT_METER } from "../src/meter/settings.ts";
import { provenEmpty } from "../src/planning/scene.fixture.ts";
import { viewOf } from "../src/priors/circuit-view.ts";
import { powerEffect } from "../src/priors/power-effects.ts";

/** What power does to a board that must not get it. */
const NO_GO: ReadonlySet<string> = new Set(["line-short", "bus-short", "leg-half", "supply-short"]);

function composed(boost: string, switches: string): { readonly content: object; readonly board: Board } {
  const made = composeBoard({ supply: "230-1", boost, switches, rails: "15,5" });
  if (!made.ok) throw new Error(made.problem);
  const content = made.value.board;
  const board = parseBoard(content);
  if (!board.ok) throw new Error(board.problem);
  return { content, board: board.value };
}

/** The chance that power would destroy something, after the twelve readings of a board with these faults. */
function noGo({ content, board }: ReturnType<typeof composed>, faults: readonly Fault[]): number {
  const bench = foldLog(board, [], []);
  if (!bench.ok) throw new Error(bench.problem);
  const meter = makePredictor(board, bench.value.now, DEFAULT_METER);
  const checks = sweepChecks(board);
  expect(checks).toHaveLength(SWEEP_READINGS);
  const readings = checks.map((check): JobEvent => {
    const shown = meter.predict(check, faults);
    if (!shown.solved) throw new Error(shown.why);
    return { do: "measure", ...check, reading: shown.shown };
  });
  const header = {
    format: "faultwright-job/1",
    board: content,
    cause: "unknown",
    symptom: "dead",
    terms: {},
  };
  const job = parseJob({ ...header, log: [...provenEmpty(board), ...readings] }, board);
  if (!job.ok) throw new Error(job.problem);
  const believed = beliefOf(job.value, new AssessmentSession());
  if (!believed.ok) throw new Error(believed.problem);
  const { explanations, priors } = believed.value.belief;
  const view = viewOf(board);
  return explanations
    .filter(({ presentNow }) => presentNow.some((f) => NO_GO.has(powerEffect(view, priors[f].fault))))
    .reduce((sum, { probability }) => sum + probability, 0);
}

describe.each([
  ["none", "module"],
  ["none", "discrete"],
  ["switch", "module"],
  ["switch", "discrete"],
])("twelve readings of a board with boost: %s and its motor driven by: %s", (boost, switches) => {
  const made = composed(boost, switches);
  const { board } = made;
  const fault = (name: string): Fault => {
    const parsed = parseFault(name, board);
    if (!parsed.ok) throw new Error(parsed.problem);
    return parsed.value;
  };
  const view = viewOf(board);
  const [first] = view.motorSwitches;
  const [supply] = view.supplySwitches;
  const bus = view.roles.busCapacitors;

  it("say go where the power path is whole", () => {
    expect(noGo(made, [])).toBeLessThan(0.1);
  });

  it.each([
    ["a shorted motor switch", () => fault(`${first?.fault}:short`)],
    ["a bus capacitor that has melted through", () => fault(`${bus[0]}:short`)],
  ])("say no-go with %s, and are sure of it", (_, broken) => {
    expect(noGo(made, [broken()])).toBeGreaterThan(0.9);
  });

  it("say no-go with the small supply's switch shorted, which one of them alone sees", () => {
    expect(noGo(made, [fault(`${supply?.fault}:short`)])).toBeGreaterThan(0.5);
  });
});

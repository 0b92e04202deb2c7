/**
 * Boards that nobody has described: made of a few answers, their unanswered stages taken as not seen. The board on the bench
 * differs from what was drawn; the fault is found all the same, and what rests on assumptions is said.
 */
import { describe, expect, it } from "vitest";
import type { JobEvent } from "../src/bench/event.ts";
import { foldLog } from "../src/bench/fold.ts";
import type { Board } from "../src/board/board.ts";
import { parseBoard } from "../src/board/parse-board.ts";
import { parseFault } from "../src/board/parse-fault.ts";
import { storesOfCharge } from "../src/board/stores-of-charge.ts";
import { settleAnswers } from "../src/compose/answers.ts";
import { composeBoard } from "../src/compose/compose-board.ts";
import { suspectsAnswer } from "../src/job/answers.ts";
import { type Assessment, assess } from "../src/job/assess.ts";
import { parseJob } from "../src/job/parse-job.ts";
import type { ColdCheck } from "../src/meter/prediction.ts";
import { makePredictor } from "../src/meter/predictor.ts";
import { DEFAULT_METER } from "../src/meter/settings.ts";

const FIRST_FOUR = { supply: "230-1", boost: "none", switches: "module", rails: "15,5" };

/** Every question answered as the trade would have it. */
const EVERYTHING = ((): Readonly<Record<string, string>> => {
  const settled = settleAnswers(FIRST_FOUR);
  if (!settled.ok) throw new Error(settled.problem);
  return Object.fromEntries(settled.value.values);
})();

type Parts = Record<string, { kind: string; stage: string; value: { ohms?: number }; assumed?: boolean }>;

function file(answers: Readonly<Record<string, string>>): { parts: Parts } & Record<string, unknown> {
  const made = composeBoard(answers);
  if (!made.ok) throw new Error(made.problem);
  return structuredClone(made.value.board) as { parts: Parts } & Record<string, unknown>;
}

function read(content: unknown): Board {
  const board = parseBoard(content);
  if (!board.ok) throw new Error(board.problem);
  return board.value;
}

/** The board on the bench: as drawn, but its gate resistors are 2.2 times what the trade fits. */
function onTheBench(answers: Readonly<Record<string, string>>): Board {
  const real = file(answers);
  for (const part of Object.values(real.parts))
    if (part.stage === "drive" && part.kind === "resistor") part.value.ohms = 2.2 * (part.value.ohms ?? 0);
  return read(real);
}

/** A job on the drawn board with what a meter shows on the real one. */
function worked(drawn: unknown, real: Board, fault: string, checks: readonly ColdCheck[]): Assessment {
  const parsed = parseFault(fault, real);
  if (!parsed.ok) throw new Error(parsed.problem);
  const bench = foldLog(real, ["MOT1"], []);
  if (!bench.ok) throw new Error(bench.problem);
  const meter = makePredictor(real, bench.value.now, DEFAULT_METER);
  const proofs = storesOfCharge(real).map(
    ({ part, pins }): JobEvent => ({
      do: "measure",
      mode: "dcv",
      red: `${part}.${pins[0]}`,
      black: `${part}.${pins[1]}`,
      reading: 0.4,
    }),
  );
  const readings = checks.map((check) => {
    const shown = meter.predict({ ...check, mode: check.mode === "diode" ? "diode" : "ohms" }, [
      parsed.value,
    ]);
    if (!shown.solved) throw new Error(shown.why);
    return { do: "measure", ...check, reading: shown.shown };
  });
  const job = parseJob(
    {
      format: "faultwright-job/1",
      board: drawn,
      cause: "unknown",
      symptom: "dead",
      absent: ["MOT1"],
      log: [...proofs, ...readings],
    },
    null,
  );
  if (!job.ok) throw new Error(job.problem);
  const assessed = assess(job.value);
  if (!assessed.ok) throw new Error(assessed.problem);
  return assessed.value;
}

const diode = (red: string, black: string): ColdCheck => ({ mode: "diode", red, black });
const ohms = (red: string, black: string): ColdCheck => ({ mode: "ohms", red, black });
const ROW = ["U", "V", "W"].flatMap((phase) => [diode(phase, "PBUS"), diode("NBUS", phase)]);
/** Across the pull-up of the fault output. */
const ROUND_THE_GATES = [ohms("V5", "FO")];

describe("a board whose gate parts nobody has seen", () => {
  const real = onTheBench(FIRST_FOUR);
  const believed = (gates: string) =>
    worked(file({ ...EVERYTHING, gates }), real, "M1.un:short", [...ROW, ...ROUND_THE_GATES]);
  const assessed = believed("unsure");
  const answer = suspectsAnswer(assessed);
  const pullUp = [...real.parts.values()].find(
    ({ kind, pins }) => kind === "resistor" && [...pins.values()].join(" ") === "V5 FO",
  )?.ref;

  it("still finds the shorted module", () => {
    expect(answer.suspects[0].part).toBe("M1");
    expect(answer.suspects[0].probability).toBeGreaterThan(0.9);
    expect(answer.unexplained).toEqual([]);
  });

  it("says which readings rest on assumptions, and on which: none of the row across the switches", () => {
    const { board, log } = assessed.job;
    const said = answer.assumptions.map(({ reading, parts }) => {
      const event = log[reading];
      return [
        event.do === "measure" ? `${event.mode} ${event.red} ${event.black}` : event.do,
        parts,
      ] as const;
    });
    expect(said.map(([reading]) => reading)).toEqual(["ohms V5 FO"]);
    expect(said[0][1]).toEqual([pullUp]);
    for (const ref of said.flatMap(([, parts]) => parts))
      expect([ref, board.parts.get(ref)?.assumed]).toEqual([ref, true]);
  });

  it("does not accuse a part that is only of another value than drawn, as it would where the part was seen", () => {
    const nothingElse = (assessment: Assessment) =>
      suspectsAnswer(assessment)
        .explanations.filter(({ faults }) => faults.join() === "M1.un:short")
        .reduce((sum, { probability }) => sum + probability, 0);
    // where it was seen, a second fault is more likely than none
    expect(nothingElse(believed("usual"))).toBeLessThan(0.5);
    expect(nothingElse(assessed)).toBeGreaterThan(0.5);
  });
});

describe("a board of which four answers are known", () => {
  it("can be worked on: the stores are proven empty, then a row across the switches sorts it", () => {
    const drawn = file(FIRST_FOUR);
    const real = onTheBench(FIRST_FOUR);
    const proven = worked(drawn, real, "M1.un:short", []);
    const { action, row } = proven.proposal;
    expect(action.do).toBe("measure");
    expect([action, ...row].map(({ do: does }) => does)).not.toContain("power");
    const after = worked(drawn, real, "M1.un:short", ROW);
    expect(suspectsAnswer(after).suspects[0].part).toBe("M1");
    const good = worked(drawn, real, "F1:open", ROW);
    expect(suspectsAnswer(good).suspects.find(({ part }) => part === "M1")?.probability).toBeLessThan(0.2);
  });
});

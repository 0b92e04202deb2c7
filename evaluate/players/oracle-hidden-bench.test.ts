import { describe, expect, it } from "vitest";
import { AssessmentSession } from "../../src/job/assess.ts";
import { hasNgspice } from "../ngspice.ts";
import { type OracleBench, oracleBench } from "../oracle/oracle-bench.ts";
import { shippedBoards } from "../oracle/shipped-boards.ts";
import { causeOf, trialJob } from "../trial.ts";
import { allKnowing } from "./all-knowing.ts";
import { Course } from "./course.ts";
import { enginePlayer } from "./engine-player.ts";
import type { HiddenBench } from "./hidden-bench.ts";
import { oracleHiddenBench } from "./oracle-hidden-bench.ts";

const present = await hasNgspice();
const fan = shippedBoards()[0]?.board;
if (fan === undefined) throw new Error("the shipped boards are not in boards/");

/** The first bench from seed 73000 on of which this holds. */
function benchWhere(holds: (bench: OracleBench) => boolean): OracleBench {
  for (let seed = 73_000; seed < 73_400; seed++) {
    const bench = oracleBench(fan as NonNullable<typeof fan>, causeOf(seed), seed);
    if (holds(bench)) return bench;
  }
  throw new Error("no seed gives such a board");
}

function courseOn(bench: OracleBench, hidden: HiddenBench = oracleHiddenBench(bench)): Course {
  const { file, seed, symptom } = bench.oracle;
  return new Course(trialJob(file, seed, symptom), hidden);
}

describe("an oracle board as players meet it", () => {
  it("a part that is not there is marked absent, and from then on absent from the job", async () => {
    const bench = benchWhere(({ oracle }) =>
      [...oracle.file.parts.keys()].some((ref) => !oracle.board.parts.has(ref)),
    );
    const missing =
      [...bench.oracle.file.parts.keys()].find((ref) => !bench.oracle.board.parts.has(ref)) ?? "";
    const course = courseOn(bench);
    expect(course.job.absent).not.toContain(missing);
    expect((await course.take({ do: "look", part: missing })).do).toBe("mark");
    expect(course.job.absent).toContain(missing);
    expect(course.minutes).toBe(0);
  });

  it("what nobody would notice need not be cured, a weak board is not repaired, a working one is", async () => {
    const weak = benchWhere(({ oracle }) => oracle.condition === "weak");
    const course = courseOn(weak);
    expect(course.bench.faulty(course.timeline).length).toBeGreaterThan(0);
    await course.close("repaired");
    expect(course.outcome()).toMatchObject({ falselyRepaired: true, state: "weak" });
    const cured = courseOn(weak);
    await allKnowing(cured);
    expect(cured.outcome()).toMatchObject({
      verdict: "repaired",
      falselyRepaired: false,
      state: "works",
      left: [],
    });
    const slight = benchWhere((bench) => {
      const { bench: hidden, timeline } = courseOn(bench);
      return hidden.dead(timeline).length > hidden.faulty(timeline).length;
    });
    const some = courseOn(slight);
    await allKnowing(some);
    expect(some.outcome().left).toEqual([]);
    expect(some.outcome().falselyRepaired).toBe(false);
  });

  it("a check without an answer is noted, and the engine goes on with another", async (context) => {
    if (!present) context.skip("ngspice is not installed");
    const bench = benchWhere(({ oracle }) => oracle.differences.length === 0);
    const hidden = oracleHiddenBench(bench);
    let asked = 0;
    const course = courseOn(bench, {
      ...hidden,
      answerRow: async (timeline, row) => {
        const cold = row.some((one) => one.do === "measure" && one.mode === "diode");
        if (!cold) return hidden.answerRow(timeline, row);
        asked++;
        if (asked === 1) return row.map(() => ({ ok: false, problem: "no operating point" }));
        return row.map(() => ({ ok: true, slipped: false, event: { do: "close", verdict: "declined" } }));
      },
    });
    await enginePlayer(course, new AssessmentSession());
    expect(course.unanswered.length).toBeGreaterThan(0);
    expect(course.log.some(({ do: what }) => what === "note")).toBe(true);
    expect(course.verdict).not.toBe("broken");
  }, 120_000);
});

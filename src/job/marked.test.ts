import { describe, expect, it } from "vitest";
import { smallDrive } from "../board/small-drive.fixture.ts";
import { plain } from "../messages/said.ts";
import { priorTable } from "../priors/prior-table.ts";
import { AssessmentSession, assess } from "./assess.ts";
import type { Job } from "./job.ts";
import { parseJob } from "./parse-job.ts";

function jobWith(log: readonly unknown[], more: Record<string, unknown> = {}): Job {
  const parsed = parseJob(
    { format: "faultwright-job/1", board: smallDrive(), cause: "surge", symptom: "dead", log, ...more },
    null,
  );
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
}

const mark = (part: string, as: string, id = `${part} ${as}`) => ({ do: "mark", part, as, id });

describe("a part marked while the job runs", () => {
  it("as missing is out of the circuit from the start, and back when the mark is undone or taken back", () => {
    expect(jobWith([mark("NTC1", "absent", "a")]).absent).toEqual(["NTC1"]);
    expect(jobWith([mark("NTC1", "absent", "a"), { do: "undo", of: "a" }]).absent).toEqual([]);
    expect(jobWith([mark("NTC1", "absent"), mark("NTC1", "as-drawn")]).absent).toEqual([]);
    expect(jobWith([mark("NTC1", "as-drawn")], { absent: ["NTC1"] }).absent).toEqual([]);
  });

  it("as different or unsure is assumed: its faults get more room, the others stay", () => {
    const plain = jobWith([]);
    for (const as of ["different", "unsure"]) {
      const marked = jobWith([mark("BR1", as)]);
      expect(marked.board.parts.get("BR1")?.assumed).toBe(true);
      const rate = (job: Job, part: string) =>
        priorTable(job.board, job.cause, job.symptom)
          .faults.filter((fault) => fault.part === part)
          .reduce((sum, fault) => sum + fault.rate, 0);
      expect(rate(marked, "BR1") / rate(marked, "F1")).toBeGreaterThan(
        1.2 * (rate(plain, "BR1") / rate(plain, "F1")),
      );
    }
  });

  it("changes what is believed at once, in the same session", () => {
    const session = new AssessmentSession();
    const chance = (job: Job) => {
      const assessed = assess(job, session);
      if (!assessed.ok) throw new Error(assessed.problem);
      return assessed.value.belief.suspects.find(({ part }) => part === "BR1")?.probability ?? 0;
    };
    const before = chance(jobWith([]));
    expect(chance(jobWith([mark("BR1", "unsure")]))).toBeGreaterThan(1.2 * before);
    expect(chance(jobWith([mark("BR1", "absent")]))).toBe(0);
  });

  it("is refused with its place where the board has no such part, or the log has worked on a part said to be missing", () => {
    const problem = (log: readonly unknown[]) => {
      const parsed = parseJob(
        { format: "faultwright-job/1", board: smallDrive(), cause: "surge", symptom: "dead", log },
        null,
      );
      return parsed.ok ? "none" : plain(parsed.problem);
    };
    expect(problem([mark("XX9", "absent")])).toMatch(/^log\[0\]\.part: /);
    expect(problem([{ do: "mark", part: "BR1", as: "gone" }])).toMatch(/^log\[0\]\.as: /);
    expect(problem([{ do: "lift", place: "NTC1.1" }, mark("NTC1", "absent")])).toMatch(/^log\[0\]\./);
  });
});

describe("what the customer was asked", () => {
  it("whether it was powered while wet weighs on the chips, the last answer counting", () => {
    const wet = (...answers: string[]) =>
      jobWith(
        answers.map((answer) => ({ do: "answer", question: "powered-while-wet", answer })),
        { cause: "water" },
      );
    const controller = (job: Job) =>
      priorTable(job.board, job.cause, job.symptom, job.told)
        .faults.filter(({ part }) => job.board.parts.get(part)?.kind === "controller")
        .reduce((sum, { rate }) => sum + rate, 0);
    expect(controller(wet("yes"))).toBeGreaterThan(1.3 * controller(wet("unknown")));
    expect(controller(wet("no"))).toBeLessThan(0.7 * controller(wet("unknown")));
    expect(controller(wet("no", "yes"))).toBeCloseTo(controller(wet("yes")), 12);
  });
});

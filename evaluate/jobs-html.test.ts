import { describe, expect, it } from "vitest";
import type { JobEvent } from "../src/bench/event.ts";
import { parseJob } from "../src/job/parse-job.ts";
import { jobsPage, worstOf } from "./jobs-html.ts";
import { caseJob } from "./jobs-page-files.ts";
import { shippedBoards } from "./oracle/shipped-boards.ts";
import { storyOf } from "./story.ts";
import { minutesSpent } from "./time-spent.ts";
import { trialOf } from "./trials.fixture.ts";

const boards = new Map(shippedBoards().map(({ id, board }) => [id, board]));
const board = boards.get("greenhouse-fan-drive");
if (board === undefined) throw new Error("the fan drive is not in boards/");

const LOG: readonly JobEvent[] = [
  { do: "measure", mode: "dcv", red: "C5.plus", black: "C5.minus", reading: 0.2, id: "e0" },
  { do: "measure", mode: "dcv", red: "C6.plus", black: "C6.minus", reading: 0.3, id: "e1" },
  { do: "mark", part: "C30", as: "absent", id: "e2" },
  { do: "measure", mode: "diode", red: "U", black: "PBUS", reading: 0.45, id: "e3" },
  { do: "replace", part: "K1", price: 2, id: "e4" },
  { do: "replace", part: "R4", price: 0.1, id: "e5" },
  { do: "power", feed: "lamp", watts: 100, observed: "runs", id: "e6" },
  { do: "unpower", id: "e7" },
  { do: "close", verdict: "repaired", id: "e8" },
];
const belief = (at: number, p: number) =>
  ({ at, minutes: 1, believed: { K1: p }, accused: ["R4", 0.2], margin: 90, repair: 0.8, why: "" }) as const;
const trial = trialOf(
  5,
  { engine: { goodReplaced: ["R4"], minutes: 25 } },
  { log: LOG, steps: [belief(3, 0.6), belief(4, 0.1)] },
);

describe("the page of whole jobs", () => {
  it("the job file of a case is one that every command takes, marks included, left open at its last step", () => {
    const job = parseJob(JSON.parse(JSON.stringify(caseJob(trial))), board);
    expect(job.ok ? job.value.absent : job.problem).toEqual(["C30"]);
    expect(job.ok && job.value.log).toHaveLength(LOG.length - 1);
  });

  it("the story is in the order of the log, the proof in one line, and says where the truth lost credit", () => {
    const lines = storyOf(trial, board);
    expect(lines).toHaveLength(LOG.length - 1);
    expect(lines[0]?.outcome).toBe("0.2, 0.3");
    expect(lines.filter(({ turn }) => turn).map(({ words }) => words)).toEqual([lines[3]?.words]);
    const last = lines.at(-1);
    expect(lines.reduce((sum, { minutes }) => sum + minutes, 0)).toBeCloseTo(last?.from ?? 0, 9);
  });

  it("minutes are told apart by what they were spent on, good parts from faulty ones", () => {
    const spent = minutesSpent(trial, board);
    const replaced = spent["replacing good parts"] + spent["replacing faulty parts"];
    expect(spent["replacing good parts"]).toBeGreaterThan(0);
    expect(replaced).toBeGreaterThan(spent["replacing good parts"]);
    expect(spent.power).toBe(3);
    expect(spent["proof and discharge"]).toBeCloseTo(2 * 0.4 + 0.5, 9);
  });

  it("stands by itself, the worst case first, and lets no word of a trial become markup", () => {
    const worse = trialOf(
      6,
      { engine: { verdict: "not-economic", income: 0, minutes: 99 } },
      { differences: ["<b>x</b>"] },
    );
    expect(worstOf([trial, worse])[0]?.seed).toBe(6);
    const page = jobsPage([trial, worse], boards, "two");
    expect(page).not.toMatch(/<script|src=|<b>x/);
    expect(page.indexOf("greenhouse-fan-drive 6")).toBeLessThan(page.indexOf("greenhouse-fan-drive 5"));
    expect(page).not.toContain("NaN");
  });
});

import { describe, expect, it } from "vitest";
import { plain } from "../messages/said.ts";
import { actionMinutes } from "../money/minutes.ts";
import { partPrice } from "../money/prices.ts";
import { AssessmentSession, assess } from "./assess.ts";
import { parseJob } from "./parse-job.ts";
import { FUSE_LOG, RECTIFIER, rectifierJob } from "./rectifier-job.fixture.ts";

const LEARNED = {
  jobs: 12,
  sorts: { fuse: 1.8 },
  parts: { BR1: 0.4 },
  shares: { electrolytic: { short: 0.2, open: 0.2, drift: 0.5, leaky: 0.1 } },
  knockOns: {},
  paces: { replace: 1.5, measure: 2 },
  prices: { F1: 1.1 },
};
const OPEN = FUSE_LOG.slice(0, 5);

const problemOf = (learned: object): string => {
  const job = parseJob(
    { format: "faultwright-job/1", board: RECTIFIER, cause: "surge", symptom: "dead", learned },
    null,
  );
  return job.ok ? "" : plain(job.problem);
};

function believed(learned?: object) {
  const job = rectifierJob(OPEN, learned === undefined ? {} : { learned });
  const made = assess(job, new AssessmentSession());
  if (!made.ok) throw new Error(made.problem);
  return made.value.belief.suspects.map(({ part, probability }) => [part, probability] as const);
}

describe("a job that is worked with what was learnt", () => {
  it("replays the same, and an empty lesson is none", () => {
    expect(believed(LEARNED)).toEqual(believed(LEARNED));
    expect(believed(LEARNED)).not.toEqual(believed());
    expect(believed({ jobs: 0 })).toEqual(believed());
  });

  it("plans with what parts cost here and how long its hands take, and keeps the board's own figures beside", () => {
    const job = rectifierJob(OPEN, { learned: LEARNED });
    const fuse = job.board.parts.get("F1");
    if (fuse === undefined) throw new Error("no fuse");
    const bench = { lifted: new Set<string>(), off: new Set<string>(), clips: [], powered: false };
    expect(partPrice(fuse)).toBe(1.1);
    expect(actionMinutes(job.board, bench, { do: "replace", part: "F1" })).toBe(15);
    expect(actionMinutes(job.asBrought.board, bench, { do: "replace", part: "F1" })).toBe(10);
    expect(job.asBrought.board.parts.get("F1")?.price).toBeNull();
  });

  it("a bench that is slow with its probes fits the part at once where one that is quick takes a reading more", () => {
    const plan = (paces: Readonly<Record<string, number>>) => {
      const job = rectifierJob(FUSE_LOG.slice(0, 4), { learned: { jobs: 12, paces } });
      const made = assess(job, new AssessmentSession());
      if (!made.ok) throw new Error(made.problem);
      return made.value.proposal;
    };
    const [usual, quick, slow] = [plan({}), plan({ measure: 0.5 }), plan({ measure: 2 })];
    expect(usual).toMatchObject({ action: { do: "measure" }, minutes: 0.4 });
    expect(quick).toMatchObject({ action: { do: "measure" }, minutes: 0.2 });
    expect(slow.action).toMatchObject({ do: "replace", part: "F1" });
  });

  it("counts readings, looks, clips and power on and off as this bench takes them", () => {
    const paces = { measure: 1.5, look: 2, clip: 3, power: 0.5, unpower: 2 };
    const { board, asBrought } = rectifierJob([], { learned: { jobs: 5, paces } });
    const bench = { lifted: new Set<string>(), off: new Set<string>(), clips: [], powered: false };
    const minutes = (of: typeof board) =>
      (
        [
          { do: "measure", mode: "ohms", red: "L", black: "N" },
          { do: "look", part: "F1", finding: "clean" },
          { do: "unclip", at: ["L", "N"], ohms: 1000 },
          { do: "power", feed: "mains" },
          { do: "unpower" },
        ] as const
      ).map((action) => actionMinutes(of, bench, action));
    expect(minutes(board)).toEqual([1.5 * 0.4, 2 * 0.2, 3 * 0.5, 0.5 * 3, 2 * 0.5]);
    expect(minutes(asBrought.board)).toEqual([0.4, 0.2, 0.5, 3, 0.5]);
  });

  it("is refused by name where its figures are none", () => {
    expect(problemOf({ jobs: 1, parts: { BR2: 2 } })).toBe(
      'learned.parts.BR2: there is no part "BR2"; did you mean "BR1"?',
    );
    expect(problemOf({ jobs: 1, sorts: { fuse: -1 } })).toMatch(/^learned\.sorts\.fuse: /);
    expect(problemOf({ jobs: 1, shares: { fuse: { open: 0.5 } } })).toBe(
      "learned.shares.fuse: the shares sum to 0.5, not to 1",
    );
    expect(problemOf({ sorts: {} })).toBe("learned.jobs: is missing");
    expect(problemOf({ jobs: 1, rates: {} })).toMatch(/^learned\.rates: unknown field/);
    expect(problemOf({ jobs: 3, sorts: { "sort of a later program": 2 } })).toBe("");
  });
});

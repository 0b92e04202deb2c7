/** What is worked out while hands are busy is what would have been worked out after them. */
import { expect, it } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { type Assessment, AssessmentSession, assess } from "./assess.ts";
import type { Job } from "./job.ts";
import { parseJob } from "./parse-job.ts";
import { likelyNext, provenEmpty, workAhead } from "./work-ahead.ts";

const parsed = parseJob(
  {
    format: "faultwright-job/1",
    board: SHIPPED.find(({ id }) => id === "small-frequency-drive")?.board,
    cause: "surge",
    symptom: "dead",
    equipment: ["lamp-100"],
    log: [],
  },
  null,
);
if (!parsed.ok) throw new Error(parsed.problem);
const SAFE: Job = { ...parsed.value, log: provenEmpty(parsed.value) };

function assessed(job: Job, session: AssessmentSession): Assessment {
  const found = assess(job, session);
  if (!found.ok) throw new Error(found.problem);
  return found.value;
}

const after = (...events: readonly JobEvent[]): Job => ({ ...SAFE, log: [...SAFE.log, ...events] });
/** To eight figures: a circuit that is moved from another state ends in the same one but for rounding. */
const said = ({ proposal, belief }: Assessment): string =>
  JSON.stringify(
    [proposal, belief.suspects.slice(0, 10), belief.explanations.slice(0, 10)],
    (_, value: unknown) => (typeof value === "number" ? Number(value.toPrecision(8)) : value),
  );

it("each likely outcome of the step proposed is an event that the log takes, most probable first", () => {
  const { proposal } = assessed(SAFE, new AssessmentSession());
  const next = likelyNext(proposal);
  expect(next.length).toBeGreaterThan(0);
  for (const event of next) {
    expect(event).toMatchObject(proposal.action);
    expect(foldLog(SAFE.board, SAFE.absent, after(event).log).ok).toBe(true);
  }
});

it("a step with one outcome is worked out as done", () => {
  const action = { do: "lift", place: "C1.plus" } as const;
  expect(likelyNext({ action, expect: [] })).toEqual([action]);
  expect(likelyNext({ action: { do: "close", verdict: "repaired" }, expect: [] })).toEqual([]);
});

it("a number stands for its band, a word for itself, and what is hardly to be expected is left alone", () => {
  const action = { do: "measure", mode: "ohms", red: "PBUS", black: "NBUS" } as const;
  const band = (low: number, high: number, probability: number) => ({
    if: `${low} to ${high}`,
    low,
    high,
    unit: "ohm",
    probability,
    means: "",
  });
  const word = { if: "OL", low: null, high: null, unit: "", probability: 0.2, means: "" };
  expect(likelyNext({ action, expect: [band(100, 400, 0.7), word, band(0, 1, 0.04)] })).toEqual([
    { ...action, reading: 200 },
    { ...action, reading: "OL" },
  ]);
});

it("what was worked out ahead is what is proposed, whoever writes the event and when", () => {
  const session = new AssessmentSession();
  const [next] = likelyNext(assessed(SAFE, session).proposal);
  workAhead(SAFE, next, session);
  const written = after({ ...next, id: "e9", at: "2026-11-27T10:00:00Z", who: "bench" } as JobEvent);
  const found = assessed(written, session);
  expect(said(found)).toEqual(said(assessed(written, new AssessmentSession())));
  expect(found.timeline.entries.at(-1)?.event.id).toBe("e9");
  expect(found.job).toBe(written);
});

it("what came otherwise than expected is judged as if nothing had been worked out", () => {
  const session = new AssessmentSession();
  const first = assessed(SAFE, session);
  for (const next of likelyNext(first.proposal)) workAhead(SAFE, next, session);
  const other = after({ do: "measure", mode: "diode", red: "PBUS", black: "NBUS", reading: 0.213 });
  expect(said(assessed(other, session))).toEqual(said(assessed(other, new AssessmentSession())));
});

it("other terms or other equipment make another assessment of the same log", () => {
  const session = new AssessmentSession();
  const before = assessed(SAFE, session);
  const dearer = { ...SAFE, terms: { ...SAFE.terms, agreedPrice: 400 } };
  expect(assessed(dearer, session).proposal.outlook.expectedMargin).toBeGreaterThan(
    before.proposal.outlook.expectedMargin + 100,
  );
});

it("two resistors clipped to different places make two assessments", () => {
  const session = new AssessmentSession();
  const at = (pins: readonly [string, string]) =>
    assessed(after({ do: "clip", ohms: 2200, at: pins }), session).timeline.now.clips.map((clip) => clip.at);
  expect(at(["PBUS", "NBUS"])).not.toEqual(at(["V15", "NBUS"]));
  expect(said(assessed(after({ do: "clip", ohms: 2200, at: ["V15", "NBUS"] }), session))).not.toBe(
    said(assessed(after({ do: "clip", ohms: 2200, at: ["PBUS", "NBUS"] }), session)),
  );
});

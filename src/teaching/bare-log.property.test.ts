/** A case to practise on never holds a word of the people in the job: canaries in every field that anybody can write in. */

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import { smallDrive } from "../board/small-drive.fixture.ts";
import { parseJob } from "../job/parse-job.ts";
import { plain } from "../messages/said.ts";
import { bareLog } from "./bare-log.ts";
import { bareHeader } from "./teaching-case.ts";

const SEED = { seed: 20261126, numRuns: 300 };
const CANARY = "canary7731";
const canary = fc.string({ maxLength: 12 }).map((text) => `${CANARY}${text}`);
const time = fc
  .integer({ min: Date.UTC(2024, 0), max: Date.UTC(2027, 0) })
  .map((moment) => new Date(moment).toISOString());

const BARE: readonly object[] = [
  { do: "measure", mode: "ohms", red: "PBUS", black: "NSH", reading: 0.2 },
  { do: "measure", mode: "diode", red: "NSH", black: "PBUS", reading: "OL" },
  { do: "look", part: "F1", finding: "burnt" },
  { do: "replace", part: "F1", price: 2 },
  { do: "lift", place: "Q1.g" },
  { do: "refit", place: "Q1.g" },
  { do: "remove", part: "Q2" },
  { do: "restore", part: "Q2" },
  { do: "resolder", part: "Q1" },
  { do: "calibrate", mode: "ohms", known: 100, reading: 101 },
  { do: "mark", part: "Q3", as: "unsure" },
  { do: "power", feed: "mains", observed: "quiet" },
  { do: "unpower" },
  { do: "answer", question: "powered-while-wet", answer: "yes" },
];
const event = fc.oneof(
  fc.constantFrom(...BARE),
  canary.map((text) => ({ do: "note", text })),
  canary.map((why) => ({ do: "overrule", why })),
  canary.map((name) => ({ do: "replace", part: "Q1", with: name })),
  fc.tuple(canary, canary).map(([question, answer]) => ({ do: "answer", question, answer })),
  canary.map((answer) => ({ do: "answer", question: "motor-insulation", answer })),
  canary.map((answer) => ({ do: "answer", question: "powered-while-wet", answer })),
);
const stamped = fc
  .tuple(event, canary, canary, time)
  .map(([one, id, who, at]) => ("feed" in one ? { ...one, who, id } : { ...one, who, id, at }));

/** The events that are possible one after another, the second of every third taken back. */
function possible(content: object, events: readonly { id: string }[]): readonly JobEvent[] {
  let log: readonly unknown[] = [];
  for (const [index, one] of events.entries()) {
    const tries =
      index % 3 === 2 ? [one, { do: "undo", of: one.id, id: `${one.id}-undo`, who: one.id }] : [one];
    const read = parseJob({ ...content, log: [...log, ...tries] }, null);
    if (read.ok) log = [...log, ...tries];
  }
  const read = parseJob({ ...content, log }, null);
  if (!read.ok) throw new Error(read.problem);
  return read.value.log;
}

describe("a log for somebody else's practice", () => {
  it("holds no word, name, time or id that anybody wrote, and is still a log of the same board", () => {
    const board = { ...smallDrive(), name: `${CANARY}'s drive` };
    const content = {
      format: "faultwright-job/1",
      board,
      cause: "surge",
      symptom: "dead",
      terms: { agreedPrice: 77.31, ratePerHour: 30 },
    };
    let kept = 0;
    fc.assert(
      fc.property(
        fc.uniqueArray(stamped, { minLength: 6, maxLength: 14, selector: ({ id }) => id }),
        (events) => {
          const log = possible(content, events);
          const job = parseJob({ ...content, log }, null);
          if (!job.ok) throw new Error(job.problem);
          const timeline = foldLog(job.value.board, job.value.absent, job.value.log);
          if (!timeline.ok) throw new Error(timeline.problem);
          const bare = bareLog(timeline.value.entries);
          const header = bareHeader(content, "A drive");
          const text = JSON.stringify({ header, bare });
          expect(text).not.toContain(CANARY);
          expect(text).not.toContain("77.31");
          expect(text).not.toMatch(/20(2[4-7])-/);
          expect(text).not.toMatch(/"(who|id|with)"/);
          const again = parseJob({ ...header, log: bare }, null);
          expect(again.ok ? "" : plain(again.problem)).toBe("");
          kept += bare.length;
        },
      ),
      SEED,
    );
    expect(kept).toBeGreaterThan(500);
  });

  it("keeps how long things took, from a day that is the same for all", () => {
    const job = parseJob(
      {
        format: "faultwright-job/1",
        board: smallDrive(),
        cause: "surge",
        symptom: "dead",
        log: [
          { do: "look", part: "F1", finding: "burnt", at: "2026-03-04T16:40:00+01:00" },
          { do: "replace", part: "F1", at: "2026-03-04T16:52:30+01:00" },
        ],
      },
      null,
    );
    if (!job.ok) throw new Error(job.problem);
    const timeline = foldLog(job.value.board, [], job.value.log);
    if (!timeline.ok) throw new Error(timeline.problem);
    expect(bareLog(timeline.value.entries).map((one) => ("at" in one ? one.at : ""))).toEqual([
      "2000-01-01T09:00:00.000Z",
      "2000-01-01T09:12:30.000Z",
    ]);
  });
});

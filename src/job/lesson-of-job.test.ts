import { describe, expect, it } from "vitest";
import type { Lesson } from "../learning/lesson.ts";
import { lessonOf, whyNoLesson } from "./lesson-of-job.ts";
import { CLOSE, FUSE_LOG, rectifierJob } from "./rectifier-job.fixture.ts";

const ALONE = { cameBack: false, again: false };

function lesson(log: readonly object[], chained = ALONE): Lesson {
  const made = lessonOf(rectifierJob(log), chained);
  if (!made.ok) throw new Error(made.problem);
  return made.value;
}

const of = (from: Lesson, part: string) => from.parts.find((tally) => tally.part === part);

describe("a closed job teaches", () => {
  it("that the part which was found, replaced and cured had failed, and that the rest had not", () => {
    const read = lesson(FUSE_LOG);
    expect(of(read, "F1")?.count).toBeGreaterThan(0.5);
    expect(of(read, "C1")?.count ?? 0).toBeLessThan((of(read, "C1")?.expected ?? 0) / 3);
    expect(of(read, "F1")?.unseen).toBeLessThan(0.1 * (of(read, "F1")?.count ?? 0));
    const modes = read.modes.filter(({ sort }) => sort === "fuse");
    expect(modes.find(({ mode }) => mode === "open")?.count).toBeGreaterThan(
      0.9 * (of(read, "F1")?.count ?? 0),
    );
    expect(read).toMatchObject({ family: "rectifier", boardName: "small rectifier", cause: "surge" });
    expect(read.seen).toEqual({ fuse: 1, bridge: 1, electrolytic: 1, "stressed-resistor": 1 });
  });

  it("nothing where nothing was read and the end says nothing: what was found is what was expected", () => {
    const read = lesson([{ ...CLOSE, verdict: "declined" }]);
    for (const { count, expected, unseen } of [...read.parts, ...read.modes]) {
      expect(count).toBeCloseTo(expected, 9);
      // and none of it was shown, so that nothing is learnt of its rate
      expect(unseen).toBeCloseTo(count, 9);
    }
    for (const { count, expected, trials } of read.knockOns) {
      expect(trials).toBeGreaterThan(0);
      expect(count / trials).toBeCloseTo(expected / trials, 1);
    }
  });

  it("less of a part that was exchanged where the board then came back, and more of what was left on it", () => {
    const [stayed, back] = [lesson(FUSE_LOG), lesson(FUSE_LOG, { cameBack: true, again: false })];
    for (const part of ["C1", "BR1"])
      expect([part, (of(back, part)?.count ?? 0) > (of(stayed, part)?.count ?? 0)]).toEqual([part, true]);
  });

  it("the time between one entry and the next, and what was paid", () => {
    const { paces, prices } = lesson(FUSE_LOG);
    const ratios = new Map(paces.map(({ action, logRatios }) => [action, logRatios]));
    // 30 s, 30 s, 20 s, 20 s against 0.4 min; 20 min against the 10 of a small part
    expect(ratios.get("measure")?.map(Math.exp)).toEqual(
      [0.5, 0.5, 1 / 3, 1 / 3].map((minutes) => expect.closeTo(minutes / 0.4, 9)),
    );
    expect(ratios.get("replace")?.map(Math.exp)).toEqual([expect.closeTo(2, 9)]);
    expect(prices).toEqual([{ part: "F1", kind: "fuse", paid: 0.8, usual: 0.78 }]);
  });
});

describe("a job teaches nothing", () => {
  it.each([
    ["practice", FUSE_LOG, { practice: 7 }],
    ["open", FUSE_LOG.slice(0, -1), {}],
    ["open", [...FUSE_LOG, { do: "undo", of: "end" }], {}],
    ["left out", [...FUSE_LOG, { do: "note", text: "dropped in a pond", leftOut: true }], {}],
  ] as const)("that is %s", (why, log, changes) => {
    const job = rectifierJob(log, changes);
    expect(whyNoLesson(job)).toBe(why);
    expect(lessonOf(job, ALONE).ok).toBe(false);
  });

  it("until leaving it out is undone", () => {
    const note = { do: "note", text: "odd", leftOut: true, id: "n" };
    expect(whyNoLesson(rectifierJob([...FUSE_LOG, note, { do: "undo", of: "n" }]))).toBeNull();
  });
});

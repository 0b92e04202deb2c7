/** What a check would read on a good board and with each suspect, and where the reading lies; the rails since power came on. */

import { describe, expect, it } from "vitest";
import { foldLog } from "../bench/fold.ts";
import { plain } from "../messages/said.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { AssessmentSession, beliefOf } from "./assess.ts";
import { railBands } from "./course.ts";
import { parseJob } from "./parse-job.ts";
import { stripView } from "./reading-strip.ts";

const session = new AssessmentSession();
const DRIVE = SHIPPED.find(({ id }) => id === "greenhouse-fan-drive")?.board;
const volts = (ref: string) => ({
  do: "measure",
  mode: "dcv",
  red: `${ref}.plus`,
  black: `${ref}.minus`,
  reading: 0,
});
const DEAD = ["C5", "C6", "C15", "C1", "C7", "C2"].map(volts);
const check = (mode: "diode" | "ohms", red: string, black: string) =>
  ({ do: "measure", mode, red, black }) as const;

function jobOf(log: readonly object[]) {
  const job = parseJob(
    { format: "faultwright-job/1", board: DRIVE, cause: "surge", symptom: "dead", absent: ["M1"], log },
    null,
  );
  if (!job.ok) throw new Error(job.problem);
  return job.value;
}

function believedAfter(log: readonly object[]) {
  const believed = beliefOf(jobOf(log), session);
  if (!believed.ok) throw new Error(believed.problem);
  return believed.value;
}

describe("the strip of a check", () => {
  const bridge = check("diode", "L_B", "PBUS");

  it("sets a shorted bridge leg apart from a good one, each where the meter would show it", () => {
    const believed = believedAfter(DEAD);
    const strip = stripView(believed, bridge);
    expect(strip).toMatchObject({ unit: "V", scale: "linear", from: 0, to: 2, reading: null });
    const [good, ...suspects] = strip?.rows ?? [];
    const leg = believed.predictor.predict(bridge, []);
    expect(plain(good?.words ?? "")).toBe("a good board");
    expect(good).toMatchObject({ good: true, value: leg.solved ? leg.raw : null });
    // a junction's drop at a milliampere (common practice: 0.4 to 0.6 V for a bridge)
    expect(good?.low).toBeLessThan(0.5);
    expect(good?.high).toBeGreaterThan(0.4);
    const shorted = suspects.find(({ words }) => plain(words).startsWith("BR1 AC 1 to plus shorted"));
    expect(shorted?.value).toBeLessThan(0.01);
    // what reads unlike a good board comes first
    expect(suspects[0]?.value).not.toBeCloseTo(good?.value ?? 0, 1);
  });

  it("carries the reading: a figure where it lies, a key by the span it leaves, OL above the scale", () => {
    const believed = believedAfter(DEAD);
    expect(stripView(believed, bridge, 0.002)?.reading).toMatchObject({ low: 0.002, high: 0.002 });
    expect(stripView(believed, bridge, "junction")?.reading).toMatchObject({ low: 0.1, high: 1 });
    expect(stripView(believed, bridge, "OL")?.reading).toMatchObject({ low: null, high: null });
  });

  it("shows how a reading across the bus climbs as the meter charges it, up to where it stands", () => {
    const strip = stripView(believedAfter(DEAD), check("diode", "PBUS", "NBUS"), 0.4);
    const [good] = strip?.climb?.rows ?? [];
    const values = good?.points.map(({ value }) => value) ?? [];
    expect(values).toHaveLength(7);
    expect([...values].sort((a, b) => a - b)).toEqual(values);
    // about 1 mA into twice 470 uF: one volt in a second, less as the source runs out of volts
    expect(values[2]).toBeGreaterThan(0.6);
    expect(values[2]).toBeLessThan(1.2);
    expect(strip?.climb?.reading).toEqual({ seconds: 2, value: 0.4 });
    expect(stripView(believedAfter(DEAD), bridge)?.climb).toBeNull();
  });

  it("is none where no number is foretold: continuity, and volts that prove a board dead", () => {
    const believed = believedAfter(DEAD);
    expect(stripView(believed, { ...bridge, mode: "continuity" })).toBeNull();
    expect(stripView(believed, { ...bridge, mode: "dcv" })).toBeNull();
  });
});

describe("the rails since power came on", () => {
  it("are bands about their volts, with what was read across them, either way round", () => {
    const read = (red: string, black: string, reading: number) => ({
      do: "measure",
      mode: "dcv",
      red,
      black,
      reading,
    });
    const job = jobOf([
      ...DEAD,
      { do: "power", feed: "lamp", watts: 100, observed: "lamp-dim" },
      read("V15", "NBUS", 14.6),
      read("NBUS", "V5", -3.9),
      read("U7.vdd", "NBUS", 3.8),
      read("PBUS", "NBUS", 310),
    ]);
    const timeline = foldLog(job.board, job.absent, job.log);
    if (!timeline.ok) throw new Error(timeline.problem);
    expect(railBands(job.board, timeline.value)).toEqual([
      { rail: "V15", volts: 15, low: 13.5, high: 16.5, readings: [14.6] },
      { rail: "V5", volts: 5, low: 4.75, high: 5.25, readings: [3.9, 3.8] },
    ]);
  });
});

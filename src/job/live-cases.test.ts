/** What the readings of a powered board say of it: the cases that a bench meets most, each with figures of its own. */
import { describe, expect, it } from "vitest";
import type { JobEvent, MeasureEvent, Observed } from "../bench/event.ts";
import { parseBoard } from "../board/parse-board.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { AssessmentSession, beliefOf } from "./assess.ts";
import { parseJob } from "./parse-job.ts";

/** A shipped board without its motor, and what is believed after one power-up from the mains and its readings. */
function onMains(id: string) {
  const content = SHIPPED.find((one) => one.id === id)?.board;
  const parsed = parseBoard(content);
  if (!parsed.ok) throw new Error(parsed.problem);
  const board = parsed.value;
  const session = new AssessmentSession();
  const absent = [...board.parts.values()].flatMap(({ ref, kind }) => (kind === "motor" ? [ref] : []));
  return (observed: Observed, ...readings: readonly JobEvent[]) => {
    const log = [{ do: "power", feed: "mains", observed }, ...readings];
    const job = parseJob(
      { format: "faultwright-job/1", board: content, cause: "unknown", symptom: "dead", absent, log },
      board,
    );
    if (!job.ok) throw new Error(job.problem);
    const found = beliefOf(job.value, session);
    if (!found.ok) throw new Error(found.problem);
    const { belief } = found.value;
    return {
      unexplained: belief.unexplained,
      first: belief.suspects[0]?.part ?? "",
      /** expected number of faulty parts among these */
      among: (...refs: readonly string[]) =>
        belief.suspects
          .filter(({ part }) => refs.includes(part))
          .reduce((sum, { probability }) => sum + probability, 0),
    };
  };
}

const volts = (net: string, reading: number): MeasureEvent => ({
  do: "measure",
  mode: "dcv",
  red: net,
  black: "NBUS",
  reading,
});
const ripple = (reading: number): MeasureEvent => ({ ...volts("PBUS", reading), mode: "acv" });
const warm = (part: string, reading: number): MeasureEvent => ({
  do: "measure",
  mode: "temperature",
  part,
  by: "camera",
  ambient: 22,
  afterPower: 120,
  reading,
});

const fan = onMains("greenhouse-fan-drive");
const outdoor = onMains("outdoor-unit-inverter");

describe("a bus 5 to 10 % low at idle", () => {
  const inrush = ["K1", "RT1", "D1", "Q7", "R52", "R53", "U7"];
  const rails = [volts("V15", 15), volts("V5", 5)];

  it("with little ripple still has its inrush part in the way, before any lost capacity", () => {
    const low = fan("quiet", volts("PBUS", 297), ripple(0.05), ...rails);
    const right = fan("quiet", volts("PBUS", 323), ripple(0.05), ...rails);
    expect(low.among(...inrush)).toBeGreaterThan(3 * low.among("C5", "C6"));
    expect(low.among("K1")).toBeGreaterThan(2 * right.among("K1"));
    expect(low.among("C5", "C6")).toBeLessThan(1.2 * right.among("C5", "C6"));
  });

  it("with much ripple accuses its capacitors first", () => {
    const low = fan("quiet", volts("PBUS", 309), ripple(6), ...rails);
    expect(["C5", "C6"]).toContain(low.first);
    expect(low.among("C5", "C6")).toBeGreaterThan(3 * low.among(...inrush));
  });
});

it("two rails right and the third low with a hot regulator before it: what hangs on that rail takes the current, not the regulator", () => {
  const right = [volts("PBUS", 320), volts("V15", 15), volts("V12", 12)];
  const low = outdoor("quiet", ...right, volts("V5", 1.5), volts("V33", 0.2), warm("U3", 115));
  const cold = outdoor("quiet", ...right, volts("V5", 1.5), volts("V33", 0.2), warm("U3", 24));
  // on the 5 V itself, and on the 3.3 V that is made from it
  const onRail = ["C40", "C41", "C50", "U6", "U4", "U5", "C42", "C43", "C44", "C45", "C46", "C47", "C48"];
  expect(low.among(...onRail)).toBeGreaterThan(0.8);
  expect(low.among("U3")).toBeLessThan(0.5 * cold.among("U3"));
});

it("two rails right and the third unsteady: the chip that is warm on it is accused, one that stays cold is cleared", () => {
  const rails = [volts("PBUS", 320), volts("V15", 15), volts("V12", 12), volts("V5", 1.5), volts("V33", 0.2)];
  const [warmChip, coldChip] = [48, 24].map((celsius) => outdoor("quiet", ...rails, warm("U6", celsius)));
  const untouched = outdoor("quiet", ...rails);
  expect(warmChip.first).toBe("U6");
  expect(warmChip.among("U6")).toBeGreaterThan(2 * untouched.among("U6"));
  expect(coldChip.among("U6")).toBeLessThan(0.6 * untouched.among("U6"));
});

it("bus right and no rail: the small supply or what it feeds, not the way from the mains, nor what is made from its rails", () => {
  const dead = outdoor("quiet", volts("PBUS", 322), volts("V15", 0.02), volts("V12", 0.02), volts("V5", 0));
  const before = outdoor("quiet");
  expect(dead.among("F1", "RT1", "BR1", "LF1")).toBeLessThan(0.05);
  expect(dead.among("U1", "R28", "C32", "OC1", "D5", "R30")).toBeGreaterThan(
    2 * before.among("U1", "R28", "C32", "OC1", "D5", "R30"),
  );
  expect(dead.among("U3", "U4")).toBeLessThan(0.1);
});

it("rails pulsing at a fraction of their volts: hiccup; a rail is loaded, a rectifier shorted, or its own feed is lost, and the switch is alive", () => {
  const pulsing = outdoor("quiet", volts("PBUS", 320), volts("V12", 3.6), volts("V15", 4.5));
  const dead = outdoor("quiet", volts("PBUS", 320), volts("V12", 0.02), volts("V15", 0.02));
  expect(pulsing.among("U1", "R28")).toBeLessThan(0.3 * dead.among("U1", "R28"));
  const hiccup = ["D6", "D7", "C34", "C36", "D5", "R30", "C32", "D4", "C31", "T1", "U3", "U6", "ZD1", "ZD2"];
  expect(pulsing.among(...hiccup)).toBeGreaterThan(0.6);
});

it("every rail low by one ratio, six tenths: the reference and its divider, no single rail", () => {
  const low = outdoor("quiet", volts("PBUS", 323), volts("V12", 7.3), volts("V15", 9.1));
  expect(low.among("R32", "R33", "U2", "OC1", "C38", "R31")).toBeGreaterThan(0.6);
  expect(low.among("D6", "D7", "C34", "C36")).toBeLessThan(0.4);
});

it("rails high: the feedback is lost", () => {
  const high = outdoor("quiet", volts("PBUS", 323), volts("V12", 17.6), volts("V15", 22));
  expect(high.among("OC1", "U2", "R31", "R32", "R33", "U1")).toBeGreaterThan(0.8);
  expect(["OC1", "U2", "R31", "R32", "R33"]).toContain(high.first);
});

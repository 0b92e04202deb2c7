/**
 * The ten masking lessons of the trade (common practice, computed for a generic board) as they stand on the outdoor unit's
 * inverter with the default meter: the readings are given, and suspects, exonerations and the next proposal are held to what
 * a master would say. The motor is unplugged throughout.
 */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import type { JobEvent, MeasureEvent, Reading } from "../src/bench/event.ts";
import { parseBoard } from "../src/board/parse-board.ts";
import { storesOfCharge } from "../src/board/stores-of-charge.ts";
import { type Assessment, AssessmentSession, assess } from "../src/job/assess.ts";
import { parseJob } from "../src/job/parse-job.ts";
import type { Cause } from "../src/priors/cause.ts";

const board = (() => {
  const parsed = parseBoard(JSON.parse(readFileSync("boards/outdoor-unit-inverter.json", "utf8")));
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
})();
const session = new AssessmentSession();

const measure = (mode: MeasureEvent["mode"], red: string, black: string, reading: Reading): JobEvent => ({
  do: "measure",
  mode,
  red,
  black,
  reading,
});
const diode = (red: string, black: string, reading: Reading): JobEvent =>
  measure("diode", red, black, reading);
const ohms = (red: string, black: string, reading: Reading): JobEvent => measure("ohms", red, black, reading);

/** The stores of charge proven empty, then the readings of the lesson. */
function after(readings: readonly JobEvent[], cause: Cause = "unknown"): Assessment {
  const proofs = storesOfCharge(board).map((store) =>
    measure("dcv", `${store.part}.${store.pins[0]}`, `${store.part}.${store.pins[1]}`, 0.6),
  );
  const job = parseJob(
    {
      format: "faultwright-job/1",
      board: "boards/outdoor-unit-inverter.json",
      cause,
      symptom: "dead",
      absent: ["MOT1"],
      equipment: ["lamp-100"],
      log: [...proofs, ...readings],
    },
    board,
  );
  if (!job.ok) throw new Error(job.problem);
  const assessed = assess(job.value, session);
  if (!assessed.ok) throw new Error(assessed.problem);
  return assessed.value;
}

const suspicion = (assessment: Assessment, part: string): number =>
  assessment.belief.suspects.find((suspect) => suspect.part === part)?.probability ?? Number.NaN;
const together = (assessment: Assessment, parts: readonly string[]): number =>
  parts.reduce((sum, part) => sum + suspicion(assessment, part), 0);
const fault = (assessment: Assessment, name: string): number => {
  const part = name.split(":")[0].split(".")[0];
  const suspect = assessment.belief.suspects.find((one) => one.part === part);
  return suspect?.modes.find((mode) => mode.fault === name)?.probability ?? 0;
};
const ACROSS_THE_BUS = ["C8", "C9", "C10", "C11", "C13"];

test("1: six phase readings at one diode drop with P-N at zero accuse what lies across the bus, not three legs", () => {
  const bus = after([
    diode("PBUS", "NBUS", 0.001),
    diode("NBUS", "PBUS", 0.001),
    ...["U", "V", "W"].flatMap((phase) => [diode(phase, "NBUS", 0.428), diode("PBUS", phase, 0.428)]),
  ]);
  expect(together(bus, ACROSS_THE_BUS)).toBeGreaterThan(0.8);
  for (const leg of ["up", "un", "vp", "vn", "wp", "wn"])
    expect(fault(bus, `M1.${leg}:short`)).toBeLessThan(0.02);
  expect(bus.proposal.action).not.toMatchObject({ part: "M1" });
});

test("1, turned round: a shorted bus capacitor cannot make every phase read zero to both rails, and is not lifted first", () => {
  const legs = after([
    diode("PBUS", "NBUS", 0.001),
    ...["U", "V", "W"].flatMap((phase) => [diode(phase, "NBUS", 0.001), diode("PBUS", phase, 0.001)]),
  ]);
  expect(suspicion(legs, "M1")).toBeGreaterThan(0.95);
  for (const part of ACROSS_THE_BUS) expect(legs.proposal.action).not.toMatchObject({ part });
  expect(together(legs, ACROSS_THE_BUS)).toBeLessThan(0.5);
});

test("2: a shorted boost switch makes the bridge look shorted at its DC pins; with the reactor out the bridge is clear", () => {
  const readings = [
    diode("BR_P", "BR_N", 0.001),
    diode("BR_N", "BR_P", 0.001),
    diode("SW", "NBUS", 0.001),
    diode("NBUS", "SW", 0.001),
    diode("L_B", "BR_P", 0.467),
    diode("N_C", "BR_P", 0.467),
  ];
  const looked = after(readings);
  // The film capacitor behind the bridge lies across the same two nets through the reactor: it is the only rival.
  expect(suspicion(looked, "Q1")).toBeGreaterThan(0.8);
  expect(suspicion(looked, "Q1") + suspicion(looked, "C5")).toBeGreaterThan(0.95);
  expect(suspicion(looked, "BR1")).toBeLessThan(0.1);
  const apart = after([
    ...readings,
    { do: "remove", part: "L1" },
    diode("BR_P", "BR_N", "OL"),
    diode("BR_N", "BR_P", 0.86),
  ]);
  expect(suspicion(apart, "BR1")).toBeLessThan(0.03);
  expect(suspicion(apart, "Q1")).toBeGreaterThan(0.95);
});

test("3: the small supply's switch shorted equals a bus short in diode mode; ohms show the winding and the fuse resistor", () => {
  const blind = after([diode("PBUS", "NBUS", 0.008), diode("NBUS", "PBUS", 0.008)]);
  expect(suspicion(blind, "U1")).toBeGreaterThan(0.05);
  expect(together(blind, ACROSS_THE_BUS)).toBeGreaterThan(0.1);
  const seen = after([diode("PBUS", "NBUS", 0.008), diode("NBUS", "PBUS", 0.008), ohms("PBUS", "NBUS", 7.1)]);
  expect(suspicion(seen, "U1")).toBeGreaterThan(0.7);
  // What lies across the bus is no longer needed; hidden behind the switch it keeps less than it came with.
  expect(together(seen, ACROSS_THE_BUS)).toBeLessThan(0.5 * together(after([]), ACROSS_THE_BUS));
  for (const part of ["C8", "C9", "C10"]) expect(fault(seen, `${part}:short`)).toBeLessThan(0.02);
});

test("4: one shorted low switch leaves P-N open: P-N alone never clears the module", () => {
  const fresh = after([]);
  const open = after([diode("PBUS", "NBUS", "OL")]);
  expect(fault(open, "M1.un:short")).toBeGreaterThan(0.8 * fault(fresh, "M1.un:short"));
  const found = after([diode("PBUS", "NBUS", "OL"), diode("U", "NBUS", 0.001), diode("NBUS", "U", 0.001)]);
  expect(fault(found, "M1.un:short")).toBeGreaterThan(0.9);
});

test("5: with the 15 V rail shorted a good gate reads low: the gate's parts are not accused for it", () => {
  const rail = after([
    diode("V15", "NBUS", 0.004),
    diode("NBUS", "V15", 0.004),
    diode("G_PFC", "NBUS", 0.651),
  ]);
  expect(fault(rail, "Q1.ge:short")).toBeLessThan(0.03);
  expect(suspicion(rail, "ZD1")).toBeLessThan(0.15);
  const logic = after([
    diode("V33", "NBUS", 0.001),
    diode("M_up", "NBUS", 0.591),
    diode("IN_up", "NBUS", 0.661),
  ]);
  expect(fault(logic, "M1.inup:short") + fault(logic, "M1.inup:leaky")).toBeLessThan(0.03);
  expect(logic.belief.unexplained).toEqual([]);
});

test("6: diode mode cannot tell 0.6 ohm from 12 ohm on a rail; ohms can", () => {
  const check = { mode: "diode", red: "V33", black: "NBUS" } as const;
  const { predictor } = after([]);
  const at = (mode: "diode" | "ohms", value: number): number => {
    const prediction = predictor.predict({ ...check, mode }, [
      { of: "part", part: "C42", junction: null, mode: "short", value },
    ]);
    return prediction.solved ? prediction.raw : Number.NaN;
  };
  expect(at("diode", 12) - at("diode", 0.6)).toBeLessThan(0.02);
  expect(at("ohms", 12) / at("ohms", 0.6)).toBeGreaterThan(10);
});

test("7: leakage above some kilohms is invisible in diode mode; ohms show it", () => {
  const { predictor } = after([]);
  const leak = [{ of: "part", part: "M1", junction: "un", mode: "leaky", value: 10_000 }] as const;
  const shown = (mode: "diode" | "ohms", faults: typeof leak | readonly []): number | string => {
    const prediction = predictor.predict({ mode, red: "U", black: "NBUS" }, faults);
    return prediction.solved ? prediction.shown : "no answer";
  };
  expect(shown("diode", leak)).toBe(shown("diode", []));
  expect(Number(shown("ohms", leak))).toBeLessThan(0.1 * Number(shown("ohms", [])));
  const seen = after([diode("U", "NBUS", "OL"), ohms("U", "NBUS", 9_500)]);
  expect(fault(seen, "M1.un:leaky")).toBeGreaterThan(0.3);
});

test("8: a shorted boost diode hides as N to P slightly low and shows plainly from P to the switching point", () => {
  // A shorted leg reads the same 0.42 V; once the phases have cleared the legs, the boost side remains.
  const legs = ["U", "V", "W"].flatMap((phase) => [diode(phase, "NBUS", "OL"), diode("PBUS", phase, "OL")]);
  const hint = after([diode("NBUS", "PBUS", 0.424), ...legs]);
  const fresh = after(legs);
  expect(suspicion(hint, "D2")).toBeGreaterThan(2 * suspicion(fresh, "D2"));
  expect(suspicion(hint, "D2")).toBeLessThan(0.7);
  const plain = after([diode("NBUS", "PBUS", 0.424), diode("PBUS", "SW", 0.001), diode("SW", "PBUS", 0.001)]);
  // The bypass diode stands beside it through the reactor; pulling the reactor's plug tells them apart.
  expect(suspicion(plain, "D2") + suspicion(plain, "D3")).toBeGreaterThan(0.95);
  expect(suspicion(plain, "D2")).toBeGreaterThan(0.3);
});

test("9: an open shunt shows as N to U through the substrate with NU to U still one diode", () => {
  const shunt = after([
    diode("NBUS", "U", 0.731),
    diode("N_U", "U", 0.428),
    diode("NBUS", "V", 0.428),
    diode("NBUS", "W", 0.428),
  ]);
  expect(suspicion(shunt, "R15")).toBeGreaterThan(0.9);
  // The three lower diodes are read and cleared; of the module only what has not been read keeps its suspicion.
  const fresh = after([]);
  expect(suspicion(shunt, "M1")).toBeLessThan(suspicion(fresh, "M1"));
  for (const unread of ["M1.vp:short", "M1.wp:short"])
    expect(fault(shunt, unread) / fault(fresh, unread)).toBeLessThan(1.01);
  for (const leg of ["un", "vn", "wn"])
    for (const mode of ["short", "open"]) expect(fault(shunt, `M1.${leg}:${mode}`)).toBeLessThan(0.005);
});

test("10: boost switch and boost diode both shorted make P-N zero: the module is not needed to explain it", () => {
  const both = after([
    diode("PBUS", "NBUS", 0.001),
    diode("SW", "NBUS", 0.001),
    diode("PBUS", "SW", 0.001),
    diode("SW", "PBUS", 0.001),
    diode("NBUS", "SW", 0.001),
    ...["U", "V", "W"].flatMap((phase) => [diode(phase, "NBUS", 0.428), diode("PBUS", phase, 0.428)]),
  ]);
  for (const leg of ["up", "un", "vp", "vn", "wp", "wn"])
    expect(fault(both, `M1.${leg}:short`)).toBeLessThan(0.05);
  // Switch side, diode side, bus side: two of the three must be shorted, and every explanation of weight says so.
  // The reactor joins the switch to the bridge: a bridge leg shorted through is on the switch's side as well.
  const sides = [
    ["Q1", "C5", "BR1"],
    ["D2", "D3"],
    [...ACROSS_THE_BUS, "U1"],
  ];
  for (const { faults, probability } of both.belief.explanations) {
    if (probability < 0.02) continue;
    const parts = faults.map((dated) => both.belief.priors[dated.fault].part);
    expect(sides.filter((side) => side.some((part) => parts.includes(part))).length).toBeGreaterThanOrEqual(
      2,
    );
  }
  expect(both.proposal.action).not.toMatchObject({ part: "M1" });
});

test("water: a good gate clamp hardly lowers the controller's probability", () => {
  const fresh = after([], "water");
  const clamp = after([diode("NBUS", "G_PFC", 0.691)], "water");
  expect(suspicion(clamp, "U5")).toBeGreaterThan(0.8 * suspicion(fresh, "U5"));
});

test("water: a drive-side junction with a drop both ways sends the next check to the low rails", () => {
  const both = after([diode("NBUS", "G_PFC", 0.639), diode("G_PFC", "NBUS", 0.651)], "water");
  const rails = ["V15", "V12", "V5", "V33"];
  const { action } = both.proposal;
  expect(action.do).toBe("measure");
  const places = action.do === "measure" ? [action.red, action.black] : [];
  expect(places.some((place) => place !== undefined && rails.includes(place))).toBe(true);
});

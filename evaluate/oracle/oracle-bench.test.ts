import { describe, expect, it } from "vitest";
import type { JobEvent, PowerEvent } from "../../src/bench/event.ts";
import { foldLog } from "../../src/bench/fold.ts";
import type { Timeline } from "../../src/bench/timeline.ts";
import type { Board } from "../../src/board/board.ts";
import { faultName } from "../../src/board/fault.ts";
import { hasNgspice } from "../ngspice.ts";
import { type OracleAnswer, oracleBench } from "./oracle-bench.ts";
import { oracleBoard } from "./oracle-board.ts";
import { conditionOf } from "./power-truth.ts";
import { shippedBoards } from "./shipped-boards.ts";

const present = await hasNgspice();
const fan = shippedBoards()[0]?.board;
if (fan === undefined) throw new Error("the shipped boards are not in boards/");

function timelineOf(board: Board, log: readonly JobEvent[]): Timeline {
  const folded = foldLog(board, [], log);
  if (!folded.ok) throw new Error(folded.problem);
  return folded.value;
}

const measure = (mode: "diode" | "ohms", red: string, black: string) =>
  ({ do: "measure", mode, red, black }) as const;
const START = timelineOf(fan, []);

describe("the oracle's bench", () => {
  it("answers a row as it answers one check after another, and the same from the same seed", async (context) => {
    if (!present) context.skip("ngspice is not installed");
    const row = [measure("diode", "U", "PBUS"), measure("diode", "NBUS", "U"), measure("ohms", "V5", "NBUS")];
    const together = await oracleBench(fan, "surge", 610).answerRow(START, row);
    const again = await oracleBench(fan, "surge", 610).answerRow(START, row);
    expect(again).toEqual(together);
    const first = await oracleBench(fan, "surge", 610).answer(START, row[0] ?? measure("diode", "U", "PBUS"));
    expect(first).toEqual(together[0]);
    expect(together.every((one) => one.ok)).toBe(true);
  });

  it("honours a lifted pin: a shunted junction reads alone in the hand", async (context) => {
    if (!present) context.skip("ngspice is not installed");
    const seed = Array.from({ length: 60 }, (_, at) => 700 + at).find((one) => {
      const { differences, faults } = oracleBoard(fan, "age", one);
      return (
        differences.length === 0 && faults.every((fault) => fault.of === "part" && /^(C|R)/.test(fault.part))
      );
    });
    const bench = oracleBench(fan, "age", seed ?? 700);
    const igbt = [...fan.parts.values()].find((part) => part.kind === "igbt");
    const collector = `${igbt?.ref}.c`;
    const lifted = timelineOf(fan, [{ do: "lift", place: collector }]);
    const [pad, pin] = await bench.answerRow(lifted, [
      measure("ohms", collector, igbt?.pins.get("e") ?? ""),
      measure("diode", igbt?.pins.get("e") ?? "", collector),
    ]);
    expect(pad?.ok === true && pad.event.do === "measure" && pad.event.reading).toBe("OL");
    expect(pin?.ok === true && pin.event.do === "measure" && Number(pin.event.reading)).toBeGreaterThan(0.3);
  });

  it("a board that is left as it is does the same each time that it is powered so; a click that was missed may be heard the next time", async () => {
    const power = { do: "power", feed: "mains" } as const;
    const sights = (answer: OracleAnswer): PowerEvent | null =>
      answer.ok && answer.event.do === "power" ? answer.event : null;
    let compared = 0;
    let signs = 0;
    let alike = 0;
    for (let seed = 900; seed < 920; seed++) {
      const bench = oracleBench(fan, "age", seed);
      const first = await bench.answer(START, power);
      const later = timelineOf(fan, [{ ...power, observed: "quiet" }, { do: "unpower" }]);
      if (bench.hidden(later).faults.length !== bench.hidden(START).faults.length) continue; // power broke something
      const second = await bench.answer(later, power);
      expect(sights(second)?.observed).toEqual(sights(first)?.observed);
      compared++;
      for (const [part, there] of Object.entries(sights(first)?.signs ?? {})) {
        signs++;
        if (sights(second)?.signs?.[part] === there) alike++;
      }
    }
    expect(compared).toBeGreaterThan(10);
    expect(signs).toBeGreaterThan(10);
    expect(alike / signs).toBeGreaterThan(0.8);
  });

  it("a capacitor with others beside it is missed only where too little is left of them together", () => {
    const open = (part: string) => ({ of: "part", part, junction: null, mode: "open", value: null }) as const;
    const bulk = [...fan.parts.values()].filter(
      ({ kind, pins }) => kind === "capacitor" && pins.get("plus") === "PBUS" && pins.get("minus") === "NBUS",
    );
    const [small, ...rest] = [...bulk].sort((a, b) => (a.value.farads ?? 0) - (b.value.farads ?? 0));
    expect(rest.length).toBeGreaterThan(0);
    expect(conditionOf(fan, [open(small?.ref ?? "")])).toBe("works");
    expect(conditionOf(fan, [open(rest.at(-1)?.ref ?? ""), open(rest.at(-2)?.ref ?? small?.ref ?? "")])).toBe(
      "weak",
    );
  });

  it("a board whose supply is dead reads so at its rails, and one whose rails stand is not dead for its supply", async () => {
    const met = new Set<string>();
    for (let seed = 0; seed < 40; seed++) {
      const bench = oracleBench(fan, "surge", 5000 + seed);
      const on = timelineOf(fan, [{ do: "power", feed: "mains" }]);
      const condition = conditionOf(bench.oracle.board, bench.hidden(on).faults);
      const answer = await bench.answer(on, { do: "measure", mode: "dcv", red: "V15", black: "NBUS" });
      const volts = answer.ok && answer.event.do === "measure" ? Number(answer.event.reading) : Number.NaN;
      met.add(condition);
      if (condition === "works" || condition === "no-run")
        expect(Math.abs(volts / 15 - 1)).toBeLessThan(0.15);
      if (condition === "supply-dead") expect(Math.abs(volts / 15 - 1)).toBeGreaterThan(0.1);
    }
    expect([...met]).toEqual(expect.arrayContaining(["no-run", "supply-dead"]));
  });

  it("a replaced part is cured, of a new type; cleaning takes the dirt it reaches", () => {
    const wet = Array.from({ length: 40 }, (_, at) => oracleBench(fan, "water", 800 + at)).find(
      ({ oracle }) =>
        oracle.faults.some((one) => one.of === "nets") && oracle.faults.some((one) => one.of === "part"),
    );
    const faulty = wet?.oracle.faults.find((one) => one.of === "part");
    const part = faulty?.of === "part" ? faulty.part : "";
    const repaired = wet?.hidden(timelineOf(fan, [{ do: "replace", part }, { do: "clean" }]));
    expect(repaired?.faults.map(faultName)).not.toContain(faulty === undefined ? "" : faultName(faulty));
    expect(repaired?.faults.some((one) => one.of === "nets")).toBe(false);
    expect(repaired?.leaks).toEqual([]);
    expect(repaired?.generations.get(part)).toBe(1);
  });

  it("says that a part is absent when asked to handle one that this board never had", async () => {
    const bench = Array.from({ length: 40 }, (_, at) => oracleBench(fan, "age", 900 + at)).find(
      ({ oracle }) => oracle.differences.some((words) => words.endsWith("missing")),
    );
    const missing = [...fan.parts.keys()].find((ref) => bench?.oracle.board.parts.has(ref) === false) ?? "";
    const answer = await bench?.answer(START, { do: "look", part: missing });
    expect(answer).toEqual({ ok: true, slipped: false, event: { do: "mark", part: missing, as: "absent" } });
  });

  it("mains on a shorted bus breaks more than a lamp does, over many boards", () => {
    const broken = (feed: "mains" | "lamp") =>
      Array.from({ length: 60 }, (_, at) => oracleBench(fan, "overload", 1000 + at)).reduce((sum, bench) => {
        const after = bench.hidden(
          timelineOf(fan, [{ do: "power", feed, ...(feed === "lamp" ? { watts: 100 } : {}) }]),
        );
        return sum + after.faults.length - bench.oracle.faults.length;
      }, 0);
    expect(broken("mains")).toBeGreaterThan(2 * broken("lamp"));
  });

  it("is calibrated on a known diode and resistor", async () => {
    const bench = oracleBench(fan, "age", 5);
    const answer = await bench.answer(START, { do: "calibrate", mode: "diode", known: 0.6 });
    const reading = answer.ok && answer.event.do === "calibrate" ? answer.event.reading : 0;
    expect(Math.abs(reading - 0.6)).toBeLessThan(0.1);
  });
});

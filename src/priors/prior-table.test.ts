import { describe, expect, it } from "vitest";
import type { Board } from "../board/board.ts";
import { faultName } from "../board/fault.ts";
import { faultSites } from "../board/fault-sites.ts";
import { parseFault } from "../board/parse-fault.ts";
import { CAUSES, type Cause, SYMPTOMS } from "./cause.ts";
import { CAUSE_FACTORS } from "./cause-factors.ts";
import { fixtureBoard } from "./drives.fixture.ts";
import { KIND_WEIGHTS, ROOT_FAULTS, STAGE_SHARES } from "./kind-rates.ts";
import { KNOCK_ON_RULES } from "./knock-on-rules.ts";
import { FINDING_ROWS } from "./look-findings.ts";
import { MODE_SHARES } from "./mode-shares.ts";
import { printPriors, printRules } from "./print.ts";
import { partWeights } from "./prior-rows.ts";
import { POWER_UP_FAULTS, priorTable } from "./prior-table.ts";
import { stageGroups } from "./stage-groups.ts";
import { SYMPTOM_FACTORS } from "./symptom-factors.ts";

const moduleBoard = fixtureBoard("module");
const discreteBoard = fixtureBoard("discrete");

function rateOf(board: Board, cause: Cause, wanted: (name: string, part: string) => boolean): number {
  return priorTable(board, cause, "dead")
    .faults.filter((row) => wanted(faultName(row.fault), row.part))
    .reduce((sum, row) => sum + row.rate, 0);
}
const ofPart = (board: Board, cause: Cause, ref: string): number =>
  rateOf(board, cause, (_, part) => part === ref);

describe("the prior table", () => {
  it("expects 1.3 root faults on a board whatever the cause", () => {
    for (const board of [moduleBoard, discreteBoard])
      for (const cause of CAUSES)
        for (const symptom of SYMPTOMS) {
          const total = priorTable(board, cause, symptom).faults.reduce((sum, row) => sum + row.rate, 0);
          expect(total).toBeCloseTo(ROOT_FAULTS, 9);
        }
  });

  it("is the same for the same board, cause and symptom", () => {
    expect(priorTable(fixtureBoard("module"), "water", "dead")).toEqual(
      priorTable(moduleBoard, "water", "dead"),
    );
  });

  it("lists only faults that the board can have, each once, and some fault of every part", () => {
    for (const board of [moduleBoard, discreteBoard]) {
      const { faults } = priorTable(board, "unknown", "other");
      const names = faults.map((row) => faultName(row.fault));
      expect(new Set(names).size).toBe(names.length);
      for (const row of faults) {
        expect(parseFault(faultName(row.fault), board)).toEqual({ ok: true, value: row.fault });
        expect(row.rate).toBeGreaterThan(0);
        expect(row.spreadLn > 0).toBe(row.fault.mode !== "open");
      }
      const covered = new Set(faults.map((row) => row.part));
      for (const ref of board.parts.keys()) expect(covered).toContain(ref);
    }
  });

  it("reaches every junction of every part except the ground side of a floating pin", () => {
    for (const board of [moduleBoard, discreteBoard]) {
      const sites = new Set(priorTable(board, "unknown", "other").faults.map((row) => row.site));
      for (const part of board.parts.values()) {
        const grounds = new Set((part.value.floating ?? []).map(([, ground]) => ground));
        for (const { junction } of faultSites(part)) {
          if (junction !== null && grounds.has(junction)) continue;
          expect(sites).toContain(junction === null ? part.ref : `${part.ref}.${junction}`);
        }
      }
    }
  });

  it("sums levels under the spelling without a value", () => {
    const rows = priorTable(moduleBoard, "unknown", "dead").faults.filter(
      (row) => row.reportAs === "M1.up:leaky",
    );
    expect(rows.map((row) => faultName(row.fault))).toEqual([
      "M1.up:leaky@100",
      "M1.up:leaky",
      "M1.up:leaky@10000",
      "M1.up:leaky@100000",
    ]);
  });

  it("holds first faults by stage in the order of drive service: inverter, bus, driver, rectifier", () => {
    const weights = partWeights(discreteBoard);
    const groups = stageGroups(discreteBoard);
    const stage = (group: string): number =>
      [...discreteBoard.parts.values()]
        .filter((part) => groups.get(part.ref) === group)
        .reduce((sum, part) => sum + (weights.get(part.ref) ?? 0), 0);
    expect(stage("inverter")).toBeGreaterThan(stage("drive"));
    expect(STAGE_SHARES.inverter.share).toBeGreaterThan(STAGE_SHARES.bus.share);
    expect(STAGE_SHARES.bus.share).toBeGreaterThan(STAGE_SHARES.drive.share);
    expect(stage("drive")).toBeGreaterThan(stage("rectifier"));
  });

  it("does not grow with the number of small parts: a stage shares its faults out", () => {
    const extra = Object.fromEntries(
      Array.from({ length: 20 }, (_, at) => [
        `C${900 + at}`,
        {
          kind: "capacitor",
          pins: { plus: "V5", minus: "NBUS" },
          stage: "logic",
          value: { type: "ceramic" },
        },
      ]),
    );
    const crowded = fixtureBoard("module", extra);
    expect(ofPart(crowded, "unknown", "M1")).toBeGreaterThan(0.9 * ofPart(moduleBoard, "unknown", "M1"));
  });

  it("widens parts that nobody has seen", () => {
    const seen = { kind: "ic", pins: { vcc: "V5", gnd: "NBUS" }, stage: "logic" };
    const known = priorTable(fixtureBoard("module", { U99: seen }), "unknown", "dead");
    const guessed = priorTable(
      fixtureBoard("module", { U99: { ...seen, assumed: true } }),
      "unknown",
      "dead",
    );
    const rate = (table: typeof known): number =>
      table.faults.filter((row) => row.part === "U99").reduce((sum, row) => sum + row.rate, 0);
    expect(rate(guessed)).toBeGreaterThan(2 * rate(known));
  });

  it("breaks little at power-up on a board with nothing wrong", () => {
    const { breaksAtPower, faults } = priorTable(moduleBoard, "age", "dead");
    expect(breaksAtPower).toHaveLength(faults.length);
    expect(breaksAtPower.reduce((sum, rate) => sum + rate, 0)).toBeCloseTo(POWER_UP_FAULTS, 9);
  });
});

describe("causes", () => {
  it("surge raises the varistor, the bridge and the supply switch", () => {
    for (const ref of ["RV1", "BR1", "U10"])
      expect(ofPart(moduleBoard, "surge", ref)).toBeGreaterThan(1.3 * ofPart(moduleBoard, "unknown", ref));
  });

  it("water raises leaks, opens of thin resistors and the controller", () => {
    const leaks = (cause: Cause): number => rateOf(moduleBoard, cause, (name) => name.includes("~"));
    expect(leaks("water")).toBeGreaterThan(5 * leaks("unknown"));
    expect(ofPart(moduleBoard, "water", "U20")).toBeGreaterThan(1.5 * ofPart(moduleBoard, "unknown", "U20"));
    const opens = (cause: Cause): number => rateOf(moduleBoard, cause, (name) => name === "R20:open");
    expect(opens("water")).toBeGreaterThan(1.3 * opens("unknown"));
  });

  it("age dries electrolytics", () => {
    const dry = (cause: Cause): number => rateOf(moduleBoard, cause, (name) => name === "C12:drift");
    expect(dry("age")).toBeGreaterThan(3 * dry("surge"));
  });

  it("overload goes for the inverter", () => {
    expect(ofPart(moduleBoard, "overload", "M1")).toBeGreaterThan(1.4 * ofPart(moduleBoard, "unknown", "M1"));
  });
});

describe("the tables behind it", () => {
  it("order the modes of a part as the sources seen do", () => {
    const { resistor, electrolytic, ceramic } = MODE_SHARES;
    expect(electrolytic.shares).toMatchObject({ short: 0.5, open: 0.3 });
    expect(resistor.shares).toEqual({ open: 0.8, short: 0.1, drift: 0.1 });
    expect(ceramic.shares).toEqual({ open: 0.4, short: 0.4, drift: 0.1, leaky: 0.1 });
    const rate = (name: string): number => rateOf(moduleBoard, "unknown", (_, part) => part === name);
    const mode = (name: string, wanted: string): number =>
      priorTable(moduleBoard, "unknown", "dead")
        .faults.filter((row) => row.reportAs === `${name}:${wanted}`)
        .reduce((sum, row) => sum + row.rate, 0);
    expect(rate("C1")).toBeGreaterThan(0);
    expect(mode("C1", "short") / mode("C1", "open")).toBeCloseTo(0.5 / 0.3, 9);
    expect(mode("R12", "open") / mode("R12", "drift")).toBeCloseTo(8, 9);
    expect(mode("C13", "short") / mode("C13", "leaky")).toBeCloseTo(4, 9);
    expect(mode("OC1.led", "open") / mode("OC1.led", "short")).toBeGreaterThan(2.5);
  });

  it("share each shape's failures out completely", () => {
    for (const [shape, { shares }] of Object.entries(MODE_SHARES)) {
      const total = Object.values(shares).reduce((sum, share) => sum + share, 0);
      expect(total, shape).toBeCloseTo(1, 9);
    }
  });

  it("name where every row comes from, and claim no published source but the four seen", () => {
    const rows = [
      ...Object.values(MODE_SHARES),
      ...Object.values(STAGE_SHARES),
      ...Object.values(KIND_WEIGHTS),
      ...CAUSE_FACTORS,
      ...SYMPTOM_FACTORS,
      ...KNOCK_ON_RULES,
    ];
    expect(new Set(rows.map((row) => row.id)).size).toBe(rows.length);
    for (const row of rows) {
      expect(["seen", "seen-2nd", "common practice", "from memory"]).toContain(row.mark);
      expect(row.words.length).toBeGreaterThan(4);
    }
    const seen = rows.filter((row) => row.mark === "seen").map((row) => row.id);
    expect(seen).toEqual(["FM1", "FM5", "FM4", "FM6-led", "FM6-output"]);
  });
});

describe("printing", () => {
  it("shows every fault, every rule that applies and what fitting adds", () => {
    const table = priorTable(moduleBoard, "surge", "dead");
    const text = printPriors(table);
    for (const row of table.faults) expect(text).toContain(` ${faultName(row.fault)}\n`);
    for (const rule of new Set(table.knockOns.map((one) => one.rule))) expect(text).toContain(`${rule}: `);
    expect(text).toContain("new 0.01, used 0.1");
  });

  it("shows every row of every rule table with its mark", () => {
    const lines = printRules().split("\n");
    for (const row of [...Object.values(MODE_SHARES), ...CAUSE_FACTORS, ...KNOCK_ON_RULES, ...FINDING_ROWS])
      expect(
        lines.some((line) => line.startsWith(row.id) && line.includes(`[${row.mark}]`)),
        row.id,
      ).toBe(true);
  });
});

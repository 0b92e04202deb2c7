import { describe, expect, it } from "vitest";
import { faultName } from "../../src/board/fault.ts";
import { parseFault } from "../../src/board/parse-fault.ts";
import { seededRandom } from "../../src/practice/seeded-random.ts";
import { judgedBoards } from "../boards/judged-boards.ts";
import { CASCADES } from "./fault-table.ts";
import { oracleBoard } from "./oracle-board.ts";
import { METER_SPREADS } from "./oracle-meter.ts";
import { POWER_OUTCOMES } from "./power-table.ts";
import { conditionOf } from "./power-truth.ts";
import { shippedBoards } from "./shipped-boards.ts";
import { slipOf } from "./slips.ts";

const [fan, outdoor] = shippedBoards().map(({ board }) => board);
if (fan === undefined || outdoor === undefined) throw new Error("the shipped boards are not in boards/");

const many = Array.from({ length: 150 }, (_, index) =>
  oracleBoard(index % 2 === 0 ? fan : outdoor, "surge", 500 + index),
);

describe("an oracle board", () => {
  it("is the same from the same seed, and another from another", () => {
    const names = (seed: number) => oracleBoard(fan, "water", seed).faults.map(faultName);
    expect(names(12)).toEqual(names(12));
    expect(oracleBoard(fan, "water", 12).meter).toEqual(oracleBoard(fan, "water", 12).meter);
    const all = new Set(Array.from({ length: 20 }, (_, seed) => names(seed).join()));
    expect(all.size).toBeGreaterThan(15);
  });

  it("worked before it broke, however it differs from its file", () => {
    const differing = many.filter(({ differences }) => differences.length > 0);
    expect(differing.length).toBeGreaterThan(20);
    for (const { board } of differing) expect(conditionOf(board, [])).toBe("works");
  });

  it("has at least one fault, which brings it in by the oracle's own rules", () => {
    for (const one of many) {
      expect(one.faults.length).toBeGreaterThan(0);
      expect(one.condition).not.toBe("works");
    }
  });

  it("differs from its file on about a third of the boards, in 5 to 10 % of the parts", () => {
    const differing = many.filter((one) => one.differences.length > 0);
    expect(differing.length / many.length).toBeGreaterThan(0.22);
    expect(differing.length / many.length).toBeLessThan(0.46);
    for (const { file, differences } of differing) {
      expect(differences.length / file.parts.size).toBeGreaterThan(0.03);
      expect(differences.length / file.parts.size).toBeLessThan(0.11);
    }
  });

  it("holds its faults on parts that are on the board and in the file", () => {
    for (const { board, file, faults } of many)
      for (const fault of faults)
        if (fault.of === "part")
          expect([board.parts.has(fault.part), file.parts.has(fault.part)]).toEqual([true, true]);
  });

  it("shows shorts over decades of ohms and more than one fault on many boards", () => {
    const shorts = many.flatMap(({ faults }) =>
      faults.flatMap((one) => (one.mode === "short" ? [one.value ?? 0] : [])),
    );
    expect(Math.min(...shorts)).toBeLessThan(0.1);
    expect(Math.max(...shorts)).toBeGreaterThan(1);
    expect(many.filter(({ faults }) => faults.length > 1).length).toBeGreaterThan(many.length / 4);
  });

  it("measures with a meter of the drawn kind", () => {
    for (const { meter } of many) {
      expect(meter.diodeAmps).toBeGreaterThanOrEqual(METER_SPREADS.diodeAmps[0]);
      expect(meter.diodeAmps).toBeLessThanOrEqual(METER_SPREADS.diodeAmps[1]);
      expect(meter.beepOhms).toBeGreaterThanOrEqual(30);
      expect(meter.beepOhms).toBeLessThanOrEqual(70);
    }
  });
});

describe("slips", () => {
  it("happen at their rate and change what is measured", () => {
    const check = { mode: "diode", red: "U", black: "PBUS" } as const;
    const random = seededRandom(7, "slips");
    const slips = Array.from({ length: 20_000 }, () => slipOf(fan, check, 0.015, random)).filter(
      (one) => one !== null,
    );
    expect(slips.length / 20_000).toBeGreaterThan(0.012);
    expect(slips.length / 20_000).toBeLessThan(0.018);
    for (const slip of slips) expect(slip).not.toEqual(check);
    expect(slips.some((slip) => slip.red === "PBUS")).toBe(true);
    expect(slips.some((slip) => slip.seconds !== undefined)).toBe(true);
  });
});

describe("under power, by the oracle's own rules", () => {
  const open = (part: string) => ({ of: "part", part, junction: null, mode: "open", value: null }) as const;
  const short = (part: string, junction: string | null) =>
    ({ of: "part", part, junction, mode: "short", value: 0.2 }) as const;

  it("a healthy board works, an open fuse leaves it dead, a shorted bus capacitor shorts the bus", () => {
    expect(conditionOf(fan, [])).toBe("works");
    expect(conditionOf(fan, [open("F1")])).toBe("input-open");
    const bulk = [...fan.parts.values()].find(
      (part) => part.value.farads === 470e-6 && part.pins.get("plus") === "PBUS",
    );
    expect(conditionOf(fan, [short(bulk?.ref ?? "", null)])).toBe("bus-short");
  });

  it("one shorted switch leaves half a leg, both short the bus, and a switch off the board does no harm to it", () => {
    const [upper, lower] = ["PBUS", "U"].map(
      (net) =>
        [...fan.parts.values()].find(
          (part) =>
            part.kind === "igbt" && part.pins.get("c") === net && [part.pins.get("e"), net].includes("U"),
        )?.ref ?? "",
    );
    expect(conditionOf(fan, [short(upper ?? "", "ce")])).toBe("half-leg");
    expect(conditionOf(fan, [short(upper ?? "", "ce"), short(lower ?? "", "ce")])).toBe("bus-short");
    expect(conditionOf(fan, [short(upper ?? "", "ce")], new Set([upper ?? ""]))).not.toBe("half-leg");
  });

  it("half a bridge and one phase of three carry on badly, two phases gone feed nothing, a discharge resistor or a clamp is not missed", () => {
    const board = (id: string) => judgedBoards(id)[0].board;
    const conditions = (id: string, ...names: readonly string[]) =>
      conditionOf(
        board(id),
        names.map((name) => {
          const fault = parseFault(name, board(id));
          if (!fault.ok) throw new Error(fault.problem);
          return fault.value;
        }),
      );
    expect(conditions("greenhouse-fan-drive", "BR1.ac1plus:open")).toBe("weak");
    expect(conditions("small-frequency-drive-3ph", "F1:open")).toBe("weak");
    expect(conditions("small-frequency-drive-3ph", "F1:open", "F2:open")).toBe("input-open");
    expect(conditions("greenhouse-fan-drive", "R1:open")).toBe("works");
    expect(conditions("greenhouse-fan-drive", "ZD1:open")).toBe("works");
    expect(conditions("induction-hob", "C7:open")).toBe("no-run");
  });

  it("every condition has chances that sum to one under each feed, and every cascade a chance", () => {
    for (const rows of Object.values(POWER_OUTCOMES))
      for (const chances of Object.values(rows))
        expect(Object.values(chances).reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 9);
    for (const rule of CASCADES) expect(rule.chance).toBeGreaterThan(0);
  });
});

import { expect, test } from "vitest";
import type { Fault } from "../board/fault.ts";
import { faultName } from "../board/fault.ts";
import type { ColdCheck, MeterReading, Predictor } from "../meter/prediction.ts";
import { DEFAULT_METER } from "../meter/settings.ts";
import { checkPartition, refine } from "./check-outcomes.ts";
import type { Hypotheses } from "./hypotheses.ts";
import { smallDriveBoard } from "./scene.fixture.ts";

const CHECK: ColdCheck = { mode: "diode", red: "A", black: "B" };
const fault = (part: string): Fault => ({ of: "part", part, junction: null, mode: "short", value: null });

/** One explanation with nothing in it, and each named part faulty beside it. */
function besideNothing(parts: readonly string[]): Hypotheses {
  return {
    priors: parts.map((part) => ({
      fault: fault(part),
      reportAs: `${part}:short`,
      part,
      site: part,
      rate: 0.01,
      spreadLn: 0,
    })),
    cores: [{ present: [], faults: [] }],
    list: [-1, ...parts.keys()].map((beside) => ({
      core: 0,
      beside,
      unlisted: false,
      weight: 1 / (parts.length + 1),
      dead: beside < 0 ? [] : [parts[beside]],
    })),
    remainder: 0,
  };
}

/** Shows what the table says for the one fault present, else the healthy reading. */
function tableMeter(healthy: number | "OL", table: Readonly<Record<string, number | "OL">>): Predictor {
  const board = smallDriveBoard();
  const reading = (shown: number | "OL"): MeterReading => ({
    solved: true,
    raw: shown === "OL" ? 3 : shown,
    shown,
    centre: shown === "OL" ? 3 : shown,
    spread: 0.01,
    common: 0,
    alike: 0,
    restsOn: [],
  });
  const shownFor = (faults: readonly Fault[]) =>
    faults.reduce<number | "OL">((shown, f) => (f.of === "part" ? (table[f.part] ?? shown) : shown), healthy);
  return {
    board,
    bench: { lifted: new Set(), off: new Set(), clips: [], powered: false },
    meter: DEFAULT_METER,
    predict: (_, faults) => reading(shownFor(faults)),
    withEach: (_, faults, candidates) =>
      candidates.map((one) =>
        one.of === "part" && one.part in table ? reading(shownFor([...faults, one])) : null,
      ),
    rawWith: () => null,
    effect: faultName,
    matters: (_check, faults) => faults,
    audible: (_, __, candidates) => candidates.map((f) => f.of === "part" && f.part in table),
  };
}

test("readings some combined spreads apart are told apart, closer ones and silent faults are not", () => {
  const hypotheses = besideNothing(["D1", "D2", "D3", "R1"]);
  const partition = checkPartition(CHECK, hypotheses, tableMeter(0.45, { D1: 0, D2: 0.46, D3: "OL" }));
  const [healthy, d1, d2, d3, r1] = partition?.classOf ?? [];
  expect(healthy).toBe(d2);
  expect(healthy).toBe(r1);
  expect(new Set([healthy, d1, d3]).size).toBe(3);
  expect(partition?.outcomes[d3 ?? 0]?.word).toBe("OL");
});

test("an outcome's range covers 5 to 95 per cent of each hypothesis in it", () => {
  const partition = checkPartition(CHECK, besideNothing(["D1"]), tableMeter(0.45, { D1: 0 }));
  const healthy = partition?.outcomes[partition.classOf[0] ?? 0];
  const spread = Math.hypot(0.01, 0.01 + 0.03 * 0.45);
  expect(healthy?.low).toBeCloseTo(0.45 - 1.645 * spread, 9);
  expect(healthy?.high).toBeCloseTo(0.45 + 1.645 * spread, 9);
});

test("a check whose solve does not converge promises nothing", () => {
  const failing: Predictor = {
    ...tableMeter("OL", {}),
    predict: () => ({ solved: false, why: "no rung converged" }),
  };
  expect(checkPartition(CHECK, besideNothing(["D1"]), failing)).toBeNull();
});

test("two checks together tell apart what either tells apart", () => {
  const hypotheses = besideNothing(["D1", "D2"]);
  const first = checkPartition(CHECK, hypotheses, tableMeter("OL", { D1: 0 }));
  const second = checkPartition(CHECK, hypotheses, tableMeter("OL", { D2: 0 }));
  if (first === null || second === null) throw new Error("both checks solve");
  expect(new Set(refine(first, second).classOf).size).toBe(3);
});

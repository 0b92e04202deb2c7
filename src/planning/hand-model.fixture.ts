/** A repair model whose sums can be done by hand, for the tests of plans and steps. */
import { MINUTES } from "../money/minutes.ts";
import { DEFAULT_TERMS } from "../money/terms.ts";
import type { RepairGroup, RepairModel } from "./repair-model.ts";

export interface Row {
  readonly p: number;
  readonly cost: number;
  readonly possible?: boolean;
  readonly breaks?: number;
}

/** Each row is one fault cured by one part; tests cost nothing and fitted parts are good, so that sums are by hand. */
export function handModel(rows: readonly Row[], agreedPrice: number, testMoney = 0): RepairModel {
  const groups = rows.map(
    ({ cost, possible = true, breaks = 0 }, g): RepairGroup => ({
      cures: [g],
      key: String(g),
      possible,
      unlisted: false,
      breakMoney: breaks,
      breakMoneyOf: [breaks],
      knownValue: possible ? agreedPrice - cost - testMoney : 0,
    }),
  );
  return {
    cures: rows.map(({ cost, possible = true }, g) => ({
      name: String(g),
      money: cost,
      paid: cost,
      minutes: 0,
      possible,
    })),
    groups,
    groupOf: Int16Array.from(rows, (_, g) => g),
    weights: Float64Array.from(rows, ({ p }) => p),
    terms: { ...DEFAULT_TERMS, agreedPrice },
    perMinute: 0.5,
    minutes: MINUTES,
    testMoney,
    testMinutes: testMoney / 0.5,
    proofMinutes: 0,
    fittedBad: 0,
  };
}

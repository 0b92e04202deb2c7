/** A repair model whose sums can be done by hand, for the tests of plans and steps. */
import { MINUTES } from "../money/minutes.ts";
import { DEFAULT_TERMS, earnedByRepair, type Terms } from "../money/terms.ts";
import type { RepairGroup, RepairModel } from "./repair-model.ts";

export interface Row {
  readonly p: number;
  readonly cost: number;
  readonly possible?: boolean;
  readonly breaks?: number;
}

/** Each row is one fault cured by one part; tests cost nothing and fitted parts are good, so that sums are by hand. */
export function handModel(
  rows: readonly Row[],
  agreedPrice: number,
  testMoney = 0,
  more: Partial<Terms> = {},
  stopMoney = 0,
): RepairModel {
  const terms = { ...DEFAULT_TERMS, agreedPrice, ...more };
  const earned = earnedByRepair(terms) - terms.minimumMargin;

  const groups = rows.map(
    ({ cost, possible = true, breaks = 0 }, g): RepairGroup => ({
      cures: [g],
      key: String(g),
      possible,
      overMoney: 0,
      unlisted: false,
      breakMoney: breaks,
      breakMoneyOf: [breaks],
      knownValue: possible ? earned - cost - testMoney : stopMoney,
    }),
  );
  return {
    cures: rows.map(({ cost, possible = true }, g) => ({
      name: String(g),
      money: cost,
      paid: cost,
      minutes: 0,
      possible,
      bad: 0,
      lot: -1,
      overMoney: 0,
    })),
    groups,
    groupOf: Int16Array.from(rows, (_, g) => g),
    weights: Float64Array.from(rows, ({ p }) => p),
    lots: [],
    terms,
    earned,
    stopMoney,
    perMinute: 0.5,
    minutes: MINUTES,
    testMoney,
    testMinutes: testMoney / 0.5,
    proofMinutes: 0,
  };
}

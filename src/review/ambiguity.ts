/**
 * Faults that no cold check tells apart. Two faults are told apart by a check whose readings under the one and the other lie
 * further apart than their spreads; groups are what is left joined. A fault that no check tells from a good board is unseen.
 */
import type { Board } from "../board/board.ts";
import { type Fault, faultName } from "../board/fault.ts";
import { faultSites } from "../board/fault-sites.ts";
import type { ColdCheck, MeterReading, Prediction, Predictor } from "../meter/prediction.ts";

/** Readings further apart than this many of their common deviations are two readings (from memory: one mistake in a hundred). */
const APART_DEVIATIONS = 2.6;
/** Ohms of leads and contact, below which all readings are one. From memory. */
const LEAD_OHMS = 0.3;
/** Farads beside anything measured. From memory. */
const STRAY_FARADS = 1e-9;

/** What is added to a quantity before its logarithm is taken; volts are taken as they are. */
const FLOOR: Readonly<Record<ColdCheck["mode"], number | null>> = {
  diode: null,
  ohms: LEAD_OHMS,
  continuity: LEAD_OHMS,
  farads: STRAY_FARADS,
};

/** Would a technician with this meter see two readings? Where a circuit could not be solved, nobody can say: no. */
export function toldApart(mode: ColdCheck["mode"], one: Prediction, other: Prediction): boolean {
  if (!one.solved || !other.solved) return false;
  if (typeof one.shown !== "number" && one.shown === other.shown) return false;
  // A capacitance that is not shown, because the settled ohms are too low for it, is another answer than one that is.
  if (mode === "farads" && (one.shown === "OL") !== (other.shown === "OL")) return true;
  const floor = FLOOR[mode];
  if (floor === null)
    return Math.abs(one.raw - other.raw) > APART_DEVIATIONS * Math.hypot(one.spread, other.spread);
  const share = ({ raw, spread }: MeterReading) => spread / (Math.abs(raw) + floor);
  const apart = Math.abs(Math.log((Math.abs(one.raw) + floor) / (Math.abs(other.raw) + floor)));
  return apart > APART_DEVIATIONS * Math.hypot(share(one), share(other));
}

/** Every part shorted and open at each of its places, at nominal values. Leaks and drifts are these by degrees. */
export function definiteFaults(board: Board): readonly Fault[] {
  return [...board.parts.values()].flatMap((part) =>
    faultSites(part).flatMap(({ junction, modes }) =>
      modes
        .filter((mode) => mode === "short" || mode === "open")
        .map((mode): Fault => ({ of: "part", part: part.ref, junction, mode, value: null })),
    ),
  );
}

/** What each fault would make a check show, where that is not what a good board shows; `null` stands for the good board. */
interface Shown {
  readonly check: ColdCheck;
  readonly good: Prediction;
  readonly under: ReadonlyMap<Fault, Prediction>;
}

export interface Ambiguity {
  /** faults joined because no check tells them apart, of two parts or more; names as the file format spells them */
  readonly groups: readonly (readonly Fault[])[];
  /** faults that no check tells from a good board */
  readonly unseen: readonly Fault[];
}

function shownBy(
  predictor: Predictor,
  checks: readonly ColdCheck[],
  faults: readonly Fault[],
): readonly Shown[] {
  return checks.map((check) => {
    const heard = predictor.audible(check, [], faults);
    const under = new Map(
      faults.filter((_, i) => heard[i]).map((fault) => [fault, predictor.predict(check, [fault])]),
    );
    return { check, good: predictor.predict(check, []), under };
  });
}

/** Joins what `alike` joins, and what is joined by others. Groups and members keep the order given. */
function joined<T>(items: readonly T[], alike: (one: T, other: T) => boolean): readonly (readonly T[])[] {
  const groups: T[][] = [];
  for (const item of items) {
    const met = groups.filter((group) => group.some((member) => alike(member, item)));
    const [first, ...rest] = met;
    if (first === undefined) {
      groups.push([item]);
      continue;
    }
    for (const other of rest) {
      first.push(...other);
      groups.splice(groups.indexOf(other), 1);
    }
    first.push(item);
  }
  const order = new Map(items.map((item, i) => [item, i]));
  const sorted = groups.map((group) => group.sort((a, b) => (order.get(a) ?? 0) - (order.get(b) ?? 0)));
  return sorted.sort((a, b) => (order.get(a[0]) ?? 0) - (order.get(b[0]) ?? 0));
}

/** What these checks leave together of `faults`. */
export function leftTogether(
  predictor: Predictor,
  checks: readonly ColdCheck[],
  faults: readonly Fault[],
): { readonly groups: readonly (readonly Fault[])[]; readonly unseen: readonly Fault[] } {
  const shown = shownBy(predictor, checks, faults);
  const moving = new Map<Fault, Shown[]>(faults.map((fault) => [fault, []]));
  for (const one of shown) for (const fault of one.under.keys()) moving.get(fault)?.push(one);
  const at = (one: Shown, fault: Fault) => one.under.get(fault) ?? one.good;
  const seen = (fault: Fault) =>
    (moving.get(fault) ?? []).some((one) => toldApart(one.check.mode, at(one, fault), one.good));
  const apart = (a: Fault, b: Fault) =>
    [...(moving.get(a) ?? []), ...(moving.get(b) ?? [])].some((one) =>
      toldApart(one.check.mode, at(one, a), at(one, b)),
    );
  const visible = faults.filter(seen);
  return {
    groups: joined(visible, (a, b) => !apart(a, b)),
    unseen: faults.filter((fault) => !visible.includes(fault)),
  };
}

export const partsOf = (faults: readonly Fault[]): readonly string[] => [
  ...new Set(faults.map((fault) => (fault.of === "part" ? fault.part : faultName(fault)))),
];

/** Groups of two parts or more, and what is not seen at all. */
export function ambiguityOf(predictor: Predictor, checks: readonly ColdCheck[]): Ambiguity {
  const { groups, unseen } = leftTogether(predictor, checks, definiteFaults(predictor.board));
  return { groups: groups.filter((group) => partsOf(group).length > 1), unseen };
}

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

export interface Ambiguity {
  /** faults joined because no check tells them apart, of two parts or more; names as the file format spells them */
  readonly groups: readonly (readonly Fault[])[];
  /** faults that no check tells from a good board */
  readonly unseen: readonly Fault[];
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

/** Checks as they are worked through: what is solved quickest and tells most first. From timing them on the shipped boards. */
const ORDER: readonly ColdCheck["mode"][] = ["ohms", "diode", "continuity", "farads"];

/**
 * What these checks leave together of `faults`. A fault that has been told from every other and from a good board is asked about no
 * more, and of those that do the same to the circuit one speaks for all; neither changes what comes out.
 */
export function leftTogether(
  predictor: Predictor,
  checks: readonly ColdCheck[],
  faults: readonly Fault[],
): { readonly groups: readonly (readonly Fault[])[]; readonly unseen: readonly Fault[] } {
  const byEffect = new Map<string, Fault[]>();
  for (const fault of faults) {
    const effect = predictor.effect(fault);
    byEffect.set(effect, [...(byEffect.get(effect) ?? []), fault]);
  }
  const speakers = [...byEffect.values()].map(([first]) => first).filter((fault) => fault !== undefined);
  const apart = toldApartBy(predictor, checks, speakers);
  const at = new Map(
    [...byEffect.values()].flatMap((alike, i) => alike.map((fault): [Fault, number] => [fault, i])),
  );
  const indexOf = (fault: Fault) => at.get(fault) ?? 0;
  const good = speakers.length;
  const seen = (fault: Fault) => apart.are(indexOf(fault), good);
  return {
    groups: joined(faults.filter(seen), (a, b) => !apart.are(indexOf(a), indexOf(b))),
    unseen: faults.filter((fault) => !seen(fault)),
  };
}

/** Pairs of numbers that have been told apart, both ways round, and how many partners each has left. */
class ApartPairs {
  readonly #size: number;
  readonly #apart: Uint8Array;
  readonly #left: Int32Array;

  constructor(size: number) {
    this.#size = size;
    this.#apart = new Uint8Array(size * size);
    this.#left = new Int32Array(size).fill(size - 1);
  }

  are(one: number, other: number): boolean {
    return this.#apart[one * this.#size + other] === 1;
  }

  tell(one: number, other: number): void {
    if (this.are(one, other)) return;
    this.#apart[one * this.#size + other] = 1;
    this.#apart[other * this.#size + one] = 1;
    this.#left[one] = (this.#left[one] ?? 0) - 1;
    this.#left[other] = (this.#left[other] ?? 0) - 1;
  }

  hasPartner(one: number): boolean {
    return (this.#left[one] ?? 0) > 0;
  }
}

/** Which of `faults` the checks tell apart, by index; the good board stands behind the last. */
function toldApartBy(
  predictor: Predictor,
  checks: readonly ColdCheck[],
  faults: readonly Fault[],
): ApartPairs {
  const good = faults.length;
  const pairs = new ApartPairs(good + 1);
  const inOrder = ORDER.flatMap((mode) => checks.filter((check) => check.mode === mode));
  let open = [...faults.keys()];
  for (const check of inOrder) {
    open = open.filter((index) => pairs.hasPartner(index));
    if (open.length === 0) break;
    const asked = open.map((index) => faults[index]).filter((fault) => fault !== undefined);
    const heard = predictor.audible(check, [], asked);
    const bare = predictor.predict(check, []);
    const silent = [...open.filter((_, i) => heard[i] !== true), good];
    const moved = open.filter((_, i) => heard[i] === true);
    const shown = moved.map((index) =>
      predictor.predict(check, faults[index] === undefined ? [] : [faults[index]]),
    );
    for (const [at, index] of moved.entries()) {
      const own = shown[at];
      if (own === undefined) continue;
      if (toldApart(check.mode, own, bare)) for (const other of silent) pairs.tell(index, other);
      for (const [before, other] of moved.slice(0, at).entries()) {
        const beside = shown[before];
        if (beside !== undefined && !pairs.are(index, other) && toldApart(check.mode, own, beside))
          pairs.tell(index, other);
      }
    }
  }
  return pairs;
}

export const partsOf = (faults: readonly Fault[]): readonly string[] => [
  ...new Set(faults.map((fault) => (fault.of === "part" ? fault.part : faultName(fault)))),
];

/** Groups of two parts or more, and what is not seen at all. */
export function ambiguityOf(predictor: Predictor, checks: readonly ColdCheck[]): Ambiguity {
  const { groups, unseen } = leftTogether(predictor, checks, definiteFaults(predictor.board));
  return { groups: groups.filter((group) => partsOf(group).length > 1), unseen };
}

/**
 * A bench made for tests of the diagnosis alone: parts whose shorts pull chosen checks to zero. Its predictions are a table,
 * so that what the diagnosis does with them can be worked out by hand.
 */
import type { BenchState } from "../bench/bench-state.ts";
import type { JobEvent } from "../bench/event.ts";
import type { Timeline } from "../bench/timeline.ts";
import { barePart } from "../board/bare-part.ts";
import type { Board, Part } from "../board/board.ts";
import { faultName } from "../board/fault.ts";
import type { ColdCheck, Predictor } from "../meter/prediction.ts";
import { DEFAULT_METER } from "../meter/settings.ts";
import type { FaultPrior, PriorTable } from "../priors/fault-prior.ts";

const BARE: BenchState = { lifted: new Set(), off: new Set(), clips: [], powered: false };

/**
 * Part `D<i>` shorted pulls to zero every check whose red place is in `pulls[i]`; all parts of `together` shorted at once
 * pull its net down too, though each alone leaves it.
 */
export function switchboard(
  pulls: readonly (readonly string[])[],
  rates: readonly number[],
  together: { readonly parts: readonly string[]; readonly net: string } | null = null,
) {
  const refs = pulls.map((_, i) => `D${i}`);
  const pins = new Map([
    ["plus", "A"],
    ["minus", "K"],
  ]);
  const part = (ref: string): Part => barePart(ref, "capacitor", pins);
  const board: Board = {
    name: "switchboard",
    family: "test",
    supply: { kind: "dc", volts: 12, hz: null, at: [] },
    zero: "K",
    nets: new Map([["A", null], ["K", null], ...pulls.flat().map((net) => [net, null] as const)]),
    parts: new Map(refs.map((ref) => [ref, part(ref)])),
    rails: [{ name: "A", net: "A", volts: 12, tolerance: 0.05, from: null, against: null }],
    points: [],
  };
  const faults: FaultPrior[] = refs.map((ref, i) => ({
    fault: { of: "part", part: ref, junction: null, mode: "short", value: null },
    reportAs: `${ref}:short`,
    part: ref,
    site: ref,
    rate: rates[i],
    spreadLn: 0,
  }));
  const priors: PriorTable = {
    faults,
    knockOns: [],
    breaksAtPower: faults.map(() => 0.001),
    fittedBad: { new: 0.01, used: 0.1, fittedWrong: 0.02 },
  };
  const pulled = (check: ColdCheck, names: readonly string[]): boolean =>
    names.some((name) => pulls[refs.indexOf(name.split(":")[0])]?.includes(check.red)) ||
    (together !== null &&
      check.red === together.net &&
      together.parts.every((part) => names.includes(`${part}:short`)));
  const predictor: Predictor = {
    board,
    bench: BARE,
    meter: DEFAULT_METER,
    predict(check, present) {
      const raw = pulled(check, present.map(faultName)) ? 0 : 0.5;
      return {
        solved: true,
        raw,
        shown: raw,
        centre: raw,
        spread: 0.02,
        common: 0.01,
        alike: 0.01,
        restsOn: [],
      };
    },
    withEach: (check, present, candidates) =>
      candidates.map((one) => predictor.predict(check, [...present, one])),
    rawWith: () => null,
    effect: faultName,
    matters: (check, present) =>
      check.red === together?.net || pulled(check, present.map(faultName)) ? present : [],
    audible(check, present, candidates) {
      if (pulled(check, present.map(faultName))) return candidates.map(() => false);
      return candidates.map((fault) => pulled(check, [...present, fault].map(faultName)));
    },
  };
  return { board, priors, predictor };
}

/** A log without anything that changes the bench, as the fold would give it. */
export function quietTimeline(log: readonly JobEvent[]): Timeline {
  return {
    entries: log.map((event, logIndex) => ({ logIndex, event, before: BARE, after: BARE, span: 0 })),
    spans: [{ index: 0, openedBy: -1, event: null }],
    now: BARE,
    replacedIn: new Map(),
    closed: false,
  };
}

export const diode = (red: string, reading: number | "OL" | "zero" | "junction" | "high"): JobEvent => ({
  do: "measure",
  mode: "diode",
  red,
  black: "K",
  reading,
});

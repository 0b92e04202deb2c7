import type { BenchState } from "../bench/bench-state.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Board, Part } from "../board/board.ts";
import type { PartFault } from "../board/fault.ts";
import { supplyPin } from "../board/kinds.ts";
import type { Belief } from "../diagnosis/belief.ts";
import { said } from "../messages/said.ts";
import { benchMinutes } from "../money/minutes.ts";
import type { Cause } from "../priors/cause.ts";
import { findingChances } from "../priors/look-findings.ts";
import { minutesOf } from "./action-minutes.ts";
import { faultsOf, type Hypotheses } from "./hypotheses.ts";
import { junctionPins } from "./junction-pins.ts";
import type { PlanningInput } from "./planning-input.ts";
import { PLANNING_RATES } from "./planning-rates.ts";
import type { Action } from "./proposal.ts";
import type { FindingStep } from "./steps.ts";

/**
 * Steps that take a suspect in hand: a look, one pin lifted, or the part taken off and measured by itself. With the part free,
 * the meter sees the part alone, so these need no solve: they tell whether it is faulty. Modules and controllers are not taken off to be
 * measured (the costly way to find out, common practice); their cures are judged as a whole.
 */
export function handsOnSteps(
  { board, timeline, cause = "unknown" }: PlanningInput,
  belief: Belief,
  hypotheses: Hypotheses,
): readonly FindingStep[] {
  const bench = timeline.now;
  const steps: FindingStep[] = [];
  const looked = new Set(timeline.entries.flatMap(({ event }) => (event.do === "look" ? [event.part] : [])));
  const freed = freedBefore(timeline);
  const dead = deadChance(hypotheses);
  const parts = belief.suspects.flatMap(({ part }) => {
    const found = board.parts.get(part);
    return found === undefined || (dead.get(part) ?? 0) <= 0 ? [] : [found];
  });
  for (const part of parts.slice(0, PLANNING_RATES.handledParts)) {
    if (!looked.has(part.ref) && !bench.off.has(part.ref))
      steps.push(lookStep(board, bench, part, cause, hypotheses));
    if (isLoose(bench, part) || freed.has(part.ref)) continue;
    const free = freeStep(board, bench, part, hypotheses);
    if (free !== null) steps.push(free);
  }
  return steps;
}

/** Sights at power-up after which a part measured before may be another. */
const BREAKING: ReadonlySet<string> = new Set(["smoke", "trip", "fuse-blew", "lamp-bright", "limiting"]);

/** Parts freed, measured and put back, and neither fitted anew nor likely broken by power since: freeing them again would tell the same. */
export function freedBefore(timeline: Timeline): ReadonlySet<string> {
  const freed = new Set<string>();
  for (const { event } of timeline.entries) {
    if (event.do === "power" && [event.observed ?? []].flat().some((seen) => BREAKING.has(seen)))
      freed.clear();
    if (event.do === "lift") freed.add(event.place.slice(0, event.place.indexOf(".")));
    if (event.do === "remove") freed.add(event.part);
    if (event.do === "replace") freed.delete(event.part);
  }
  return freed;
}

/** Chance that each part (or `NET1~NET2`) must be cured. */
export function deadChance(hypotheses: Hypotheses): ReadonlyMap<string, number> {
  const chance = new Map<string, number>();
  for (const { dead, weight } of hypotheses.list)
    for (const name of dead) chance.set(name, (chance.get(name) ?? 0) + weight);
  return chance;
}

function isLoose(bench: BenchState, part: Part): boolean {
  return (
    bench.off.has(part.ref) || [...part.pins.keys()].some((pin) => bench.lifted.has(`${part.ref}.${pin}`))
  );
}

function lookStep(
  board: Board,
  bench: BenchState,
  part: Part,
  cause: Cause,
  hypotheses: Hypotheses,
): FindingStep {
  const action: Action = { do: "look", part: part.ref };
  const known = new Map<string, number>();
  const clean = Float64Array.from(hypotheses.list, (hypothesis) => {
    const own = faultsOf(hypothesis, hypotheses).filter((f) => hypotheses.priors[f].part === part.ref);
    const key = own.join(",");
    const chance =
      known.get(key) ??
      findingChances(
        part,
        own.map((f) => hypotheses.priors[f].fault),
        cause,
      ).get("clean") ??
      1;
    known.set(key, chance);
    return chance;
  });
  const minutes = minutesOf(board, bench, action);
  return {
    action,
    row: [],
    minutes,
    allMinutes: minutes,
    outcomes: [
      { word: said`burnt, cracked, bulged or corroded`, low: null, high: null },
      { word: said`clean`, low: null, high: null },
    ],
    shares: [clean.map((share) => 1 - share), clean],
    inHand: null,
    lossMoney: 0,
    lead: null,
  };
}

/** The pin to lift so that the meter sees this part alone; null where the part has to come off. */
export function pinToLift(part: Part): string | null {
  switch (part.kind) {
    case "igbt":
    case "bjt":
      return "c";
    case "mosfet":
      return "d";
    case "controller":
    case "ic":
      return supplyPin(part.kind);
    case "regulator":
      return "out";
    case "switcher":
      return "d";
    case "bridge":
    case "module":
    case "transformer":
    case "choke":
    case "motor":
    case "relay":
    case "opto":
      return null;
    default:
      return part.pins.keys().next().value ?? null;
  }
}

const NEVER_OFF_TO_MEASURE: ReadonlySet<Part["kind"]> = new Set(["module", "controller", "motor", "ic"]);

/** What a meter tells of a free part at least: leads and contacts are so many ohms, leads and fingers so many farads. From memory. */
const TELLS_ALONE = { ohms: 0.5, farads: 1.5e-9 } as const;

/** Would the part by itself read otherwise than a good one? A shunt of milliohms reads zero whole or shorted, a few picofarads read as none. */
export function tellsAlone({ kind, value }: Part, { mode, value: to }: PartFault): boolean {
  if (mode === "leaky") return true;
  if (kind === "capacitor" && mode !== "short") return (value.farads ?? 0) > TELLS_ALONE.farads;
  if (kind !== "resistor" || mode === "open") return true;
  const good = value.ohms ?? 1;
  const bad = to ?? (mode === "short" ? 0 : 2 * good);
  return Math.abs(bad - good) > TELLS_ALONE.ohms;
}

/** Freeing a part so that the meter sees it alone; null where only taking off something that stays on would do. */
export function freeStep(
  board: Board,
  bench: BenchState,
  part: Part,
  hypotheses: Hypotheses,
): FindingStep | null {
  const pin = pinToLift(part);
  if (pin === null && NEVER_OFF_TO_MEASURE.has(part.kind)) return null;
  const place = `${part.ref}.${pin ?? ""}`;
  const action: Action = pin === null ? { do: "remove", part: part.ref } : { do: "lift", place };
  const back: Action = pin === null ? { do: "restore", part: part.ref } : { do: "refit", place };
  const faulty = Float64Array.from(hypotheses.list, (hypothesis) =>
    faultsOf(hypothesis, hypotheses).some((f) => {
      const { fault, part: of } = hypotheses.priors[f];
      if (of !== part.ref || fault.of !== "part" || !tellsAlone(part, fault)) return false;
      return pin === null || junctionPins(part, fault.junction)?.includes(pin) === true;
    })
      ? 1
      : 0,
  );
  const minutes = minutesOf(board, bench, action);
  return {
    action,
    row: [],
    minutes,
    allMinutes: minutes + 2 * benchMinutes(board).measure + minutesOf(board, bench, back),
    outcomes: [
      { word: said`${part.ref} by itself reads faulty`, low: null, high: null },
      { word: said`${part.ref} by itself reads good`, low: null, high: null },
    ],
    shares: [faulty, faulty.map((share) => 1 - share)],
    inHand: part.ref,
    lossMoney: 0,
    lead:
      pin === null
        ? said`Off the board the meter sees ${part.ref} alone.`
        : said`With pin ${pin} of ${part.ref} free the meter sees ${part.ref} alone.`,
  };
}

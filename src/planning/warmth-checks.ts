/** Whose warmth could be taken of a board that is on: from outside, with what this bench has for it. */
import type { LiveMode, MeasureEvent } from "../bench/event.ts";
import type { Hypotheses } from "./hypotheses.ts";
import type { PlanningInput } from "./planning-input.ts";
import { warmthTool } from "./rail-tools.ts";

/** Parts that give off heat enough to be worth a thermometer after they were fitted. Common practice. */
const WARM_KINDS: ReadonlySet<string> = new Set([
  "bridge",
  "mosfet",
  "igbt",
  "module",
  "diode",
  "regulator",
  "switcher",
  "transformer",
  "relay",
  "ntc",
  "ptc",
  "controller",
]);

/** Suspects asked about, the likeliest first, and fitted parts, the latest: a bound on work. */
const MOST_SUSPECTED = 8;
const MOST_FITTED = 2;

/** A reading under power that is not taken yet. */
export type LiveMeasure = Omit<MeasureEvent, "reading"> & { readonly mode: LiveMode };

/** The checks of the likeliest suspects and of what was fitted, so many seconds after switch-on; none without a thermometer. */
export function warmthChecks(
  input: PlanningInput,
  hypotheses: Hypotheses,
  afterPower: number,
): readonly LiveMeasure[] {
  const by = warmthTool(input.equipment);
  if (by === null) return [];
  const { parts } = input.board;
  const suspected = suspectedParts(hypotheses).filter((name) => parts.has(name));
  const fitted = fittedParts(input).filter((part) => WARM_KINDS.has(parts.get(part)?.kind ?? ""));
  const chosen = new Set([...suspected.slice(0, MOST_SUSPECTED), ...fitted.slice(-MOST_FITTED)]);
  return [...chosen].map((part) => ({ do: "measure", mode: "temperature", part, by, afterPower }));
}

function suspectedParts({ list }: Hypotheses): readonly string[] {
  const weights = new Map<string, number>();
  for (const { dead, weight } of list)
    for (const name of dead) weights.set(name, (weights.get(name) ?? 0) + weight);
  return [...weights].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1)).map(([name]) => name);
}

function fittedParts({ timeline }: PlanningInput): readonly string[] {
  return [...new Set(timeline.entries.flatMap(({ event }) => (event.do === "replace" ? [event.part] : [])))];
}

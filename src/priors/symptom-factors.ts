import type { Sourced } from "../units/mark.ts";
import type { Symptom } from "./cause.ts";
import type { FactorWhere } from "./cause-factors.ts";

/** For jobs with this symptom, rates of the faults named are multiplied. All that apply multiply. */
export interface SymptomFactor extends Sourced {
  readonly symptom: Symptom;
  readonly where: FactorWhere;
  readonly factor: number;
}

const row = (
  symptom: Symptom,
  name: string,
  factor: number,
  where: FactorWhere,
  words: string,
): SymptomFactor => ({
  id: `Y-${symptom}-${name}`,
  mark: "common practice",
  words,
  symptom,
  where,
  factor,
});

/** Directions are common practice; sizes are judged and kept small, since customers describe badly. What the words rule out stands in `symptom-effects.ts`. */
export const SYMPTOM_FACTORS: readonly SymptomFactor[] = [
  row(
    "dead",
    "feed",
    1.3,
    { groups: ["input", "inrush", "supply"] },
    "nothing at all: no feed or no small supply",
  ),
  row("dead", "sensor", 0.6, { groups: ["sensor", "output"] }, "a sensing fault shows a code, not silence"),
  row(
    "trips-supply",
    "shorts",
    2.5,
    { groups: ["input", "rectifier", "pfc", "bus", "inverter"], modes: ["short"] },
    "a hard short on the line or bus",
  ),
  row(
    "trips-supply",
    "low",
    0.5,
    { groups: ["logic", "sensor", "output", "rail"] },
    "low-voltage faults trip nothing",
  ),
  row("starts-then-stops", "drift", 2.5, { modes: ["drift", "leaky"] }, "weak rather than dead"),
  row("starts-then-stops", "sense", 2, { groups: ["sensor", "rail"] }, "protection or a sagging rail"),
  row(
    "no-output",
    "output",
    1.8,
    { groups: ["inverter", "drive", "output", "logic"] },
    "rails live, nothing turns",
  ),
];

import type { PartKind } from "../board/board.ts";
import type { FaultMode } from "../board/fault.ts";
import type { Sourced } from "../units/mark.ts";
import type { Cause } from "./cause.ts";
import type { StageGroup } from "./stage-groups.ts";

/** What a factor applies to; everything named must hold, what is not named is free. */
export interface FactorWhere {
  readonly kinds?: readonly PartKind[];
  /** key of the kind weights, where a kind is split further (`electrolytic`, `ceramic`) */
  readonly sorts?: readonly string[];
  readonly groups?: readonly StageGroup[];
  readonly modes?: readonly FaultMode[];
  /** leaks between nets rather than parts */
  readonly netLeaks?: true;
}

/** For jobs of this cause, rates of the faults named are multiplied. All that apply multiply. */
export interface CauseFactor extends Sourced {
  readonly cause: Cause;
  readonly where: FactorWhere;
  readonly factor: number;
}

const row = (cause: Cause, name: string, factor: number, where: FactorWhere, words: string): CauseFactor => ({
  id: `C-${cause}-${name}`,
  mark: "common practice",
  words,
  cause,
  where,
  factor,
});

/** For boards that got wet: what it changes whether they were powered meanwhile. */
interface WetFactor extends Sourced {
  readonly powered: boolean;
  readonly where: FactorWhere;
  readonly factor: number;
}

const wet = (
  powered: boolean,
  name: string,
  factor: number,
  where: FactorWhere,
  words: string,
): WetFactor => ({
  id: `C-water-${powered ? "powered" : "unpowered"}-${name}`,
  mark: "from memory",
  words,
  powered,
  where,
  factor,
});

/** That current through water kills chips and eats copper is common practice; the sizes are from memory. */
export const WET_FACTORS: readonly WetFactor[] = [
  wet(
    true,
    "chips",
    1.8,
    { kinds: ["controller", "ic"] },
    "the high voltage crept into the logic while it ran",
  ),
  wet(
    true,
    "tracks",
    1.6,
    { kinds: ["resistor", "link"], modes: ["open"] },
    "current through water eats copper",
  ),
  wet(false, "chips", 0.4, { kinds: ["controller", "ic"] }, "water alone does not kill a chip"),
  wet(false, "silicon", 0.5, { modes: ["short"] }, "nothing was there to break it down"),
  wet(false, "leaks", 1.5, { netLeaks: true }, "what is wrong is mostly the dirt itself"),
];

/** Directions are common practice (which parts go together by cause); the sizes of the factors are judged, not published. */
export const CAUSE_FACTORS: readonly CauseFactor[] = [
  row("water", "leaks", 40, { netLeaks: true }, "wet dirt bridges neighbouring nets"),
  row("water", "leaky", 2.5, { modes: ["leaky"] }, "drivers and arrays leak after water"),
  row(
    "water",
    "controller",
    4,
    { kinds: ["controller"] },
    "washed while powered: supply and mostly controller dead",
  ),
  row("water", "chips", 2.5, { kinds: ["ic"] }, "15 V reaches logic"),
  row("water", "logic-caps", 1.5, { groups: ["logic", "rail"] }, "5 V parts shorted by high-voltage creep"),
  row(
    "water",
    "tracks",
    3,
    { kinds: ["resistor", "link"], modes: ["open", "drift"] },
    "thin tracks and sense resistors eaten",
  ),
  row("water", "coil", 3, { kinds: ["relay"] }, "coils open, contacts corrode"),
  row("water", "bus", 0.5, { groups: ["bus", "rectifier"] }, "robust parts survive"),
  row("surge", "varistor", 12, { kinds: ["varistor"] }, "takes the surge first"),
  row("surge", "bridge", 4, { kinds: ["bridge"], modes: ["short", "leaky"] }, "one or two diodes short"),
  row("surge", "rectifier", 2, { groups: ["rectifier"], kinds: ["diode"] }, "rectifier diodes"),
  row("surge", "switcher", 4, { kinds: ["switcher"] }, "the highest-voltage small silicon"),
  row("surge", "supply", 1.5, { groups: ["supply"] }, "feedback opto and reference follow"),
  row("surge", "fuse", 3, { kinds: ["fuse"] }, "opens with the varistor"),
  row("surge", "pfc", 1.4, { groups: ["pfc"], modes: ["short"] }, "boost switch across the rectified line"),
  row("surge", "clamps", 2, { kinds: ["zener", "opto"] }, "communication and supply clamps"),
  row("surge", "sensor-pins", 1.5, { kinds: ["controller", "ic"] }, "common mode through long wires"),
  row("surge", "wear", 0.4, { modes: ["drift"] }, "a surge does not age parts"),
  row("surge", "inverter", 0.6, { groups: ["inverter"] }, "the bus capacitors shield the switches"),
  row("surge", "relay", 0.5, { kinds: ["relay"] }, "contacts are not hurt"),
  row(
    "overload",
    "inverter",
    2.5,
    { groups: ["inverter"], modes: ["short", "open", "leaky"] },
    "a leg shorts, upper and lower",
  ),
  row("overload", "drive", 1.5, { groups: ["drive"] }, "driver and gate parts of the leg"),
  row(
    "overload",
    "shunt",
    3,
    { sorts: ["stressed-resistor"], groups: ["inverter", "sensor"] },
    "shunt cracks",
  ),
  row(
    "overload",
    "supply",
    0.4,
    { groups: ["supply", "rail", "input", "logic"] },
    "not on the path of the overload",
  ),
  row("overload", "varistor", 0.2, { kinds: ["varistor"] }, "no over-voltage"),
  row(
    "age",
    "dry",
    6,
    { sorts: ["electrolytic"], modes: ["drift", "open"] },
    "electrolytics dry out, small hot ones first",
  ),
  row(
    "age",
    "electrolytic-leak",
    2,
    { sorts: ["electrolytic"], modes: ["leaky"] },
    "oxide lost in storage or heat",
  ),
  row(
    "age",
    "joints",
    2,
    { kinds: ["inductor", "choke", "link", "transformer", "relay"], modes: ["open"] },
    "ring cracks at heavy parts",
  ),
  row(
    "age",
    "resistors",
    2,
    { kinds: ["resistor", "ntc", "ptc"], modes: ["open", "drift"] },
    "high-voltage chains creep upwards",
  ),
  row("age", "opto", 2, { kinds: ["opto"] }, "light output falls"),
  row("age", "chips", 0.5, { kinds: ["controller", "ic"] }, "chips seldom age"),
  row("age", "varistor", 0.6, { kinds: ["varistor"], modes: ["short"] }, "no surge told"),
  row("insects", "leaks", 20, { netLeaks: true }, "a body bridges two nets"),
  row(
    "insects",
    "switches",
    1.5,
    { groups: ["inverter", "pfc"], modes: ["short"] },
    "bridge at P, N or a gate pin",
  ),
  row("insects", "drive", 1.8, { groups: ["drive"] }, "bridge at gate pins"),
  row("insects", "relay", 3, { kinds: ["relay", "opto"] }, "ants on relay contacts"),
  row("insects", "wear", 0.5, { modes: ["drift"] }, "nothing aged"),
  row("impact", "open", 3, { modes: ["open"] }, "joints and leads crack"),
  row(
    "impact",
    "ceramic",
    6,
    { sorts: ["ceramic"], modes: ["short", "leaky"] },
    "a flexed ceramic leaks, then shorts",
  ),
  row(
    "impact",
    "heavy",
    3,
    { kinds: ["inductor", "choke", "link", "transformer", "relay", "module"], modes: ["open"] },
    "heavy parts tear their joints",
  ),
  row(
    "impact",
    "silicon",
    0.4,
    { groups: ["inverter", "rectifier", "pfc", "supply"], modes: ["short"] },
    "a knock does not short silicon",
  ),
];

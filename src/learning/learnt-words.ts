/** What is counted under a key of the tables, in words: sorts of parts, what of a part fails, and kinds of work. */
import { KINDS, type Kind } from "../board/kinds.ts";
import { said } from "../messages/said.ts";
import { NET_LEAK_SORT } from "../priors/learnt-rates.ts";
import type { Shape } from "../priors/mode-shares.ts";
import { CAUSE_WORDS } from "./cause-words.ts";

/** Sorts of the kind weights that are not a whole kind of part. */
const SORTS: Readonly<Record<string, string>> = {
  "resonant-switch": said`resonant switch`,
  "resonant-film": said`resonant capacitor`,
  "resonant-bus-film": said`bus capacitor of a resonant inverter`,
  "signal-diode": said`signal diode`,
  electrolytic: said`electrolytic capacitor`,
  film: said`film capacitor`,
  ceramic: said`ceramic capacitor`,
  "stressed-resistor": said`resistor under stress`,
  [NET_LEAK_SORT]: said`leak between nets`,
};

/** What fails as one: a whole part, or one thing inside it; what is not here is called as its sort. */
const SHAPES: Readonly<Partial<Record<Shape, string>>> = {
  "ntc-ptc": said`NTC or PTC thermistor`,
  winding: said`winding`,
  coil: said`relay coil`,
  contact: said`relay contact`,
  "rectifier-diode": said`rectifier diode`,
  switch: said`power switch`,
  gate: said`gate of a switch`,
  "bjt-junction": said`junction of a small transistor`,
  "opto-led": said`optocoupler, its LED`,
  "opto-output": said`optocoupler, its output`,
  "regulator-pass": said`regulator, from input to output`,
  "regulator-output": said`regulator, its output`,
  "chip-supply": said`chip, its supply pin`,
  "chip-pin": said`chip, a pin`,
  "chip-pin-to-supply": said`chip, a pin to its supply`,
  bootstrap: said`bootstrap of a driver`,
  reference: said`shunt reference`,
};

/** What was timed. */
const WORK: Readonly<Record<string, string>> = {
  measure: said`take a reading`,
  look: said`look at a part`,
  lift: said`lift a pin`,
  refit: said`solder a pin back`,
  remove: said`take a part off`,
  restore: said`put a part back`,
  replace: said`replace a part`,
  clip: said`put a clip on or take it off`,
  power: said`power up`,
  unpower: said`switch off`,
};

const KIND_ROWS: ReadonlyMap<string, Kind> = KINDS;

/** A sort of part; one that this program does not know as it was counted. */
export function sortWords(sort: string): string {
  return SORTS[sort] ?? KIND_ROWS.get(sort)?.words ?? sort;
}

/** What of a part fails. */
export function shapeWords(shape: string): string {
  return (SHAPES as Readonly<Record<string, string>>)[shape] ?? sortWords(shape);
}

/** A kind of work that was timed. */
export function workWords(action: string): string {
  return WORK[action] ?? action;
}

/** A cause of the intake. */
export function causeWords(cause: string): string {
  return (CAUSE_WORDS as Readonly<Record<string, string>>)[cause] ?? cause;
}

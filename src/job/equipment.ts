import { keptResistor } from "../safety/discharge-resistor.ts";
import { quoted, suggestion } from "../units/nearest.ts";

/** What a bench may have beyond one meter and a soldering iron. */
export const EQUIPMENT: ReadonlyMap<string, string> = new Map([
  ["lamp-40", "a 40 W series lamp"],
  ["lamp-60", "a 60 W series lamp"],
  ["lamp-100", "a 100 W series lamp"],
  ["lamp-150", "a 150 W series lamp"],
  ["lamp-200", "a 200 W series lamp"],
  ["rechargeable-cell", "a 1.2 V rechargeable cell and a 1 ohm, 2 W resistor"],
  ["resistor-2200", "a 2.2 kohm resistor, 10 W, to discharge with"],
  ["resistor-4700", "a 4.7 kohm resistor, 10 W, to discharge with"],
  ["resistor-10000", "a 10 kohm resistor, 10 W, to discharge with"],
  ["bench-supply", "a bench supply with a current limit"],
  ["high-voltage-supply", "an isolated supply of 100 to 150 V DC with a current limit"],
  ["isolation-transformer", "an isolation transformer"],
  ["variac", "a variable transformer"],
  ["thermometer", "a spot (infrared) thermometer; one that has to touch does not count"],
  ["thermal-camera", "a thermal camera"],
  ["clip-leads", "clip-on meter leads"],
  ["second-meter", "a second meter"],
  ["clamp-meter", "a clamp ammeter"],
  ["esr-meter", "an ESR meter"],
  ["milliohm-meter", "a four-wire milliohm meter"],
  ["insulation-tester", "an insulation tester"],
  ["oscilloscope", "an oscilloscope with an isolated probe"],
  ["microscope", "a microscope or strong loupe"],
  ["hot-air", "a hot-air station"],
  ["preheater", "a board preheater"],
  ["desoldering-station", "a desoldering station"],
]);

/** Lamps of other sizes are welcome: `lamp-` and whole watts. */
const LAMP = /^lamp-([1-9]\d{0,3})$/;

/** The watts of a lamp by its equipment word, or null where the word is no lamp. */
export function lampWatts(word: string): number | null {
  const watts = LAMP.exec(word)?.[1];
  return watts === undefined ? null : Number(watts);
}

/** Why this word is no equipment that the program knows, or null where it is. */
export function equipmentProblem(word: string): string | null {
  if (EQUIPMENT.has(word) || lampWatts(word) !== null || keptResistor(word) !== null) return null;
  return `${quoted(word)} is no known equipment${suggestion(word, [...EQUIPMENT.keys()])}`;
}

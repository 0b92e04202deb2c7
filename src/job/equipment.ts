import { said } from "../messages/said.ts";
import { keptResistor } from "../safety/discharge-resistor.ts";
import { quoted, suggestion } from "../units/nearest.ts";

/** What a bench may have beyond one meter and a soldering iron. */
export const EQUIPMENT: ReadonlyMap<string, string> = new Map([
  ["lamp-40", said`a ${"40 W"} series lamp`],
  ["lamp-60", said`a ${"60 W"} series lamp`],
  ["lamp-100", said`a ${"100 W"} series lamp`],
  ["lamp-150", said`a ${"150 W"} series lamp`],
  ["lamp-200", said`a ${"200 W"} series lamp`],
  ["rechargeable-cell", said`a 1.2 V rechargeable cell and a 1 ohm, 2 W resistor`],
  ["resistor-2200", said`a ${"2.2 kohm"} resistor, 10 W, to discharge with`],
  ["resistor-4700", said`a ${"4.7 kohm"} resistor, 10 W, to discharge with`],
  ["resistor-10000", said`a ${"10 kohm"} resistor, 10 W, to discharge with`],
  ["bench-supply", said`a bench supply with a current limit`],
  ["high-voltage-supply", said`an isolated supply of 100 to 150 V DC with a current limit`],
  ["isolation-transformer", said`an isolation transformer`],
  ["variac", said`a variable transformer`],
  ["thermometer", said`a spot (infrared) thermometer; one that has to touch does not count`],
  ["thermal-camera", said`a thermal camera`],
  ["clip-leads", said`clip-on meter leads`],
  ["second-meter", said`a second meter`],
  ["clamp-meter", said`a clamp ammeter`],
  ["esr-meter", said`an ESR meter`],
  ["milliohm-meter", said`a four-wire milliohm meter`],
  ["insulation-tester", said`an insulation tester`],
  ["oscilloscope", said`an oscilloscope with an isolated probe`],
  ["microscope", said`a microscope or strong loupe`],
  ["hot-air", said`a hot-air station`],
  ["preheater", said`a board preheater`],
  ["desoldering-station", said`a desoldering station`],
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
  return `${said`${quoted(word)} is no known equipment`}${suggestion(word, [...EQUIPMENT.keys()])}`;
}

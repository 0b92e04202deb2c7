/** Value fields of a part and their words, which board files name by a word of their own, as a reader calls them. */
import { said } from "../../messages/said.ts";
import { say } from "../say.ts";

const FIELDS: Readonly<Record<string, string>> = {
  ohms: said`Ohms`,
  volts: said`Volts`,
  amps: said`Amps`,
  watts: said`Watts`,
  farads: said`Farads`,
  henries: said`Henries`,
  joules: said`Joules`,
  tolerance: said`Tolerance, a share`,
  type: said`Sort of part`,
  polarity: said`NPN or PNP`,
  channel: said`Channel`,
  beta: said`Current gain`,
  coilOhms: said`Ohms of the coil`,
  coilVolts: said`Volts of the coil`,
  ohmsOn: said`Ohms when on`,
  diode: said`Has a diode of its own`,
};

const CHOICES: Readonly<Record<string, string>> = {
  electrolytic: said`electrolytic`,
  film: said`film`,
  ceramic: said`ceramic`,
  rectifier: said`for the mains`,
  fast: said`fast`,
  schottky: said`Schottky`,
  sic: said`silicon carbide`,
  signal: said`small signal`,
  true: said`yes`,
  false: said`no`,
};

/** A value field; one that is not known as its file has it. */
export function fieldWords(field: string): string {
  return say(FIELDS[field] ?? field);
}

/** A word that a value field may have; `npn` and the like as the file has them. */
export function choiceWords(word: string): string {
  return say(CHOICES[word] ?? word);
}

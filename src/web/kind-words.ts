/** Kinds of part and stages of a board, which board files name by a word of their own, as a reader calls them. */
import { said } from "../messages/said.ts";
import { say } from "./say.ts";

const KINDS: Readonly<Record<string, string>> = {
  fuse: said`fuse`,
  link: said`link`,
  resistor: said`resistor`,
  ntc: said`ntc`,
  ptc: said`ptc`,
  varistor: said`varistor`,
  capacitor: said`capacitor`,
  inductor: said`inductor`,
  choke: said`choke`,
  transformer: said`transformer`,
  relay: said`relay`,
  diode: said`diode`,
  zener: said`zener`,
  led: said`led`,
  bridge: said`bridge`,
  bjt: said`bjt`,
  mosfet: said`mosfet`,
  igbt: said`igbt`,
  thyristor: said`thyristor`,
  triac: said`triac`,
  module: said`module`,
  opto: said`opto`,
  regulator: said`regulator`,
  switcher: said`switcher`,
  shuntref: said`shuntref`,
  controller: said`controller`,
  ic: said`ic`,
  motor: said`motor`,
};

const STAGES: Readonly<Record<string, string>> = {
  input: said`input`,
  inrush: said`inrush`,
  rectifier: said`rectifier`,
  pfc: said`pfc`,
  bus: said`bus`,
  inverter: said`inverter`,
  drive: said`drive`,
  chopper: said`chopper`,
  supply: said`supply`,
  standby: said`standby`,
  logic: said`logic`,
  output: said`output`,
  sensor: said`sensor`,
  other: said`other`,
};

/** A kind of part; one that is not known as its file has it. */
export function kindWords(kind: string): string {
  return say(KINDS[kind] ?? kind);
}

/** A stage of the board; one that is not known as its file has it. */
export function stageWords(stage: string): string {
  return say(STAGES[stage] ?? stage);
}

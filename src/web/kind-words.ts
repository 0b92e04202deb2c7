/** Kinds of part and stages of a board, which board files name by a word of their own, as a reader calls them. */
import { said } from "../messages/said.ts";
import { stageSaid } from "../wire/stage-words.ts";
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

const NO_STAGE = said`other`;

/** A kind of part; one that is not known as its file has it. */
export function kindWords(kind: string): string {
  return say(KINDS[kind] ?? kind);
}

/** A stage of the board, `other` where a part has none; one that is not known as its file has it. */
export function stageWords(stage: string): string {
  return say(stage === "other" ? NO_STAGE : stageSaid(stage));
}

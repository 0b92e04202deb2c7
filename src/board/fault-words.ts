import { said } from "../messages/said.ts";
import type { Board, Part, PartKind } from "./board.ts";
import { type Fault, faultName, type PartFault } from "./fault.ts";
import { netWords } from "./net-words.ts";

const MODE_WORDS: Readonly<Record<string, string>> = {
  short: said`shorted`,
  leaky: said`leaky`,
  open: said`open`,
  drift: said`off its value`,
};

/** Between which terminals, for junctions that the file format spells in short. */
const BETWEEN: Readonly<Record<string, string>> = {
  ce: said`collector to emitter`,
  be: said`base to emitter`,
  bc: said`base to collector`,
  ge: said`gate to emitter`,
  ds: said`drain to source`,
  gs: said`gate to source`,
  ka: said`cathode to anode`,
  inout: said`input to output`,
  outgnd: said`output to ground`,
  ac1plus: said`AC ${"1"} to plus`,
  ac2plus: said`AC ${"2"} to plus`,
  ac3plus: said`AC ${"3"} to plus`,
  minusac1: said`minus to AC ${"1"}`,
  minusac2: said`minus to AC ${"2"}`,
  minusac3: said`minus to AC ${"3"}`,
  led: said`LED`,
};

/** What kinds with junctions of their own call them; the same name may be a plain pin of another kind. */
const OF_KIND: Readonly<Partial<Record<PartKind, Readonly<Record<string, string>>>>> = {
  module: {
    vbu: said`bootstrap supply of phase ${"U"}`,
    vbv: said`bootstrap supply of phase ${"V"}`,
    vbw: said`bootstrap supply of phase ${"W"}`,
    drive: said`control supply (VCC to COM)`,
    fault: said`fault output`,
    trip: said`trip input`,
  },
  switcher: { vcc: said`VCC to source`, fb: said`feedback pin` },
  opto: { out: said`output transistor` },
  choke: { w12: said`winding ${"1-2"}`, w34: said`winding ${"3-4"}` },
};

/** The six switches of a module in the file format: phase, then the side of the bus they stand on. */
const MODULE_SWITCH = /^([uvw])([pn])$/;

/** `up` -> `upper switch of phase U`; null where the name is none of the six. */
function switchOfModule(name: string, input: boolean): string | null {
  const match = MODULE_SWITCH.exec(name);
  if (match === null) return null;
  const phase = match[1].toUpperCase();
  const side = match[2] === "p" ? said`upper switch` : said`lower switch`;
  return input ? said`input of the ${side} of phase ${phase}` : said`${side} of phase ${phase}`;
}

function junctionWords(part: Part | undefined, junction: string): string {
  if (part?.kind === "module") {
    const input = junction.startsWith("in");
    const switched = switchOfModule(input ? junction.slice(2) : junction, input);
    if (switched !== null) return switched;
  }
  if (part?.kind === "transformer") return said`winding ${junction}`;
  return (part === undefined ? undefined : OF_KIND[part.kind]?.[junction]) ?? BETWEEN[junction] ?? junction;
}

/** A pin of a chip fails towards ground unless the name says towards the supply. */
function towards(supply: boolean, mode: string): string {
  const words = MODE_WORDS[mode] ?? mode;
  if (supply) return said`${words} to its supply`;
  return mode === "open" ? words : said`${words} to ground`;
}

/** Dirt, or what of a part has failed and how: `where` is null for a part of one junction. */
type Parted =
  | { readonly dirt: string }
  | {
      readonly dirt: null;
      readonly ref: string;
      readonly where: string | null;
      readonly how: string;
      readonly chip: boolean;
    };

function parted(name: string, board: Board): Parted {
  const colon = name.lastIndexOf(":");
  const place = name.slice(0, colon);
  const mode = name.slice(colon + 1).split("@")[0];
  if (place.includes("~")) return { dirt: dirtWords(place, board) };
  const dot = place.indexOf(".");
  const how = MODE_WORDS[mode] ?? mode;
  if (dot < 0) return { dirt: null, ref: place, where: null, how, chip: false };
  const ref = place.slice(0, dot);
  const junction = place.slice(dot + 1);
  const part = board.parts.get(ref);
  if (part?.kind !== "controller" && part?.kind !== "ic")
    return { dirt: null, ref, where: junctionWords(part, junction), how, chip: false };
  const [pin = "", other] = junction.split(".");
  const where = pin === "supply" ? said`supply pin` : said`pin ${pin}`;
  return { dirt: null, ref, where, how: towards(other === "supply", mode), chip: true };
}

/** `NET1~NET2` as it is said: `dirt between gate of the lower switch and DC bus -` (by label, else by a pin on each). */
export function dirtWords(pair: string, board: Board): string {
  const [one = "", other = ""] = pair.split("~").map((net) => netWords(board, net));
  return said`dirt between ${one} and ${other}`;
}

/** What is cured, by its name: a part's reference, or dirt between two nets. */
export function curedWords(name: string, board: Board): string {
  return name.includes("~") ? dirtWords(name, board) : name;
}

/**
 * A fault by its name as it is said at the bench: `Q3.ce:short` -> `Q3 collector to emitter shorted`, `M1.up:short` -> `M1 upper switch
 * of phase U shorted`, `A~B:leaky` -> `dirt between A and B` by the nets' labels.
 */
export function faultNameWords(name: string, board: Board): string {
  const fault = parted(name, board);
  if (fault.dirt !== null) return fault.dirt;
  const { ref, where, how } = fault;
  return where === null ? said`${ref} ${how}` : said`${ref} ${where} ${how}`;
}

/** How a fault is said, by its name, where its part has been named: `collector to emitter shorted`, `open`. */
export function faultNameWithinPart(name: string, board: Board): string {
  const fault = parted(name, board);
  if (fault.dirt !== null) return fault.dirt;
  const { where, how } = fault;
  return where === null ? how : said`${where} ${how}`;
}

/** The same for a fault. */
export function faultWithinPart(fault: PartFault, board: Board): string {
  return faultNameWithinPart(faultName(fault), board);
}

/** As a statement: `F1 is open`, `U4 has its supply pin shorted to ground`, `there is dirt between A and B`. */
export function faultStatement(fault: Fault, board: Board): string {
  const one = parted(faultName(fault), board);
  if (one.dirt !== null) return said`there is ${one.dirt}`;
  const { ref, where, how, chip } = one;
  if (where === null) return said`${ref} is ${how}`;
  return chip ? said`${ref} has its ${where} ${how}` : said`${ref} ${where} is ${how}`;
}

/** A fault as it is said at the bench. */
export function faultWords(fault: Fault, board: Board): string {
  return faultNameWords(faultName(fault), board);
}

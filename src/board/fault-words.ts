import type { Board, Part, PartKind } from "./board.ts";
import { type Fault, faultName, type PartFault } from "./fault.ts";
import { netWords } from "./net-words.ts";

const MODE_WORDS: Readonly<Record<string, string>> = {
  short: "shorted",
  leaky: "leaky",
  open: "open",
  drift: "off its value",
};

/** Between which terminals, for junctions that the file format spells in short. */
const BETWEEN: Readonly<Record<string, string>> = {
  ce: "collector to emitter",
  be: "base to emitter",
  bc: "base to collector",
  ge: "gate to emitter",
  ds: "drain to source",
  gs: "gate to source",
  ka: "cathode to anode",
  inout: "input to output",
  outgnd: "output to ground",
  ac1plus: "AC 1 to plus",
  ac2plus: "AC 2 to plus",
  ac3plus: "AC 3 to plus",
  minusac1: "minus to AC 1",
  minusac2: "minus to AC 2",
  minusac3: "minus to AC 3",
  led: "LED",
};

/** What kinds with junctions of their own call them; the same name may be a plain pin of another kind. */
const OF_KIND: Readonly<Partial<Record<PartKind, Readonly<Record<string, string>>>>> = {
  module: {
    vbu: "bootstrap supply of phase U",
    vbv: "bootstrap supply of phase V",
    vbw: "bootstrap supply of phase W",
    drive: "control supply (VCC to COM)",
    fault: "fault output",
    trip: "trip input",
  },
  switcher: { vcc: "VCC to source", fb: "feedback pin" },
  opto: { out: "output transistor" },
  choke: { w12: "winding 1-2", w34: "winding 3-4" },
};

/** The six switches of a module in the file format: phase, then the side of the bus they stand on. */
const MODULE_SWITCH = /^([uvw])([pn])$/;

/** `up` -> `upper switch of phase U`; null where the name is none of the six. */
function switchOfModule(name: string): string | null {
  const match = MODULE_SWITCH.exec(name);
  if (match === null) return null;
  return `${match[2] === "p" ? "upper" : "lower"} switch of phase ${match[1].toUpperCase()}`;
}

function junctionWords(part: Part | undefined, junction: string): string {
  if (part?.kind === "module") {
    const input = junction.startsWith("in");
    const switched = switchOfModule(input ? junction.slice(2) : junction);
    if (switched !== null) return `${input ? "input of the " : ""}${switched}`;
  }
  if (part?.kind === "transformer") return `winding ${junction}`;
  return (part === undefined ? undefined : OF_KIND[part.kind]?.[junction]) ?? BETWEEN[junction] ?? junction;
}

/** A pin of a chip fails towards ground unless the name says towards the supply. */
function chipWords(junction: string, mode: string): string {
  const words = MODE_WORDS[mode] ?? mode;
  const [pin, other] = junction.split(".");
  if (other === "supply") return `pin ${pin} ${words} to its supply`;
  if (junction === "supply") return `supply pin ${mode === "open" ? words : `${words} to ground`}`;
  return `pin ${pin} ${mode === "open" ? words : `${words} to ground`}`;
}

interface Said {
  readonly dirt: boolean;
  /** part with its junction, or the two nets */
  readonly where: string;
  readonly how: string;
}

function said(name: string, board: Board): Said {
  const colon = name.lastIndexOf(":");
  const place = name.slice(0, colon);
  const mode = name.slice(colon + 1).split("@")[0];
  if (place.includes("~")) return { dirt: true, where: dirtWords(place, board), how: "" };
  const dot = place.indexOf(".");
  const how = MODE_WORDS[mode] ?? mode;
  if (dot < 0) return { dirt: false, where: place, how };
  const ref = place.slice(0, dot);
  const junction = place.slice(dot + 1);
  const part = board.parts.get(ref);
  return part?.kind === "controller" || part?.kind === "ic"
    ? { dirt: false, where: ref, how: chipWords(junction, mode) }
    : { dirt: false, where: `${ref} ${junctionWords(part, junction)}`, how };
}

/** `NET1~NET2` as it is said: `dirt between gate of the lower switch and DC bus -` (by label, else by a pin on each). */
export function dirtWords(pair: string, board: Board): string {
  return `dirt between ${pair
    .split("~")
    .map((net) => netWords(board, net))
    .join(" and ")}`;
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
  const { dirt, where, how } = said(name, board);
  return dirt ? where : `${where} ${how}`;
}

/** As a statement: `F1 is open`, `U4 has its supply pin shorted to ground`, `there is dirt between A and B`. */
export function faultStatement(fault: Fault, board: Board): string {
  const { dirt, where, how } = said(faultName(fault), board);
  if (dirt) return `there is ${where}`;
  if (how.startsWith("pin ") || how.startsWith("supply pin ")) return `${where} has its ${how}`;
  return `${where} is ${how}`;
}

/** How a fault is said where its part has been named: `collector to emitter shorted`, `open`. */
export function faultWithinPart(fault: PartFault, board: Board): string {
  return faultWords(fault, board).slice(fault.part.length + 1);
}

/** The same for a fault. */
export function faultWords(fault: Fault, board: Board): string {
  return faultNameWords(faultName(fault), board);
}

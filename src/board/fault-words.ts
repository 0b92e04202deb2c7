import { type Fault, faultName } from "./fault.ts";

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

function junctionWords(junction: string): string {
  const [pin, supply] = junction.split(".");
  return supply === "supply" ? `pin ${pin} to supply` : (BETWEEN[junction] ?? junction);
}

function split(name: string): { readonly where: string; readonly mode: string } {
  const colon = name.lastIndexOf(":");
  const where = name.slice(0, colon);
  const mode = name.slice(colon + 1).split("@")[0];
  const dot = where.indexOf(".");
  const place = dot < 0 ? where : `${where.slice(0, dot)} ${junctionWords(where.slice(dot + 1))}`;
  return { where: place, mode: MODE_WORDS[mode] ?? mode };
}

/** A fault by its name as it is said at the bench: `Q3.ce:short` -> `Q3 collector to emitter shorted`, `A~B:leaky` -> `dirt between A and B`. */
export function faultNameWords(name: string): string {
  const { where, mode } = split(name);
  return where.includes("~") ? `dirt between ${where.split("~").join(" and ")}` : `${where} ${mode}`;
}

/** As a statement: `F1 is open`, `there is dirt between A and B`. */
export function faultStatement(fault: Fault): string {
  const { where, mode } = split(faultName(fault));
  return where.includes("~") ? `there is ${faultWords(fault)}` : `${where} is ${mode}`;
}

/** The same for a fault. */
export function faultWords(fault: Fault): string {
  return faultNameWords(faultName(fault));
}

/** How the small off-line supply is put together: what each of its parts is for, found by the nets. References. */
import type { Board, Part } from "../board/board.ts";
import type { RailRole, Roles } from "../board/roles.ts";

export interface SupplyOutput {
  readonly rail: string;
  readonly winding: string;
  readonly diodes: readonly string[];
  readonly ohms: number;
}

/** The loop that holds one rail: divider, shunt reference, optocoupler. */
export interface SupplyLoop {
  readonly rail: string;
  readonly opto: string;
  readonly reference: string;
  readonly ledResistors: readonly string[];
  readonly top: readonly string[];
  readonly bottom: readonly string[];
  readonly feedbackCapacitors: readonly string[];
}

export interface SupplyPlan {
  readonly switcher: string;
  readonly transformer: string;
  readonly primary: string;
  /** the net that feeds the primary and the one its current returns to */
  readonly feed: string;
  readonly back: string;
  /** the winding and what stands in series behind it that feed the switch's own control */
  readonly own: {
    readonly winding: string;
    readonly series: readonly string[];
    readonly capacitors: readonly string[];
  } | null;
  readonly outputs: readonly SupplyOutput[];
  readonly loop: SupplyLoop | null;
  /** the parts that take the drain's spikes */
  readonly clamp: readonly string[];
}

interface Search {
  readonly parts: readonly Part[];
  on(net: string): readonly Part[];
}

const other = (part: Part, net: string): string => [...part.pins.values()].find((one) => one !== net) ?? net;

const resistorsBetween = (search: Search, one: string, far: string): readonly Part[] =>
  search.on(one).filter((part) => part.kind === "resistor" && other(part, one) === far);

function windingAt(transformer: Part, net: string): string | null {
  const found = Object.entries(transformer.value.windings ?? {}).find(([, { pins }]) =>
    pins.some((pin) => transformer.pins.get(pin) === net),
  );
  return found?.[0] ?? null;
}

/** From the switch's own feed back through its diode, and a resistor where there is one, to a winding. */
function ownFeed(search: Search, transformer: Part, vcc: string, back: string): SupplyPlan["own"] {
  const capacitors = search
    .on(vcc)
    .filter((part) => part.kind === "capacitor" && other(part, vcc) === back)
    .map((part) => part.ref);
  for (const diode of search.on(vcc)) {
    if (diode.kind !== "diode" || diode.pins.get("k") !== vcc) continue;
    const anode = diode.pins.get("a") ?? "";
    const winding = windingAt(transformer, anode);
    if (winding !== null) return { winding, series: [diode.ref], capacitors };
    for (const part of search.on(anode)) {
      const behind = part.kind === "resistor" ? windingAt(transformer, other(part, anode)) : null;
      if (behind !== null) return { winding: behind, series: [diode.ref, part.ref], capacitors };
    }
  }
  return null;
}

function outputOf(board: Board, transformer: Part, rail: RailRole): SupplyOutput | null {
  for (const ref of rail.rectifiers) {
    const diode = board.parts.get(ref);
    const winding = windingAt(transformer, diode?.pins.get("a") ?? "");
    if (winding === null) continue;
    const ohms = transformer.value.windings?.[winding]?.ohms ?? 0.2;
    return { rail: rail.name, winding, diodes: rail.rectifiers, ohms };
  }
  return null;
}

function loopOf(board: Board, search: Search, feedback: string): SupplyLoop | null {
  const opto = search.on(feedback).find((part) => part.kind === "opto");
  const cathode = opto?.pins.get("k") ?? "";
  const reference = search.on(cathode).find((part) => part.kind === "shuntref");
  if (opto === undefined || reference === undefined) return null;
  const ref = reference.pins.get("ref") ?? "";
  const anode = opto.pins.get("a") ?? "";
  for (const rail of board.rails) {
    const top = resistorsBetween(search, ref, rail.net);
    if (top.length === 0) continue;
    const refs = (parts: readonly Part[]) => parts.map((part) => part.ref);
    return {
      rail: rail.name,
      opto: opto.ref,
      reference: reference.ref,
      ledResistors: refs(resistorsBetween(search, anode, rail.net)),
      top: refs(top),
      bottom: refs(resistorsBetween(search, ref, reference.pins.get("a") ?? "")),
      feedbackCapacitors: refs(search.on(feedback).filter((part) => part.kind === "capacitor")),
    };
  }
  return null;
}

function planOf(board: Board, roles: Roles, found: Roles["switchers"][number]): SupplyPlan | null {
  const switcher = board.parts.get(found.part);
  const transformer = board.parts.get(found.transformer ?? "");
  if (switcher === undefined || transformer === undefined) return null;
  const parts = [...board.parts.values()];
  const search = {
    parts,
    on: (net: string) => parts.filter((part) => [...part.pins.values()].includes(net)),
  };
  const drain = switcher.pins.get("d") ?? "";
  const back = switcher.pins.get("s") ?? board.zero;
  const primary = windingAt(transformer, drain);
  const ends = transformer.value.windings?.[primary ?? ""]?.pins.map((pin) => transformer.pins.get(pin));
  const feed = ends?.find((net) => net !== drain);
  if (primary === null || feed === undefined) return null;
  return {
    switcher: switcher.ref,
    transformer: transformer.ref,
    primary,
    feed,
    back,
    own: ownFeed(search, transformer, switcher.pins.get("vcc") ?? "", back),
    outputs: roles.rails.flatMap((rail) => outputOf(board, transformer, rail) ?? []),
    loop: loopOf(board, search, switcher.pins.get("fb") ?? ""),
    clamp: found.clamp,
  };
}

/** The board's small supplies with an integrated switch, in file order. */
export function supplyPlans(board: Board, roles: Roles): readonly SupplyPlan[] {
  return roles.switchers.flatMap((found) => planOf(board, roles, found) ?? []);
}

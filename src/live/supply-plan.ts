/** How the small off-line supply is put together, with a chip or with a transistor alone: what each of its parts is for, found by the nets. References. */
import type { Board, Part } from "../board/board.ts";
import type { RailRole, Roles } from "../board/roles.ts";
import { pathBetween, START_KINDS, SWING_KINDS, transistorOf } from "./discrete-supply.ts";

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
  /** the place inside it that switches, and its high pin */
  readonly through: string;
  readonly high: string;
  /** of a transistor without a chip: the place of its control, and the resistors that start it; null: a chip */
  readonly discrete: { readonly drive: string; readonly start: readonly string[] } | null;
  readonly transformer: string;
  readonly primary: string;
  /** the net that feeds the primary and the one its current returns to */
  readonly feed: string;
  readonly back: string;
  /** the winding and what stands in series behind it that feed the switch's own control, or keep a transistor swinging */
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

function searchOf(board: Board): Search {
  const parts = [...board.parts.values()];
  return { parts, on: (net) => parts.filter((part) => [...part.pins.values()].includes(net)) };
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
  const search = searchOf(board);
  const drain = switcher.pins.get("d") ?? "";
  const back = switcher.pins.get("s") ?? board.zero;
  const primary = windingAt(transformer, drain);
  const ends = transformer.value.windings?.[primary ?? ""]?.pins.map((pin) => transformer.pins.get(pin));
  const feed = ends?.find((net) => net !== drain);
  if (primary === null || feed === undefined) return null;
  return {
    switcher: switcher.ref,
    through: "ds",
    high: "d",
    discrete: null,
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

/** The supply whose transistor this is; null where no resistor starts it, no winding keeps it swinging, or it makes no rail. */
function discretePlan(board: Board, roles: Roles, part: Part): SupplyPlan | null {
  const transistor = transistorOf(part);
  if (transistor === null) return null;
  const [high = "", back = "", control = ""] = [transistor.high, transistor.low, transistor.control].map(
    (pin) => part.pins.get(pin),
  );
  const search = searchOf(board);
  const transformer = search.on(high).find(({ kind }) => kind === "transformer");
  const primary = transformer === undefined ? null : windingAt(transformer, high);
  if (transformer === undefined || primary === null) return null;
  const endsOf = (winding: string) =>
    (transformer.value.windings?.[winding]?.pins ?? []).map((pin) => transformer.pins.get(pin) ?? "");
  const feed = endsOf(primary).find((net) => net !== high);
  if (feed === undefined) return null;
  const others = Object.keys(transformer.value.windings ?? {}).filter((winding) => winding !== primary);
  const windings = new Set(others.flatMap(endsOf).filter((net) => net !== back));
  const start = pathBetween(
    search.parts,
    START_KINDS,
    control,
    new Set([feed]),
    new Set([back, ...windings]),
  );
  const swing = pathBetween(search.parts, SWING_KINDS, control, windings, new Set([back, feed, high]));
  const winding = swing === null ? null : windingAt(transformer, swing.end);
  const outputs = roles.rails.flatMap((rail) => outputOf(board, transformer, rail) ?? []);
  if (start === null || swing === null || winding === null || outputs.length === 0) return null;
  const holders = search
    .on(control)
    .flatMap((one) => (one.kind === "bjt" && one !== part ? [one.pins.get("b") ?? ""] : []));
  return {
    switcher: part.ref,
    through: transistor.through,
    high: transistor.high,
    discrete: { drive: transistor.drive, start: start.refs },
    transformer: transformer.ref,
    primary,
    feed,
    back,
    own: { winding, series: swing.refs, capacitors: [] },
    outputs,
    loop: [control, ...holders].reduce<SupplyLoop | null>(
      (found, net) => found ?? loopOf(board, search, net),
      null,
    ),
    clamp: [],
  };
}

/** The board's small supplies in file order: those with a chip, then those with a transistor alone. */
export function supplyPlans(board: Board, roles: Roles): readonly SupplyPlan[] {
  const chips = roles.switchers.flatMap((found) => planOf(board, roles, found) ?? []);
  const taken = new Set(chips.map(({ transformer }) => transformer));
  const discrete = [...board.parts.values()].flatMap((part) => discretePlan(board, roles, part) ?? []);
  return [...chips, ...discrete.filter(({ transformer }) => !taken.has(transformer))];
}

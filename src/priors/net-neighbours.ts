import type { Board, Part } from "../board/board.ts";

/** Two nets that lie close on the board, and how likely a leak between them is beside another pair. */
export interface NetPair {
  readonly nets: readonly [string, string];
  readonly weight: number;
}

/** More pairs than this drown the table without telling the technician more. */
const MOST_PAIRS = 48;
/** Rails above this kill logic. Common practice. */
export const LOGIC_VOLTS = 5.5;
const PACKAGES: ReadonlySet<string> = new Set(["module", "controller", "ic", "switcher"]);

/** Neighbouring pins of a package, in the order in which the board lists them, wrapping round. */
function adjacentPins(part: Part): [string, string][] {
  const nets = [...part.pins.values()];
  return nets.map((net, at) => [net, nets[(at + 1) % nets.length] ?? net]);
}

/** The nets of a gate part or a small signal part are close to each other. */
function closePins(part: Part): [string, string][] {
  if (part.kind === "igbt") return [[part.pins.get("g") ?? "", part.pins.get("c") ?? ""]];
  if (part.kind === "mosfet") return [[part.pins.get("g") ?? "", part.pins.get("d") ?? ""]];
  if (part.kind === "opto") return [[part.pins.get("k") ?? "", part.pins.get("e") ?? ""]];
  return [];
}

/** A chip or module fed above logic volts has its supply beside an input that comes from the controller. */
function supplyBesideInput(board: Board, part: Part): [string, string][] {
  const vcc = part.pins.get("vcc");
  const rail = board.rails.find((one) => one.net === vcc);
  if (vcc === undefined || rail === undefined || rail.volts <= LOGIC_VOLTS) return [];
  if (part.kind === "module") return [[vcc, part.pins.get("inup") ?? ""]];
  const logic = new Set(
    [...board.parts.values()]
      .filter((one) => one.kind === "controller")
      .flatMap((one) => [...one.pins.values()]),
  );
  const gnd = part.pins.get("gnd");
  const input = [...part.pins.values()].find((net) => net !== vcc && net !== gnd && logic.has(net));
  return input === undefined ? [] : [[vcc, input]];
}

/**
 * Pairs of nets that dirt or an insect may bridge: neighbouring pins of chips and modules, gate pins beside their collectors,
 * and every rail beside the board's zero. At most 48, the likeliest kept, in a fixed order.
 */
export function neighbouringNets(board: Board): NetPair[] {
  const weights = new Map<string, NetPair>();
  const add = (a: string, b: string, weight: number): void => {
    if (a === "" || b === "" || a === b) return;
    const nets: [string, string] = a < b ? [a, b] : [b, a];
    const key = nets.join("~");
    weights.set(key, { nets, weight: Math.max(weight, weights.get(key)?.weight ?? 0) });
  };
  for (const rail of board.rails) add(rail.net, rail.against ?? board.zero, 1.5);
  for (const part of board.parts.values()) {
    for (const [a, b] of closePins(part)) add(a, b, 2);
    for (const [a, b] of supplyBesideInput(board, part)) add(a, b, 1.2);
    if (PACKAGES.has(part.kind)) for (const [a, b] of adjacentPins(part)) add(a, b, 1);
  }
  return [...weights.values()].sort((p, q) => q.weight - p.weight).slice(0, MOST_PAIRS);
}

/** Whether a bench supply clipped to a board goes to its limit: what lies across the nets it feeds, from the faults alone. */
import type { Place } from "../bench/event.ts";
import type { Board, Part } from "../board/board.ts";
import type { Fault, PartFault } from "../board/fault.ts";
import { type CircuitView, viewOf } from "./circuit-view.ts";
import { type FedNets, feedNets } from "./fed-nets.ts";
import { ohmsOf, shortedSite, shortThrough } from "./power-effects.ts";

/** A bench supply: where it is clipped, and what it gives. */
interface BenchSupply {
  readonly at?: readonly [Place, Place];
  readonly volts?: number;
  readonly limitAmps?: number;
}

/** Ohms under which a supply of unknown volts and limit is taken to limit. Common practice: a few volts, some tenths of an amp. */
const LIMITING_OHMS = 100;

/** Junctions that lie across what feeds their part, and the pins they join. */
const ACROSS: Readonly<Record<string, readonly (readonly [string, string])[]>> = {
  supply: [
    ["vdd", "gnd"],
    ["vcc", "gnd"],
  ],
  drive: [["vcc", "com"]],
  outgnd: [["out", "gnd"]],
  inout: [],
};

/** Do these faults, all of parts in circuit, take the supply to its limit? The healthy board's own draw is not counted. */
export function limitsSupply(board: Board, faults: readonly Fault[], supply: BenchSupply): boolean {
  if (supply.at === undefined) return false;
  const view = viewOf(board);
  const fed = feedNets(board, supply.at);
  const { volts, limitAmps } = supply;
  const most = volts === undefined || limitAmps === undefined ? LIMITING_OHMS : volts / limitAmps;
  const shorts = faults.filter((fault) => ohmsOf(fault) < most);
  const backs = backsOf(
    view,
    fed,
    volts ?? Math.abs(fed.rail?.volts ?? 1),
    limitAmps ?? Number.POSITIVE_INFINITY,
  );
  if (shorts.some((fault) => across(board, fault, fed, backs))) return true;
  return fed.bus && acrossBus(view, shorts, most);
}

/**
 * A linear regulator passes this many times its rating to a short, one that names none being rated so, and shuts down by its heat
 * above these watts (data sheets, from memory; the live model's figures).
 */
const REGULATOR = { times: 1.5, amps: 0.5, watts: 2.5 } as const;

function limitOf({ value }: Part, volts: number): number {
  return Math.min(REGULATOR.times * (value.amps ?? REGULATOR.amps), REGULATOR.watts / volts);
}

/** The 0 V of each fed net on which a short would take the supply to its limit. */
function backsOf(
  view: CircuitView,
  fed: FedNets,
  volts: number,
  limitAmps: number,
): ReadonlyMap<string, string> {
  const backs = new Map<string, string>();
  for (const net of fed.nets) {
    const rail = view.roles.rails.find((one) => one.net === net);
    const maker = view.board.parts.get(rail?.from ?? "");
    // what a small regulator passes to a short is less than the supply's limit
    const held = net !== fed.rail?.net && maker?.kind === "regulator" && limitOf(maker, volts) < limitAmps;
    if (!held) backs.set(net, rail?.back ?? fed.back);
  }
  return backs;
}

function across(board: Board, fault: Fault, fed: FedNets, backs: ReadonlyMap<string, string>): boolean {
  const joined = (one: string | undefined, other: string | undefined): boolean =>
    one !== undefined && other !== undefined && (backs.get(one) === other || backs.get(other) === one);
  if (fault.of === "nets") return joined(fault.nets[0], fault.nets[1]);
  const part = board.parts.get(fault.part);
  if (part === undefined) return false;
  const pins = (a: string, b: string) => joined(part.pins.get(a), part.pins.get(b));
  if (fault.junction === null || part.pins.size === 2) {
    const [a, b, ...more] = new Set(part.pins.values());
    return more.length === 0 && joined(a, b);
  }
  if (part.kind === "shuntref" || part.kind === "bjt") return !fed.bus && twoEnds(part, fault, pins);
  return (ACROSS[fault.junction] ?? [[fault.junction, "gnd"] as const]).some(([a, b]) => pins(a, b));
}

/** Junctions that are spelled by the letters of their two pins: `ka`, `ce`. */
function twoEnds({ pins }: Part, { junction }: PartFault, join: (a: string, b: string) => boolean): boolean {
  const [a = "", b = ""] = junction ?? "";
  return pins.has(a) && pins.has(b) && join(a, b);
}

/** What shorts the bus without lying across it by itself: a whole leg or pair, the small supply's switch, a bridge from end to end. */
function acrossBus(view: CircuitView, shorts: readonly Fault[], most: number): boolean {
  const sites = shorts.flatMap((fault) => shortedSite(view, fault) ?? []);
  if (shortThrough(view, sites)) return true;
  // a resonant switch draws through its coil; the small supply of such a board hangs on the line, before the bus
  const { resonantSwitches, supplySwitches } = view;
  const onBus = resonantSwitches.length > 0 ? resonantSwitches : supplySwitches;
  return (
    shorts.some((fault) => {
      if (fault.of === "nets") return false;
      const site = fault.junction === null ? fault.part : `${fault.part}.${fault.junction}`;
      if (onBus.some((found) => found.fault === site)) return true;
      const brake = view.choppers.find(({ found }) => found.fault === site);
      return brake?.resistor != null && ohmsOf(fault) + (brake.resistor.value.ohms ?? 0) < most;
    }) || throughBridge(shorts)
  );
}

/** Both junctions of one AC pin of a bridge. */
function throughBridge(shorts: readonly Fault[]): boolean {
  const sites = new Set(
    shorts.map((fault) => (fault.of === "part" ? `${fault.part}.${fault.junction}` : "")),
  );
  return [...sites].some((site) => {
    const [, ref, pin] = /^(.+)\.(ac\d)plus$/.exec(site) ?? [];
    return ref !== undefined && sites.has(`${ref}.minus${pin}`);
  });
}

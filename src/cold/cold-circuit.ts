/**
 * The board on the bench as a circuit: compiled once for a board and a state of the bench; faults only change numbers in it.
 * Lifted pins and parts that are off keep their inside on nets of their own, so that they can be measured in the hand.
 */

import type { BenchState } from "../bench/bench-state.ts";
import type { Place } from "../bench/event.ts";
import { pinOfPlace } from "../bench/place.ts";
import type { Board } from "../board/board.ts";
import { type Fault, faultName, type PartFault } from "../board/fault.ts";
import { DRIFT, FAULT_OHMS } from "../board/fault-nominal.ts";
import {
  type ExtraResistor,
  LEAST_OHMS,
  type Netlist,
  ownValues,
  setSaturation,
  type Values,
} from "../circuit/netlist.ts";
import { type BuiltCircuit, CircuitBuilder, type Site, siteKey } from "./circuit-builder.ts";
import { layOutPart } from "./part-inside.ts";

export interface ColdCircuit extends BuiltCircuit {
  readonly board: Board;
  readonly bench: BenchState;
  /** index of the net a place stands for (-1: the reference); throws where the board has no such place */
  netOf(place: Place): number;
  /** the numbers of the branches with these faults; two faults of one junction are the caller's mistake */
  withFaults(faults: readonly Fault[]): Values;
}

/** Which net the pin of a part is on: its own where it is lifted or the part is off. */
function netName(board: Board, bench: BenchState, ref: string, pin: string): string | null {
  const net = board.parts.get(ref)?.pins.get(pin);
  if (net === undefined) return null;
  const place = `${ref}.${pin}`;
  return bench.off.has(ref) || bench.lifted.has(place) ? place : net;
}

export function coldCircuit(board: Board, bench: BenchState): ColdCircuit {
  const build = new CircuitBuilder(board.zero);
  for (const net of board.nets.keys()) build.net(net);
  const railVolts = (net: string) => board.rails.find((rail) => rail.net === net)?.volts ?? null;
  for (const part of board.parts.values()) {
    const pin = (name: string) => {
      const net = netName(board, bench, part.ref, name);
      return net === null ? null : build.net(net);
    };
    const layOut = () => layOutPart({ build, part, pin, railVolts });
    if (part.assumed) build.assuming(part.ref, layOut);
    else layOut();
  }
  const netOf = (place: Place): number => {
    const at = pinOfPlace(place);
    const name = at === null ? place : netName(board, bench, at.ref, at.pin);
    const net = name === null ? null : build.find(name);
    if (net === null) throw new Error(`the circuit has no place ${place}`);
    return net;
  };
  const clips = bench.clips.map((clip) => ({
    from: netOf(clip.at[0]),
    to: netOf(clip.at[1]),
    siemens: 1 / Math.max(clip.ohms, LEAST_OHMS),
  }));
  const built = build.build(clips);
  return { ...built, board, bench, netOf, withFaults: (faults) => applyFaults(built, netOf, faults) };
}

function applyFaults(built: BuiltCircuit, netOf: (place: Place) => number, faults: readonly Fault[]): Values {
  if (faults.length === 0) return built.healthy;
  const leaks: ExtraResistor[] = [...built.healthy.extra];
  const open = new Map<number, Set<"be" | "bc" | "ce">>();
  const some = (modes: readonly string[]) =>
    faults.some((fault) => fault.of === "part" && modes.includes(fault.mode));
  const opens = some(["open"]);
  const changing = {
    siemens: faults.some(({ of }) => of === "part"),
    junctions: opens,
    farads: opens || some(["drift"]),
  };
  const values = ownValues(built.healthy, changing, leaks);
  for (const fault of faults) {
    if (fault.of === "nets") {
      const siemens = 1 / Math.max(fault.value ?? FAULT_OHMS.leaky, LEAST_OHMS);
      leaks.push({ from: netOf(fault.nets[0]), to: netOf(fault.nets[1]), siemens });
      continue;
    }
    const site = built.sites.get(siteKey(fault.part, fault.junction));
    if (site === undefined) throw new Error(`the circuit has no place for the fault ${faultName(fault)}`);
    applyAtSite(built.netlist, values, site, fault);
    if (fault.mode === "open" && site.bjt !== null) {
      const set = open.get(site.bjt.index) ?? new Set();
      open.set(site.bjt.index, set.add(site.bjt.junction));
    }
  }
  for (const [index, set] of open) openBjt(built, values, index, set);
  return values;
}

function applyAtSite(netlist: Netlist, values: Values, site: Site, fault: PartFault): void {
  const { siemens, farads } = values;
  if (fault.mode === "short") siemens[site.shunt] = 1 / Math.max(fault.value ?? FAULT_OHMS.short, LEAST_OHMS);
  else if (fault.mode === "leaky" && site.leaksInSeries)
    for (const one of site.resistors)
      siemens[one] = 1 / (1 / siemens[one] + (fault.value ?? FAULT_OHMS.leakyInSeries));
  else if (fault.mode === "leaky")
    siemens[site.shunt] = 1 / Math.max(fault.value ?? FAULT_OHMS.leaky, LEAST_OHMS);
  else if (fault.mode === "drift") drift(values, site, fault.value);
  else {
    for (const one of site.resistors) siemens[one] = 0;
    for (const one of site.junctions) setSaturation(netlist, values, one, 0);
    for (const one of site.capacitors) farads[one] = 0;
  }
}

/** A capacitor drifts in farads, anything else in ohms. */
function drift(values: Values, site: Site, value: number | null): void {
  if (site.capacitors.length > 0) {
    for (const one of site.capacitors) values.farads[one] = value ?? values.farads[one] * DRIFT.farads;
    return;
  }
  for (const one of site.resistors) {
    values.siemens[one] = value === null ? values.siemens[one] / DRIFT.ohms : 1 / Math.max(value, LEAST_OHMS);
  }
}

/** A transistor with a junction open no longer amplifies; the junctions that remain are plain diodes. */
function openBjt(
  built: BuiltCircuit,
  values: Values,
  index: number,
  open: ReadonlySet<"be" | "bc" | "ce">,
): void {
  values.bjtSaturation[index] = 0;
  const spares = built.bjtSpares[index];
  if (!open.has("be")) setSaturation(built.netlist, values, spares.be, spares.saturation.be);
  if (!open.has("bc")) setSaturation(built.netlist, values, spares.bc, spares.saturation.bc);
}

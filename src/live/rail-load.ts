/** What hangs on each rail: parts that draw from it, and whatever faults join it to its 0 V. */
import type { Part } from "../board/board.ts";
import { FAULT_OHMS } from "../board/fault-nominal.ts";
import { supplyPin } from "../board/kinds.ts";
import { railGroups } from "../board/rail-groups.ts";
import type { RailRole } from "../board/roles.ts";
import type { FaultedBoard } from "./faulted-board.ts";
import { LOAD_AMPS } from "./live-models.ts";

/** One thing that draws from a rail as a resistance; `part` is null for dirt and clips. */
export interface RailDraw {
  readonly part: string | null;
  readonly siemens: number;
  /** a part doing its work, not a fault */
  readonly wanted: boolean;
}

function feedPin(part: Part): string | null {
  if (part.kind === "controller" || part.kind === "ic") return supplyPin(part.kind);
  return part.kind === "module" ? "vcc" : null;
}

function supplySite(part: Part): string {
  return part.kind === "module" ? "drive" : "supply";
}

/** What a chip draws when it works, amps. A fan and a key board are chips on a plug. */
function workingAmps(part: Part): number {
  if (part.kind === "controller") return part.value.amps ?? LOAD_AMPS.controller;
  if (part.kind === "module") return LOAD_AMPS.module;
  if (part.role !== null && /fan/i.test(part.role)) return LOAD_AMPS.fan;
  if (part.role !== null && /display/i.test(part.role)) return LOAD_AMPS.display;
  return LOAD_AMPS.ic;
}

function chipDraws(board: FaultedBoard, part: Part, rail: RailRole): readonly RailDraw[] {
  const pin = feedPin(part);
  if (pin === null || board.netOf(part.ref, pin) !== rail.net) return [];
  const site = supplySite(part);
  const draws: RailDraw[] = [];
  if (!board.isOpen(part.ref, site))
    draws.push({ part: part.ref, siemens: workingAmps(part) / Math.abs(rail.volts), wanted: true });
  const across = board.acrossOhms(part.ref, site);
  if (Number.isFinite(across)) draws.push({ part: part.ref, siemens: 1 / across, wanted: false });
  return draws;
}

/** Shorts and leaks of the two-pin parts straight across the rail. */
function acrossDraw(board: FaultedBoard, part: Part, rail: RailRole): RailDraw | null {
  const pins = [...part.pins.keys()];
  if (pins.length !== 2) return null;
  const nets = pins.map((pin) => board.netOf(part.ref, pin));
  if (!nets.includes(rail.net) || !nets.includes(rail.back)) return null;
  const ohms = board.acrossOhms(part.ref);
  return Number.isFinite(ohms) ? { part: part.ref, siemens: 1 / ohms, wanted: false } : null;
}

/** Nets of the rail on the far side of its links and beads, with the ohms up to there; empty where a rail has none. */
function netsBehind(board: FaultedBoard, rail: RailRole): ReadonlyMap<string, number> {
  const cuts = railGroups(board.board).find(({ name }) => name === rail.name)?.cuts ?? [];
  const found = new Map([[rail.net, 0]]);
  for (let before = cuts.length === 0 ? found.size : -1; before < found.size; ) {
    before = found.size;
    for (const { part, nets, ohms } of cuts) {
      const through = board.throughOhms(part.ref, null, ohms);
      const whole = ["1", "2"].every((pin) => board.netOf(part.ref, pin) !== null);
      const near = nets.find((net) => found.has(net));
      const far = nets.find((net) => !found.has(net));
      if (!whole || !Number.isFinite(through) || near === undefined || far === undefined) continue;
      found.set(far, (found.get(near) ?? 0) + through);
    }
  }
  found.delete(rail.net);
  return found;
}

/** What draws from the rail's far halves: each through the ohms of what lies between. */
function drawsBehind(board: FaultedBoard, rail: RailRole): readonly RailDraw[] {
  return [...netsBehind(board, rail)].flatMap(([net, ohms]) => {
    const half = { ...rail, net };
    return board.parts().flatMap((part) =>
      [...chipDraws(board, part, half), acrossDraw(board, part, half) ?? []].flat().map((draw) => ({
        ...draw,
        siemens: 1 / (1 / draw.siemens + ohms),
      })),
    );
  });
}

function between(nets: readonly (string | null)[], rail: RailRole): boolean {
  return nets.includes(rail.net) && nets.includes(rail.back);
}

/** Everything that draws from the rail; coils that are pulled in are the caller's to add. */
export function railDraws(board: FaultedBoard, rail: RailRole): readonly RailDraw[] {
  const draws: RailDraw[] = [...drawsBehind(board, rail)];
  for (const part of board.parts()) {
    draws.push(...chipDraws(board, part, rail));
    const across = acrossDraw(board, part, rail);
    if (across !== null) draws.push(across);
    if (part.kind === "regulator" && board.netOf(part.ref, "out") === rail.net) {
      const ohms = board.acrossOhms(part.ref, "outgnd");
      if (Number.isFinite(ohms)) draws.push({ part: part.ref, siemens: 1 / ohms, wanted: false });
    }
  }
  for (const leak of board.leaksAmong(new Set([rail.net, rail.back])))
    draws.push({ part: null, siemens: 1 / (leak.value ?? FAULT_OHMS.leaky), wanted: false });
  for (const clip of board.bench.clips)
    if (
      between(
        clip.at.map((place) => board.netAt(place)),
        rail,
      )
    )
      draws.push({ part: null, siemens: 1 / Math.max(clip.ohms, 0.01), wanted: false });
  return draws;
}

/**
 * Volts of nets that only resistors lead to: sense chains, balancing resistors, pull-ups, thermistors. A net that an output of a
 * chip, a transistor or a module may drive is left out: nobody can tell.
 */
import type { Part } from "../board/board.ts";
import { FAULT_OHMS } from "../board/fault-nominal.ts";
import { RESISTANCE_MODELS } from "../cold/model-table.ts";
import { solveDense } from "../numeric/dense-lu.ts";
import type { FaultedBoard } from "./faulted-board.ts";
import { type Potential, steady } from "./potentials.ts";

interface Branch {
  readonly ends: readonly [string, string];
  readonly siemens: number;
}

/** Resistance of a two-pin part between its pins, infinite where it passes nothing. */
function ohmsOf(board: FaultedBoard, part: Part): number {
  switch (part.kind) {
    case "resistor":
    case "ntc":
    case "ptc":
    case "link":
    case "fuse":
    case "inductor":
      return board.throughOhms(
        part.ref,
        null,
        Math.max(part.value.ohms ?? RESISTANCE_MODELS[part.kind].ohms, 1e-3),
      );
    case "capacitor":
    case "varistor":
    case "zener":
    case "diode":
      return board.acrossOhms(part.ref);
    default:
      return Number.POSITIVE_INFINITY;
  }
}

function branches(board: FaultedBoard): readonly Branch[] {
  const found: Branch[] = [];
  const add = (one: string | null, far: string | null, ohms: number): void => {
    if (one !== null && far !== null && one !== far && Number.isFinite(ohms))
      found.push({ ends: [one, far], siemens: 1 / ohms });
  };
  for (const part of board.parts()) {
    const pins = [...part.pins.keys()];
    if (pins.length !== 2) continue;
    add(board.netOf(part.ref, pins[0] ?? ""), board.netOf(part.ref, pins[1] ?? ""), ohmsOf(board, part));
  }
  for (const leak of board.leaks) add(leak.nets[0], leak.nets[1], leak.value ?? FAULT_OHMS.leaky);
  for (const clip of board.bench.clips)
    add(board.netAt(clip.at[0]), board.netAt(clip.at[1]), Math.max(clip.ohms, 0.01));
  return found;
}

/** Kinds that neither drive a net nor draw from it while it stays below what they break down at. */
const PASSIVE: ReadonlySet<string> = new Set([
  "resistor",
  "ntc",
  "ptc",
  "link",
  "fuse",
  "inductor",
  "capacitor",
  "varistor",
]);
/** A controller's pin is taken for an input where its net hangs between two known potentials. */
const LISTENING: ReadonlySet<string> = new Set(["controller", "zener", "diode"]);

/** Nets that something active reaches, and those where something only listens. */
function reachedBy(board: FaultedBoard): { readonly driven: Set<string>; readonly heard: Set<string> } {
  const driven = new Set<string>();
  const heard = new Set<string>();
  for (const part of board.parts())
    for (const pin of part.pins.keys()) {
      const net = board.netOf(part.ref, pin);
      if (net === null || PASSIVE.has(part.kind)) continue;
      if (LISTENING.has(part.kind)) heard.add(net);
      else driven.add(net);
    }
  return { driven, heard };
}

/** Resistor tolerance, inputs' bias and the thermistor's own spread together, a share (from memory). */
const DIVIDER_SHARE = 0.03;

interface Group {
  readonly nets: readonly string[];
  readonly inside: readonly Branch[];
}

/** Unknown nets joined by branches, with every branch that touches them. */
function groupsOf(all: readonly Branch[], known: ReadonlyMap<string, Potential>): readonly Group[] {
  const byNet = new Map<string, Branch[]>();
  for (const branch of all)
    for (const net of branch.ends) if (!known.has(net)) byNet.set(net, [...(byNet.get(net) ?? []), branch]);
  const seen = new Set<string>();
  const groups: Group[] = [];
  for (const start of byNet.keys()) {
    if (seen.has(start)) continue;
    const nets = [start];
    const inside = new Set<Branch>();
    seen.add(start);
    for (let at = 0; at < nets.length; at++)
      for (const branch of byNet.get(nets[at] ?? "") ?? []) {
        inside.add(branch);
        for (const net of branch.ends) {
          if (known.has(net) || seen.has(net)) continue;
          seen.add(net);
          nets.push(net);
        }
      }
    groups.push({ nets, inside: [...inside] });
  }
  return groups;
}

/** Volts of one group; null where they cannot be told. */
function solveGroup(
  { nets, inside }: Group,
  known: ReadonlyMap<string, Potential>,
): { readonly volts: Float64Array; readonly domain: string; readonly edges: readonly Potential[] } | null {
  const edges = inside.flatMap(({ ends }) => ends.flatMap((net) => known.get(net) ?? []));
  const domain = edges[0]?.domain;
  if (domain === undefined || edges.some((edge) => edge.domain !== domain)) return null;
  const size = nets.length;
  const index = new Map(nets.map((net, i) => [net, i]));
  const matrix = new Float64Array(size * size);
  const volts = new Float64Array(size);
  for (const { ends, siemens } of inside)
    for (const [one, far] of [ends, [ends[1], ends[0]]] as const) {
      const row = index.get(one);
      if (row === undefined) continue;
      matrix[row * size + row] += siemens;
      const column = index.get(far);
      if (column !== undefined) matrix[row * size + column] -= siemens;
      else volts[row] += siemens * (known.get(far)?.dcVolts ?? 0);
    }
  return solveDense(size, matrix, volts) ? { volts, domain, edges } : null;
}

/**
 * Adds to `known` the nets that hang on it by resistors alone, as steady volts; those that hang on the line (`lineNets`) alternate
 * with it and are left out.
 */
export function withDividers(
  board: FaultedBoard,
  known: ReadonlyMap<string, Potential>,
  lineNets: ReadonlySet<string>,
): ReadonlyMap<string, Potential> {
  const { driven, heard } = reachedBy(board);
  const all = new Map(known);
  for (const group of groupsOf(branches(board), known)) {
    const onLine = group.inside.some(({ ends }) => ends.some((net) => lineNets.has(net)));
    if (onLine || group.nets.some((net) => driven.has(net))) continue;
    const solved = solveGroup(group, known);
    if (solved === null) continue;
    const levels = solved.edges.map((edge) => edge.dcVolts);
    const apart = Math.max(...levels) - Math.min(...levels) > 0.1;
    if (!apart && group.nets.some((net) => heard.has(net))) continue;
    const share = Math.max(
      ...solved.edges.map((edge) => (edge.dcVolts === 0 ? 0 : Math.abs(edge.dcSpread / edge.dcVolts))),
    );
    group.nets.forEach((net, i) => {
      const volts = solved.volts[i];
      all.set(
        net,
        steady(solved.domain, volts, Math.abs(volts) * Math.hypot(share, apart ? DIVIDER_SHARE : 0)),
      );
    });
  }
  return all;
}

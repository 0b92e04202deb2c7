import type { Board, Part, PartKind } from "../board/board.ts";
import { type StageGroup, stageGroup } from "./stage-groups.ts";

/** A power switch: its place in a fault's spelling, the nets it joins, and what drives it. */
export interface PowerSwitch {
  readonly site: string;
  readonly part: Part;
  readonly high: string;
  readonly low: string;
  /** null inside a module */
  readonly gate: string | null;
}

/** The board as the knock-on rules see it: who sits where, derived from kinds, nets, ratings, helped by stages. */
export interface CircuitView {
  readonly board: Board;
  readonly groupOf: ReadonlyMap<string, StageGroup>;
  readonly motorSwitches: readonly PowerSwitch[];
  /** two switches in series across the bus */
  readonly legs: readonly (readonly [PowerSwitch, PowerSwitch])[];
  /** boost and brake switches */
  readonly otherSwitches: readonly PowerSwitch[];
  /** the switch of the small supply */
  readonly supplySwitches: readonly PowerSwitch[];
  readonly lineFuses: readonly Part[];
  readonly inrushLimiters: readonly Part[];
  on(net: string): readonly Part[];
  inGroups(...groups: readonly StageGroup[]): readonly Part[];
}

/** Nets of a part, without repeats. */
export function netsOf(part: Part): readonly string[] {
  return [...new Set(part.pins.values())];
}

/** Does the part join these two nets? */
export function joins(part: Part, a: string, b: string): boolean {
  const nets = netsOf(part);
  return nets.includes(a) && nets.includes(b);
}

function pin(part: Part, name: string): string {
  return part.pins.get(name) ?? "";
}

function discreteSwitch(part: Part): PowerSwitch | null {
  const base = { part, gate: pin(part, "g") };
  if (part.kind === "igbt")
    return { ...base, site: `${part.ref}.ce`, high: pin(part, "c"), low: pin(part, "e") };
  if (part.kind === "mosfet" && part.value.channel !== "p")
    return { ...base, site: `${part.ref}.ds`, high: pin(part, "d"), low: pin(part, "s") };
  return null;
}

function moduleSwitches(part: Part): PowerSwitch[] {
  return ["u", "v", "w"].flatMap((phase) => [
    { site: `${part.ref}.${phase}p`, part, high: pin(part, "p"), low: pin(part, phase), gate: null },
    {
      site: `${part.ref}.${phase}n`,
      part,
      high: pin(part, phase),
      low: part.pins.get(`n${phase}`) ?? pin(part, "n"),
      gate: null,
    },
  ]);
}

function legsOf(switches: readonly PowerSwitch[]): [PowerSwitch, PowerSwitch][] {
  return switches.flatMap((upper) =>
    switches
      .filter((lower) => lower !== upper && lower.high === upper.low)
      .map((lower): [PowerSwitch, PowerSwitch] => [upper, lower]),
  );
}

const LIMITER_KINDS: ReadonlySet<PartKind> = new Set(["ptc", "ntc", "resistor"]);

/** Derives the view; the order of everything follows the board file. */
export function circuitView(board: Board): CircuitView {
  const parts = [...board.parts.values()];
  const groupOf = new Map(parts.map((part) => [part.ref, stageGroup(part, board)]));
  const byNet = new Map<string, Part[]>();
  for (const part of parts) for (const net of netsOf(part)) byNet.set(net, [...(byNet.get(net) ?? []), part]);

  const discrete = parts.map(discreteSwitch).filter((found) => found !== null);
  const inModules = parts.filter((part) => part.kind === "module").flatMap(moduleSwitches);
  const group = (found: PowerSwitch): StageGroup | undefined => groupOf.get(found.part.ref);
  const motorSwitches = [...inModules, ...discrete.filter((found) => group(found) === "inverter")];
  const chips: PowerSwitch[] = parts
    .filter((part) => part.kind === "switcher")
    .map((part) => ({ site: `${part.ref}.ds`, part, high: pin(part, "d"), low: pin(part, "s"), gate: null }));
  return {
    board,
    groupOf,
    motorSwitches,
    legs: legsOf(motorSwitches),
    otherSwitches: discrete.filter((found) => group(found) === "pfc" || group(found) === "chopper"),
    supplySwitches: [...chips, ...discrete.filter((found) => group(found) === "supply")],
    lineFuses: parts.filter((part) => part.kind === "fuse" && groupOf.get(part.ref) !== "supply"),
    inrushLimiters: parts.filter(
      (part) =>
        groupOf.get(part.ref) === "inrush" && LIMITER_KINDS.has(part.kind) && (part.value.ohms ?? 10) <= 300,
    ),
    on: (net) => byNet.get(net) ?? [],
    inGroups: (...groups) =>
      parts.filter((part) => {
        const own = groupOf.get(part.ref);
        return own !== undefined && groups.includes(own);
      }),
  };
}

import type { Board, Part } from "./board.ts";
import type { NetGroups } from "./net-groups.ts";

/** One switch that carries power, discrete or inside a module. */
export interface PowerSwitch {
  /** `Q1`, or `IPM1.up` inside a module */
  readonly site: string;
  readonly part: string;
  /** the net current enters by (collector, drain) and the one it leaves by */
  readonly high: string;
  readonly low: string;
  /** null inside a module */
  readonly gate: string | null;
}

/** Two switches in series; `phase` is the net between them. */
export interface Leg {
  readonly upper: PowerSwitch;
  readonly lower: PowerSwitch;
  readonly phase: string;
}

/** A transistor of less than this is no switch of a mains-fed bus but part of its drive. Common practice. */
const LEAST_VOLTS = 100;

function discrete(part: Part, leastVolts: number): readonly PowerSwitch[] {
  if ((part.value.volts ?? leastVolts) < leastVolts) return [];
  const [high, low] = part.kind === "igbt" ? ["c", "e"] : ["d", "s"];
  const pin = (name: string) => part.pins.get(name) ?? "";
  return [{ site: part.ref, part: part.ref, high: pin(high ?? ""), low: pin(low ?? ""), gate: pin("g") }];
}

function insideModule(part: Part): readonly PowerSwitch[] {
  const pin = (name: string) => part.pins.get(name) ?? "";
  return ["u", "v", "w"].flatMap((phase) => [
    { site: `${part.ref}.${phase}p`, part: part.ref, high: pin("p"), low: pin(phase), gate: null },
    {
      site: `${part.ref}.${phase}n`,
      part: part.ref,
      high: pin(phase),
      low: part.pins.get(`n${phase}`) ?? pin("n"),
      gate: null,
    },
  ]);
}

/** Every IGBT, MOSFET and module switch of the board, in file order. */
export function powerSwitches(board: Board): readonly PowerSwitch[] {
  const leastVolts = Math.min(LEAST_VOLTS, board.supply.volts);
  return [...board.parts.values()].flatMap((part) => {
    if (part.kind === "module") return insideModule(part);
    return part.kind === "igbt" || part.kind === "mosfet" ? discrete(part, leastVolts) : [];
  });
}

/** Pairs of switches in series between two different rails; `groups` see through shunts and links. */
export function legsOf(switches: readonly PowerSwitch[], groups: NetGroups): readonly Leg[] {
  const byHigh = new Map<string, PowerSwitch[]>();
  for (const one of switches) {
    const group = groups.of(one.high);
    byHigh.set(group, [...(byHigh.get(group) ?? []), one]);
  }
  return switches.flatMap((upper) =>
    (byHigh.get(groups.of(upper.low)) ?? [])
      .filter((lower) => lower !== upper && !groups.same(upper.high, lower.low))
      .map((lower) => ({ upper, lower, phase: upper.low })),
  );
}

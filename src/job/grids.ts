/**
 * The usual readings of each stage as a grid: for a technician who has taken them already, in any order, before any proposal.
 */

import type { Place } from "../bench/event.ts";
import type { Board, Part } from "../board/board.ts";
import { said } from "../messages/said.ts";

export interface GridCheck {
  readonly label: string;
  readonly mode: "diode" | "ohms";
  readonly red: Place;
  readonly black: Place;
}

export interface Grid {
  readonly stage: string;
  readonly title: string;
  readonly checks: readonly GridCheck[];
}

/** Bridges, switches (discrete or in a module), rails: empty grids are left out. */
export function stageGrids(board: Board): Grid[] {
  const parts = [...board.parts.values()];
  const grids: Grid[] = [
    ...parts.filter((part) => part.kind === "bridge").map(bridgeGrid),
    ...parts.filter((part) => part.kind === "module").map(moduleGrid),
    switchGrid(
      parts.filter((part) => part.kind === "igbt" || (part.kind === "mosfet" && part.stage === "inverter")),
    ),
    railGrid(board),
  ];
  return grids.filter((grid) => grid.checks.length > 0);
}

function pin(part: Part, name: string): string | undefined {
  return part.pins.get(name);
}

function bothWays(label: string, a: string | undefined, b: string | undefined): GridCheck[] {
  if (a === undefined || b === undefined || a === b) return [];
  return [
    { label, mode: "diode", red: a, black: b },
    { label: said`${label}, leads swapped`, mode: "diode", red: b, black: a },
  ];
}

function bridgeGrid(part: Part): Grid {
  const checks = ["ac1", "ac2", "ac3"].flatMap((ac) => [
    ...bothWays(said`${ac} to plus`, pin(part, ac), pin(part, "plus")),
    ...bothWays(said`minus to ${ac}`, pin(part, "minus"), pin(part, ac)),
  ]);
  return { stage: part.stage ?? "rectifier", title: said`Bridge ${part.ref}`, checks };
}

function moduleGrid(part: Part): Grid {
  const low = (phase: string): string | undefined => pin(part, `n${phase}`) ?? pin(part, "n");
  const checks = ["u", "v", "w"].flatMap((phase) => [
    ...bothWays(said`${phase.toUpperCase()} to P`, pin(part, phase), pin(part, "p")),
    ...bothWays(said`N to ${phase.toUpperCase()}`, low(phase), pin(part, phase)),
  ]);
  return { stage: part.stage ?? "inverter", title: said`Module ${part.ref}`, checks };
}

function switchGrid(parts: readonly Part[]): Grid {
  const checks = parts.flatMap((part) => {
    const [from, to] = part.kind === "igbt" ? ["e", "c"] : ["s", "d"];
    return [
      ...bothWays(said`${part.ref} ${from} to ${to}`, pin(part, from), pin(part, to)),
      ...gateCheck(part, from),
    ];
  });
  return { stage: "inverter", title: said`Power switches`, checks };
}

function gateCheck(part: Part, from: string): GridCheck[] {
  const gate = pin(part, "g");
  const other = pin(part, from);
  return gate === undefined || other === undefined
    ? []
    : [{ label: said`${part.ref} gate to ${from}`, mode: "ohms", red: gate, black: other }];
}

function railGrid(board: Board): Grid {
  const checks = board.rails.flatMap((rail) => {
    const zero = rail.against ?? board.zero;
    return [
      ...bothWays(said`${rail.name} to ${"0 V"}`, rail.net, zero),
      { label: said`${rail.name} ohms`, mode: "ohms" as const, red: rail.net, black: zero },
    ];
  });
  return { stage: "supply", title: said`Rails`, checks };
}

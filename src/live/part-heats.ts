/** Watts that each part turns to heat, stage by stage. */
import type { Found } from "./found.ts";
import type { Potential } from "./potentials.ts";
import type { PartHeat } from "./rail-state.ts";

/** Of the power path: what its resistances and junctions take. */
function pathHeats({ front }: Found): readonly PartHeat[] {
  if (front === null) return [];
  const { circuit } = front.path;
  return [
    ...circuit.resistors.flatMap(({ part }, i) =>
      part === null ? [] : [{ part, watts: front.cycle.resistorWatts[i] }],
    ),
    ...circuit.diodes.flatMap(({ part }, i) =>
      part === null ? [] : [{ part, watts: front.cycle.diodeWatts[i] }],
    ),
  ];
}

/** Of resistors outside it: the volts between their ends, squared, over their ohms. */
function resistorHeats({ board, front }: Found, known: ReadonlyMap<string, Potential>): readonly PartHeat[] {
  const inPath = new Set(front?.path.circuit.resistors.flatMap(({ part }) => part ?? []));
  const found: PartHeat[] = [];
  for (const part of board.parts()) {
    if (part.kind !== "resistor" || inPath.has(part.ref)) continue;
    const [one, far] = ["1", "2"].map((pin) => known.get(board.netOf(part.ref, pin) ?? ""));
    if (one === undefined || far === undefined || one.domain !== far.domain) continue;
    const ohms = board.throughOhms(part.ref, null, part.value.ohms ?? Number.POSITIVE_INFINITY);
    found.push({ part: part.ref, watts: (one.dcVolts - far.dcVolts) ** 2 / ohms });
  }
  return found;
}

/** All of them; a part may stand in several rows, which add up. */
export function partHeats(found: Found, known: ReadonlyMap<string, Potential>): readonly PartHeat[] {
  const { tree, supplies, rails } = found;
  return [
    ...pathHeats(found),
    ...resistorHeats(found, known),
    ...supplies.flatMap(({ heats }) => heats),
    ...(tree?.heats(rails) ?? []),
  ];
}

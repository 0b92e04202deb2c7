import type { Finding } from "../../src/bench/event.ts";
import type { Part } from "../../src/board/board.ts";
import { type Fault, faultName } from "../../src/board/fault.ts";
import { seededRandom } from "../../src/practice/seeded-random.ts";
import type { Cause } from "../../src/priors/cause.ts";
import { DIRT_FINDS, LOOKS, STRAY_FINDS } from "./look-table.ts";
import type { Hidden } from "./oracle-course.ts";

function findsOf(part: Part, fault: Fault): Readonly<Partial<Record<Finding, number>>> {
  if (fault.of === "nets") return DIRT_FINDS;
  return LOOKS.find((row) => row.kinds.includes(part.kind) && row.modes.includes(fault.mode))?.finds ?? {};
}

/** What the eye finds on a part: the same each time, until something about the part changes. */
export function findingOf(part: Part, { faults, generations }: Hidden, cause: Cause, seed: number): Finding {
  const nets = new Set(part.pins.values());
  const generation = generations.get(part.ref) ?? 0;
  const own = faults.filter((fault) =>
    fault.of === "part" ? fault.part === part.ref : fault.nets.every((net) => nets.has(net)),
  );
  // a part just fitted shows no traces of what happened to the board
  const rows = [
    ...own.map((fault) => findsOf(part, fault)),
    ...(generation === 0 ? [STRAY_FINDS[cause]] : []),
  ];
  const random = seededRandom(seed, `look ${part.ref} ${generation} ${own.map(faultName).join(",")}`);
  for (const row of rows)
    for (const [finding, chance] of Object.entries(row) as [Finding, number][])
      if (random() < chance) return finding;
  return "clean";
}

/** The rail (or the bus) that is probably shorted, and how the doubt lies over the parts across it. */
import type { Board } from "../board/board.ts";
import { type RailGroup, type RailMember, railGroups } from "../board/rail-groups.ts";
import type { ShortOfRail } from "../diagnosis/injected-heat.ts";
import { leadingShort, railShorts } from "../diagnosis/rail-evidence.ts";
import { faultsOf, type Hypotheses } from "./hypotheses.ts";

export interface SuspectedRail {
  readonly group: RailGroup;
  /** weight of the hypotheses that short it, a share of all */
  readonly chance: number;
  /** for each hypothesis the short that takes the rail's current; null: the rail is whole */
  readonly shorts: readonly (ShortOfRail | null)[];
  /** parts across it, those most likely the short first, with that chance */
  readonly suspects: readonly { readonly member: RailMember; readonly chance: number }[];
}

/** From this chance on a rail is looked at by itself; a part across it counts from this share of that. From memory. */
const RAIL_LEAST = 0.3;
const PART_SHARE = 0.02;

/** The rail most probably shorted; null where none is more than doubted, or only one part could be it. */
export function suspectedRail(board: Board, hypotheses: Hypotheses): SuspectedRail | null {
  let best: SuspectedRail | null = null;
  for (const group of railGroups(board)) {
    if (group.members.length < 2) continue;
    const found = suspicionOf(group, hypotheses);
    if (found.chance >= RAIL_LEAST && found.suspects.length > 1 && found.chance > (best?.chance ?? 0))
      best = found;
  }
  return best;
}

function suspicionOf(group: RailGroup, hypotheses: Hypotheses): SuspectedRail {
  const { priors, list } = hypotheses;
  const table = railShorts(group, priors);
  const byPart = new Map<string, number>();
  let chance = 0;
  let total = 0;
  const shorts = list.map((hypothesis): ShortOfRail | null => {
    total += hypothesis.weight;
    const leading = leadingShort(table, faultsOf(hypothesis, hypotheses));
    const short = leading === null ? undefined : table.get(leading);
    if (leading === null || short === undefined) return null;
    chance += hypothesis.weight;
    const part = short.member?.part.ref ?? null;
    if (part !== null) byPart.set(part, (byPart.get(part) ?? 0) + hypothesis.weight);
    return { part, ohms: short.ohms, spreadLn: priors[leading].spreadLn };
  });
  const suspects = group.members
    .map((member) => ({ member, chance: (byPart.get(member.part.ref) ?? 0) / Math.max(total, 1e-12) }))
    .filter((one) => one.chance >= (PART_SHARE * chance) / Math.max(total, 1e-12) && one.chance > 0)
    .sort((a, b) => b.chance - a.chance);
  return { group, chance: total > 0 ? chance / total : 0, shorts, suspects };
}

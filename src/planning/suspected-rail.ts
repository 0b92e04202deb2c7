/** The rail (or the bus) that is probably shorted, and how the doubt lies over the parts across it. */
import type { Board } from "../board/board.ts";
import { type RailGroup, type RailMember, railGroups, railShort } from "../board/rail-groups.ts";
import type { ShortOfRail } from "../diagnosis/injected-heat.ts";
import { leadingShort, railShorts, shortOfRail } from "../diagnosis/rail-evidence.ts";
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
  if (shortedChance(board, hypotheses) < RAIL_LEAST) return null;
  let best: SuspectedRail | null = null;
  for (const group of railGroups(board)) {
    if (group.members.length < 2) continue;
    const found = suspicionOf(group, hypotheses);
    if (found.chance >= RAIL_LEAST && found.suspects.length > 1 && found.chance > (best?.chance ?? 0))
      best = found;
  }
  return best;
}

/** Which faults of a table short any rail at all: one byte each. */
const shorting = new WeakMap<Hypotheses["priors"], Uint8Array>();

function shortsAny(board: Board, priors: Hypotheses["priors"]): Uint8Array {
  const before = shorting.get(priors);
  if (before !== undefined) return before;
  const groups = railGroups(board);
  const found = Uint8Array.from(priors, ({ fault }) =>
    groups.some((group) => railShort(group, fault) !== null) ? 1 : 0,
  );
  shorting.set(priors, found);
  return found;
}

/** Chance that any rail is shorted: one walk over the hypotheses, which most boards end with. */
function shortedChance(board: Board, { priors, list, cores }: Hypotheses): number {
  const shorts = shortsAny(board, priors);
  const ofCore = cores.map(({ present }) => present.some((fault) => shorts[fault] === 1));
  let chance = 0;
  let total = 0;
  for (const { core, beside, weight } of list) {
    total += weight;
    if (ofCore[core] || (beside >= 0 && shorts[beside] === 1)) chance += weight;
  }
  return total > 0 ? chance / total : 0;
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
    return shortOfRail(short, priors[leading].spreadLn);
  });
  const suspects = group.members
    .map((member) => ({ member, chance: (byPart.get(member.part.ref) ?? 0) / Math.max(total, 1e-12) }))
    .filter((one) => one.chance >= (PART_SHARE * chance) / Math.max(total, 1e-12) && one.chance > 0)
    .sort((a, b) => b.chance - a.chance);
  return { group, chance: total > 0 ? chance / total : 0, shorts, suspects };
}

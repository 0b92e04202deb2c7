/** The one table of what a substitute must hold to, by role. Every row carries where it comes from. */
import { said } from "../messages/said.ts";
import { likeByLike, pulled, rightKind } from "./kind-judges.ts";
import type { PartRole } from "./part-role.ts";
import { type Rule, rule } from "./rule.ts";
import { CAPACITOR_RULES } from "./rules-for-capacitors.ts";
import { DIODE_RULES } from "./rules-for-diodes.ts";
import { MAINS_AND_SMALL_RULES } from "./rules-for-mains-and-small-parts.ts";
import { SWITCH_RULES } from "./rules-for-switches.ts";

const BY_ROLE: readonly Rule[] = [
  ...SWITCH_RULES,
  ...DIODE_RULES,
  ...CAPACITOR_RULES,
  ...MAINS_AND_SMALL_RULES,
];
const WITH_A_TABLE: ReadonlySet<PartRole> = new Set(BY_ROLE.flatMap((row) => row.roles));

/** Rules that hold for every part. */
const FOR_ALL: readonly Rule[] = [
  rule(said`kind`, [], rightKind, said`a part of the kind that was there`),
  rule(said`pulled`, [], pulled, said`one part in ten from scrap is bad`, { mark: "from memory" }),
];
const NO_TABLE: Rule = rule(said`no table`, [], likeByLike, said`only the same type is safe without thought`);

/** Every rule that the role's parts are held to. */
export function rulesFor(role: PartRole): readonly Rule[] {
  const ofRole = BY_ROLE.filter((row) => row.roles.includes(role));
  return [...FOR_ALL, ...ofRole, ...(WITH_A_TABLE.has(role) ? [] : [NO_TABLE])];
}

/** Every row once, for printing and for tests. */
export const RULE_TABLE: readonly Rule[] = [...FOR_ALL, ...BY_ROLE, NO_TABLE];

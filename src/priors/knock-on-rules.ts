import { DRIVE_RULES } from "./knock-on-drive.ts";
import { POWER_RULES } from "./knock-on-power.ts";
import { RESONANT_RULES } from "./knock-on-resonant.ts";
import type { KnockOnRule } from "./knock-on-rule.ts";
import { SUPPLY_RULES } from "./knock-on-supply.ts";

/** Every rule, in a fixed order. */
export const KNOCK_ON_RULES: readonly KnockOnRule[] = [
  ...POWER_RULES,
  ...DRIVE_RULES,
  ...SUPPLY_RULES,
  ...RESONANT_RULES,
];

/** Words of a rule for the reason shown; its id where it is not known. */
export function ruleWords(id: string): string {
  return KNOCK_ON_RULES.find((known) => known.id === id)?.words ?? id;
}

/** Strength of a rule by its table; null where no rule has this id. */
export function ruleStrength(id: string): number | null {
  return KNOCK_ON_RULES.find((known) => known.id === id)?.strength ?? null;
}

/**
 * How the oracle's boards break: own spreads about the engine's default rates, own resistances, own cascades (after the trade's
 * reports of what fails together; the chances are from memory) and slips. None of it is read from the engine's knock-on rules.
 */
import type { Cause } from "../../src/priors/cause.ts";
import type { Range } from "./draw.ts";
import type { Mark } from "./part-table.ts";

/** Deviation of ln(rate) of a rule (kind with mode), of a stage and of a part about the engine's default. From memory. */
export const RATE_SPREAD_LN = { rule: 0.7, stage: 0.5, part: 0.4, total: 0.3, mark: "from memory" } as const;

/** First faults expected on a board that is brought in, before what they bring with them. From memory. */
export const ROOT_FAULTS = 1.3;

/** Resistances over decades: ohms, or factors on the marked value. From memory; the trade's readings span them. */
export const FAULT_VALUES = {
  shortOhms: [0.01, 5],
  leakOhms: [30, 300e3],
  contactOhms: [1, 3000],
  netLeakOhms: [300, 300e3],
  driftOhmsFactor: [1.3, 12],
  driftFaradsFactor: [0.08, 0.7],
  mark: "from memory",
} as const satisfies { mark: Mark } & Record<string, Range | Mark>;

/** Share of readings that are slips, and what went wrong then. From memory. */
export const SLIPS = {
  share: [0.01, 0.02],
  neighbour: 0.45,
  polarity: 0.25,
  unsettled: 0.3,
  mark: "from memory",
} as const;

/** Boards that are not as their file says: how many, and what share of the parts. From memory. */
export const DIFFERENCES = {
  boards: 1 / 3,
  parts: [0.05, 0.1],
  missing: 0.4,
  added: 0.25,
  other: 0.35,
  mark: "from memory",
} as const;

/** Places that cascade rules speak of; `oracle-cascades.ts` finds them on a board. */
export type CascadePlace =
  | "line fuse"
  | "bridge"
  | "supply switch"
  | "varistor"
  | "same leg"
  | "gate series"
  | "gate clamp"
  | "driver"
  | "shunt"
  | "feed resistor"
  | "feedback"
  | "rail capacitor"
  | "regulator"
  | "logic chip"
  | "controller"
  | "motor switch"
  | "boost switch"
  | "sense chain"
  | "relay coil"
  | "any electrolytic";

export interface CascadeRule {
  readonly trigger:
    | "varistor"
    | "bridge"
    | "motor switch"
    | "boost switch"
    | "supply switch"
    | "feedback"
    | "net leak"
    | "dry capacitor"
    | "module drive";
  readonly victim: CascadePlace;
  readonly mode: "short" | "open" | "leaky" | "drift";
  readonly chance: number;
  /** only for boards of this cause */
  readonly cause?: Cause;
  /** what takes months: the two are found together, and no single switch-on brings the one with the other */
  readonly slow: boolean;
  readonly mark: Mark;
}

type RuleRow = readonly [CascadeRule["trigger"], CascadePlace, CascadeRule["mode"], number, Cause?, "slow"?];

/** Which parts die together is common practice; the chances are from memory. */
const ROWS: readonly RuleRow[] = [
  ["varistor", "line fuse", "open", 0.7],
  ["varistor", "bridge", "short", 0.25],
  ["varistor", "supply switch", "short", 0.2],
  ["bridge", "line fuse", "open", 0.55],
  ["bridge", "bridge", "short", 0.3],
  ["motor switch", "same leg", "short", 0.55],
  ["motor switch", "line fuse", "open", 0.35],
  ["motor switch", "bridge", "short", 0.15],
  ["motor switch", "shunt", "open", 0.3],
  ["motor switch", "gate series", "open", 0.35],
  ["motor switch", "gate clamp", "short", 0.3],
  ["motor switch", "driver", "short", 0.2],
  ["boost switch", "line fuse", "open", 0.5],
  ["boost switch", "bridge", "short", 0.3],
  ["boost switch", "gate series", "open", 0.4],
  ["boost switch", "gate clamp", "short", 0.3],
  ["boost switch", "driver", "short", 0.2],
  ["boost switch", "shunt", "open", 0.15],
  ["supply switch", "feed resistor", "open", 0.6],
  ["supply switch", "feedback", "short", 0.15],
  ["supply switch", "feedback", "open", 0.1],
  ["supply switch", "line fuse", "open", 0.15],
  ["feedback", "rail capacitor", "leaky", 0.25],
  ["feedback", "regulator", "short", 0.2],
  ["feedback", "logic chip", "short", 0.15],
  ["feedback", "controller", "short", 0.2],
  ["net leak", "controller", "short", 0.12, "water"],
  ["net leak", "logic chip", "leaky", 0.12, "water"],
  ["net leak", "sense chain", "drift", 0.2, "water", "slow"],
  ["net leak", "relay coil", "open", 0.06, "water", "slow"],
  ["net leak", "motor switch", "short", 0.08, "insects"],
  ["dry capacitor", "any electrolytic", "drift", 0.3, "age", "slow"],
  ["dry capacitor", "motor switch", "short", 0.03, "age"],
  ["module drive", "regulator", "short", 0.05],
  ["module drive", "logic chip", "short", 0.05],
];

/** What does its harm by volts that stand too high, not by the current of the mains. */
export const BY_VOLTS: ReadonlySet<CascadeRule["trigger"]> = new Set<CascadeRule["trigger"]>([
  "feedback",
  "net leak",
]);

export const CASCADES: readonly CascadeRule[] = ROWS.map(([trigger, victim, mode, chance, cause, slow]) => ({
  trigger,
  victim,
  mode,
  chance,
  slow: slow !== undefined,
  mark: "from memory",
  ...(cause === undefined ? {} : { cause }),
}));

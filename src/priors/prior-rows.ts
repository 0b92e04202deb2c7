import type { Board, Part } from "../board/board.ts";
import { type Fault, type FaultMode, faultName } from "../board/fault.ts";
import { deriveRoles, type Roles } from "../board/roles.ts";
import type { Cause, Symptom } from "./cause.ts";
import { CAUSE_FACTORS, type FactorWhere, WET_FACTORS } from "./cause-factors.ts";
import type { FaultPrior } from "./fault-prior.ts";
import { junctionsOf } from "./junctions.ts";
import { ASSUMED_FACTOR, KIND_WEIGHTS, STAGE_SHARES, weightKey } from "./kind-rates.ts";
import { levelsOf, NET_LEAK } from "./levels.ts";
import { MODE_SHARES } from "./mode-shares.ts";
import { neighbouringNets } from "./net-neighbours.ts";
import { type StageGroup, stageGroups } from "./stage-groups.ts";
import { symptomAgainst } from "./symptom-effects.ts";
import { SYMPTOM_FACTORS } from "./symptom-factors.ts";
import type { Told } from "./told.ts";

interface Subject {
  readonly part: Part | null;
  readonly group: StageGroup;
  readonly sort: string;
  readonly mode: FaultMode;
}

function applies(where: FactorWhere, subject: Subject): boolean {
  if ((where.netLeaks ?? false) !== (subject.part === null)) return false;
  if (subject.part === null) return true;
  return (
    (where.kinds?.includes(subject.part.kind) ?? true) &&
    (where.sorts?.includes(subject.sort) ?? true) &&
    (where.groups?.includes(subject.group) ?? true) &&
    (where.modes?.includes(subject.mode) ?? true)
  );
}

/** What is known before the first reading. */
interface Given {
  readonly cause: Cause;
  readonly symptom: Symptom;
  readonly told: Told;
}

function factorOf({ cause, symptom, told }: Given, subject: Subject): number {
  let factor = 1;
  for (const row of CAUSE_FACTORS)
    if (row.cause === cause && applies(row.where, subject)) factor *= row.factor;
  for (const row of SYMPTOM_FACTORS)
    if (row.symptom === symptom && applies(row.where, subject)) factor *= row.factor;
  if (cause === "water")
    for (const row of WET_FACTORS)
      if (row.powered === told.poweredWet && applies(row.where, subject)) factor *= row.factor;
  return factor;
}

/** Relative weight of first faults per part, before cause and symptom: stages held to practice, shared out by kind. */
export function partWeights(board: Board): ReadonlyMap<string, number> {
  const roles = deriveRoles(board);
  const groups = stageGroups(board, roles);
  const keyOf = (part: Part): string => partSort(part, roles);
  const sums = new Map<StageGroup, number>();
  for (const part of board.parts.values()) {
    const group = groups.get(part.ref) ?? "other";
    sums.set(group, (sums.get(group) ?? 0) + ownWeight(keyOf(part)));
  }
  const weights = new Map<string, number>();
  for (const part of board.parts.values()) {
    const group = groups.get(part.ref) ?? "other";
    const { share, full } = STAGE_SHARES[group];
    weights.set(part.ref, (share * ownWeight(keyOf(part))) / Math.max(full, sums.get(group) ?? 0));
  }
  return weights;
}

/** The key of the kind weights that this part counts under on its board. */
export function partSort(part: Part, roles: Roles): string {
  return resonantKey(part, roles) ?? weightKey(part);
}

/** What a part of a single-switch resonant inverter weighs as, be it of a kind that elsewhere is one of many. */
function resonantKey({ ref }: Part, { resonants }: Roles): string | null {
  if (resonants.some((one) => one.switch.part === ref)) return "resonant-switch";
  if (resonants.some((one) => one.capacitors.includes(ref))) return "resonant-film";
  return resonants.some((one) => one.busCapacitors.includes(ref)) ? "resonant-bus-film" : null;
}

function ownWeight(key: string): number {
  const row = KIND_WEIGHTS[key];
  if (row === undefined) throw new Error(`no kind weight ${key}`);
  return row.weight;
}

/** Weight of one leak between nets, in the unit of `partWeights`: rare without water. `from memory`. */
const NET_LEAK_WEIGHT = 0.02;

function partRows(part: Part, group: StageGroup, weight: number, given: Given): FaultPrior[] {
  const rows: FaultPrior[] = [];
  const sort = weightKey(part);
  const wider = part.assumed ? ASSUMED_FACTOR : 1;
  for (const { junction, shape, share } of junctionsOf(part)) {
    const site = junction === null ? part.ref : `${part.ref}.${junction}`;
    for (const mode of ["short", "leaky", "open", "drift"] as const) {
      const modeShare = MODE_SHARES[shape].shares[mode];
      if (modeShare === undefined) continue;
      const factor = factorOf(given, { part, group, sort, mode });
      for (const level of levelsOf(shape, mode, part)) {
        const fault: Fault = { of: "part", part: part.ref, junction, mode, value: level.value };
        rows.push({
          fault,
          reportAs: `${site}:${mode}`,
          part: part.ref,
          site,
          rate: weight * share * modeShare * level.share * factor * wider,
          spreadLn: level.spreadLn * (part.assumed && level.spreadLn > 0 ? 1.5 : 1),
        });
      }
    }
  }
  return rows;
}

function leakRows(board: Board, given: Given): FaultPrior[] {
  const factor = factorOf(given, { part: null, group: "other", sort: "", mode: "leaky" });
  return neighbouringNets(board).flatMap(({ nets, weight }) =>
    NET_LEAK.map((level): FaultPrior => {
      const fault: Fault = { of: "nets", nets, mode: "leaky", value: level.value };
      const site = `${nets[0]}~${nets[1]}`;
      return {
        fault,
        reportAs: faultName({ ...fault, value: null }),
        part: site,
        site,
        rate: NET_LEAK_WEIGHT * weight * level.share * factor,
        spreadLn: level.spreadLn,
      };
    }),
  );
}

/** Every way anything of this board can have failed, with relative rates still to be scaled. */
export function priorRows(board: Board, cause: Cause, symptom: Symptom, told: Told): FaultPrior[] {
  const given = { cause, symptom, told };
  const weights = partWeights(board);
  const groups = stageGroups(board);
  const rows: FaultPrior[] = [];
  for (const part of board.parts.values())
    rows.push(...partRows(part, groups.get(part.ref) ?? "other", weights.get(part.ref) ?? 0, given));
  rows.push(...leakRows(board, given));
  return rows.map((row) => ({ ...row, rate: row.rate * symptomAgainst(board, symptom, row.fault) }));
}

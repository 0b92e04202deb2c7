import type { Board } from "../board/board.ts";
import type { Fault } from "../board/fault.ts";
import type { Symptom } from "../priors/cause.ts";
import type { FaultPrior, PriorTable } from "../priors/fault-prior.ts";
import { type FeedHarm, knockOnHarm } from "../priors/feed-harm.ts";
import { boardEffect } from "../priors/power-effects.ts";
import { SYMPTOM_SHARES } from "../priors/symptom-effects.ts";
import { drawOne, normalDeviate, type Random } from "./seeded-random.ts";

/** A fault hidden in a practice board: the row of the prior table it came from, and its own value. */
export interface HiddenFault {
  readonly row: number;
  readonly fault: Fault;
}

const MOST_TRIES = 400;

/** The value the fault really has: the level's, spread as the table says, to three digits. */
function ownValue(board: Board, row: FaultPrior, random: Random): Fault {
  const { fault, spreadLn } = row;
  if (spreadLn === 0 || fault.mode === "open") return fault;
  const part = fault.of === "part" ? board.parts.get(fault.part) : undefined;
  let nominal = fault.value;
  if (nominal === null && fault.mode === "short") nominal = 0.2;
  if (nominal === null && fault.mode === "leaky")
    nominal = part?.kind === "fuse" || part?.kind === "link" ? 30 : 1000;
  if (nominal === null && part?.value.ohms !== undefined) nominal = 2 * part.value.ohms;
  if (nominal === null && part?.value.farads !== undefined) nominal = part.value.farads / 2;
  if (nominal === null) return fault;
  const drawn = nominal * Math.exp(spreadLn * Math.max(-2, Math.min(2, normalDeviate(random))));
  const value = Number(drawn.toPrecision(3));
  return { ...fault, value };
}

/** Faults of places that are still whole, drawn from these rates (index into the table -> rate). */
export function drawFaults(
  board: Board,
  table: PriorTable,
  rates: ReadonlyMap<number, number>,
  present: readonly HiddenFault[],
  random: Random,
): HiddenFault[] {
  const taken = new Set(present.map(({ row }) => table.faults[row]?.site));
  const bySite = new Map<string, number[]>();
  for (const row of [...rates.keys()].sort((a, b) => a - b)) {
    const site = table.faults[row]?.site;
    if (site !== undefined && !taken.has(site)) bySite.set(site, [...(bySite.get(site) ?? []), row]);
  }
  const drawn: HiddenFault[] = [];
  for (const rows of bySite.values()) {
    const weights = rows.map((row) => rates.get(row) ?? 0);
    const total = weights.reduce((sum, rate) => sum + rate, 0);
    if (random() >= 1 - Math.exp(-total)) continue;
    const row = drawOne(rows, weights, random);
    const prior = row === null ? undefined : table.faults[row];
    if (row !== null && prior !== undefined) drawn.push({ row, fault: ownValue(board, prior, random) });
  }
  return drawn;
}

/** Rates of the faults that these ones bring with them, as far as the feed does harm; null: as on arrival. */
export function knockOnRates(
  table: PriorTable,
  parents: readonly HiddenFault[],
  harm: FeedHarm | null,
): Map<number, number> {
  const rows = new Set(parents.map(({ row }) => row));
  const rates = new Map<number, number>();
  for (const knock of table.knockOns) {
    const { parent, child, rate } = knock;
    if (!rows.has(parent)) continue;
    const scale = harm === null ? 1 : knockOnHarm(harm, knock, table.faults);
    rates.set(child, (rates.get(child) ?? 0) + rate * scale);
  }
  return rates;
}

function drawBoard(board: Board, table: PriorTable, random: Random): HiddenFault[] {
  const rates = new Map(table.faults.map((row, index) => [index, row.rate]));
  const roots = drawFaults(board, table, rates, [], random);
  const first = drawFaults(board, table, knockOnRates(table, roots, null), roots, random);
  const second = drawFaults(board, table, knockOnRates(table, first, null), [...roots, ...first], random);
  return [...roots, ...first, ...second];
}

/**
 * The faults of a practice board: roots at the table's rates, then what they bring with them in two layers. Drawn
 * again until there is a fault and the board behaves as the symptom says; parts that did not come hold none.
 */
export function hideFaults(
  board: Board,
  table: PriorTable,
  symptom: Symptom,
  absent: readonly string[],
  random: Random,
): HiddenFault[] {
  let best: HiddenFault[] = [];
  for (let attempt = 0; attempt < MOST_TRIES; attempt++) {
    const drawn = drawBoard(board, table, random).filter(
      ({ fault }) => fault.of === "nets" || !absent.includes(fault.part),
    );
    if (drawn.length === 0) continue;
    if (best.length === 0) best = drawn;
    const effect = boardEffect(
      board,
      drawn.map(({ fault }) => fault),
    );
    if (random() < (SYMPTOM_SHARES[effect][symptom] ?? 0)) return drawn;
  }
  return best;
}

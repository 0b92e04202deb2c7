/** What of all that was learnt bears on one job: small enough to be kept in its file, so that it replays the same for ever. */
import type { ReferenceReading } from "../board/board.ts";
import type { LearntRates } from "../priors/learnt-rates.ts";
import type { Learnt } from "./learnt.ts";
import { factorOfSort, familyKey, partKey } from "./rate-chain.ts";

export interface JobFigures extends LearntRates {
  /** closed jobs that they were learnt from */
  readonly jobs: number;
  /** action -> times the minutes of the job format */
  readonly paces: Readonly<Record<string, number>>;
  /** part -> its price here */
  readonly prices: Readonly<Record<string, number>>;
  /** what good boards beside earlier ones of this board read */
  readonly references: readonly ReferenceReading[];
}

/** What a job says of itself before anything is done: the figures depend on nothing else. */
export interface JobKind {
  readonly cause: string;
  readonly family: string;
  /** what the board is known by */
  readonly identity: string;
  /** part -> sort, of every part on the board */
  readonly sorts: ReadonlyMap<string, string>;
  /** shapes on the board */
  readonly shapes: ReadonlySet<string>;
  /** nets of the board */
  readonly nets: ReadonlySet<string>;
}

/** A change smaller than this is not worth keeping. */
const LEAST_CHANGE = 0.005;

const rounded = (value: number): number => Number(value.toPrecision(4));
const changes = (factor: number): boolean => Math.abs(factor - 1) >= LEAST_CHANGE;

function kept(entries: Iterable<readonly [string, number]>): Record<string, number> {
  const record: Record<string, number> = {};
  for (const [key, factor] of entries) if (changes(factor)) record[key] = rounded(factor);
  return record;
}

/** The figures for a job of this kind; null where nothing has been learnt. `extraSorts`: sorts that are no part's. */
export function figuresFor(learnt: Learnt, kind: JobKind, extraSorts: readonly string[]): JobFigures | null {
  if (learnt.jobs === 0) return null;
  const { family, identity } = kind;
  const sorts = [...new Set([...kind.sorts.values(), ...extraSorts])].sort();
  const shares: Record<string, Record<string, number>> = {};
  for (const shape of [...kind.shapes].sort()) {
    const learntShares = learnt.familyShares.get(familyKey(family, shape)) ?? learnt.shares.get(shape);
    if (learntShares === undefined) continue;
    shares[shape] = Object.fromEntries(
      learntShares.modes.map((mode, at) => [mode, rounded(learntShares.shares[at])]),
    );
  }
  return {
    jobs: learnt.jobs,
    sorts: kept(sorts.map((sort) => [sort, factorOfSort(learnt, kind, sort)])),
    parts: kept(
      [...kind.sorts.keys()].map((part) => [part, learnt.parts.get(partKey(identity, part))?.mean ?? 1]),
    ),
    shares,
    knockOns: kept([...learnt.knockOns].map(([rule, { factor: times }]) => [rule, times])),
    paces: kept([...learnt.paces].map(([action, { factor: times }]) => [action, times])),
    prices: Object.fromEntries(
      [...kind.sorts.keys()].flatMap((part) => {
        const price = learnt.prices.get(partKey(identity, part));
        return price === undefined ? [] : [[part, rounded(price.price)]];
      }),
    ),
    // a board that was described anew may have lost a net
    references: (learnt.references.get(identity) ?? []).filter(
      ({ red, black }) => kind.nets.has(red) && kind.nets.has(black),
    ),
  };
}

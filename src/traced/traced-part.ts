/** What every reader of traced circuits makes: parts that read, a list of what does not, and a board of both. */

import { KIND_NAMES, kindOf } from "../board/kinds.ts";
import { parseBoard } from "../board/parse-board.ts";
import { said } from "../messages/said.ts";
import type { Parsed } from "../units/outcome.ts";

export type Content = Readonly<Record<string, unknown>>;

/** What a model, subcircuit or symbol is: its kind, the pins in the file's order, and what the board file says of it beside. */
export interface MappedModel {
  readonly kind: string;
  readonly pins?: readonly string[];
  /** of a symbol: the number or the name of its pin -> the pin of the board file */
  readonly byPin?: Readonly<Record<string, string>>;
  readonly value?: Content;
}

export interface TraceOptions {
  /** by the file's own name for it, case ignored; null: leave it out */
  readonly models?: Readonly<Record<string, MappedModel | null>>;
  /** the board file's `supply`, where the file does not carry one */
  readonly supply?: Content;
  /** the net rails are measured against */
  readonly zero?: string;
}

export interface NotUnderstood {
  readonly line: number;
  readonly text: string;
  readonly why: string;
}

/** What somebody has to say before its parts can be read: nothing in the file tells what it is, or which pin is which. */
export interface Unmapped {
  /** the file's own name for it, as `models` has it */
  readonly name: string;
  readonly refs: readonly string[];
  readonly why: string;
  /** of the first part of that name; `id` is the pin's number, in a deck its place in the order */
  readonly pins: readonly { readonly id: string; readonly name: string; readonly net: string }[];
}

/** A file that was read, whether or not it makes a board yet. */
export interface Trace {
  readonly board: Parsed<Content>;
  readonly notUnderstood: readonly NotUnderstood[];
  readonly unmapped: readonly Unmapped[];
  /** nets of all parts, understood or not, in the order of the file */
  readonly nets: readonly string[];
}

export interface TracedBoard {
  readonly board: Content;
  readonly notUnderstood: readonly NotUnderstood[];
}

/** What is wrong with a part of this kind on these nets, or null: kinds and pins are held to the board file's. */
export function partProblem(kind: string, nets: ReadonlyMap<string, string>): string | null {
  const known = KIND_NAMES.find((one) => one === kind);
  if (known === undefined) return said`${kind} is no kind of part: map it`;
  const row = kindOf(known);
  const strange = [...nets.keys()].find(
    (pin) => !row.otherPins && ![...row.pins, ...row.mayLeaveOut].includes(pin),
  );
  if (strange !== undefined) return said`${kind} has no pin ${strange}: map its pins`;
  const missing = row.pins.find((pin) => !nets.has(pin));
  if (missing !== undefined) return said`its pin ${missing} is on no net`;
  return null;
}

/** The trace of a board file's content, null where nobody said what it runs on; the board is one if it reads. */
export function traceOf(
  content: Content | null,
  left: readonly NotUnderstood[],
  found: Pick<Trace, "unmapped" | "nets">,
): Trace {
  const notUnderstood = [...left].sort((a, b) => a.line - b.line);
  if (content === null) return { board: NO_SUPPLY, notUnderstood, ...found };
  const parsed = parseBoard(content);
  return { board: parsed.ok ? { ok: true, value: content } : parsed, notUnderstood, ...found };
}

/** The board, if it reads; what was left out is told with the problem, since it is often the cause. */
export function boardOf(traced: Parsed<Trace>): Parsed<TracedBoard> {
  if (!traced.ok) return traced;
  const { board, notUnderstood } = traced.value;
  if (board.ok) return { ok: true, value: { board: board.value, notUnderstood } };
  const [first] = notUnderstood;
  if (first === undefined || board === NO_SUPPLY) return board;
  return {
    ok: false,
    problem: said`${board.problem} (left out: ${notUnderstood.length} lines, first line ${first.line}: ${first.why})`,
  };
}

/** Parts of one name are asked about once. */
export function unmappedByName(
  each: readonly (Omit<Unmapped, "refs"> & { readonly ref: string })[],
): readonly Unmapped[] {
  const names = new Map<string, Unmapped>();
  for (const { ref, ...one } of each) {
    const there = names.get(one.name.toLowerCase());
    names.set(one.name.toLowerCase(), { ...(there ?? one), refs: [...(there?.refs ?? []), ref] });
  }
  return [...names.values()];
}

/** `/power/PBUS` and `Net-(R1-Pad2)` as names of a board file. */
const netName = (name: string) =>
  name
    .replace(/^\//, "")
    .replaceAll("{slash}", "/")
    .replace(/[^A-Za-z0-9_+-]+/g, "_");

/** Names of nets as a board file takes them, in the order given; those that become one are told apart by a number. */
export function netNames(names: readonly string[]): readonly string[] {
  const taken = new Set<string>();
  return names.map((name) => {
    const plain = netName(name);
    let own = plain;
    for (let n = 2; taken.has(own); n++) own = `${plain}_${n}`;
    taken.add(own);
    return own;
  });
}

export const NO_SUPPLY = {
  ok: false,
  problem: said`the file does not say what the board runs on: give the supply, such as ac,230,50,L,N`,
} as const;

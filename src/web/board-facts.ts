/** The few facts of a board file that the page lists by itself: which parts there are, which come off by a plug, where its pins lead. */
import type { BoardPin } from "../wire/job-api.ts";

export interface PartFact {
  readonly ref: string;
  readonly kind: string;
  readonly stage: string;
  readonly role: string;
  readonly plugged: boolean;
}

function record(value: unknown): Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null ? (value as Record<string, unknown>) : {};
}

function text(value: unknown): string {
  return typeof value === "string" ? value : "";
}

/** Every part of a board file, in file order. The engine has judged the file, so a field of another type is left blank. */
export function partFacts(board: unknown): readonly PartFact[] {
  return Object.entries(record(record(board).parts)).map(([ref, value]) => {
    const part = record(value);
    return {
      ref,
      kind: text(part.kind),
      stage: text(part.stage) || "other",
      role: text(part.role),
      plugged: part.plugged === true,
    };
  });
}

/** The net that each pin (`Q1.c`) is soldered to. */
export function netsOfPins(board: unknown): ReadonlyMap<string, string> {
  return new Map(
    Object.entries(record(record(board).parts)).flatMap(([ref, part]) =>
      Object.entries(record(record(part).pins)).map(([pin, net]) => [`${ref}.${pin}`, text(net)] as const),
    ),
  );
}

/** Test points that the board file puts on its picture, as places of their nets. */
export function pointsOnPicture(board: unknown): readonly BoardPin[] {
  return Object.values(record(record(board).points)).flatMap((value) => {
    const { net, xy } = record(value);
    const [x, y] = Array.isArray(xy) ? (xy as readonly unknown[]) : [];
    return typeof x === "number" && typeof y === "number"
      ? [{ place: text(net), side: "top" as const, x, y }]
      : [];
  });
}

export interface BoardFacts {
  readonly name: string;
  readonly family: string;
  /** what it is known by: its pictures and earlier jobs are found by it */
  readonly identity: string;
}

/** What a board is called and known by, and its family; empty where the file does not say. */
export function boardFacts(board: unknown): BoardFacts {
  const { name, family, identity } = record(board);
  return { name: text(name), family: text(family), identity: text(identity) || text(name) };
}

/** The board with these parts marked as not seen or different: the diagnosis widens there. */
export function withAssumed(board: unknown, refs: ReadonlySet<string>): unknown {
  const parts = Object.entries(record(record(board).parts)).map(([ref, part]) => [
    ref,
    refs.has(ref) ? { ...record(part), assumed: true } : part,
  ]);
  return { ...record(board), parts: Object.fromEntries(parts) };
}

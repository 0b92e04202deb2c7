/** The few facts of a board file that the page lists by itself: which parts there are and which come off by a plug. */

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

/** What a board is called, and its family; empty where the file does not say. */
export function boardFacts(board: unknown): { readonly name: string; readonly family: string } {
  return { name: text(record(board).name), family: text(record(board).family) };
}

/** The board with these parts marked as not seen or different: the diagnosis widens there. */
export function withAssumed(board: unknown, refs: ReadonlySet<string>): unknown {
  const parts = Object.entries(record(record(board).parts)).map(([ref, part]) => [
    ref,
    refs.has(ref) ? { ...record(part), assumed: true } : part,
  ]);
  return { ...record(board), parts: Object.fromEntries(parts) };
}

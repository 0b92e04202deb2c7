/**
 * What two benches did to one board without knowing of each other, where it does not go together. Both stand in the log, one behind the other;
 * a person has to say which holds.
 */
import type { MeasureEvent } from "../bench/event.ts";
import { isColdMode } from "../bench/words.ts";
import type { KeptEvent } from "./job-store.ts";

export interface Conflict {
  /** ids of the two events */
  readonly mine: string;
  readonly theirs: string;
  readonly why: ConflictKind;
}

/** One check with two readings; two hands at one part; hands or a cold check while power came or went; an entry in a job that was closed. */
export type ConflictKind = "reading" | "part" | "power" | "closed";

const POWER = new Set<KeptEvent["do"]>(["power", "unpower"]);
/** An undo of what the other did not know of is that other's own business: it names what it undoes. */
const SAYS_NOTHING = new Set<KeptEvent["do"]>(["note", "answer", "quote", "calibrate", "overrule", "undo"]);

/** Each pair that does not go together, in the order of `mine`. */
export function conflictsOf(mine: readonly KeptEvent[], theirs: readonly KeptEvent[]): readonly Conflict[] {
  return mine.flatMap((own) =>
    theirs.flatMap((other) => {
      const why = clash(own, other);
      return why === null ? [] : [{ mine: own.id, theirs: other.id, why }];
    }),
  );
}

function clash(own: KeptEvent, other: KeptEvent): ConflictKind | null {
  if (SAYS_NOTHING.has(own.do) || SAYS_NOTHING.has(other.do)) return null;
  if (own.do === "close" || other.do === "close") return "closed";
  if (own.do === "measure" && other.do === "measure")
    return isSameCheck(own, other) && own.reading !== other.reading ? "reading" : null;
  if ((POWER.has(own.do) && wantsDead(other)) || (POWER.has(other.do) && wantsDead(own))) return "power";
  if (POWER.has(own.do) && POWER.has(other.do)) return "power";
  const part = partOf(own);
  return part !== null && part === partOf(other) && changes(own) && changes(other) ? "part" : null;
}

function isSameCheck(a: MeasureEvent, b: MeasureEvent): boolean {
  return a.mode === b.mode && a.red === b.red && a.black === b.black && a.part === b.part;
}

function wantsDead(event: KeptEvent): boolean {
  if (event.do === "measure") return isColdMode(event.mode);
  return event.do === "clip" || event.do === "unclip" || changes(event);
}

function changes({ do: name }: KeptEvent): boolean {
  return ["clean", "resolder", "lift", "refit", "remove", "restore", "replace", "mark"].includes(name);
}

/** The part that an event is about. */
function partOf(event: KeptEvent): string | null {
  if ("part" in event && event.part !== undefined) return event.part;
  return event.do === "lift" || event.do === "refit" ? (event.place.split(".")[0] ?? null) : null;
}

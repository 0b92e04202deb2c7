/** What this bench and another did to one job without knowing of each other, kept in this browser until somebody has said which holds. */
import { get, update } from "idb-keyval";
import { useEffect, useState } from "react";
import { type Conflict, conflictsOf } from "../wire/job-api.ts";
import type { KeptEvent } from "./job-event.ts";

const key = (id: string) => `conflicts:${id}`;
const listeners = new Set<() => void>();

function tell(): void {
  for (const listener of listeners) listener();
}

const isSame = (a: Conflict, b: Conflict) => a.mine === b.mine && a.theirs === b.theirs;

/** Events entered here that the bench computer had not yet, and those that came from elsewhere meanwhile. */
export async function noteConflicts(
  id: string,
  mine: readonly KeptEvent[],
  theirs: readonly KeptEvent[],
): Promise<void> {
  const found = conflictsOf(mine, theirs);
  if (found.length === 0) return;
  await update<readonly Conflict[]>(key(id), (known = []) => [
    ...known,
    ...found.filter((one) => !known.some((other) => isSame(one, other))),
  ]);
  tell();
}

/** Both stand: it is asked no more. */
export async function settleConflict(id: string, settled: Conflict): Promise<void> {
  await update<readonly Conflict[]>(key(id), (known = []) => known.filter((one) => !isSame(one, settled)));
  tell();
}

export function useConflicts(id: string): readonly Conflict[] {
  const [conflicts, setConflicts] = useState<readonly Conflict[]>([]);
  useEffect(() => {
    const look = () => void get<readonly Conflict[]>(key(id)).then((known) => setConflicts(known ?? []));
    look();
    listeners.add(look);
    return () => void listeners.delete(look);
  }, [id]);
  return conflicts;
}

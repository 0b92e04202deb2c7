/** Who reads the meter on the wire, where two places on the screen want a reading: a cell of the grid that is open, before the card. */
import { useEffect, useState, useSyncExternalStore } from "react";
import type { WantedReading } from "../../wire/meter-api.ts";
import { api } from "../api.ts";

interface Want {
  readonly wanted: WantedReading;
  readonly first: boolean;
}

let wants: readonly Want[] = [];
const listeners = new Set<() => void>();

function heard(): Want | null {
  return wants.findLast(({ first }) => first) ?? wants.at(-1) ?? null;
}

function change(next: readonly Want[]): void {
  const before = heard();
  wants = next;
  const now = heard();
  if (now === before) return;
  for (const listener of listeners) listener();
  // Away: the figure is missing then, too.
  if (now !== null) void api.meterWanted(now.wanted).catch(() => undefined);
}

function subscribe(changed: () => void): () => void {
  listeners.add(changed);
  return () => listeners.delete(changed);
}

/**
 * Has the meter set for this reading as long as it is shown; says whether it is.
 * @param there - a meter is on the wire
 * @param first - before those that are not
 */
export function useWanted(there: boolean, { mode, wires }: WantedReading, first: boolean): boolean {
  const [own, setOwn] = useState<Want | null>(null);
  useEffect(() => {
    if (!there) return;
    const want = { wanted: wires === undefined ? { mode } : { mode, wires }, first };
    setOwn(want);
    change([...wants, want]);
    return () => change(wants.filter((other) => other !== want));
  }, [there, mode, wires, first]);
  const now = useSyncExternalStore(subscribe, heard);
  return own === null || now === null || now === own;
}

/** Cautions that were read and confirmed: not shown again in this job until its power changes. */
import { useState } from "react";
import { plain } from "../../messages/said.ts";
import type { KeptEvent } from "../job-event.ts";

/** Jobs whose confirmed cautions are kept: those worked on last. */
const JOBS_KEPT = 30;
const KEPT_AS = "confirmed-cautions";

interface Confirmed {
  readonly job: string;
  /** how often power had changed when they were confirmed */
  readonly powerChanges: number;
  /** in plain English, whatever language they were read in */
  readonly texts: readonly string[];
}

function kept(): readonly Confirmed[] {
  try {
    const list: unknown = JSON.parse(localStorage.getItem(KEPT_AS) ?? "[]");
    return Array.isArray(list) ? (list as readonly Confirmed[]) : [];
  } catch {
    // kept nowhere: they are then shown at every step, which harms nobody
    return [];
  }
}

function keep(confirmed: Confirmed): void {
  const others = kept().filter(({ job }) => job !== confirmed.job);
  try {
    localStorage.setItem(KEPT_AS, JSON.stringify([confirmed, ...others].slice(0, JOBS_KEPT)));
  } catch {
    // see above
  }
}

/** Entries that put power on or off; an undone one changed what is known of the board all the same. */
function powerChanges(events: readonly KeptEvent[]): number {
  return events.filter((event) => event.do === "power" || event.do === "unpower" || event.do === "undo")
    .length;
}

/** Of the cautions at a step, those still to be shown, those confirmed before, and what confirms them. */
export function useConfirmed(job: string, events: readonly KeptEvent[], cautions: readonly string[]) {
  const changes = powerChanges(events);
  const [texts, setTexts] = useState<readonly string[]>(
    () => kept().find((one) => one.job === job && one.powerChanges === changes)?.texts ?? [],
  );
  return {
    fresh: cautions.filter((caution) => !texts.includes(plain(caution))),
    confirmed: cautions.filter((caution) => texts.includes(plain(caution))),
    confirm: () => {
      const all = [...new Set([...texts, ...cautions.map(plain)])];
      setTexts(all);
      keep({ job, powerChanges: changes, texts: all });
    },
  };
}

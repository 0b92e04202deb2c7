/** A good board beside the one on the bench: whether there is one, and which reading it is asked for next. */
import { useState } from "react";
import { formatQuantity } from "../../units/quantity.ts";
import type { ActionView } from "../../wire/bench-view.ts";
import { field, type Outcome } from "../job-event.ts";

/** A reading that this board gave and the good one has still to give. */
export interface AskedBeside {
  readonly check: ActionView;
  /** in words */
  readonly here: string;
}

const UNITS: Readonly<Record<string, string>> = { diode: "V", ohms: "ohm", farads: "F" };

function shown(mode: string, reading: unknown): string {
  return typeof reading === "number" ? formatQuantity(reading, UNITS[mode] ?? "") : String(reading);
}

export interface Beside {
  readonly on: boolean;
  readonly asked: AskedBeside | null;
  turn(on: boolean): void;
  /** this board was read; `whole`: nothing of it was lifted, off or clipped on then */
  read(action: ActionView, outcome: Outcome, whole: boolean): void;
  /** the good one was read, or is not */
  done(): void;
}

/** Modes in which two boards are compared. */
const COMPARED = new Set(["diode", "ohms", "farads"]);
/** Kept in this browser for the job, so that a reload does not forget the good board. */
const keyOf = (job: string): string => `beside:${job}`;

export function useBeside(job: string): Beside {
  const [on, setOn] = useState(() => localStorage.getItem(keyOf(job)) !== null);
  const [asked, setAsked] = useState<AskedBeside | null>(null);
  return {
    on,
    asked,
    turn: (to) => {
      if (to) localStorage.setItem(keyOf(job), "on");
      else localStorage.removeItem(keyOf(job));
      setOn(to);
      setAsked(null);
    },
    read: (action, outcome, whole) => {
      const settled = outcome.settling === undefined && action.wires === undefined;
      const mode = field(action, "mode") ?? "";
      if (!on || !whole || !settled || action.do !== "measure" || !COMPARED.has(mode)) return;
      const [red, black] = [field(action, "red"), field(action, "black")];
      setAsked({ check: { do: "measure", mode, red, black }, here: shown(mode, outcome.reading) });
    },
    done: () => setAsked(null),
  };
}

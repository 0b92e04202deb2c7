/** What is known of the board's charge, and what each gate says, as the front ends show it: plain data. */
import type { ActionView } from "./action-view.ts";

export interface StoreView {
  readonly part: string;
  /** what it is to the eye, and where it lies if not on the board */
  readonly what: string;
  readonly state: "charged" | "unknown" | "empty";
  /** `160 V`, or that the meter was over its range; null: not read */
  readonly volts: string | null;
  /** the log line of that reading, from 1, and its time where it has one; null: not read */
  readonly read: { readonly line: number; readonly at: string | null } | null;
  /** why nothing is known; null where something is */
  readonly because: string | null;
  /** the reading that proves it */
  readonly proof: ActionView;
}

export interface SafetyView {
  readonly stores: readonly StoreView[];
  /** hands and cold checks are let in */
  readonly open: boolean;
  /** the gate in one line */
  readonly words: string;
  /** the reason given for going on without the proof; null where nobody did */
  readonly overruled: string | null;
  /** why power has to wait: a resistor is clipped on; null where none is in its way */
  readonly powerWaits: string | null;
  readonly resistors: readonly { readonly words: string; readonly off: ActionView }[];
  /** motors and fans on the board: what turns charges it */
  readonly turns: readonly { readonly part: string; readonly words: string }[];
}

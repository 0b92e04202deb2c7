import type { Fault } from "../board/fault.ts";

/**
 * One way one junction can have failed, with how likely that was before any reading. A mode whose resistance is unknown over
 * decades is listed once per level (`short@0.2`, `leaky@100`, `leaky@1000` ...), all levels of all modes of a junction
 * excluding each other; `reportAs` is the file format's nominal spelling under which levels are summed.
 */
export interface FaultPrior {
  readonly fault: Fault;
  /** the file format's spelling without level, e.g. `C5:leaky` */
  readonly reportAs: string;
  /** part this fault belongs to; for a leak between nets `NET1~NET2` */
  readonly part: string;
  /** faults with the same site exclude each other, e.g. `M1.up` */
  readonly site: string;
  /** expected number of failures of this kind on arrival (a rate, small: probability is 1 - exp(-rate) over the site) */
  readonly rate: number;
  /** standard deviation of ln(ohms) within this level; 0 where the value is certain (an open) */
  readonly spreadLn: number;
}

/** Parent fault -> child fault: given the parent, the child's rate grows by `rate`. */
export interface KnockOn {
  /** index into the list of fault priors */
  readonly parent: number;
  readonly child: number;
  readonly rate: number;
  /** the same before the board came in, where the customer's words tell of what would have followed (`arrival-knock-ons.ts`) */
  readonly arrivalRate: number;
  /** the rule's id in `priors/knock-on-rules.ts`, for the reason shown */
  readonly rule: string;
}

/** Everything the diagnosis needs to know of a board before the first reading. */
export interface PriorTable {
  readonly faults: readonly FaultPrior[];
  readonly knockOns: readonly KnockOn[];
  /**
   * rate at which each fault appears at one full-mains power-up of a board with no other fault (same order as `faults`);
   * knock-ons of faults still present come on top
   */
  readonly breaksAtPower: readonly number[];
  /** chance that a fitted part is bad: new, used (pulled), or put in wrong (added to either) */
  readonly fittedBad: { readonly new: number; readonly used: number; readonly fittedWrong: number };
}

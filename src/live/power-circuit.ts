/**
 * What carries power on a board, as branches between numbered nets. Net -1 is the one that everything is measured against.
 * SI units; a branch names the part it belongs to, or null for what is not on the board.
 */

export interface ResistiveBranch {
  readonly from: number;
  readonly to: number;
  readonly ohms: number;
  readonly part: string | null;
  /** how its ohms follow the watts in it, where they do (a filament, a PTC) */
  readonly heats?: SelfHeating;
}

/** A resistance that its own heat changes. */
export interface SelfHeating {
  ohmsAt(watts: number): number;
  /** how steeply: d ln(ohms) / d ln(watts) at most; damps the search for where it settles */
  readonly steepness: number;
  /** takes seconds to warm: at switch-on it is still cold (a PTC, not a filament) */
  readonly slow: boolean;
}

/** A junction under power: nothing up to its drop, then its ohms. */
export interface DiodeBranch {
  readonly from: number;
  readonly to: number;
  readonly dropVolts: number;
  readonly ohms: number;
  readonly part: string | null;
}

export interface CapacitorBranch {
  readonly from: number;
  readonly to: number;
  readonly farads: number;
  readonly part: string | null;
}

/** `offsetVolts + peakVolts sin(angle + radians)` behind `ohms`; gives no more than `limitAmps` where there is a limit. */
export interface SourceBranch {
  readonly from: number;
  readonly to: number;
  readonly offsetVolts: number;
  readonly peakVolts: number;
  readonly radians: number;
  readonly ohms: number;
  readonly limitAmps: number | null;
}

/** A load that draws its watts whatever the volts, down to `leastVolts`; a resistor below. */
export interface PowerLoad {
  readonly from: number;
  readonly to: number;
  readonly watts: number;
  readonly leastVolts: number;
}

export interface PowerCircuit {
  readonly nets: number;
  readonly resistors: readonly ResistiveBranch[];
  readonly diodes: readonly DiodeBranch[];
  readonly capacitors: readonly CapacitorBranch[];
  readonly sources: readonly SourceBranch[];
  readonly load: PowerLoad | null;
}

/** What one rail is found to be. */

export interface RailState {
  readonly name: string;
  readonly net: string;
  readonly back: string;
  /** mean volts */
  readonly volts: number;
  /** root mean square of what rides on it, volts */
  readonly rippleVolts: number;
  /** deviation of the mean, a share of the rail's nominal volts */
  readonly share: number;
  /** false while the supply behind it starts and stops */
  readonly steady: boolean;
  /** drawn from it, regulators behind it included, amps */
  readonly amps: number;
}

/** Watts turned to heat in one part. */
export interface PartHeat {
  readonly part: string;
  readonly watts: number;
}

/** The meter, as the job file describes it (docs/formats.md: at 25 degC with leads of 0 ohm). */
export interface MeterSettings {
  readonly diodeOpenVolts: number;
  readonly diodeShortAmps: number;
  readonly diodeMaxVolts: number;
  readonly ohmsOpenVolts: number;
  readonly beepOhms: number;
}

/** The defaults of the job file format. */
export const DEFAULT_METER: MeterSettings = {
  diodeOpenVolts: 3.0,
  diodeShortAmps: 0.0011,
  diodeMaxVolts: 2.0,
  ohmsOpenVolts: 0.5,
  beepOhms: 40,
};

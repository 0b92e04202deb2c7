/** When an electrolytic is worn out: leakage, loss, ESR and life, by makers' data sheets. Farads, volts, amperes, ohms, hours. */
import type { Parsed } from "../../units/outcome.ts";
import { ranged, within } from "../range.ts";

const FARADS = (farads: number) => ranged("capacitance", farads, 1e-9, 1, "F");
const VOLTS = (volts: number) => ranged("rated voltage", volts, 1, 600, "V");
/** Data sheets count microfarads times volts. */
const microfaradVolts = (farads: number, volts: number) => farads * 1e6 * volts;
const MICRO = 1e-6;

/** Highest leakage of a good capacitor of up to 100 V after two minutes (Lelon RGA, Nichicon RS, Vishay 038 RSU). */
export function leakageToHundredVolts(farads: number, volts: number): Parsed<number> {
  const inputs = [FARADS(farads), ranged("rated voltage", volts, 1, 100, "V")];
  return within(inputs, () => Math.max(0.01 * microfaradVolts(farads, volts), 3) * MICRO);
}

/** The same after five minutes, by a stricter maker (Vishay 038 RSU). */
export function strictLeakage(farads: number, volts: number): Parsed<number> {
  return within([FARADS(farads), VOLTS(volts)], () => (0.002 * microfaradVolts(farads, volts) + 3) * MICRO);
}

/** Above 100 V after five minutes (Lelon RGA). */
export function leakageAboveHundredVolts(farads: number, volts: number): Parsed<number> {
  const inputs = [FARADS(farads), ranged("rated voltage", volts, 100, 600, "V")];
  return within(inputs, () => {
    const cv = microfaradVolts(farads, volts);
    return (cv <= 1000 ? 0.03 * cv + 15 : 0.02 * cv + 25) * MICRO;
  });
}

/** 160 to 400 V after one minute (Nichicon RS); 450 V types are read by it too. */
export function leakageAfterAMinute(farads: number, volts: number): Parsed<number> {
  const inputs = [FARADS(farads), ranged("rated voltage", volts, 160, 450, "V")];
  return within(inputs, () => (0.04 * microfaradVolts(farads, volts) + 100) * MICRO);
}

/** Gross reject of old military practice: k C + 0.3 mA (JAN-C-62, amradio msg21215). */
const MILITARY: readonly (readonly [number, number])[] = [
  [100, 0.01],
  [250, 0.02],
  [350, 0.025],
  [500, 0.04],
];

export function grossLeakage(farads: number, volts: number): Parsed<number> {
  const inputs = [FARADS(farads), ranged("rated voltage", volts, 1, 500, "V")];
  return within(inputs, () => {
    const factor = MILITARY.find(([upTo]) => volts <= upTo)?.[1] ?? 0.04;
    return (factor * farads * 1e6 + 0.3) * 1e-3;
  });
}

/** Highest tan delta at 120 Hz and 20 degC by rated volts, of two makers: their series differ, and so does what is good. */
const LELON: readonly (readonly [number, number])[] = [
  [6.3, 0.23],
  [10, 0.2],
  [16, 0.16],
  [25, 0.14],
  [35, 0.12],
  [50, 0.1],
  [63, 0.09],
  [100, 0.08],
  [160, 0.12],
  [200, 0.14],
  [250, 0.17],
  [350, 0.2],
  [400, 0.25],
  [450, 0.25],
];
const NICHICON: readonly (readonly [number, number])[] = [
  [6.3, 0.28],
  [10, 0.24],
  [16, 0.2],
  [25, 0.16],
  [35, 0.14],
  [50, 0.12],
  [63, 0.1],
  [100, 0.08],
  [250, 0.2],
  [400, 0.25],
];
const TAN_DELTA = { "Lelon RGA": LELON, "Nichicon RS": NICHICON } as const;
export type LossTable = keyof typeof TAN_DELTA;
/** Whose tables were read. */
export const LOSS_TABLES = Object.keys(TAN_DELTA) as readonly LossTable[];
/** For each further 1000 uF (Lelon RGA; taken for both). */
const TAN_DELTA_STEP = 0.02;
const TAN_DELTA_FARADS = 1000e-6;

/** Of a rating between two rows the higher loss of both is allowed. */
export function tanDeltaLimit(farads: number, volts: number, by: LossTable = "Lelon RGA"): Parsed<number> {
  const table = TAN_DELTA[by];
  const inputs = [FARADS(farads), ranged("rated voltage", volts, 6.3, table.at(-1)?.[0] ?? 0, "V")];
  return within(inputs, () => {
    const at = table.findIndex(([upTo]) => volts <= upTo);
    const [upTo, here] = table[at] ?? [0, 0];
    const below = table[at - 1]?.[1] ?? 0;
    const base = upTo === volts ? here : Math.max(here, below);
    return base + TAN_DELTA_STEP * Math.max(0, Math.ceil(farads / TAN_DELTA_FARADS - 1 - 1e-9));
  });
}

/** ESR = tan delta / (2 pi f C) (Vishay doc 28309 p. 100). */
export function esrOhms(tanDelta: number, hertz: number, farads: number): Parsed<number> {
  const inputs = [
    FARADS(farads),
    ranged("tan delta", tanDelta, 0, 5, ""),
    ranged("frequency", hertz, 1, 1e6, "Hz"),
  ];
  return within(inputs, () => tanDelta / (2 * Math.PI * hertz * farads));
}

/** Worn out: capacitance off by a fifth, loss over twice the limit, or leakage over it (Lelon RGA, Nichicon RS). */
export function wornOut(read: {
  readonly capacitanceShare: number;
  readonly tanDeltaShare: number;
  readonly leakageShare: number;
}): readonly string[] {
  return [
    ...(Math.abs(read.capacitanceShare - 1) > 0.2 + 1e-9 ? ["capacitance off by more than 20 %"] : []),
    ...(read.tanDeltaShare > 2 ? ["loss over twice the limit"] : []),
    ...(read.leakageShare > 1 ? ["leakage over the limit"] : []),
  ];
}

const DOUBLES_IN_KELVIN = 10;

/** Hours at another temperature: twice as long for each 10 K less (Illinois Capacitor and others). Holds from 40 degC to the rating. */
export function lifeHours(ratedHours: number, ratedDegC: number, degC: number): Parsed<number> {
  const inputs = [
    ranged("rated hours", ratedHours, 1, 1e6, "h"),
    ranged("rated temperature", ratedDegC, 60, 150, "degC"),
    ranged("temperature", degC, 40, ratedDegC, "degC"),
  ];
  return within(inputs, () => ratedHours * 2 ** ((ratedDegC - degC) / DOUBLES_IN_KELVIN));
}

/** Hours under a daily round of temperatures: shares of life used add up (Miner; Cosel FAQ a0057). */
export function lifeOverProfile(
  ratedHours: number,
  ratedDegC: number,
  profile: readonly { readonly degC: number; readonly share: number }[],
): Parsed<{ readonly hours: number; readonly equalDegC: number }> {
  const total = profile.reduce((sum, one) => sum + one.share, 0);
  if (Math.abs(total - 1) > 1e-9)
    return { ok: false, problem: `shares of the day: they add up to ${total}, not to 1` };
  let used = 0;
  for (const { degC, share } of profile) {
    const life = lifeHours(ratedHours, ratedDegC, degC);
    if (!life.ok) return life;
    used += share / life.value;
  }
  const hours = 1 / used;
  return {
    ok: true,
    value: { hours, equalDegC: ratedDegC - DOUBLES_IN_KELVIN * Math.log2(hours / ratedHours) },
  };
}

/** A surge above 1.15 times the rating is not borne, nor more than a volt the wrong way (Vishay 038 RSU). */
export function surgeVolts(ratedVolts: number): Parsed<number> {
  return within([VOLTS(ratedVolts)], () => 1.15 * ratedVolts);
}

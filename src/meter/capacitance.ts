/** The farads range: Im(Y) / (2 pi 100 Hz) at zero bias, and OL where the settled ohms are too low to measure it. */
import { type Admittance, admittance } from "../circuit/alternating.ts";
import type { Values } from "../circuit/netlist.ts";
import type { ComplexValues } from "../numeric/sparse-lu-complex.ts";
import { assumedFarads, restsOn } from "./assumed-spread.ts";
import type { ColdCheck, MeterReading, NotSolved } from "./prediction.ts";
import { type Probing, whyUnsolved } from "./probing.ts";
import { FARADS_HERTZ, FARADS_LEAST_OHMS, faradsHiddenBy } from "./ranges.ts";

/** How meters differ in farads, and what stands beside every capacitance (from memory). */
const FARADS_METERS = {
  /** another frequency at which ranges measure, with the ohms of leads and of a capacitor within: what is not a capacitance alone reads otherwise there, and a large one less */
  otherHertz: 250,
  seriesOhms: 0.4,
  /** junctions, gates and leads beside what is measured, farads */
  strayFarads: 0.4e-9,
  strayDeviation: 0.35e-9,
} as const;

/** A reading with what the filter of silent faults needs: net voltages for 1 V at the probes (null: probes on one net). */
export interface FaradsReading extends MeterReading {
  readonly perVolt: ComplexValues | null;
}

/** Reads `check` in farads with these branch values. */
export function readFarads(probing: Probing, check: ColdCheck, values: Values): FaradsReading | NotSolved {
  const settled = probing.settle({ mode: "ohms", red: check.red, black: check.black }, values);
  if (!settled.solved) return { solved: false, why: whyUnsolved(settled) };
  const { plus, minus } = settled.problem.source;
  const found = admittanceAt(probing, plus, minus, values);
  if (plus === minus)
    return {
      solved: true,
      raw: 0,
      shown: "OL",
      centre: 0,
      spread: 0,
      common: 0,
      alike: 0,
      restsOn: [],
      perVolt: null,
    };
  if (found === null)
    return { solved: false, why: "no solution: the admittance at 100 Hz could not be computed" };
  const raw = faradsIn(found);
  const shown = settled.raw < FARADS_LEAST_OHMS ? "OL" : raw;
  const perShare = slopesOf(probing, values, found);
  const alike = spreadOf(probing, values, perShare);
  const other = admittanceAt(probing, plus, minus, values, FARADS_METERS.otherHertz);
  const elsewhere =
    other === null
      ? raw
      : Math.max(0, faradsIn(behindOhms(other, FARADS_METERS.seriesOhms), FARADS_METERS.otherHertz));
  const seenSpread = Math.hypot(alike, (elsewhere - raw) / 2, FARADS_METERS.strayDeviation);
  const assumed = assumedFarads(probing.circuit, perShare);
  return {
    solved: true,
    raw,
    shown,
    centre: (Math.max(0, raw) + elsewhere) / 2 + FARADS_METERS.strayFarads,
    spread: Math.hypot(seenSpread, Math.sqrt(assumed.variance)),
    alike,
    common: 0,
    hiddenChance: faradsHiddenBy(settled.raw),
    restsOn: restsOn(probing.circuit, assumed, seenSpread, 1),
    perVolt: found.perVolt,
  };
}

/** The capacitance alone, whatever the settled ohms; null where there is no answer. */
export function faradsOf(probing: Probing, check: ColdCheck, values: Values): number | null {
  const found = admittanceAt(
    probing,
    probing.circuit.netOf(check.red),
    probing.circuit.netOf(check.black),
    values,
  );
  return found === null ? null : faradsIn(found);
}

function admittanceAt(
  probing: Probing,
  plus: number,
  minus: number,
  values: Values,
  hertz = FARADS_HERTZ,
): Admittance | null {
  const { netlist } = probing.circuit;
  return admittance(netlist, probing.frame(plus, minus, values), values, plus, minus, hertz);
}

/** What is left of an admittance behind `ohms` in series: 1 / (1 / Y + R). */
function behindOhms({ re, im }: Pick<Admittance, "re" | "im">, ohms: number): Pick<Admittance, "im"> {
  return { im: im / ((1 + ohms * re) ** 2 + (ohms * im) ** 2) };
}

const faradsIn = ({ im }: Pick<Admittance, "im">, hertz = FARADS_HERTZ): number => im / (2 * Math.PI * hertz);

/**
 * How the reading moves with the share by which one capacitor is larger, farads. By reciprocity the slope of Y with one capacitance
 * is j omega (v / V)^2, v the volts across that capacitor while V stands at the probes.
 */
function slopesOf(probing: Probing, values: Values, found: Admittance): (capacitor: number) => number {
  const { from, to } = probing.circuit.netlist.capacitors;
  const at = (part: Float64Array, net: number) => (net < 0 ? 0 : part[net]);
  return (i) => {
    const re = at(found.perVolt.re, from[i]) - at(found.perVolt.re, to[i]);
    const im = at(found.perVolt.im, from[i]) - at(found.perVolt.im, to[i]);
    return (re * re - im * im) * values.farads[i];
  };
}

/** Share of the variance that capacitors of one value have in common: they came from one reel and have aged together (common practice). */
const LOT_SHARE = 0.8;

/** Like capacitors are off by the same share for the most part: three of a bank that are all a tenth low make a bank a tenth low. */
function spreadOf(probing: Probing, values: Values, perShare: (capacitor: number) => number): number {
  const { capacitors } = probing.circuit.deviations;
  let square = 0;
  const lots = new Map<number, number>();
  for (let i = 0; i < values.farads.length; i++) {
    if (values.farads[i] === 0) continue;
    const own = perShare(i) * capacitors[i];
    square += (1 - LOT_SHARE) * own * own;
    lots.set(values.farads[i], (lots.get(values.farads[i]) ?? 0) + own);
  }
  for (const own of lots.values()) square += LOT_SHARE * own * own;
  return Math.hypot(Math.sqrt(square), 1e-12);
}

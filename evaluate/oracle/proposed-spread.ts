/**
 * A proposal for the engine's spread, tried here without touching the engine: figures that its tables would get, and three
 * deviations that it does not know yet. `evaluate/prediction.ts` prints the coverage with it beside the coverage as it is.
 */
import type { BenchState } from "../../src/bench/bench-state.ts";
import type { Board } from "../../src/board/board.ts";
import { admittance } from "../../src/circuit/alternating.ts";
import type { Values } from "../../src/circuit/netlist.ts";
import { solveCircuit } from "../../src/circuit/solve.ts";
import { coldCircuit } from "../../src/cold/cold-circuit.ts";
import { CAPACITOR_MODELS, JUNCTION_MODELS, RESISTANCE_MODELS } from "../../src/cold/model-table.ts";
import { READING_MODEL } from "../../src/diagnosis/reading-model.ts";
import type { ColdCheck, Predictor } from "../../src/meter/prediction.ts";
import { makePredictor } from "../../src/meter/predictor.ts";
import { Probing } from "../../src/meter/probing.ts";
import { ohmsAt, rangesOf } from "../../src/meter/ranges.ts";
import { DEFAULT_METER } from "../../src/meter/settings.ts";
import { METER_SPREAD } from "../../src/meter/spread.ts";
import type { FaultPrior } from "../../src/priors/fault-prior.ts";
import type { Band } from "./engine-band.ts";

/** Figures for the engine's tables. */
export const PROPOSED = {
  meter: { kelvin: 9, currentShare: 0.33, ohmsContact: 0.1 },
  reading: { contactOhms: 0.3, faradsShare: 0.09, ohmsShare: 0.015 },
  /** factor on the deviation of every junction from its table drop: types differ, not only parts of one type */
  junctionSigma: 2,
  /** share by which a thermistor of a sensor differs at the temperature of the room */
  ntcShare: 0.35,
  /** ohms in the leads that nobody subtracts */
  leadOhms: 0.25,
  /** farads that junctions, gates and leads add to anything: below it a capacitance says nothing */
  strayFarads: 1.2e-9,
  strayLn: 1,
  /** ohms ranges of other meters: open volts, and source ohms as a multiple; the share of the span that counts as a deviation */
  otherMeters: [
    { openVolts: 0.2, sourceFactor: 1 },
    { openVolts: 0.2, sourceFactor: 8 },
    { openVolts: 0.9, sourceFactor: 1 },
    { openVolts: 0.9, sourceFactor: 8 },
  ],
  spanShare: 1.05,
  /** seconds of insulation of an electrolytic: some soak is left when a reading is called settled */
  electrolyticSeconds: 2500,
  /** another frequency of capacitance ranges */
  otherHertz: 250,
  /** paths inside chips that the cold model has none of: ohms, deviation of ln */
  regulatorOhms: { ohms: 5000, spreadLn: 0.45 },
  chipOhms: { ohms: 80_000, spreadLn: 0.9 },
  /** insulation of a board that is not new: what stands beside every reading of megohms */
  boardOhms: { ohms: 2e8, spreadLn: 1.5 },
} as const;

/** Runs `work` with the proposed figures in the engine's tables, and puts the old ones back. */
export function withProposedTables<T>(work: () => T): T {
  const kept = { meter: { ...METER_SPREAD }, reading: { ...READING_MODEL } };
  const { electrolytic } = CAPACITOR_MODELS;
  const { insulationSeconds } = electrolytic;
  const sigmas = Object.values(JUNCTION_MODELS).map((row) => [row, row.sigmaVolts] as const);
  Object.assign(METER_SPREAD, PROPOSED.meter);
  Object.assign(READING_MODEL, PROPOSED.reading);
  const ntcShare = RESISTANCE_MODELS.ntc.sigma;
  Object.assign(RESISTANCE_MODELS.ntc, { sigma: PROPOSED.ntcShare });
  Object.assign(electrolytic, { insulationSeconds: PROPOSED.electrolyticSeconds });
  for (const [row, sigmaVolts] of sigmas)
    Object.assign(row, { sigmaVolts: sigmaVolts * PROPOSED.junctionSigma });
  try {
    return work();
  } finally {
    Object.assign(METER_SPREAD, kept.meter);
    Object.assign(READING_MODEL, kept.reading);
    Object.assign(electrolytic, { insulationSeconds });
    Object.assign(RESISTANCE_MODELS.ntc, { sigma: ntcShare });
    for (const [row, sigmaVolts] of sigmas) Object.assign(row, { sigmaVolts });
  }
}

function path(
  from: string | undefined,
  to: string | undefined,
  { ohms, spreadLn }: { ohms: number; spreadLn: number },
): FaultPrior[] {
  if (from === undefined || to === undefined || from === to) return [];
  const fault = { of: "nets", nets: [from, to], mode: "leaky", value: ohms } as const;
  const key = `${from}~${to}`;
  return [{ fault, reportAs: key, part: key, site: key, rate: 0, spreadLn }];
}

/** Paths that chips have inside beside those of the cold model, as rows that every prediction is given. */
export function innerPaths(file: Board): readonly FaultPrior[] {
  return [...file.parts.values()].flatMap(({ kind, pins }) => {
    if (kind === "regulator") return path(pins.get("out"), pins.get("gnd"), PROPOSED.regulatorOhms);
    if (kind === "controller" || kind === "ic")
      return path(pins.get("vdd") ?? pins.get("vcc"), pins.get("gnd"), PROPOSED.chipOhms);
    if (kind === "module") return path(pins.get("vcc"), pins.get("com"), PROPOSED.chipOhms);
    return kind === "switcher" ? path(pins.get("vcc"), pins.get("s"), PROPOSED.chipOhms) : [];
  });
}

/** What the proposal needs of a board, made once. */
export interface ProposedEngine {
  readonly predictor: Predictor;
  readonly probing: Probing;
}

/** Made while the proposed tables are in place. */
export function proposedEngine(file: Board, bench: BenchState): ProposedEngine {
  return {
    predictor: makePredictor(file, bench, DEFAULT_METER),
    probing: new Probing(coldCircuit(file, bench), DEFAULT_METER),
  };
}

/** Centre and deviation on a scale of its own: volts, ln(ohms + contact) or ln(farads + stray). */
export interface ProposedBand {
  readonly mean: number;
  readonly deviation: number;
  /** in diode mode the part that a calibration tells of */
  readonly shared: number;
  readonly at: (reading: number) => number;
}

/** Share of a silicon drop by which meters and rooms differ, and what a calibration on a known diode leaves open. */
const CALIBRATION = { commonShare: 0.05, leftOpenShare: 0.012 } as const;

/** The band of a diode check after the meter read `reading` on a diode of `known` volts: a high meter reads everything high. */
export function afterCalibration(band: ProposedBand, known: number, reading: number): ProposedBand {
  const { commonShare: one, leftOpenShare: left } = CALIBRATION;
  const seen = (reading - known) / known;
  const mean = (one * seen) / (one * one + left * left);
  const deviation = Math.sqrt((left * left) / (one * one + left * left));
  const own = Math.sqrt(Math.max(0, band.deviation ** 2 - band.shared ** 2));
  return {
    ...band,
    mean: band.mean + band.shared * mean,
    deviation: Math.hypot(own, band.shared * deviation),
  };
}

/** The band as proposed, from the engine's band with the proposed tables. */
export function proposedBand(
  check: ColdCheck,
  rows: readonly FaultPrior[],
  band: Band,
  engine: ProposedEngine,
): ProposedBand {
  if (check.mode === "diode") {
    const { mean, deviation, shared } = band;
    return { mean, deviation, shared, at: (volts) => volts };
  }
  return check.mode === "farads"
    ? faradsBand(check, rows, band, engine)
    : ohmsBand(check, rows, band, engine);
}

/** Ohms as another meter sees them; null where the circuit does not settle. */
function ohmsWith(
  check: ColdCheck,
  values: Values,
  probing: Probing,
  meter: (typeof PROPOSED.otherMeters)[number],
): number | null {
  let ohms: number | null = null;
  for (const range of rangesOf("ohms", DEFAULT_METER)) {
    const other = { ...range, openVolts: meter.openVolts, ohms: range.ohms * meter.sourceFactor };
    const problem = probing.problem(check, other, values);
    const answer = solveCircuit(problem, null);
    if (!answer.solved) return null;
    const { plus, minus } = problem.source;
    const at = (net: number): number => answer.volts[net < 0 ? problem.netlist.nets : net] ?? 0;
    ohms = ohmsAt(other, at(plus) - at(minus));
    if (ohms <= range.limit) return ohms;
  }
  return ohms;
}

function ohmsBand(
  check: ColdCheck,
  rows: readonly FaultPrior[],
  band: Band,
  { probing }: ProposedEngine,
): ProposedBand {
  const at = (ohms: number): number => Math.log(Math.max(0, ohms) + READING_MODEL.contactOhms);
  const insulated = (ohms: number): number => 1 / (1 / Math.max(ohms, 1e-6) + 1 / PROPOSED.boardOhms.ohms);
  const values = probing.circuit.withFaults(rows.map(({ fault }) => fault));
  const here = insulated(band.prediction.raw);
  const all = [
    Math.log(here),
    ...PROPOSED.otherMeters.flatMap((meter) => {
      const found = ohmsWith(check, values, probing, meter);
      return found === null ? [] : [Math.log(insulated(found))];
    }),
  ];
  const half = (Math.max(...all) - Math.min(...all)) / 2;
  const middle = Math.exp((Math.max(...all) + Math.min(...all)) / 2);
  const dirt = PROPOSED.boardOhms.spreadLn * (middle / PROPOSED.boardOhms.ohms);
  return {
    mean: at(middle + PROPOSED.leadOhms),
    deviation: Math.hypot(band.deviation, PROPOSED.spanShare * half, dirt),
    shared: 0,
    at,
  };
}

function faradsBand(
  check: ColdCheck,
  rows: readonly FaultPrior[],
  band: Band,
  { probing }: ProposedEngine,
): ProposedBand {
  const stray = PROPOSED.strayFarads;
  const at = (farads: number): number => Math.log(Math.max(0, farads) + stray);
  const raw = Math.max(0, band.prediction.raw);
  const values = probing.circuit.withFaults(rows.map(({ fault }) => fault));
  const [plus, minus] = [probing.circuit.netOf(check.red), probing.circuit.netOf(check.black)];
  const frame = probing.frame(plus, minus, values);
  const other = admittance(probing.circuit.netlist, frame, values, plus, minus, PROPOSED.otherHertz);
  const farads = other === null ? raw : Math.max(0, other.im / (2 * Math.PI * PROPOSED.otherHertz));
  const half = Math.abs(at(farads) - at(raw)) / 2;
  return {
    shared: 0,
    mean: (at(farads) + at(raw)) / 2 + (0.35 * stray) / (raw + stray),
    deviation: Math.hypot(
      (band.deviation * raw) / (raw + stray),
      half,
      (PROPOSED.strayLn * 0.5 * stray) / (raw + stray),
    ),
    at,
  };
}

/**
 * Which faults cannot move a reading. A fault puts a current where none flowed (a short, a leak) or takes one away (an open, a
 * drift). Where there is no voltage across the place, or no current in it, nothing changes: exact, whatever the fault's size.
 *
 * Otherwise the change of the reading is at most (change of current) x (ohms of the meter): the transfer from any pair of nets to
 * the probes is no larger than the resistance seen at the probes, and the meter bridges those. For a shunt of conductance g
 * across volts v the current is v g / (1 + g Z), Z the ohms seen there by a small signal. Z of the changed circuit is not Z of
 * this one, so a tenth of it is used, and less where v could turn junctions on: no net moves by more than v, so no junction
 * conducts more than exp(v / thermal volts) times what it did (an opto's LED across a shorted reference is all there is to see). A transistor may pass on its gain times what reaches its base, so on a board with
 * transistors every bound is multiplied by that. What is not silent by that bound is confirmed by one solve.
 */
import { type Fault, faultName } from "../board/fault.ts";
import { DRIFT, FAULT_OHMS } from "../board/fault-nominal.ts";
import { junctionAmps, ROOM_CELSIUS, thermalVolts } from "../circuit/junction.ts";
import type { Change, Linearised } from "../circuit/linearised.ts";
import { LEAST_OHMS, type Values } from "../circuit/netlist.ts";
import { type Site, siteKey } from "../cold/circuit-builder.ts";
import type { ColdCircuit } from "../cold/cold-circuit.ts";
import { BJT_MODEL } from "../cold/model-table.ts";

/** What a fault changes, and how large it is in the circuit as it stands. */
export interface Disturbance {
  readonly changes: readonly Change[];
  /** the most current in amps that it can set moving, without looking at what is around it */
  readonly roughAmps: number;
  /** a transistor with a junction open is another circuit: no sum of changes describes it */
  readonly whole: boolean;
}

/** Margin on the small-signal ohms at a shunt (see above). */
const Z_MARGIN = 0.1;
/** The steepest that any junction's current can grow. */
const THERMAL_VOLTS = thermalVolts(ROOM_CELSIUS);

function across(circuit: ColdCircuit, volts: Float64Array, from: number, to: number): number {
  const ground = circuit.netlist.nets;
  return volts[from < 0 ? ground : from] - volts[to < 0 ? ground : to];
}

function siteOf(circuit: ColdCircuit, part: string, junction: string | null): Site {
  const site = circuit.sites.get(siteKey(part, junction));
  if (site === undefined)
    throw new Error(`the circuit has no place for a fault at ${siteKey(part, junction)}`);
  return site;
}

/** The nets and ohms of the shunt that `fault` is; null where it is something else. */
function shuntOf(circuit: ColdCircuit, fault: Fault): { from: number; to: number; ohms: number } | null {
  if (fault.of === "nets") {
    const [from, to] = fault.nets.map((net) => circuit.netOf(net));
    return { from, to, ohms: fault.value ?? FAULT_OHMS.leaky };
  }
  const site = siteOf(circuit, fault.part, fault.junction);
  if (fault.mode !== "short" && (fault.mode !== "leaky" || site.leaksInSeries)) return null;
  const { from, to } = circuit.netlist.resistors;
  return { from: from[site.shunt], to: to[site.shunt], ohms: fault.value ?? FAULT_OHMS[fault.mode] };
}

/** What changes when the shunt that `fault` is gets other ohms; null where it is no shunt. */
export function changeOfOhms(circuit: ColdCircuit, fault: Fault, ohms: number): Change | null {
  const shunt = shuntOf(circuit, fault);
  if (shunt === null) return null;
  const siemens = 1 / Math.max(ohms, LEAST_OHMS) - 1 / Math.max(shunt.ohms, LEAST_OHMS);
  return { from: shunt.from, to: shunt.to, siemens, junction: -1 };
}

/** What `fault` would change in the circuit that stands at `volts` with `values`. */
export function disturbance(
  circuit: ColdCircuit,
  values: Values,
  volts: Float64Array,
  fault: Fault,
): Disturbance {
  const shunt = shuntOf(circuit, fault);
  if (shunt !== null) {
    const { from, to } = shunt;
    const siemens = 1 / Math.max(shunt.ohms, LEAST_OHMS);
    const roughAmps = Math.abs(across(circuit, volts, from, to)) * siemens;
    return { changes: [{ from, to, siemens, junction: -1 }], roughAmps, whole: true };
  }
  if (fault.of === "nets") throw new Error("a leak between nets is always a shunt");
  const site = siteOf(circuit, fault.part, fault.junction);
  const changes: Change[] = [];
  let roughAmps = 0;
  const { resistors, junctions } = circuit.netlist;
  const resistorsToo = fault.mode !== "drift" || site.capacitors.length === 0;
  for (const one of resistorsToo ? site.resistors : []) {
    const from = resistors.from[one];
    const to = resistors.to[one];
    const now = values.siemens[one];
    const siemens = (fault.mode === "open" ? 0 : seriesSiemens(fault.mode, now, fault.value)) - now;
    changes.push({ from, to, siemens, junction: -1 });
    roughAmps += Math.abs(across(circuit, volts, from, to) * siemens);
  }
  if (fault.mode !== "open") return { changes, roughAmps, whole: true };
  for (const one of site.junctions) {
    const from = junctions.from[one];
    const to = junctions.to[one];
    changes.push({ from, to, siemens: 0, junction: one });
    const here = across(circuit, volts, from, to);
    roughAmps += Math.abs(junctionAmps(values.saturation[one], junctions.emissionVolts[one], here));
  }
  if (site.bjt !== null) roughAmps += transistorAmps(circuit, values, volts, site.bjt.index);
  return { changes, roughAmps, whole: site.bjt === null };
}

function seriesSiemens(
  mode: "short" | "leaky" | "drift" | "open",
  siemens: number,
  value: number | null,
): number {
  if (mode === "leaky") return 1 / (1 / siemens + (value ?? FAULT_OHMS.leakyInSeries));
  return value === null ? siemens / DRIFT.ohms : 1 / value;
}

/** The current of both junctions of a transistor. */
function transistorAmps(circuit: ColdCircuit, values: Values, volts: Float64Array, index: number): number {
  const { bjts } = circuit.netlist;
  const saturation = values.bjtSaturation[index];
  const base = bjts.base[index];
  let amps = 0;
  for (const [end, gain] of [
    [bjts.emitter[index], BJT_MODEL.forwardGain],
    [bjts.collector[index], BJT_MODEL.reverseGain],
  ] as const) {
    const here = bjts.sign[index] * across(circuit, volts, base, end);
    amps += Math.abs(junctionAmps(saturation, bjts.emissionVolts, here)) * (1 + 1 / gain);
  }
  return amps;
}

/** How much larger than a disturbance its effect at the probes can be. */
export function mostGain(circuit: ColdCircuit): number {
  return circuit.netlist.bjts.base.length > 0 ? 1 + BJT_MODEL.forwardGain : 1;
}

/**
 * What a fault does to the circuit, in a word: two faults with the same word cannot be told apart by any reading of this bench.
 * A shunt is known by its two nets and its ohms; anything else by the fault's own name.
 */
export function effectOf(circuit: ColdCircuit, fault: Fault): string {
  const shunt = shuntOf(circuit, fault);
  return shunt === null ? faultName(fault) : shuntWord(shunt.from, shunt.to, shunt.ohms);
}

const shuntWord = (from: number, to: number, ohms: number): string =>
  `${Math.min(from, to)}~${Math.max(from, to)}@${ohms}`;

/** The most current in amps that it can set moving, with the ohms around an added conductance counted. */
export function boundAmps(found: Disturbance, linearised: Linearised): number {
  const [first] = found.changes;
  if (!found.whole || found.changes.length !== 1 || first.siemens <= 0) return found.roughAmps;
  const turnedOn = Math.exp(-found.roughAmps / first.siemens / THERMAL_VOLTS);
  const around = Math.max(0, linearised.impedance(first.from, first.to)) * Math.min(Z_MARGIN, turnedOn);
  return found.roughAmps / (1 + first.siemens * around);
}

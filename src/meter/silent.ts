/**
 * Which faults cannot move a reading. A fault puts a current where none flowed (a short, a leak) or takes one away (an open, a
 * drift). Where there is no voltage across the place, or no current in it, nothing changes: exact, whatever the fault's size.
 *
 * Otherwise the change of the reading is at most (change of current) x (ohms of the meter): the transfer from any pair of nets to
 * the probes is no larger than the resistance seen at the probes, and the meter bridges those. For a shunt of conductance g
 * across volts v the current is v g / (1 + g Z), Z the ohms seen there by a small signal. Z of the changed circuit is not Z of
 * this one, so a tenth of it is used. A transistor may pass on its gain times what reaches its base, so on a board with
 * transistors every bound is multiplied by that. What is not silent by that bound is confirmed by one solve.
 */
import { type Fault, faultName } from "../board/fault.ts";
import { junctionAmps } from "../circuit/junction.ts";
import type { Values } from "../circuit/netlist.ts";
import type { Linearised } from "../circuit/solve.ts";
import { type Site, siteKey } from "../cold/circuit-builder.ts";
import type { ColdCircuit } from "../cold/cold-circuit.ts";
import { BJT_MODEL, DRIFT, FAULT_OHMS } from "../cold/model-table.ts";

/** What a fault does at one pair of nets: volts there now, siemens added (shunts), or amps taken away. */
export interface Disturbance {
  readonly from: number;
  readonly to: number;
  readonly volts: number;
  readonly siemens: number;
  readonly amps: number;
}

/** Margin on the small-signal ohms at a shunt (see above). */
const Z_MARGIN = 0.1;

function across(circuit: ColdCircuit, volts: Float64Array, from: number, to: number): number {
  const ground = circuit.netlist.nets;
  return volts[from < 0 ? ground : from] - volts[to < 0 ? ground : to];
}

function shunt(
  circuit: ColdCircuit,
  volts: Float64Array,
  from: number,
  to: number,
  ohms: number,
): Disturbance[] {
  return [{ from, to, volts: across(circuit, volts, from, to), siemens: 1 / ohms, amps: 0 }];
}

function siteOf(circuit: ColdCircuit, part: string, junction: string | null): Site {
  const site = circuit.sites.get(siteKey(part, junction));
  if (site === undefined)
    throw new Error(`the circuit has no place for a fault at ${siteKey(part, junction)}`);
  return site;
}

/** What `fault` would change in the circuit that stands at `volts` with `values`. */
export function disturbances(
  circuit: ColdCircuit,
  values: Values,
  volts: Float64Array,
  fault: Fault,
): Disturbance[] {
  if (fault.of === "nets") {
    const [from, to] = fault.nets.map((net) => circuit.netOf(net));
    return shunt(circuit, volts, from, to, fault.value ?? FAULT_OHMS.leaky);
  }
  const site = siteOf(circuit, fault.part, fault.junction);
  const { resistors } = circuit.netlist;
  if (fault.mode === "short" || (fault.mode === "leaky" && !site.leaksInSeries))
    return shunt(
      circuit,
      volts,
      resistors.from[site.shunt],
      resistors.to[site.shunt],
      fault.value ?? FAULT_OHMS[fault.mode],
    );
  const share = fault.mode === "open" ? 1 : null;
  const found: Disturbance[] = [];
  for (const one of site.resistors) {
    if (fault.mode === "drift" && site.capacitors.length > 0) break;
    const siemens = values.siemens[one];
    const from = resistors.from[one];
    const to = resistors.to[one];
    const here = across(circuit, volts, from, to);
    const after = share === 1 ? 0 : seriesSiemens(fault.mode, siemens, fault.value);
    found.push({
      from,
      to,
      volts: here,
      siemens: after > siemens ? after - siemens : 0,
      amps: Math.max(0, siemens - after) * here,
    });
  }
  if (fault.mode === "open") found.push(...opened(circuit, values, volts, site));
  return found;
}

function seriesSiemens(
  mode: "short" | "leaky" | "drift" | "open",
  siemens: number,
  value: number | null,
): number {
  if (mode === "leaky") return 1 / (1 / siemens + (value ?? FAULT_OHMS.leakyInSeries));
  return value === null ? siemens / DRIFT.ohms : 1 / value;
}

function opened(circuit: ColdCircuit, values: Values, volts: Float64Array, site: Site): Disturbance[] {
  const { junctions, bjts } = circuit.netlist;
  const found: Disturbance[] = [];
  for (const one of site.junctions) {
    const from = junctions.from[one];
    const to = junctions.to[one];
    const here = across(circuit, volts, from, to);
    found.push({
      from,
      to,
      volts: here,
      siemens: 0,
      amps: junctionAmps(values.saturation[one], junctions.emissionVolts[one], here),
    });
  }
  if (site.bjt !== null) {
    const { index } = site.bjt;
    const saturation = values.bjtSaturation[index];
    const base = bjts.base[index];
    for (const [end, gain] of [
      [bjts.emitter[index], BJT_MODEL.forwardGain],
      [bjts.collector[index], BJT_MODEL.reverseGain],
    ] as const) {
      const here = across(circuit, volts, base, end);
      const amps = junctionAmps(saturation, bjts.emissionVolts, bjts.sign[index] * here) * (1 + 1 / gain);
      found.push({ from: base, to: end, volts: here, siemens: 0, amps });
    }
  }
  return found;
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
  if (fault.of === "nets") {
    const [from, to] = fault.nets.map((net) => circuit.netOf(net));
    return shuntWord(from, to, fault.value ?? FAULT_OHMS.leaky);
  }
  const site = siteOf(circuit, fault.part, fault.junction);
  const { resistors } = circuit.netlist;
  if (fault.mode === "short" || (fault.mode === "leaky" && !site.leaksInSeries))
    return shuntWord(
      resistors.from[site.shunt],
      resistors.to[site.shunt],
      fault.value ?? FAULT_OHMS[fault.mode],
    );
  return faultName(fault);
}

const shuntWord = (from: number, to: number, ohms: number): string =>
  `${Math.min(from, to)}~${Math.max(from, to)}@${ohms}`;

/** The most current in amps that these disturbances can set moving, without looking at what is around them. */
export function roughAmps(found: readonly Disturbance[]): number {
  return found.reduce((sum, one) => sum + Math.abs(one.amps) + Math.abs(one.volts) * one.siemens, 0);
}

/** The same, with the ohms around each shunt counted. */
export function boundAmps(found: readonly Disturbance[], linearised: Linearised): number {
  return found.reduce((sum, one) => {
    if (one.siemens === 0) return sum + Math.abs(one.amps);
    const around = Math.max(0, linearised.impedance(one.from, one.to)) * Z_MARGIN;
    return sum + (Math.abs(one.volts) * one.siemens) / (1 + one.siemens * around);
  }, 0);
}

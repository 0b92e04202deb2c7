/**
 * Which faults cannot move a farads reading. A change dY at a place moves the admittance at the probes by (v/V)^2 dY / (1 + dY Z),
 * v the volts there for V at the probes (reciprocity); for an added conductance the divisor is no smaller than 1. A branch taken
 * away can do more than that, which the margin allows for; what it does not cover is confirmed by a solve.
 */
import type { Fault } from "../board/fault.ts";
import { FAULT_OHMS } from "../board/fault-nominal.ts";
import type { Values } from "../circuit/netlist.ts";
import { siteKey } from "../cold/circuit-builder.ts";
import type { ColdCircuit } from "../cold/cold-circuit.ts";
import type { ComplexValues } from "../numeric/sparse-lu-complex.ts";
import { FARADS_HERTZ } from "./ranges.ts";

/** Margin for branches that a fault takes away. */
const TAKEN_AWAY = 1000;
/** The most, in farads, that `fault` moves the reading whose net voltages for 1 V at the probes are `perVolt`. */
export function faradsBound(
  circuit: ColdCircuit,
  values: Values,
  perVolt: ComplexValues,
  fault: Fault,
): number {
  const omega = 2 * Math.PI * FARADS_HERTZ;
  const at = (part: Float64Array, net: number) => (net < 0 ? 0 : part[net]);
  const square = (from: number, to: number) =>
    (at(perVolt.re, from) - at(perVolt.re, to)) ** 2 + (at(perVolt.im, from) - at(perVolt.im, to)) ** 2;
  if (fault.of === "nets") {
    const [from, to] = fault.nets.map((net) => circuit.netOf(net));
    return square(from, to) / (fault.value ?? FAULT_OHMS.leaky) / omega;
  }
  const site = circuit.sites.get(siteKey(fault.part, fault.junction));
  if (site === undefined || site.bjt !== null) return Number.POSITIVE_INFINITY;
  const { resistors, junctions, capacitors } = circuit.netlist;
  if (fault.mode === "short" || (fault.mode === "leaky" && !site.leaksInSeries)) {
    const ohms = fault.value ?? FAULT_OHMS[fault.mode];
    return square(resistors.from[site.shunt], resistors.to[site.shunt]) / ohms / omega;
  }
  if (fault.mode === "drift" && fault.value !== null) return Number.POSITIVE_INFINITY;
  let bound = 0;
  for (const i of site.resistors) bound += square(resistors.from[i], resistors.to[i]) * values.siemens[i];
  for (const i of site.junctions)
    bound += (square(junctions.from[i], junctions.to[i]) * values.saturation[i]) / junctions.emissionVolts[i];
  for (const i of site.capacitors)
    bound += square(capacitors.from[i], capacitors.to[i]) * values.farads[i] * omega;
  return (bound * TAKEN_AWAY) / omega;
}

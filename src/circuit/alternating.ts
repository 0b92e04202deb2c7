/** Small-signal alternating current at zero bias: what a capacitance range measures. */
import { type ComplexValues, factorAndSolveComplex } from "../numeric/sparse-lu-complex.ts";
import type { Frame } from "./frame.ts";
import { JUNCTION_LEAK_SIEMENS, junctionSiemens } from "./junction.ts";
import { NET_LEAK_SIEMENS, type Netlist, type Values } from "./netlist.ts";

/** Admittance between two nets in siemens. */
export interface Admittance {
  readonly re: number;
  readonly im: number;
  /** voltage of each net for 1 V at the probes */
  readonly perVolt: ComplexValues;
}

/** Null where the matrix cannot be factored. Y between `plus` and `minus` at `hertz`, every junction at 0 V. The frame's first extra pair is the pair of probes. */
export function admittance(
  netlist: Netlist,
  frame: Frame,
  values: Values,
  plus: number,
  minus: number,
  hertz: number,
): Admittance | null {
  const omega = 2 * Math.PI * hertz;
  const re = new Float64Array(frame.plan.entries + 1);
  const im = new Float64Array(frame.plan.entries + 1);
  const stamp = (slots: Int32Array, at: number, real: number, imaginary: number): void => {
    for (let corner = 0; corner < 4; corner++) {
      re[slots[at + corner]] += corner < 2 ? real : -real;
      im[slots[at + corner]] += corner < 2 ? imaginary : -imaginary;
    }
  };
  for (let net = 0; net < netlist.nets; net++) re[net] = NET_LEAK_SIEMENS;
  for (let i = 0; i < values.siemens.length; i++) {
    const siemens = values.siemens[i];
    if (siemens === 0) continue;
    const reactance = omega * netlist.henries[i];
    const square = 1 / siemens ** 2 + reactance ** 2;
    stamp(frame.resistors, 4 * i, 1 / siemens / square, reactance === 0 ? 0 : -reactance / square);
  }
  values.extra.forEach((one, i) => {
    stamp(frame.extra, 4 * (i + 1), one.siemens, 0);
  });
  for (let i = 0; i < values.saturation.length; i++) {
    if (values.saturation[i] === 0) continue;
    const slope = junctionSiemens(values.saturation[i], netlist.junctions.emissionVolts[i], 0);
    stamp(frame.junctions, 4 * i, slope + JUNCTION_LEAK_SIEMENS, 0);
  }
  for (let i = 0; i < values.farads.length; i++) stamp(frame.capacitors, 4 * i, 0, omega * values.farads[i]);
  stampBjts(netlist, frame, values, re);
  const rhs = { re: new Float64Array(netlist.nets + 1), im: new Float64Array(netlist.nets + 1) };
  if (plus >= 0) rhs.re[plus] += 1;
  if (minus >= 0) rhs.re[minus] -= 1;
  if (!factorAndSolveComplex(frame.plan, { re, im }, rhs)) return null;
  const at = (part: Float64Array, net: number) => (net < 0 ? 0 : part[net]);
  const vRe = at(rhs.re, plus) - at(rhs.re, minus);
  const vIm = at(rhs.im, plus) - at(rhs.im, minus);
  const square = vRe ** 2 + vIm ** 2;
  if (!(square > 0) || !Number.isFinite(square)) return null;
  const y = { re: vRe / square, im: -vIm / square };
  const perVolt = {
    re: rhs.re.map((real, i) => real * y.re - rhs.im[i] * y.im),
    im: rhs.re.map((real, i) => real * y.im + rhs.im[i] * y.re),
  };
  return { ...y, perVolt };
}

function stampBjts(netlist: Netlist, frame: Frame, values: Values, re: Float64Array): void {
  const { base, forwardGain, reverseGain, emissionVolts } = netlist.bjts;
  for (let i = 0; i < base.length; i++) {
    const slope =
      values.bjtSaturation[i] === 0 ? 0 : values.bjtSaturation[i] / emissionVolts + JUNCTION_LEAK_SIEMENS;
    const toEmitter = slope / forwardGain;
    const toCollector = slope / reverseGain;
    // At 0 V both junctions have the same slope: between collector and emitter that is a plain conductance.
    const stamps = [
      toEmitter + toCollector,
      -toCollector,
      -toEmitter,
      -toCollector,
      slope + toCollector,
      -slope,
      -toEmitter,
      -slope,
      slope + toEmitter,
    ];
    stamps.forEach((value, corner) => {
      re[frame.bjts[9 * i + corner]] += value;
    });
  }
}

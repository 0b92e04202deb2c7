/** The loops over all branches of the circuit on the desk: what leaves each net, what the diodes stamp, and one step of all nets. */
import { MATRIX, VECTOR } from "../numeric/sparse-lu.ts";
import { DESK } from "./desk.ts";

/** Begins the vector with what resistors and leaks take from each net; `ground` is the reference. */
export const resistorAmps = (() => {
  const vector = VECTOR;
  const { netVolts, resistorFrom, resistorTo, siemens, toReference } = DESK;
  return (ground: number, count: number): void => {
    for (let net = 0; net < ground; net++) vector[net] = toReference[net] * netVolts[net];
    vector[ground] = 0;
    for (let k = 0; k < count; k++) {
      const a = resistorFrom[k];
      const b = resistorTo[k];
      const through = siemens[k] * (netVolts[a] - netVolts[b]);
      vector[a] += through;
      vector[b] -= through;
    }
  };
})();

/** Adds what diodes take along their tangents; those from `paired` on stand at the reference. */
export const diodeAmps = (() => {
  const vector = VECTOR;
  const { netVolts, anode, cathode, groundedNet, groundedSign, at, amps, slope } = DESK;
  return (paired: number, diodes: number, gmin: number): void => {
    for (let j = 0; j < paired; j++) {
      const a = anode[j];
      const b = cathode[j];
      const here = netVolts[a] - netVolts[b];
      const through = amps[j] + slope[j] * (here - at[j]) + gmin * here;
      vector[a] += through;
      vector[b] -= through;
    }
    for (let j = paired; j < diodes; j++) {
      const net = groundedNet[j];
      const here = groundedSign[j] * netVolts[net];
      vector[net] += groundedSign[j] * (amps[j] + slope[j] * (here - at[j]) + gmin * here);
    }
  };
})();

/** Adds the diodes' slopes to the matrix. */
export const stampDiodes = (() => {
  const matrix = MATRIX;
  const { slots, groundedNet, slope } = DESK;
  return (paired: number, diodes: number, gmin: number): void => {
    for (let j = 0; j < paired; j++) {
      const siemens = slope[j] + gmin;
      const corner = 4 * j;
      matrix[slots[corner]] += siemens;
      matrix[slots[corner + 1]] += siemens;
      matrix[slots[corner + 2]] -= siemens;
      matrix[slots[corner + 3]] -= siemens;
    }
    for (let j = paired; j < diodes; j++) matrix[groundedNet[j]] += slope[j] + gmin;
  };
})();

/** Takes the vector, a step, from the voltages in hand; returns the most that a net moved, in volts, or what is no number. */
export const takeStep = (() => {
  const vector = VECTOR;
  const { netVolts } = DESK;
  return (nets: number): number => {
    let moved = 0;
    for (let net = 0; net < nets; net++) {
      netVolts[net] -= vector[net];
      const size = Math.abs(vector[net]);
      if (!(size <= moved)) moved = size;
    }
    return moved;
  };
})();

/** The net whose current is worst, and that current in amps. */
export const worstNet = (() => {
  const vector = VECTOR;
  return (nets: number): { readonly net: number; readonly amps: number } => {
    let net = 0;
    let amps = 0;
    for (let i = 0; i < nets; i++) {
      const size = Math.abs(vector[i]);
      if (!(size <= amps)) {
        amps = size;
        net = i;
      }
    }
    return { net, amps };
  };
})();

/**
 * A power circuit without the nets at which only plain resistors and free sources meet: those are eliminated once (Kron 1939),
 * and what is left is a handful of terminals.
 */
import type { PowerCircuit } from "./power-circuit.ts";

/** What keeps a net from hanging on nothing, siemens. */
const LEAK_SIEMENS = 1e-8;

/** Every source moves as a constant, a sine and a cosine of the mains' angle. */
export const SOURCE_PARTS = 3;

export interface ReducedCircuit {
  /** net -> terminal; -1 where it was eliminated */
  readonly terminals: Int32Array;
  readonly size: number;
  /** conductances between the terminals, row-major: plain resistors and free sources */
  readonly siemens: Float64Array;
  /** amps into each terminal by constant, sine and cosine, row-major */
  readonly amps: Float64Array;
  /** fills `volts` of all nets from those of the terminals */
  spread(atTerminals: Float64Array, sine: number, cosine: number, volts: Float64Array): void;
}

/** Nets that something other than a plain resistor or a free source ends on. */
function keptNets(circuit: PowerCircuit): Uint8Array {
  const kept = new Uint8Array(circuit.nets);
  const keep = ({ from, to }: { readonly from: number; readonly to: number }): void => {
    if (from >= 0) kept[from] = 1;
    if (to >= 0) kept[to] = 1;
  };
  circuit.diodes.forEach(keep);
  circuit.capacitors.forEach(keep);
  circuit.sources.filter((one) => one.limitAmps !== null).forEach(keep);
  circuit.resistors.filter((one) => one.heats !== undefined).forEach(keep);
  if (circuit.load !== null) keep(circuit.load);
  return kept;
}

/** Conductances of all nets with the sources' amps as three more columns. */
function allNets(circuit: PowerCircuit): Float64Array {
  const { nets } = circuit;
  const width = nets + SOURCE_PARTS;
  const rows = new Float64Array(nets * width);
  const stamp = (from: number, to: number, siemens: number): void => {
    if (from >= 0) rows[from * width + from] += siemens;
    if (to >= 0) rows[to * width + to] += siemens;
    if (from < 0 || to < 0) return;
    rows[from * width + to] -= siemens;
    rows[to * width + from] -= siemens;
  };
  for (let net = 0; net < nets; net++) rows[net * width + net] = LEAK_SIEMENS;
  for (const { from, to, ohms, heats } of circuit.resistors)
    if (heats === undefined) stamp(from, to, 1 / ohms);
  for (const one of circuit.sources) {
    if (one.limitAmps !== null) continue;
    const { from, to, ohms } = one;
    stamp(from, to, 1 / ohms);
    const parts = [
      one.offsetVolts,
      one.peakVolts * Math.cos(one.radians),
      one.peakVolts * Math.sin(one.radians),
    ];
    parts.forEach((volts, part) => {
      if (from >= 0) rows[from * width + nets + part] += volts / ohms;
      if (to >= 0) rows[to * width + nets + part] -= volts / ohms;
    });
  }
  return rows;
}

/** Takes net `k` out of the rows of all nets that are not `gone` yet. Its own row stays as it is. */
function eliminate(rows: Float64Array, nets: number, gone: Uint8Array, k: number): void {
  const width = nets + SOURCE_PARTS;
  const own = k * width;
  for (let i = 0; i < nets; i++) {
    if (i === k || gone[i] === 1) continue;
    const ratio = rows[i * width + k] / rows[own + k];
    if (ratio === 0) continue;
    for (let j = 0; j < width; j++) rows[i * width + j] -= ratio * rows[own + j];
    rows[i * width + k] = 0;
  }
  gone[k] = 1;
}

/** A net that was eliminated, as what it follows. */
interface Follower {
  readonly net: number;
  readonly nets: readonly number[];
  readonly shares: readonly number[];
  readonly source: readonly number[];
}

function followerOf(rows: Float64Array, nets: number, net: number): Follower {
  const width = nets + SOURCE_PARTS;
  const row = rows.subarray(net * width, (net + 1) * width);
  const own = row[net];
  const known: number[] = [];
  for (let j = 0; j < nets; j++) if (j !== net && row[j] !== 0) known.push(j);
  return {
    net,
    nets: known,
    shares: known.map((j) => -row[j] / own),
    source: [row[nets] / own, row[nets + 1] / own, row[nets + 2] / own],
  };
}

export function reduceCircuit(circuit: PowerCircuit): ReducedCircuit {
  const { nets } = circuit;
  const width = nets + SOURCE_PARTS;
  const kept = keptNets(circuit);
  const rows = allNets(circuit);
  const gone = new Uint8Array(nets);
  const order: number[] = [];
  for (let net = 0; net < nets; net++) {
    if (kept[net] === 1) continue;
    order.unshift(net);
    eliminate(rows, nets, gone, net);
  }
  const terminals = new Int32Array(nets).fill(-1);
  const left = [...terminals.keys()].filter((net) => kept[net] === 1);
  left.forEach((net, i) => {
    terminals[net] = i;
  });
  const size = left.length;
  const backwards = order.map((net) => followerOf(rows, nets, net));
  return {
    terminals,
    size,
    siemens: Float64Array.from(
      { length: size * size },
      (_, at) => rows[left[Math.floor(at / size)] * width + left[at % size]],
    ),
    amps: Float64Array.from(
      { length: size * SOURCE_PARTS },
      (_, at) => rows[left[Math.floor(at / SOURCE_PARTS)] * width + nets + (at % SOURCE_PARTS)],
    ),
    spread: (atTerminals, sine, cosine, volts) => {
      for (let i = 0; i < size; i++) volts[left[i]] = atTerminals[i];
      // The last one eliminated knows only terminals, the one before it that one as well.
      for (const { net, nets: known, shares, source } of backwards) {
        let sum = source[0] + source[1] * sine + source[2] * cosine;
        for (let j = 0; j < known.length; j++) sum += shares[j] * volts[known[j]];
        volts[net] = sum;
      }
    },
  };
}

/** Collects nets and branches while the parts of a board are laid out, and where each part can fail. */

import { ROOM_CELSIUS, saturationFor, thermalVolts } from "../circuit/junction.ts";
import type { ExtraResistor, Netlist, Values } from "../circuit/netlist.ts";
import { LEAST_OHMS, setSaturation } from "../circuit/netlist.ts";
import { inEliminationOrder } from "../circuit/numbering.ts";
import { BJT_MODEL, type JunctionModel, KNEE_FOLDS, TABLE_AMPS } from "./model-table.ts";

/** What one junction, winding or pin of a part is made of. */
export interface Site {
  /** the resistor (normally 0 siemens) that a short or a leak puts in parallel */
  readonly shunt: number;
  /** what an open takes away */
  readonly resistors: readonly number[];
  readonly junctions: readonly number[];
  readonly capacitors: readonly number[];
  /** transistor and which of its three junctions, or null */
  readonly bjt: { readonly index: number; readonly junction: "be" | "bc" | "ce" } | null;
  /** a leak of a fuse or link lies in series with it */
  readonly leaksInSeries: boolean;
}

export interface SiteParts {
  readonly resistors?: readonly number[];
  readonly junctions?: readonly number[];
  readonly capacitors?: readonly number[];
  readonly bjt?: Site["bjt"];
  readonly leaksInSeries?: boolean;
}

/** Junctions that stand in for a transistor of which one junction is open. */
export interface BjtSpares {
  readonly be: number;
  readonly bc: number;
  /** saturation amps of each when it is needed */
  readonly saturation: { readonly be: number; readonly bc: number };
}

/** Branches of parts that nobody has seen: pairs of a branch and an index into `parts`. */
interface AssumedBranches {
  readonly parts: readonly string[];
  readonly resistors: readonly (readonly [number, number])[];
  readonly junctions: readonly (readonly [number, number])[];
  readonly capacitors: readonly (readonly [number, number])[];
}

interface Deviations {
  /** standard deviation of each resistor and capacitor, as a share; of each junction in volts, among its type and of its type */
  readonly resistors: readonly number[];
  readonly junctions: readonly number[];
  readonly junctionTypes: readonly number[];
  readonly capacitors: readonly number[];
  readonly assumed: AssumedBranches;
}

export interface BuiltCircuit {
  readonly netlist: Netlist;
  readonly healthy: Values;
  readonly deviations: Deviations;
  readonly sites: ReadonlyMap<string, Site>;
  readonly bjtSpares: readonly BjtSpares[];
}

const VT = thermalVolts(ROOM_CELSIUS);

export class CircuitBuilder {
  readonly #reference: string;
  readonly #nets = new Map<string, number>();
  readonly #resistors = {
    from: [] as number[],
    to: [] as number[],
    ohms: [] as number[],
    sigma: [] as number[],
    henries: [] as number[],
  };
  readonly #junctions = {
    from: [] as number[],
    to: [] as number[],
    emission: [] as number[],
    saturation: [] as number[],
    sigma: [] as number[],
    typeSigma: [] as number[],
  };
  readonly #capacitors = {
    from: [] as number[],
    to: [] as number[],
    farads: [] as number[],
    sigma: [] as number[],
  };
  readonly #bjts = {
    base: [] as number[],
    collector: [] as number[],
    emitter: [] as number[],
    sign: [] as number[],
    saturation: [] as number[],
  };
  readonly #spares: BjtSpares[] = [];
  readonly #assumed = {
    parts: [] as string[],
    resistors: [] as [number, number][],
    junctions: [] as [number, number][],
    capacitors: [] as [number, number][],
  };
  readonly #sites = new Map<string, Site>();

  /** `reference` is the net that everything is measured against inside the solver. */
  constructor(reference: string) {
    this.#reference = reference;
  }

  /** The index of a net, made when first named; -1 for the reference. */
  net(name: string): number {
    if (name === this.#reference) return -1;
    const known = this.#nets.get(name);
    if (known !== undefined) return known;
    this.#nets.set(name, this.#nets.size);
    return this.#nets.size - 1;
  }

  find(name: string): number | null {
    return name === this.#reference ? -1 : (this.#nets.get(name) ?? null);
  }

  /** What `layOut` adds belongs to a part that nobody has seen. */
  assuming(ref: string, layOut: () => void): void {
    const before = {
      resistors: this.#resistors.from.length,
      junctions: this.#junctions.from.length,
      capacitors: this.#capacitors.from.length,
    };
    layOut();
    const index = this.#assumed.parts.push(ref) - 1;
    const mark = (branches: "resistors" | "junctions" | "capacitors", length: number) => {
      for (let i = before[branches]; i < length; i++) this.#assumed[branches].push([i, index]);
    };
    mark("resistors", this.#resistors.from.length);
    mark("junctions", this.#junctions.from.length);
    mark("capacitors", this.#capacitors.from.length);
  }

  /** `ohms` may be infinite (no path yet). Returns the resistor's index. */
  resistor(from: number, to: number, ohms: number, sigma: number, henries = 0): number {
    const r = this.#resistors;
    r.from.push(from);
    r.to.push(to);
    r.ohms.push(Math.max(ohms, LEAST_OHMS));
    r.sigma.push(sigma);
    r.henries.push(henries);
    return r.from.length - 1;
  }

  /** `volts` at 1 mA instead of the model's, where the board gives it. */
  junction(anode: number, cathode: number, model: JunctionModel, volts: number = model.volts): number {
    const emission = Math.max(model.emission, volts / KNEE_FOLDS / VT);
    const saturation = saturationFor(volts, TABLE_AMPS, emission * VT);
    return this.#addJunction(anode, cathode, emission, saturation, model.partVolts, model.typeVolts);
  }

  /** A junction that blocks until `volts`: a zener's breakdown, a varistor's knee. */
  knee(anode: number, cathode: number, volts: number): number {
    const emission = volts / KNEE_FOLDS / VT;
    return this.#addJunction(anode, cathode, emission, TABLE_AMPS * Math.exp(-KNEE_FOLDS), 0.03 * volts, 0);
  }

  #addJunction(
    anode: number,
    cathode: number,
    emission: number,
    saturation: number,
    partVolts: number,
    typeVolts: number,
  ): number {
    const j = this.#junctions;
    j.from.push(anode);
    j.to.push(cathode);
    j.emission.push(emission);
    j.saturation.push(saturation);
    j.sigma.push(partVolts);
    j.typeSigma.push(typeVolts);
    return j.from.length - 1;
  }

  capacitor(plus: number, minus: number, farads: number, sigma: number): number {
    const c = this.#capacitors;
    c.from.push(plus);
    c.to.push(minus);
    c.farads.push(farads);
    c.sigma.push(sigma);
    return c.from.length - 1;
  }

  /** A transistor with the spare junctions that remain when one of its own is open. */
  bjt(base: number, collector: number, emitter: number, sign: 1 | -1): number {
    const { baseEmitterVolts, forwardGain, reverseGain, emission } = BJT_MODEL;
    const one = saturationFor(baseEmitterVolts, TABLE_AMPS, emission * VT);
    const saturation = one / (1 / forwardGain + 1 / (1 + reverseGain));
    const b = this.#bjts;
    b.base.push(base);
    b.collector.push(collector);
    b.emitter.push(emitter);
    b.sign.push(sign);
    b.saturation.push(saturation);
    const spare = (other: number) =>
      sign > 0
        ? this.#addJunction(base, other, emission, 0, BJT_MODEL.partVolts, BJT_MODEL.typeVolts)
        : this.#addJunction(other, base, emission, 0, BJT_MODEL.partVolts, BJT_MODEL.typeVolts);
    this.#spares.push({
      be: spare(emitter),
      bc: spare(collector),
      saturation: { be: one, bc: saturation * (1 / reverseGain + 1 / (1 + forwardGain)) },
    });
    return b.base.length - 1;
  }

  /** Names a place where the part can fail: between two nets, with what an open takes away. */
  site(ref: string, junction: string | null, from: number, to: number, parts: SiteParts = {}): void {
    this.#sites.set(siteKey(ref, junction), {
      shunt: this.resistor(from, to, Number.POSITIVE_INFINITY, 0),
      resistors: parts.resistors ?? [],
      junctions: parts.junctions ?? [],
      capacitors: parts.capacitors ?? [],
      bjt: parts.bjt ?? null,
      leaksInSeries: parts.leaksInSeries ?? false,
    });
  }

  /** The circuit with its nets numbered for the solver: `net` and `find` give the new numbers from here on. */
  build(extra: readonly ExtraResistor[]): BuiltCircuit {
    const ends = (branches: { from: number[]; to: number[] }) => ({
      from: Int32Array.from(branches.from),
      to: Int32Array.from(branches.to),
    });
    const asLaidOut: Netlist = {
      nets: this.#nets.size,
      names: [...this.#nets.keys()],
      resistors: ends(this.#resistors),
      henries: Float64Array.from(this.#resistors.henries),
      junctions: {
        ...ends(this.#junctions),
        emissionVolts: Float64Array.from(this.#junctions.emission, (n) => n * VT),
      },
      capacitors: ends(this.#capacitors),
      bjts: {
        base: Int32Array.from(this.#bjts.base),
        collector: Int32Array.from(this.#bjts.collector),
        emitter: Int32Array.from(this.#bjts.emitter),
        sign: Int8Array.from(this.#bjts.sign),
        forwardGain: BJT_MODEL.forwardGain,
        reverseGain: BJT_MODEL.reverseGain,
        emissionVolts: BJT_MODEL.emission * VT,
      },
    };
    const { netlist, numberOf } = inEliminationOrder(asLaidOut);
    for (const [name, net] of this.#nets) this.#nets.set(name, numberOf(net));
    const healthy: Values = {
      siemens: Float64Array.from(this.#resistors.ohms, (ohms) => 1 / ohms),
      saturation: new Float64Array(this.#junctions.saturation.length),
      critical: new Float64Array(this.#junctions.saturation.length),
      farads: Float64Array.from(this.#capacitors.farads),
      bjtSaturation: Float64Array.from(this.#bjts.saturation),
      extra: extra.map((one) => ({ ...one, from: numberOf(one.from), to: numberOf(one.to) })),
    };
    this.#junctions.saturation.forEach((amps, i) => {
      setSaturation(netlist, healthy, i, amps);
    });
    const deviations = {
      resistors: this.#resistors.sigma,
      junctions: this.#junctions.sigma,
      junctionTypes: this.#junctions.typeSigma,
      capacitors: this.#capacitors.sigma,
      assumed: this.#assumed,
    };
    return { netlist, healthy, deviations, sites: this.#sites, bjtSpares: this.#spares };
  }
}

export function siteKey(ref: string, junction: string | null): string {
  return junction === null ? ref : `${ref}.${junction}`;
}

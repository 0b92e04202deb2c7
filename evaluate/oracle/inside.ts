/** The inside of one part of an oracle board: elements of a deck between named nets, and where a fault can sit on them. */
import type { Part } from "../../src/board/board.ts";
import { type Random, seededRandom } from "../../src/practice/seeded-random.ts";
import { logUniform, type Range, sortedNormal, uniform } from "./draw.ts";
import {
  DIODE_FAMILIES,
  type DiodeFamily,
  type DiodeName,
  OHMS_ROWS,
  type OhmsName,
  SATURATION_EXPONENT,
} from "./part-table.ts";

/** One element of the deck. `value` is ohms or farads; a diode or transistor has a `model` instead. */
export interface Element {
  readonly what: "resistor" | "diode" | "capacitor" | "transistor";
  readonly nets: readonly string[];
  readonly value: number;
  readonly model: string;
  /** stands for what is still moving when a reading is called settled; not in a circuit that is watched while it charges */
  readonly settledOnly?: true;
  /** sites of the part whose `open` takes this element away, or whose `drift` changes it */
  readonly sites: readonly string[];
}

/** Two nets that a short or a leak at a site joins; in a fuse or link a leak stands in series. */
export interface Site {
  readonly from: string;
  readonly to: string;
  readonly leaksInSeries: boolean;
}

/** The key of a part's only site. */
export const OWN_SITE = "";

const VOLTS_PER_EMISSION = 0.0256926;
const MILLIAMP = 1e-3;
const ROOM_CELSIUS = 25;

/** What is drawn once for the whole board. */
export interface Room {
  readonly seed: number;
  readonly celsius: number;
  /** seconds waited before a reading counts as settled */
  readonly settledSeconds: number;
}

/** A model line for a diode that drops `volts` at 1 mA and 25 degC. */
export function diodeModel(
  row: Pick<DiodeFamily, "gapVolts">,
  drawn: { volts: number; emission: number; seriesOhms: number; kneeAmps: number; farads: number },
  breakdown = "",
): string {
  const { volts, emission, seriesOhms, kneeAmps, farads } = drawn;
  const ratio = MILLIAMP / kneeAmps;
  const ideal = 0.5 * MILLIAMP * (ratio + Math.sqrt(ratio * ratio + 4));
  const saturation = ideal / Math.expm1((volts - MILLIAMP * seriesOhms) / (emission * VOLTS_PER_EMISSION));
  const constants = [
    `is=${saturation.toExponential(6)} n=${emission.toFixed(4)} rs=${seriesOhms.toFixed(4)}`,
    `ikf=${kneeAmps.toExponential(3)} cjo=${farads.toExponential(3)} eg=${row.gapVolts} xti=${SATURATION_EXPONENT}`,
  ];
  return `d(${constants.join(" ")}${breakdown})`;
}

/** A part being laid out: draws its own values and collects its elements and sites. */
export class Inside {
  readonly elements: Element[] = [];
  readonly sites = new Map<string, Site>();
  readonly part: Part;
  readonly room: Room;
  readonly railVolts: (net: string) => number | null;
  readonly random: Random;
  readonly #generation: number;
  readonly #netOf: (pin: string) => string | null;

  /** `generation` counts how often the part was replaced: each fitted one is of a new type. */
  constructor(
    part: Part,
    room: Room,
    generation: number,
    netOf: (pin: string) => string | null,
    railVolts: (net: string) => number | null,
  ) {
    this.part = part;
    this.room = room;
    this.railVolts = railVolts;
    this.#generation = generation;
    this.#netOf = netOf;
    this.random = seededRandom(room.seed, `part ${part.ref} ${generation}`);
  }

  /** The net of a pin, or null where this part has no such pin. */
  pin(name: string): string | null {
    return this.#netOf(name);
  }

  /** The net of a pin that every part of the kind has. */
  net(name: string): string {
    const net = this.#netOf(name);
    if (net === null) throw new Error(`${this.part.ref} has no pin ${name}`);
    return net;
  }

  /** A net inside the part. */
  inner(name: string): string {
    return `${this.part.ref}#${name}`;
  }

  /** Chance that is the same for all parts of one type on this board. */
  type(of: string): Random {
    const { kind, value } = this.part;
    return seededRandom(this.room.seed, `type ${of} ${kind} ${JSON.stringify(value)} ${this.#generation}`);
  }

  site(name: string, from: string, to: string, leaksInSeries = false): void {
    this.sites.set(name, { from, to, leaksInSeries });
  }

  resistor(from: string, to: string, ohms: number, ...sites: string[]): void {
    this.elements.push({ what: "resistor", nets: [from, to], value: ohms, model: "", sites });
  }

  /** A resistor that is there in settled readings only. */
  settledResistor(from: string, to: string, ohms: number, ...sites: string[]): void {
    this.elements.push({
      what: "resistor",
      nets: [from, to],
      value: ohms,
      model: "",
      settledOnly: true,
      sites,
    });
  }

  /** A resistance of the table, or of the board's own nominal ohms, at the temperature of the room. */
  drawn(name: OhmsName, nominal?: number): number {
    const row = OHMS_ROWS[name];
    const type = Math.exp(row.typeShare * sortedNormal(this.type(name)));
    const given = nominal === undefined ? type : 1 + 0.3 * (type - 1);
    const part = Math.exp(row.partShare * sortedNormal(this.random));
    const warm = 1 + row.perKelvin * (this.room.celsius - ROOM_CELSIUS);
    return (nominal ?? row.ohms) * given * part * warm;
  }

  capacitor(plus: string, minus: string, farads: number, ...sites: string[]): void {
    this.elements.push({ what: "capacitor", nets: [plus, minus], value: farads, model: "", sites });
  }

  /**
   * A junction of a family with its leakage; `volts` where the board gives the drop.
   * @param breakdown - further constants of the model, as ` bv=15 ibv=5m`
   */
  diode(
    anode: string,
    cathode: string,
    name: DiodeName,
    sites: readonly string[],
    volts?: number,
    breakdown = "",
  ): void {
    const row: DiodeFamily = DIODE_FAMILIES[name];
    const type = this.type(name);
    const drop = (volts ?? row.volts) + row.typeSigma * sortedNormal(type);
    const drawn = {
      volts: drop + row.partSigma * sortedNormal(this.random),
      emission: uniform(type, row.emission),
      seriesOhms: logUniform(type, row.seriesOhms),
      kneeAmps: logUniform(type, row.kneeAmps),
      farads: logUniform(type, row.farads),
    };
    const model = diodeModel(row, drawn, breakdown);
    this.elements.push({ what: "diode", nets: [anode, cathode], value: 0, model, sites });
    this.resistor(cathode, anode, logUniform(this.random, row.leakOhms), ...sites);
  }

  /** A stack of junctions inside a chip that conducts from about `knee` volts on, with ohms behind it. */
  load(
    from: string,
    to: string,
    row: { knee: Range; emission: Range; ohms: Range; dividerOhms: Range },
  ): void {
    const type = this.type("load");
    const middle = this.inner(`load ${this.elements.length}`);
    const volts = uniform(type, row.knee) * (1 + 0.02 * sortedNormal(this.random));
    const drawn = { volts, emission: uniform(type, row.emission), seriesOhms: 1, kneeAmps: 1, farads: 1e-10 };
    const model = diodeModel({ gapVolts: 1.11 }, drawn);
    this.elements.push({ what: "diode", nets: [from, middle], value: 0, model, sites: [] });
    this.resistor(middle, to, logUniform(type, row.ohms) * (1 + 0.03 * sortedNormal(this.random)));
    this.resistor(from, to, logUniform(type, row.dividerOhms) * (1 + 0.03 * sortedNormal(this.random)));
  }

  transistor(collector: string, base: string, emitter: string, model: string, ...sites: string[]): void {
    this.elements.push({
      what: "transistor",
      nets: [collector, base, emitter],
      value: 0,
      model,
      sites,
    });
  }
}

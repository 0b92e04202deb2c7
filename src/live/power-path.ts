/** The board's power path as a circuit: from the feed through fuses, inrush part, bridge and bus to what the small supply draws. */
import type { Board, Part } from "../board/board.ts";
import { FAULT_OHMS } from "../board/fault-nominal.ts";
import { powerSwitches } from "../board/power-switches.ts";
import { RESISTANCE_MODELS } from "../cold/model-table.ts";
import { bleeders } from "./bleeders.ts";
import type { FaultedBoard } from "./faulted-board.ts";
import { coldOhms, filament, type Lamp } from "./filament.ts";
import { PATH_MODEL, POWER_JUNCTIONS, powerJunction, SUPPLY_MODEL } from "./live-models.ts";
import type { LiveView } from "./live-view.ts";
import { carriesPower } from "./live-view.ts";
import type {
  CapacitorBranch,
  DiodeBranch,
  PowerCircuit,
  PowerLoad,
  ResistiveBranch,
  SourceBranch,
} from "./power-circuit.ts";
import { FEED_MODEL, type PowerFeed } from "./power-feed.ts";
import { selfHeating } from "./self-heating.ts";
import { seriesPairs } from "./series-pairs.ts";
import type { SupplyPlan } from "./supply-plan.ts";

export interface PowerPath {
  readonly circuit: PowerCircuit;
  /** net -> number in the circuit */
  readonly nets: ReadonlyMap<string, number>;
  /** indexes of the resistors that are series lamps: one, or one in each of three lines */
  readonly lamps: readonly number[];
}

/** A connection through a part: its pins, its junction's name and what it measures when good. */
interface Through {
  readonly pins: readonly [string, string];
  readonly junction: string | null;
  readonly ohms: number;
}

function throughOf(part: Part): readonly Through[] {
  const { value, kind } = part;
  const plain = (ohms: number): readonly Through[] => [{ pins: ["1", "2"], junction: null, ohms }];
  switch (kind) {
    case "fuse":
    case "link":
    case "inductor":
    case "resistor":
    case "ntc":
    case "ptc":
      return carriesPower(part) ? plain(Math.max(value.ohms ?? RESISTANCE_MODELS[kind].ohms, 1e-3)) : [];
    case "choke": {
      const ohms = value.ohms ?? RESISTANCE_MODELS.choke.ohms;
      return [
        { pins: ["1", "2"], junction: "w12", ohms },
        { pins: ["3", "4"], junction: "w34", ohms },
      ];
    }
    case "transformer":
      return Object.entries(value.windings ?? {}).map(([junction, { pins, ohms }]) => ({
        pins,
        junction,
        ohms: Math.max(ohms ?? RESISTANCE_MODELS.winding.ohms, 1e-3),
      }));
    default:
      return [];
  }
}

const switches = new WeakMap<Board, ReturnType<typeof powerSwitches>>();

function switchesOf(board: Board): ReturnType<typeof powerSwitches> {
  const known = switches.get(board) ?? powerSwitches(board);
  switches.set(board, known);
  return known;
}

export class PathBuilder {
  readonly #view: LiveView;
  readonly #board: FaultedBoard;
  readonly #nets = new Map<string, number>();
  readonly #resistors: ResistiveBranch[] = [];
  readonly #diodes: DiodeBranch[] = [];
  readonly #capacitors: CapacitorBranch[] = [];
  readonly #sources: SourceBranch[] = [];
  readonly #lamps: number[] = [];

  constructor(view: LiveView, board: FaultedBoard, closed: ReadonlySet<string>) {
    this.#view = view;
    this.#board = board;
    for (const part of board.parts()) {
      this.#through(part);
      if (part.kind === "relay") this.#contact(part, closed);
      else if (part.kind === "bridge") this.#bridge(part);
      else if (part.kind === "diode") this.#diode(part);
      else if (part.kind === "capacitor") this.#capacitor(part);
      else if (part.kind === "varistor") this.#across(part.ref, null, "1", "2");
    }
    for (const pair of seriesPairs(view, board)) this.#pair(pair);
    for (const { from, to, ohms } of bleeders(view, board))
      this.#resistor(this.#number(from), this.#number(to), ohms, null);
    this.#switches();
    this.#leaksAndClips();
  }

  /** The number of a net that power flows through; null for any other. */
  #number(net: string | null): number | null {
    if (net === null) return null;
    if (net === this.#view.board.zero) return -1;
    const known = this.#nets.get(net);
    if (known !== undefined) return known;
    if (!this.#view.powerNets.has(net)) return null;
    this.#nets.set(net, this.#nets.size);
    return this.#nets.size - 1;
  }

  /** Numbers a net that only a fault or a load brings into the power path. */
  #take(net: string | null): number | null {
    const known = this.#number(net);
    if (known !== null || net === null) return known;
    this.#nets.set(net, this.#nets.size);
    return this.#nets.size - 1;
  }

  #resistor(from: number | null, to: number | null, ohms: number, part: Part | string | null): void {
    if (from === null || to === null || from === to || !Number.isFinite(ohms)) return;
    const ref = part === null || typeof part === "string" ? part : part.ref;
    const heats = part === null || typeof part === "string" ? undefined : selfHeating(part, ohms);
    const branch = { from, to, ohms: Math.max(ohms, 1e-3), part: ref };
    this.#resistors.push(heats === undefined ? branch : { ...branch, heats });
  }

  #pin(ref: string, pin: string): number | null {
    return this.#number(this.#board.netOf(ref, pin));
  }

  #across(ref: string, junction: string | null, one: string, far: string): void {
    const [from, to] = [this.#pin(ref, one), this.#pin(ref, far)];
    if (from !== null && to !== null) this.#resistor(from, to, this.#board.acrossOhms(ref, junction), ref);
  }

  #through(part: Part): void {
    const { roles, supplies } = this.#view;
    const plan = supplies.find((one) => one.transformer === part.ref);
    for (const { pins, junction, ohms } of throughOf(part)) {
      // Of a flyback's windings the primary counts once its switch has failed into a path; current windings always do.
      const failed = plan !== undefined && junction === plan.primary && this.#switchFailed(plan);
      if (plan !== undefined && !failed) continue;
      const [one, far] = pins.map((pin) => this.#board.netOf(part.ref, pin));
      const [from, to] = failed ? [this.#take(one), this.#take(far)] : [this.#number(one), this.#number(far)];
      // What lies off the path is not asked about: its faults then need no path of their own.
      if (from === null || to === null) continue;
      const plainOhms = this.#board.throughOhms(part.ref, junction, ohms);
      const limits = roles.inrush.includes(part.ref) || (part.kind !== "ntc" && part.kind !== "ptc");
      if (limits) this.#resistor(from, to, plainOhms, part);
    }
  }

  #switchFailed(plan: SupplyPlan): boolean {
    return Number.isFinite(this.#board.acrossOhms(plan.switcher, plan.through));
  }

  #contact(part: Part, closed: ReadonlySet<string>): void {
    const [from, to] = [this.#pin(part.ref, "com"), this.#pin(part.ref, "no")];
    if (from === null || to === null) return;
    const good = closed.has(part.ref) && !this.#board.isOpen(part.ref, "contact");
    const ohms = good ? PATH_MODEL.contactOhms : this.#board.acrossOhms(part.ref, "contact");
    this.#resistor(from, to, ohms, part.ref);
  }

  #junction(
    ref: string,
    junction: string | null,
    pins: readonly [string, string],
    model: { dropVolts: number; ohms: number },
  ): void {
    const [from, to] = [this.#pin(ref, pins[0]), this.#pin(ref, pins[1])];
    if (from === null || to === null || from === to) return;
    this.#resistor(from, to, this.#board.acrossOhms(ref, junction), ref);
    if (!this.#board.isOpen(ref, junction)) this.#diodes.push({ from, to, ...model, part: ref });
  }

  #bridge(part: Part): void {
    for (const ac of ["ac1", "ac2", "ac3"]) {
      if (!part.pins.has(ac)) continue;
      this.#junction(part.ref, `${ac}plus`, [ac, "plus"], POWER_JUNCTIONS.bridge);
      this.#junction(part.ref, `minus${ac}`, ["minus", ac], POWER_JUNCTIONS.bridge);
    }
  }

  #diode(part: Part): void {
    if (part.value.type === "signal") return;
    this.#junction(part.ref, null, ["a", "k"], powerJunction(part.value.type));
  }

  /** X capacitors only where they have failed: their few tens of milliamps do not matter to the path. */
  #capacitor(part: Part): void {
    this.#across(part.ref, null, "plus", "minus");
    const [from, to] = [this.#pin(part.ref, "plus"), this.#pin(part.ref, "minus")];
    const onLine = [...part.pins.values()].every((net) => this.#view.lineNets.has(net));
    if (from === null || to === null || from === to || onLine) return;
    const farads = this.#board.farads(part, part.value.farads ?? 0);
    if (farads < PATH_MODEL.leastFarads) return;
    this.#capacitors.push({ from, to, farads, part: part.ref });
  }

  /** Two in series with a middle of their own, taken as one. */
  #pair({ from, to, farads, ohms }: { from: string; to: string; farads: number; ohms: number }): void {
    const [one, far] = [this.#number(from), this.#number(to)];
    if (one === null || far === null) return;
    this.#resistor(one, far, ohms, null);
    if (farads >= PATH_MODEL.leastFarads) this.#capacitors.push({ from: one, to: far, farads, part: null });
  }

  /** Switches at rest block; a failed one is a resistance, and brings the motor's windings with it. */
  #switches(): void {
    const { board } = this.#view;
    for (const one of switchesOf(board)) {
      const part = board.parts.get(one.part);
      const junction =
        part?.kind === "module" ? one.site.slice(one.part.length + 1) : part?.kind === "igbt" ? "ce" : "ds";
      const ohms = this.#board.acrossOhms(one.part, junction);
      if (this.#board.part(one.part) === null || !Number.isFinite(ohms)) continue;
      this.#resistor(this.#take(one.high), this.#take(one.low), ohms, one.part);
    }
    for (const plan of this.#view.supplies) {
      if (!this.#switchFailed(plan)) continue;
      const drain = this.#take(this.#board.netOf(plan.switcher, plan.high));
      const ohms = this.#board.acrossOhms(plan.switcher, plan.through);
      this.#resistor(drain, this.#number(plan.back), ohms, plan.switcher);
    }
    for (const motor of this.#board.parts())
      if (motor.kind === "motor")
        for (const [one, far] of [
          ["u", "v"],
          ["v", "w"],
        ] as const) {
          const [from, to] = [motor.pins.get(one) ?? "", motor.pins.get(far) ?? ""].map(
            (net) => this.#nets.get(net) ?? null,
          );
          this.#resistor(from, to, motor.value.ohms ?? RESISTANCE_MODELS.motor.ohms, motor.ref);
        }
  }

  #leaksAndClips(): void {
    const { board, powerNets } = this.#view;
    for (const leak of this.#board.leaksAmong(new Set([board.zero, ...powerNets, ...this.#nets.keys()])))
      this.#resistor(
        this.#number(leak.nets[0]),
        this.#number(leak.nets[1]),
        leak.value ?? FAULT_OHMS.leaky,
        null,
      );
    for (const clip of this.#board.bench.clips) {
      const [one, far] = clip.at.map((place) => this.#number(this.#board.netAt(place)));
      this.#resistor(one, far, Math.max(clip.ohms, 0.01), null);
    }
  }

  /** Puts the feed on its places. False where it is not clipped to the power path (a rail, say). */
  feed(feed: PowerFeed): boolean {
    const { board } = this.#view;
    if (feed.kind === "bench") {
      const [from, to] = feed.at.map((place) => this.#number(this.#board.netAt(place)));
      if (from === null || to === null || from === to) return false;
      this.#source(from, to, feed.volts, 0, 0, FEED_MODEL.benchOhms, feed.limitAmps);
      return true;
    }
    const places = board.supply.at.map((net) => this.#number(net));
    if (places.length < 2 || places.includes(null)) return false;
    this.#mains(
      places.map((net) => net ?? -1),
      feed,
    );
    return true;
  }

  /** What a running motor takes from the bus, as a resistance at the mains' peak. */
  motor(watts: number): void {
    const { bus } = this.#view.roles;
    if (bus === null || watts <= 0) return;
    const peak = this.#view.board.supply.volts * (this.#view.board.supply.kind === "ac" ? Math.SQRT2 : 1);
    this.#resistor(this.#number(bus.plus), this.#number(bus.minus), peak ** 2 / watts, null);
  }

  #mains(places: readonly number[], feed: PowerFeed): void {
    const { supply } = this.#view.board;
    const ohms = FEED_MODEL.wiringOhms;
    if (places.length === 2) {
      const from = feed.kind === "lamp" ? this.#lampFrom(places[0], feed.watts) : places[0];
      if (supply.kind === "dc") this.#source(from, places[1], supply.volts, 0, 0, ohms, null);
      else this.#source(from, places[1], 0, supply.volts * Math.SQRT2, 0, ohms, null);
      return;
    }
    const star = this.#take("mains star point") ?? -1;
    const peak = (supply.volts * Math.SQRT2) / Math.sqrt(3);
    places.forEach((place, i) => {
      const from = feed.kind === "lamp" ? this.#lampFrom(place, feed.watts) : place;
      this.#source(from, star, 0, peak, (-2 * Math.PI * i) / places.length, ohms / 2, null);
    });
  }

  #lampFrom(place: number, watts: number): number {
    const socket = this.#take(`socket of the lamp at net ${place}`) ?? -1;
    const lamp = seriesLamp(this.#view.board, watts);
    this.#lamps.push(this.#resistors.length);
    this.#resistors.push({
      from: socket,
      to: place,
      ohms: coldOhms(lamp),
      part: null,
      heats: filament(lamp),
    });
    return socket;
  }

  #source(
    from: number,
    to: number,
    offsetVolts: number,
    peakVolts: number,
    radians: number,
    ohms: number,
    limitAmps: number | null,
  ): void {
    this.#sources.push({ from, to, offsetVolts, peakVolts, radians, ohms, limitAmps });
  }

  build(): PowerPath {
    return {
      circuit: {
        nets: this.#nets.size,
        resistors: this.#resistors,
        diodes: this.#diodes,
        capacitors: this.#capacitors,
        sources: this.#sources,
        load: null,
      },
      nets: this.#nets,
      lamps: this.#lamps,
    };
  }
}

/** Everything that a circuit's currents hang on, for telling two alike; what heats itself follows from its part and ohms. */
export function circuitText({ circuit, nets }: PowerPath): string {
  const { resistors, diodes, capacitors, sources } = circuit;
  return [
    [...nets.keys()].join(),
    resistors.map(({ from, to, ohms, part }) => `${part} ${from} ${to} ${ohms}`).join(),
    diodes.map(({ from, to, dropVolts, ohms, part }) => `${part} ${from} ${to} ${dropVolts} ${ohms}`).join(),
    capacitors.map(({ from, to, farads, part }) => `${part} ${from} ${to} ${farads}`).join(),
    sources.map(({ from, to }) => `${from} ${to}`).join(),
  ].join("|");
}

/** A lamp for one phase of the mains, whatever the board's own volts. */
export function seriesLamp(board: Board, watts: number): Lamp {
  const { volts, at } = board.supply;
  return { watts, ratedVolts: at.length > 2 ? volts / Math.sqrt(3) : volts };
}

/** What the small supplies draw, all of it where the first is fed (they hang on one bus); null where no feed is in the path. */
export function supplyLoad(view: LiveView, path: PowerPath, watts: number): PowerLoad | null {
  const number = (net: string) => (net === view.board.zero ? -1 : path.nets.get(net));
  for (const plan of view.supplies) {
    const [from, to] = [number(plan.feed), number(plan.back)];
    if (from !== undefined && to !== undefined && from !== to)
      return { from, to, watts, leastVolts: SUPPLY_MODEL.stopVolts };
  }
  return null;
}

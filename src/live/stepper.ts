/**
 * One moment after another of a power circuit, by backward Euler. Junctions are straight pieces, so that what the terminals do is
 * linear for each set of conducting ones: worked out once a set, and the load taken in by one rank-one correction (Sherman and
 * Morrison 1950). Beside the volts it carries how they follow the capacitors' volts at the start of the cycle.
 */
import { invertConductances } from "./inverse.ts";
import type { PowerCircuit, SourceBranch } from "./power-circuit.ts";
import { type ReducedCircuit, reduceCircuit, SOURCE_PARTS } from "./reduced-circuit.ts";
import { type Ends, gather, type Store, scatter, storesOf } from "./stores.ts";

/** A blocking junction's leak, siemens. */
const BLOCKING_SIEMENS = 1e-9;
/** A junction that conducts goes on to this much below its drop: one without current would chatter on rounding. */
const STICKS_VOLTS = 1e-4;
/** A set of conducting junctions is found within this many tries, or the last one is taken. */
const MOST_TRIES = 40;

/** What the terminals do while one set of junctions conducts. */
interface Piece {
  /** volts of each terminal for a volt held by each store, then for constant, sine and cosine; row-major */
  readonly response: Float64Array;
  /** volts that each terminal loses for an amp of load, and the load itself */
  readonly loss: Float64Array;
  readonly ownLoss: number;
  /** of a volt held by each store: what each store keeps (row-major), loses to an amp of load, and the load's own volts of it */
  readonly kept: Float64Array;
  readonly keptLoss: Float64Array;
  readonly atLoad: Float64Array;
  /** the pieces that one junction or limit turned over leads to */
  readonly next: (Piece | undefined)[];
}

export class Stepper {
  readonly circuit: PowerCircuit;
  readonly seconds: number;
  /** ohms of each resistor as they are now */
  readonly ohms: Float64Array;
  readonly #reduced: ReducedCircuit;
  readonly #stores: readonly Store[];
  readonly #diodes: readonly (Ends & { readonly dropVolts: number })[];
  readonly #sources: readonly Ends[];
  readonly #load: Ends | null;
  /** resistors that heat themselves, by their index */
  readonly #heaters: ReadonlyMap<number, Ends>;
  /** 1 where a junction conducts, then 1 where a source is at its limit */
  readonly #on: Uint8Array;
  #pieces = new Map<string | number, Piece>();
  #now: Piece | null = null;
  /** held volts, then 1, sine and cosine of the mains */
  readonly #inputs: Float64Array;
  /** volts of the terminals, and of the reference */
  readonly #terminals: Float64Array;
  /** volts of all nets, once somebody asks */
  readonly #nets: Float64Array;
  #spread = false;
  /** at the load: before this step, and what its siemens and its volts without it then were */
  #loadVolts = Number.NaN;
  readonly #drawn = { before: 0, siemens: 0, freeVolts: 0 };
  /** how the held volts, and the load's, follow those at the start of the cycle */
  #slopes: Float64Array;
  #moved: Float64Array;
  readonly #loadSlopes: Float64Array;

  constructor(circuit: PowerCircuit, seconds: number, reduced = reduceCircuit(circuit)) {
    this.circuit = circuit;
    this.seconds = seconds;
    this.#reduced = reduced;
    this.ohms = Float64Array.from(circuit.resistors, (one) => one.ohms);
    this.#stores = storesOf(
      circuit.capacitors,
      circuit.capacitors.map((one) => this.#ends(one)),
    );
    this.#diodes = circuit.diodes.map((one) => ({ ...this.#ends(one), dropVolts: one.dropVolts }));
    this.#sources = circuit.sources.map((one) => this.#ends(one));
    this.#load = circuit.load === null || circuit.load.watts <= 0 ? null : this.#ends(circuit.load);
    this.#heaters = new Map(
      circuit.resistors.flatMap((one, i) => (one.heats === undefined ? [] : [[i, this.#ends(one)] as const])),
    );
    this.#on = new Uint8Array(circuit.diodes.length + circuit.sources.length);
    const count = this.#stores.length;
    this.#inputs = new Float64Array(count + SOURCE_PARTS);
    this.#terminals = new Float64Array(reduced.size + 1);
    this.#nets = new Float64Array(circuit.nets);
    this.#slopes = new Float64Array(count * count);
    this.#moved = new Float64Array(count * count);
    this.#loadSlopes = new Float64Array(count);
  }

  #ends({ from, to }: { readonly from: number; readonly to: number }): Ends {
    const { terminals, size } = this.#reduced;
    return { from: from < 0 ? size : terminals[from], to: to < 0 ? size : terminals[to] };
  }

  /** The same circuit, as warm as this one is, in steps of other `seconds`. */
  inSteps(seconds: number): Stepper {
    const other = new Stepper(this.circuit, seconds, this.#reduced);
    other.ohms.set(this.ohms);
    return other;
  }

  /** Of capacitors side by side one value is held: how many there are. */
  get stores(): number {
    return this.#stores.length;
  }

  /** Volts held, from those of each capacitor. */
  gather(volts: Float64Array): Float64Array {
    return gather(this.#stores, this.circuit.capacitors, volts);
  }

  /** Volts of each capacitor, from those held. */
  scatter(held: Float64Array): Float64Array {
    return scatter(this.#stores, this.circuit.capacitors, held);
  }

  /** Changes the ohms of a resistor that heats itself; what was worked out before no longer holds. */
  setOhms(index: number, ohms: number): void {
    if (this.ohms[index] === ohms) return;
    this.ohms[index] = ohms;
    this.#pieces = new Map();
    this.#now = null;
  }

  /** Volts of all nets now. */
  get volts(): Float64Array {
    if (!this.#spread) {
      const at = this.#stores.length;
      this.#reduced.spread(this.#terminals, this.#inputs[at + 1], this.#inputs[at + 2], this.#nets);
      this.#spread = true;
    }
    return this.#nets;
  }

  across({ from, to }: { readonly from: number; readonly to: number }): number {
    const { volts } = this;
    return (from < 0 ? 0 : volts[from]) - (to < 0 ? 0 : volts[to]);
  }

  /** Volts of a resistor that heats itself. */
  acrossHeater(index: number): number {
    const ends = this.#heaters.get(index);
    return ends === undefined ? 0 : this.#apart(ends);
  }

  #apart({ from, to }: Ends): number {
    return this.#terminals[from] - this.#terminals[to];
  }

  conducts(diode: number): boolean {
    return this.#on[diode] === 1;
  }

  atLimit(source: number): boolean {
    return this.#on[this.circuit.diodes.length + source] === 1;
  }

  /** Volts of the source before its ohms. */
  static behind(source: SourceBranch, angle: number): number {
    return source.offsetVolts + source.peakVolts * Math.sin(angle + source.radians);
  }

  /** Amps that a source gives now. */
  given(index: number, angle: number): number {
    const source = this.circuit.sources[index];
    if (this.atLimit(index)) return source.limitAmps ?? 0;
    return (Stepper.behind(source, angle) - this.across(source)) / source.ohms;
  }

  /** Goes one step on; `held` are the stores' volts at its start, moved on to its end, `angle` that of the mains there. */
  step(held: Float64Array, angle: number): void {
    const inputs = this.#inputs;
    const count = this.#stores.length;
    for (let i = 0; i < count; i++) inputs[i] = held[i];
    inputs[count] = 1;
    inputs[count + 1] = Math.sin(angle);
    inputs[count + 2] = Math.cos(angle);
    for (let tries = 0; tries < MOST_TRIES; tries++) {
      this.#solve();
      if (!this.#switchOver(angle)) break;
    }
    if (this.#load !== null) this.#loadVolts = this.#apart(this.#load);
    this.#spread = false;
    for (let i = 0; i < count; i++) held[i] = this.#apart(this.#stores[i]);
  }

  #solve(): void {
    this.#now ??= this.#piece();
    const { response, loss, ownLoss } = this.#now;
    const inputs = this.#inputs;
    const volts = this.#terminals;
    const width = inputs.length;
    const { size } = this.#reduced;
    for (let i = 0, at = 0; i < size; i++) {
      let sum = 0;
      for (let j = 0; j < width; j++, at++) sum += response[at] * inputs[j];
      volts[i] = sum;
    }
    const { load } = this.circuit;
    if (this.#load === null || load === null) return;
    // The load as the siemens it has at the volts before.
    const free = this.#apart(this.#load);
    const before = Number.isNaN(this.#loadVolts) ? free : this.#loadVolts;
    const siemens = load.watts / Math.max(before, load.leastVolts) ** 2;
    const amps = (siemens * free) / (1 + siemens * ownLoss);
    for (let i = 0; i < size; i++) volts[i] -= amps * loss[i];
    this.#drawn.before = before;
    this.#drawn.siemens = siemens;
    this.#drawn.freeVolts = free;
  }

  /** Turns over what contradicts its state; false where nothing does. */
  #switchOver(angle: number): boolean {
    const diodes = this.#diodes;
    const on = this.#on;
    let changed = 0;
    let last = 0;
    for (let i = 0; i < diodes.length; i++) {
      const one = diodes[i];
      const now = this.#apart(one) > one.dropVolts - (on[i] === 1 ? STICKS_VOLTS : 0) ? 1 : 0;
      if (now === on[i]) continue;
      on[i] = now;
      last = i;
      changed++;
    }
    const { sources } = this.circuit;
    for (let i = 0; i < sources.length; i++) {
      const one = sources[i];
      if (one.limitAmps === null) continue;
      const at = diodes.length + i;
      const free = (Stepper.behind(one, angle) - this.#apart(this.#sources[i])) / one.ohms;
      const now = free > one.limitAmps ? 1 : 0;
      if (now === on[at]) continue;
      on[at] = now;
      last = at;
      changed++;
    }
    if (changed === 0) return false;
    const before = this.#now;
    if (changed > 1 || before === null) this.#now = this.#piece();
    else this.#now = before.next[last] ??= this.#piece();
    return true;
  }

  /** From here on the slopes are those against the volts held now. */
  startSlopes(): void {
    const count = this.#stores.length;
    this.#slopes.fill(0);
    for (let i = 0; i < count; i++) this.#slopes[i * count + i] = 1;
    this.#loadSlopes.fill(0);
  }

  /** How the volts held now (rows) follow those at the start (columns). */
  get slopes(): Float64Array {
    return this.#slopes;
  }

  /** Carries the slopes over the step just done. */
  carrySlopes(): void {
    const piece = this.#now;
    const count = this.#stores.length;
    if (piece === null || count === 0) return;
    const { kept, keptLoss, atLoad, ownLoss } = piece;
    const slopes = this.#slopes;
    const moved = this.#moved;
    const loaded = this.#load !== null;
    const { before, siemens, freeVolts } = this.#drawn;
    const share = 1 / (1 + siemens * ownLoss);
    const least = this.circuit.load?.leastVolts ?? 0;
    const steep = loaded && before > least ? (-2 * siemens * freeVolts * share * share) / before : 0;
    for (let column = 0; column < count; column++) {
      let amps = 0;
      if (loaded) {
        let free = 0;
        for (let j = 0; j < count; j++) free += atLoad[j] * slopes[j * count + column];
        amps = siemens * share * free + steep * this.#loadSlopes[column];
        this.#loadSlopes[column] = free - amps * ownLoss;
      }
      for (let i = 0; i < count; i++) {
        let sum = -amps * keptLoss[i];
        for (let j = 0; j < count; j++) sum += kept[i * count + j] * slopes[j * count + column];
        moved[i * count + column] = sum;
      }
    }
    this.#slopes = moved;
    this.#moved = slopes;
  }

  #apartIn(values: Float64Array, width: number, { from, to }: Ends, column: number): number {
    return values[from * width + column] - values[to * width + column];
  }

  /** What conducts, as a key. */
  #conducting(): string | number {
    const on = this.#on;
    if (on.length > 50) return on.join("");
    let key = 0;
    for (let i = 0; i < on.length; i++) key = 2 * key + on[i];
    return key;
  }

  #piece(): Piece {
    const key = this.#conducting();
    const known = this.#pieces.get(key);
    if (known !== undefined) return known;
    const inverse = this.#inverse();
    const injected = this.#injected();
    const { size } = this.#reduced;
    const width = this.#inputs.length;
    const response = new Float64Array((size + 1) * width);
    for (let i = 0; i < size; i++)
      for (let k = 0; k < size; k++) {
        const ohms = inverse[i * size + k];
        for (let j = 0; j < width; j++) response[i * width + j] += ohms * injected[k * width + j];
      }
    const load = this.#load;
    const loss = new Float64Array(size + 1);
    if (load !== null)
      for (let i = 0; i < size; i++)
        loss[i] =
          (load.from < size ? inverse[i * size + load.from] : 0) -
          (load.to < size ? inverse[i * size + load.to] : 0);
    const ownLoss = load === null ? 0 : this.#apartIn(loss, 1, load, 0);
    const stores = this.#stores;
    const count = stores.length;
    const piece: Piece = {
      response,
      loss,
      ownLoss,
      kept: new Float64Array(count * count),
      keptLoss: new Float64Array(count),
      atLoad: new Float64Array(count),
      next: [],
    };
    for (let i = 0; i < count; i++) {
      piece.keptLoss[i] = this.#apartIn(loss, 1, stores[i], 0);
      if (load !== null) piece.atLoad[i] = this.#apartIn(response, width, load, i);
      for (let j = 0; j < count; j++)
        piece.kept[i * count + j] = this.#apartIn(response, width, stores[i], j);
    }
    this.#pieces.set(key, piece);
    return piece;
  }

  #inverse(): Float64Array {
    const { size, siemens: plain } = this.#reduced;
    const matrix = Float64Array.from(plain);
    const stamp = ({ from, to }: Ends, siemens: number): void => {
      if (from < size) matrix[from * size + from] += siemens;
      if (to < size) matrix[to * size + to] += siemens;
      if (from === size || to === size) return;
      matrix[from * size + to] -= siemens;
      matrix[to * size + from] -= siemens;
    };
    const { diodes, sources } = this.circuit;
    for (const [i, ends] of this.#heaters) stamp(ends, 1 / this.ohms[i]);
    diodes.forEach((one, i) => {
      stamp(this.#diodes[i], this.#on[i] === 1 ? 1 / one.ohms : BLOCKING_SIEMENS);
    });
    for (const store of this.#stores) stamp(store, store.farads / this.seconds);
    sources.forEach((one, i) => {
      if (one.limitAmps !== null && !this.atLimit(i)) stamp(this.#sources[i], 1 / one.ohms);
    });
    invertConductances(size, matrix);
    return matrix;
  }

  /** Amps into each terminal by what is known: stores, drops of conducting junctions, sources; row-major. */
  #injected(): Float64Array {
    const { size, amps: free } = this.#reduced;
    const count = this.#stores.length;
    const width = this.#inputs.length;
    const rows = new Float64Array(size * width);
    for (let i = 0; i < size; i++)
      for (let part = 0; part < SOURCE_PARTS; part++)
        rows[i * width + count + part] = free[i * SOURCE_PARTS + part];
    const inject = ({ from, to }: Ends, column: number, amps: number): void => {
      if (from < size) rows[from * width + column] += amps;
      if (to < size) rows[to * width + column] -= amps;
    };
    this.#stores.forEach((store, i) => {
      inject(store, i, store.farads / this.seconds);
    });
    this.circuit.diodes.forEach((one, i) => {
      if (this.#on[i] === 1) inject(this.#diodes[i], count, one.dropVolts / one.ohms);
    });
    this.circuit.sources.forEach((one, i) => {
      if (one.limitAmps === null) return;
      const ends = this.#sources[i];
      if (this.atLimit(i)) {
        inject(ends, count, one.limitAmps);
        return;
      }
      inject(ends, count, one.offsetVolts / one.ohms);
      inject(ends, count + 1, (one.peakVolts * Math.cos(one.radians)) / one.ohms);
      inject(ends, count + 2, (one.peakVolts * Math.sin(one.radians)) / one.ohms);
    });
    return rows;
  }
}

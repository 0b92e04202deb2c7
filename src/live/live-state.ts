/** What a powered board shows, ready to be asked: volts, amps, warmth, and what somebody would see. */
import type { Observed, Place } from "../bench/event.ts";
import { busAfter } from "./bus-rest.ts";
import { withDividers } from "./dividers.ts";
import type { Found } from "./found.ts";
import type { Front } from "./front.ts";
import { AMPS_DOUBT, STARVED, SUPPLY_MODEL } from "./live-models.ts";
import { fans, lights } from "./logic-state.ts";
import { observedWords } from "./observed.ts";
import { partHeats } from "./part-heats.ts";
import { alternating, between, type LiveVolts, type Potential, steady } from "./potentials.ts";
import { feedShare } from "./power-feed.ts";
import type { PartHeat, RailState } from "./rail-state.ts";
import type { Running } from "./run-state.ts";
import { SUPPLY_MODES, type SupplyMode, type SupplyState } from "./secondaries.ts";
import type { Sign } from "./signs.ts";
import { type LiveTemperature, type Taken, temperatureOf } from "./temperature.ts";
import { boostedBus, rippleDoubt } from "./under-load.ts";

/** What the board draws at idle is guessed within a factor of some two: so is what that costs the bus, a share of it. */
function loadDoubt({ idleVolts, supplyVolts }: Front): number {
  return idleVolts.reduce(
    (most, idle, i) => (idle > 0 ? Math.max(most, 1 - (supplyVolts[i] ?? idle) / idle) : most),
    0,
  );
}

export interface LiveAmps {
  /** root mean square from mains, mean from a bench supply */
  readonly amps: number;
  readonly spread: number;
}

export class LiveState {
  readonly #found: Found;
  #stages: ReadonlyMap<string, Potential> | null = null;
  #known: ReadonlyMap<string, Potential> | null = null;
  #heats: readonly PartHeat[] | null = null;

  constructor(found: Found) {
    this.#found = found;
  }

  /** The words of a log's `power`, the most striking first. */
  get observed(): readonly Observed[] {
    const { tripped, front } = this.#found;
    if (tripped && front === null) return ["trip"];
    return observedWords({ ...this.#found, supply: this.supply.mode });
  }

  /** Parts that power opened: fuses blown, resistors burnt. */
  get opened(): readonly string[] {
    return (this.#found.front?.gave ?? []).flatMap(({ part }) => part ?? []);
  }

  /** Of several small supplies the one that is worst off. `why` goes with "the supply does nothing: ...". */
  get supply(): { readonly mode: SupplyMode; readonly why: string } {
    const { supplies } = this.#found;
    for (const mode of SUPPLY_MODES) {
      const found = supplies.find((supply) => supply.mode === mode);
      if (found !== undefined) return { mode, why: found.why };
    }
    return { mode: "none", why: "" };
  }

  get rails(): readonly RailState[] {
    return this.#found.rails;
  }

  /** Controllers that run. */
  get alive(): ReadonlySet<string> {
    return this.#found.alive;
  }

  /** Inrush relays that are pulled in. */
  get relaysIn(): ReadonlySet<string> {
    return this.#found.relaysIn;
  }

  /** Status lights: reference -> lit. */
  get lights(): ReadonlyMap<string, boolean> {
    return lights(this.#found.board, this.#found.alive);
  }

  /** Fans on the board's rails: reference -> turning, as far as their rail goes. */
  get fans(): ReadonlyMap<string, boolean> {
    return fans(this.#found.board, this.rails);
  }

  /** Does the part give its sign of life? Null where it has none, or is off the board. */
  givesSign({ part, kind }: Sign): boolean | null {
    if (this.#found.board.part(part) === null) return null;
    if (kind === "relay") return this.relaysIn.has(part);
    return (kind === "light" ? this.lights : this.fans).get(part) ?? null;
  }

  /** Watts that the small supplies draw together. */
  get supplyWatts(): number {
    return this.#found.supplies.reduce((sum, { watts }) => sum + watts, 0);
  }

  /** What it does with the load that it was told to drive; null where it was told nothing. */
  get run(): Running | null {
    return this.#found.run ?? null;
  }

  /** What the feed gives; null where nothing is fed. */
  get feedAmps(): LiveAmps | null {
    const { front, amps, feed } = this.#found;
    if (amps !== undefined) return { amps, spread: AMPS_DOUBT.share * amps + AMPS_DOUBT.amps };
    if (front === null) return null;
    const source = feed.kind === "bench" ? front.cycle.sourceMeanAmps : front.cycle.sourceAmps;
    const most = source.reduce((sum, one) => Math.max(sum, Math.abs(one)), 0);
    return { amps: most, spread: AMPS_DOUBT.share * most + AMPS_DOUBT.amps };
  }

  /** Are these the two places that the feed is on? */
  isFeed(red: Place, black: Place): boolean {
    const { feed, board, view } = this.#found;
    const places = feed.kind === "bench" ? feed.at : view.board.supply.at;
    const nets = places.map((place) => board.netAt(place));
    return [red, black].every((place) => nets.includes(board.netAt(place))) && red !== black;
  }

  /** Volts of the bus so many seconds after power went off; null where there is no bus or none of it was fed. */
  busAfter(seconds: number): number | null {
    return busAfter(this.#found, seconds);
  }

  /** Volts between two places, red less black; null where the model cannot say. */
  volts(red: Place, black: Place): LiveVolts | null {
    const one = this.#potential(red);
    const far = this.#potential(black);
    return one === null || far === null ? null : between(one, far, feedShare(this.#found.feed));
  }

  /** Watts that the part turns to heat, mean. */
  watts(part: string): number {
    return this.#partHeats().reduce((sum, heat) => (heat.part === part ? sum + heat.watts : sum), 0);
  }

  /** How warm a part reads; null where there is no such part on the board. */
  temperature(part: string, taken: Taken = {}): LiveTemperature | null {
    const { board, view } = this.#found;
    if (board.part(part) === null) return null;
    return temperatureOf(view.board, this.#partHeats(), part, taken);
  }

  #partHeats(): readonly PartHeat[] {
    this.#heats ??= partHeats(this.#found, this.#potentials());
    return this.#heats;
  }

  #potential(place: Place): Potential | null {
    const net = this.#found.board.netAt(place);
    if (net === null) return null;
    this.#stages ??= this.#told();
    return this.#stages.get(net) ?? this.#potentials().get(net) ?? null;
  }

  #potentials(): ReadonlyMap<string, Potential> {
    const { board, view } = this.#found;
    this.#stages ??= this.#told();
    this.#known ??= withDividers(board, this.#stages, view.lineNets);
    return this.#known;
  }

  /** Nets that the stages themselves tell of. */
  #told(): Map<string, Potential> {
    const { view, front, feed } = this.#found;
    const known = new Map<string, Potential>();
    const { zero } = view.board;
    known.set(zero, steady(zero, 0, 0));
    if (front !== null) this.#tellPath(known, front, feedShare(feed));
    for (const rail of this.rails) {
      if (!known.has(rail.back)) known.set(rail.back, steady(rail.back, 0, 0));
      const nominal = view.board.rails.find((one) => one.name === rail.name)?.volts ?? rail.volts;
      const spread = Math.max(rail.share * Math.abs(nominal), 0.005);
      known.set(rail.net, steady(rail.back, rail.volts, spread, rail.rippleVolts, 0.5 * rail.rippleVolts));
    }
    for (const supply of this.#found.supplies) this.#tellSupply(known, supply);
    return known;
  }

  #tellPath(known: Map<string, Potential>, front: Front, share: number): void {
    const { zero } = this.#found.view.board;
    const sagDoubt = this.#found.run?.sagDoubt ?? 0;
    // A bus that the small supply pulls down again and again stands anywhere below its peak.
    const doubt = this.#found.collapses ? STARVED.busDoubt : Math.hypot(share, loadDoubt(front), sagDoubt);
    // How deep a bus ripples follows from the load, which is guessed.
    const { run } = this.#found;
    const loadedNet = run === undefined ? null : (this.#found.view.roles.bus?.plus ?? null);
    for (const [net, number] of front.path.nets) {
      const wave = front.cycle.waves[number];
      const dcVolts = front.cycle.meanVolts[number];
      known.set(net, {
        domain: zero,
        dcVolts,
        dcSpread: doubt * Math.abs(dcVolts),
        wave,
        rippleVolts: 0,
        rippleSpread: this.#found.collapses
          ? STARVED.busRipple * Math.abs(dcVolts)
          : net === loadedNet
            ? rippleDoubt(run) * alternating(wave, null)
            : 0,
      });
    }
    const boosted = boostedBus(this.#found);
    if (boosted !== null) known.set(this.#found.view.roles.bus?.plus ?? "", boosted);
  }

  /** The switch's own feed, and its drain: at rest the primary's feed stands there. */
  #tellSupply(known: Map<string, Potential>, supply: SupplyState): void {
    const { board } = this.#found;
    const { plan } = supply;
    const own = board.netOf(plan.switcher, "vcc");
    const [low, high] = SUPPLY_MODEL.hiccupVolts;
    const runs = supply.mode === "runs" || supply.mode === "sags";
    if (own !== null && runs)
      known.set(own, steady(plan.back, SUPPLY_MODEL.ownVolts * supply.windingShare, SUPPLY_MODEL.ownSpread));
    if (own !== null && supply.mode === "hiccup")
      known.set(own, steady(plan.back, (low + high) / 2, (high - low) / 3, (high - low) / 3.5, 1));
    const drain = board.netOf(plan.switcher, plan.high);
    const feed = known.get(plan.feed);
    const through = !board.isOpen(plan.transformer, plan.primary) && board.part(plan.transformer) !== null;
    if (drain !== null && feed !== undefined && through && !known.has(drain)) {
      const busy = supply.mode === "nothing" ? 0 : 0.4 * Math.abs(feed.dcVolts);
      known.set(drain, { ...feed, rippleVolts: busy, rippleSpread: busy });
    }
  }
}

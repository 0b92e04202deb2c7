/** Which rail is made from which, and what all of them draw at given volts of the first. */
import type { RailRole } from "../board/roles.ts";
import type { FaultedBoard } from "./faulted-board.ts";
import { type Regulated, regulate } from "./linear-regulator.ts";
import { POWER_JUNCTIONS, RAIL_SHARE, REGULATOR_MODEL } from "./live-models.ts";
import type { LiveView } from "./live-view.ts";
import { type RailDraw, railDraws } from "./rail-load.ts";
import type { PartHeat, RailState } from "./rail-state.ts";

/** How a rail gets its volts. */
export type RailSource =
  | { readonly by: "winding" }
  | { readonly by: "regulator"; readonly part: string; readonly from: string }
  /** a resistor, with a zener across the rail that takes what the rail does not */
  | { readonly by: "dropper"; readonly part: string; readonly from: string; readonly zener: string | null }
  | { readonly by: "unknown" };

const UNKNOWN: RailSource = { by: "unknown" };

/** Where each rail comes from, and which are made from each. */
interface RailSources {
  readonly of: ReadonlyMap<string, RailSource>;
  readonly made: ReadonlyMap<string, readonly RailRole[]>;
}

const known = new WeakMap<LiveView, RailSources>();

function sourcesOf(view: LiveView): RailSources {
  const before = known.get(view);
  if (before !== undefined) return before;
  const { rails } = view.roles;
  const of = new Map(rails.map((rail) => [rail.name, sourceOf(view, rail)]));
  const from = (rail: RailRole): string | null => {
    const source = of.get(rail.name);
    return source?.by === "regulator" || source?.by === "dropper" ? source.from : null;
  };
  const made = new Map(rails.map(({ name }) => [name, rails.filter((one) => from(one) === name)]));
  known.set(view, { of, made });
  return { of, made };
}

export class RailTree {
  readonly #board: FaultedBoard;
  readonly rails: readonly RailRole[];
  readonly #draws = new Map<string, readonly RailDraw[]>();
  readonly #siemens = new Map<string, number>();
  readonly #sources: RailSources;

  /** `coils`: amps of relay coils that are pulled in, by rail. */
  constructor(view: LiveView, board: FaultedBoard, coils: ReadonlyMap<string, RailDraw>) {
    this.#board = board;
    this.rails = view.roles.rails;
    this.#sources = sourcesOf(view);
    for (const rail of this.rails) {
      const coil = coils.get(rail.name);
      const draws = [...railDraws(board, rail), ...(coil === undefined ? [] : [coil])];
      this.#draws.set(rail.name, draws);
      this.#siemens.set(
        rail.name,
        draws.reduce((sum, one) => sum + one.siemens, 0),
      );
    }
  }

  source(rail: RailRole): RailSource {
    return this.#sources.of.get(rail.name) ?? UNKNOWN;
  }

  draws(rail: RailRole): readonly RailDraw[] {
    return this.#draws.get(rail.name) ?? [];
  }

  #madeFrom(rail: RailRole): readonly RailRole[] {
    return this.#sources.made.get(rail.name) ?? [];
  }

  /** Amps drawn from the rail at these volts, what is made from it included. */
  draw(rail: RailRole, volts: number): number {
    let amps = (this.#siemens.get(rail.name) ?? 0) * volts;
    for (const child of this.#madeFrom(rail)) amps += this.#made(child, volts).amps;
    return amps;
  }

  /** What a rail made from another is, at that one's volts; `amps` are those taken from there. */
  #made(rail: RailRole, input: number): Regulated {
    const source = this.source(rail);
    const draw = (volts: number) => this.draw(rail, volts);
    if (source.by === "regulator") {
      const made = regulate(this.#board, source.part, rail.volts, input, draw);
      const quiet = input > 2 && this.#board.part(source.part) !== null ? REGULATOR_MODEL.quiescentAmps : 0;
      return { ...made, amps: made.amps + quiet };
    }
    if (source.by !== "dropper") return { volts: 0, amps: 0, watts: 0, limited: false };
    const nominal = this.#board.board.parts.get(source.part)?.value.ohms ?? 1000;
    const ohms =
      this.#board.part(source.part) === null
        ? Number.POSITIVE_INFINITY
        : this.#board.throughOhms(source.part, null, nominal);
    const siemens = draw(rail.volts) / rail.volts;
    const free = input / (1 + ohms * siemens);
    const clamped =
      source.zener !== null && this.#board.part(source.zener) !== null && !this.#board.isOpen(source.zener);
    const volts = Number.isFinite(ohms) ? (clamped ? Math.min(free, rail.volts) : free) : 0;
    const amps = (input - volts) / ohms;
    return { volts, amps, watts: amps * (input - volts), limited: false };
  }

  /** The rail at these volts and everything made from it. */
  settle(
    rail: RailRole,
    volts: number,
    rippleVolts: number,
    share: number,
    steady = true,
  ): readonly RailState[] {
    const own: RailState = {
      name: rail.name,
      net: rail.net,
      back: rail.back,
      volts,
      rippleVolts,
      share,
      steady,
      amps: this.draw(rail, volts),
    };
    const made = this.#madeFrom(rail).flatMap((child) => {
      const { volts: out, limited } = this.#made(child, volts);
      const passes = out < child.volts * 0.98;
      const ripple = passes ? (rippleVolts * out) / Math.max(volts, 0.1) : rippleVolts / 100;
      const doubt = limited ? RAIL_SHARE.hiccup : passes ? share + RAIL_SHARE.linear : RAIL_SHARE.linear;
      return this.settle(child, out, ripple, Math.min(doubt, RAIL_SHARE.hiccup), steady);
    });
    return [own, ...made];
  }

  /** Watts in what draws from the rails (plugs hang off the board) and in what makes one from another. */
  heats(states: readonly RailState[]): readonly PartHeat[] {
    const volts = new Map(states.map((state) => [state.name, state.volts]));
    return this.rails.flatMap((rail): readonly PartHeat[] => {
      const own = volts.get(rail.name) ?? 0;
      const square = own ** 2 + (states.find((one) => one.name === rail.name)?.rippleVolts ?? 0) ** 2;
      const drawn = this.draws(rail).flatMap(({ part, siemens }) =>
        part === null || this.#board.board.parts.get(part)?.plugged === true
          ? []
          : [{ part, watts: square * siemens }],
      );
      const source = this.source(rail);
      if (source.by !== "regulator" && source.by !== "dropper") return drawn;
      const made = this.#made(rail, volts.get(source.from) ?? 0);
      if (source.by === "regulator") return [...drawn, { part: source.part, watts: made.watts }];
      const spare = made.volts * (made.amps - this.draw(rail, made.volts));
      return source.zener === null ? drawn : [...drawn, { part: source.zener, watts: Math.max(0, spare) }];
    });
  }
}

/** Drop of a rail's rectifier at its working current, volts. */
export function rectifierDrop(type: string | undefined): number {
  return type === "schottky" ? POWER_JUNCTIONS.schottky.dropVolts : POWER_JUNCTIONS.fast.dropVolts;
}

function sourceOf(view: LiveView, rail: RailRole): RailSource {
  const { board, supplies, roles } = view;
  if (supplies.some((plan) => plan.outputs.some((output) => output.rail === rail.name)))
    return { by: "winding" };
  const railOn = (net: string | undefined) => roles.rails.find((one) => one.net === net)?.name;
  for (const part of board.parts.values()) {
    if (part.kind !== "regulator" || part.pins.get("out") !== rail.net) continue;
    const from = railOn(part.pins.get("in"));
    if (from !== undefined) return { by: "regulator", part: part.ref, from };
  }
  const feeder = board.parts.get(rail.from ?? "");
  if (feeder?.kind !== "resistor") return { by: "unknown" };
  const from = railOn([...feeder.pins.values()].find((net) => net !== rail.net));
  if (from === undefined) return { by: "unknown" };
  const zener = [...board.parts.values()].find(
    (part) => part.kind === "zener" && part.pins.get("k") === rail.net && part.pins.get("a") === rail.back,
  );
  return { by: "dropper", part: feeder.ref, from, zener: zener?.ref ?? null };
}

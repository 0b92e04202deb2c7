/**
 * What a power-up can still break, by what feeds the board. A lamp holds back the current of the mains and none of the energy in
 * the bus; a bench supply of some tens of volts brings neither; fed into a rail it reaches only what hangs on that rail.
 */
import type { PowerEvent } from "../bench/event.ts";
import type { Board } from "../board/board.ts";
import type { Sourced } from "../units/mark.ts";
import { viewOf } from "./circuit-view.ts";
import type { FaultPrior, KnockOn } from "./fault-prior.ts";
import { feedNets } from "./fed-nets.ts";

/** What does the harm when one fault brings another with it. */
export type HarmBy = "line current" | "bus energy" | "bus volts" | "rail volts";

/** What each knock-on rule needs to do its harm; common practice of the series lamp, sorted rule by rule. */
export const HARM_OF_RULE: Readonly<Record<string, HarmBy>> = {
  "leg-shoots-through": "bus energy",
  "module-takes-its-legs": "bus energy",
  "short-opens-fuse": "line current",
  "varistor-opens-fuse": "line current",
  "surge-past-varistor": "line current",
  "short-takes-bridge": "line current",
  "short-opens-limiter": "line current",
  "relay-never-closed": "line current",
  "leg-cracks-shunt": "bus energy",
  "motor-kills-leg": "bus energy",
  "weak-bus": "bus energy",
  "series-partner": "bus volts",
  "brake-burns-resistor": "line current",
  "supply-switch-opens-feed": "line current",
  "supply-switch-opens-line-fuse": "line current",
  "supply-switch-kills-feedback": "bus volts",
  "supply-switch-burns-control-feed": "bus volts",
  "supply-switch-raises-rails": "bus volts",
  "opto-passes-on": "bus volts",
  "clamp-open": "bus volts",
  "feedback-open-raises-rails": "rail volts",
  "regulator-through": "rail volts",
  "leak-turns-switch-on": "bus energy",
  "leak-at-input-turns-leg-on": "bus energy",
  "leak-to-logic": "rail volts",
  "switch-drives-gate-parts": "bus energy",
  "switch-kills-gate": "bus energy",
  "switch-kills-driver": "bus energy",
  "module-switch-kills-drive": "bus energy",
  "driver-kills-switch": "bus energy",
  "dry-drive-capacitor": "bus energy",
  "drive-to-controller": "rail volts",
  "weak-tank-kills-switch": "bus energy",
  "shorted-tank-kills-switch": "bus energy",
  "sensing-kills-switch": "bus energy",
  "low-drive-rail-kills-switch": "bus energy",
  "resonant-switch-takes-bridge": "line current",
};

interface HarmFigure extends Sourced {
  readonly figure: number;
}

const figure = (id: string, value: number, words: string): HarmFigure => ({
  id: `FH-${id}`,
  mark: "from memory",
  words,
  figure: value,
});

/** Every figure behind a feed's harm, as a share of what full mains does. */
export const FEED_HARM_ROWS = {
  oneSwitchOn: figure(
    "one-switch-on",
    0.8,
    "of what is found broken together when a board comes in: its owner has mostly switched it on more than once, the bench does once",
  ),
  breakingAmps: figure(
    "breaking-amps",
    10,
    "amps from which line current does all its harm to fuse, bridge and limiter; less does its share",
  ),
  idleEnergy: figure(
    "idle-energy",
    0.5,
    "on the mains with nothing told to run: gates are driven by themselves at this share of boards",
  ),
  lampEnergy: figure(
    "lamp-energy",
    0.2,
    "behind a lamp the bus is charged as ever, but nothing is told to run: this share starts by itself",
  ),
  lampVolts: figure(
    "lamp-volts",
    0.7,
    "a lamp leaves bus and rails their volts unless a short holds them down",
  ),
  lampOwn: figure("lamp-own", 0.3, "parts that die at switch-on with nothing else wrong, inrush held back"),
  startVolts: figure("start-volts", 80, "bus volts from which a small off-line supply starts: 50 to 100 V"),
  railVolts: figure(
    "rail-volts",
    0.1,
    "too many volts from a supply at its limit, at what hangs on the fed rail",
  ),
  railOwn: figure("rail-own", 0.05, "parts on a fed rail that die at nominal volts with nothing else wrong"),
} as const;

/** Harm of one feed beside that of full mains: shares from 0 to 1. */
export interface FeedHarm {
  /** of what breaks with nothing else wrong */
  readonly own: number;
  readonly by: Readonly<Record<HarmBy, number>>;
  /** parts that the feed reaches; null: all */
  readonly reaches: ReadonlySet<string> | null;
}

const FULL: FeedHarm = {
  own: 1,
  by: { "line current": 1, "bus energy": 1, "bus volts": 1, "rail volts": 1 },
  reaches: null,
};

/** What the power-up needs to say for its harm to be known. */
export type Feeding = Pick<PowerEvent, "feed" | "watts" | "volts" | "limitAmps" | "at" | "load">;

/** Volts and limit of a bench supply of a job that does not say: a low voltage with a small limit (common practice). */
const BENCH_VOLTS = 30;
const BENCH_AMPS = 0.2;
const LAMP_WATTS = 100;

/** What this feed still breaks, as shares of what full mains would. */
export function feedHarm(board: Board, { feed, watts, volts, limitAmps, at, load }: Feeding): FeedHarm {
  const rows = FEED_HARM_ROWS;
  const ofAmps = (amps: number): number => Math.min(1, amps / rows.breakingAmps.figure);
  if (feed === "mains")
    return load === undefined ? { ...FULL, by: { ...FULL.by, "bus energy": rows.idleEnergy.figure } } : FULL;
  if (feed === "lamp")
    return {
      own: rows.lampOwn.figure,
      by: {
        "line current": ofAmps((watts ?? LAMP_WATTS) / board.supply.volts),
        "bus energy": rows.lampEnergy.figure,
        "bus volts": rows.lampVolts.figure,
        "rail volts": rows.lampVolts.figure,
      },
      reaches: null,
    };
  const fed = typeof at === "object" ? feedNets(board, at) : null;
  const line = ofAmps(limitAmps ?? BENCH_AMPS);
  if (fed?.rail != null)
    return {
      own: rows.railOwn.figure,
      by: {
        "line current": line,
        "bus energy": 0,
        "bus volts": 0,
        "rail volts": rows.railVolts.figure,
      },
      reaches: partsOn(board, fed.nets),
    };
  const peak = board.supply.volts * (board.supply.kind === "ac" ? Math.SQRT2 : 1);
  const set = volts ?? BENCH_VOLTS;
  const share = Math.min(1, (set / peak) ** 2);
  return {
    own: share,
    by: {
      "line current": line,
      "bus energy": share,
      "bus volts": share,
      "rail volts": set < rows.startVolts.figure ? 0 : rows.lampVolts.figure,
    },
    reaches: fed === null ? null : behindBridge(board),
  };
}

/** Share of a knock-on's strength that is left under a feed. */
export function knockOnHarm(
  harm: FeedHarm,
  { rule, child }: Pick<KnockOn, "rule" | "child">,
  faults: readonly FaultPrior[],
): number {
  if (harm.reaches !== null && !reached(harm, faults[child])) return 0;
  return FEED_HARM_ROWS.oneSwitchOn.figure * harm.by[HARM_OF_RULE[rule] ?? "line current"];
}

/** Share of a part's own rate at power-up that is left under a feed. */
export function ownHarm(harm: FeedHarm, fault: FaultPrior): number {
  return reached(harm, fault) ? harm.own : 0;
}

function reached({ reaches }: FeedHarm, { part, fault }: FaultPrior): boolean {
  return reaches === null || fault.of === "nets" || reaches.has(part);
}

/** Parts on the fed rails by a pin that is not their ground: what only shares the ground is not fed. */
function partsOn(board: Board, nets: ReadonlySet<string>): ReadonlySet<string> {
  return new Set(
    [...board.parts.values()]
      .filter((part) => [...part.pins.values()].some((net) => nets.has(net)))
      .map((part) => part.ref),
  );
}

/** All but what stands before the bridge: its diodes let nothing back. */
function behindBridge(board: Board): ReadonlySet<string> {
  const { groupOf } = viewOf(board);
  return new Set([...board.parts.keys()].filter((ref) => groupOf.get(ref) !== "input"));
}

/** What somebody who switches the board on would see, in the log's words. */
import type { Observed } from "../bench/event.ts";
import type { Board } from "../board/board.ts";
import type { Fault } from "../board/fault.ts";
import type { FaultedBoard } from "./faulted-board.ts";
import { glow } from "./filament.ts";
import { type Front, meanBetween } from "./front.ts";
import type { LiveView } from "./live-view.ts";
import type { PowerFeed } from "./power-feed.ts";
import { seriesLamp } from "./power-path.ts";
import type { RailState } from "./rail-state.ts";
import type { SupplyMode } from "./secondaries.ts";

export interface Sight {
  readonly view: LiveView;
  readonly board: FaultedBoard;
  readonly feed: PowerFeed;
  readonly front: Front | null;
  readonly supply: SupplyMode;
  /** the feed cannot carry the small supply: it starts, pulls the bus down and stops */
  readonly collapses: boolean;
  readonly rails: readonly RailState[];
  readonly alive: ReadonlySet<string>;
  readonly relaysIn: ReadonlySet<string>;
  /** share of the time that a bench supply is at its limit */
  readonly limited: number;
}

/** Stages whose every active part an output needs. */
const WORKING_STAGES: ReadonlySet<string> = new Set([
  "inverter",
  "drive",
  "pfc",
  "sensor",
  "logic",
  "output",
  "chopper",
]);

/** Stages in which a short never lets a board work for long. */
const STEADY_STAGES: ReadonlySet<string> = new Set(["rectifier", "bus"]);

function harmless(mode: string, kind: string | undefined): boolean {
  return mode === "drift" || (kind === "capacitor" && mode === "open");
}

/** A bus under this share of the mains' peak feeds no output stage (common practice). */
const LEAST_BUS = 0.7;

function busStands(view: LiveView, front: Front | null): boolean {
  const { bus } = view.roles;
  const { supply, zero } = view.board;
  if (bus === null) return true;
  const volts = front === null ? null : meanBetween(front.path, front.rough, zero, bus.plus, bus.minus);
  const peak = supply.volts * (supply.kind === "ac" ? Math.SQRT2 : 1);
  return volts !== null && volts > LEAST_BUS * peak;
}

/** Is everything that an output needs soldered in? A motor pulled off its plug is not missed until the board is to drive it. */
function allThere(board: FaultedBoard): boolean {
  const { off, lifted } = board.bench;
  if (off.size === 0 && lifted.size === 0) return true;
  for (const part of board.board.parts.values()) {
    if (!WORKING_STAGES.has(part.stage ?? "") || part.kind === "motor") continue;
    if (
      board.part(part.ref) === null ||
      [...part.pins.keys()].some((pin) => board.netOf(part.ref, pin) === null)
    )
      return false;
  }
  return true;
}

/** Does the fault leave every output as it was? */
function leavesWorking(board: Board, fault: Fault): boolean {
  if (fault.of === "nets") return (fault.value ?? 0) > 100_000;
  const part = board.parts.get(fault.part);
  if (fault.mode === "short" && STEADY_STAGES.has(part?.stage ?? "")) return false;
  return !WORKING_STAGES.has(part?.stage ?? "") || harmless(fault.mode, part?.kind);
}

/** Could every output stage work: rails right, controllers alive, relays in, nothing broken between controller and motor? */
export function everythingWorks({ view, board, front, supply, rails, alive, relaysIn }: Sight): boolean {
  if (view.supplies.length > 0 && supply !== "runs") return false;
  if (!board.faults.every((fault) => leavesWorking(view.board, fault))) return false;
  const right = rails.every((rail) => {
    const nominal = view.board.rails.find((one) => one.name === rail.name);
    return nominal !== undefined && Math.abs(rail.volts / nominal.volts - 1) <= 1.5 * nominal.tolerance;
  });
  if (!right || view.roles.controllers.some((one) => !alive.has(one.part))) return false;
  if ([...view.bypasses.keys()].some((ref) => !relaysIn.has(ref) || board.isOpen(ref, "contact")))
    return false;
  return allThere(board) && busStands(view, front);
}

/** How the lamp glows: pulsing with the supply; bright at first behind a PTC that then takes the short's volts. */
function lampWords({ view, front, feed, supply, collapses }: Sight): readonly Observed[] {
  if (collapses || supply === "hiccup") return ["lamp-pulsing"];
  if (front === null || feed.kind !== "lamp") return ["lamp-dark"];
  const lamp = seriesLamp(view.board, feed.watts);
  const [first, then] = [front.first, front.cycle].map(({ resistorWatts }) =>
    glow(lamp, Math.max(0, ...front.path.lamps.map((i) => resistorWatts[i]))),
  );
  return first === "lamp-bright" && then !== first ? [first, then] : [then];
}

/** The words, the most striking first. */
export function observedWords(sight: Sight): readonly Observed[] {
  const { front, feed, view } = sight;
  const words: Observed[] = [];
  if (front?.tripped === true) words.push("trip");
  if (front?.gave.some((one) => one.how === "fuse") === true) words.push("fuse-blew");
  const burnt = front?.gave.some(
    (one) => one.how === "burnt" && view.board.parts.get(one.part ?? "")?.role !== "fuse resistor",
  );
  if (burnt === true) words.push("smoke");
  if (feed.kind === "lamp") words.push(...lampWords(sight));
  if (feed.kind === "bench" && sight.limited > 0.5) words.push("limiting");
  if (words.length > 0) return words;
  return [feed.kind === "mains" && everythingWorks(sight) ? "runs" : "quiet"];
}

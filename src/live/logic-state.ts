/** Is the controller alive, does it see its bus, which relays has it pulled in, which lights are on? */
import type { Part } from "../board/board.ts";
import type { ControllerRole } from "../board/roles.ts";
import { seesBus } from "./bus-sense.ts";
import type { FaultedBoard } from "./faulted-board.ts";
import type { LiveView } from "./live-view.ts";
import type { RailState } from "./rail-state.ts";
import { isFan } from "./signs.ts";
import { isGone } from "./supply-state.ts";

/** A controller works within this share of its rail's volts: brown-out at 8 to 15 % under, damage some way over (common practice). */
const WORKS = { least: 0.88, most: 1.25 } as const;
/** A rail with more than this riding on it resets the controller again and again, a share of its volts (from memory). */
const MOST_RIPPLE = 0.08;
/** A relay pulls in from this share of its coil's volts (data sheets: 70 to 75 %). */
const PULL_IN = 0.72;

function onNet(board: FaultedBoard, net: string): readonly Part[] {
  return board
    .parts()
    .filter((part) => [...part.pins.keys()].some((pin) => board.netOf(part.ref, pin) === net));
}

/** Is its reset pin let go: pulled up, and not held down? */
function resetFree(board: FaultedBoard, part: Part, rail: string): boolean {
  for (const [pin, net] of part.pins) {
    if (!/rst|reset/i.test(pin)) continue;
    if (Number.isFinite(board.acrossOhms(part.ref, pin))) return false;
    const round = onNet(board, net);
    const ups = round.filter((one) => one.kind === "resistor" && [...one.pins.values()].includes(rail));
    const had = [...board.board.parts.values()].some(
      (one) =>
        one.kind === "resistor" &&
        [...one.pins.values()].includes(rail) &&
        [...one.pins.values()].includes(net),
    );
    if (had && ups.every((one) => isGone(board, one.ref))) return false;
    if (round.some((one) => one.kind === "capacitor" && board.isShort(one.ref, null, 5000))) return false;
  }
  return true;
}

/** A controller runs: its rail is right and steady, it is joined to it, and nothing holds its reset. */
export function isAlive(board: FaultedBoard, role: ControllerRole, rails: readonly RailState[]): boolean {
  const part = board.part(role.part);
  const rail = rails.find((one) => one.name === role.rail);
  const nominal = board.board.rails.find((one) => one.name === role.rail)?.volts;
  if (part === null || rail === undefined || nominal === undefined) return false;
  if (board.netOf(part.ref, "vdd") === null || board.netOf(part.ref, "gnd") === null) return false;
  if (board.isOpen(part.ref, "supply") || board.isShort(part.ref, "supply")) return false;
  const share = rail.volts / nominal;
  if (share < WORKS.least || share > WORKS.most || !rail.steady || rail.rippleVolts > MOST_RIPPLE * nominal)
    return false;
  return resetFree(board, part, role.net);
}

/** Can the controller's pin reach this net's driver: straight, or through resistors that are good? */
function commanded(board: FaultedBoard, alive: ReadonlySet<string>, net: string, depth = 2): boolean {
  for (const part of onNet(board, net)) {
    if (part.kind === "controller" && alive.has(part.ref)) {
      const pin = [...part.pins].find(([, at]) => at === net)?.[0] ?? "";
      if (!board.isOpen(part.ref, pin) && !board.isShort(part.ref, pin, 500)) return true;
    }
    if (depth === 0 || part.kind !== "resistor" || isGone(board, part.ref)) continue;
    const far = [...part.pins.values()].find((one) => one !== net);
    if (far !== undefined && far !== board.board.zero && commanded(board, alive, far, depth - 1)) return true;
  }
  return false;
}

/** Does something pull this net down when told to (or for good, being shorted)? */
function pulledDown(
  board: FaultedBoard,
  alive: ReadonlySet<string>,
  rails: readonly RailState[],
  net: string,
): boolean {
  for (const part of onNet(board, net)) {
    if (part.kind === "bjt" && part.pins.get("c") === net) {
      if (board.isShort(part.ref, "ce")) return true;
      const good = ["be", "bc", "ce"].every((junction) => board.fault(part.ref, junction)?.mode !== "open");
      const base = part.pins.get("b") ?? "";
      if (good && !board.isShort(part.ref, "be") && commanded(board, alive, base)) return true;
    }
    if (part.kind === "ic" && arrayPulls(board, alive, rails, part, net)) return true;
  }
  return false;
}

/** A driver array: output `oN` goes down when input `iN` is told to, and its supply is there. */
function arrayPulls(
  board: FaultedBoard,
  alive: ReadonlySet<string>,
  rails: readonly RailState[],
  part: Part,
  net: string,
): boolean {
  const out = [...part.pins].find(([, at]) => at === net)?.[0] ?? "";
  const channel = /^o(\d+)$/i.exec(out)?.[1];
  const index = [...part.pins.keys()].find(
    (pin) =>
      channel !== undefined && /^i\d+$/i.test(pin) && pin.endsWith(channel) && pin.length === out.length,
  );
  const input = part.pins.get(index ?? "");
  if (index === undefined || input === undefined) return false;
  if (board.isShort(part.ref, out)) return true;
  const rail = rails.find((one) => one.net === part.pins.get("vcc"));
  const fed = rail === undefined || rail.volts > 5;
  const broken = ["supply", out, index].some((site) => board.isOpen(part.ref, site));
  return fed && !broken && !board.isShort(part.ref, index, 500) && commanded(board, alive, input);
}

/** Relays across an inrush part that are pulled in: their controller does that once it sees the bus. */
export function relaysIn(
  view: LiveView,
  board: FaultedBoard,
  alive: ReadonlySet<string>,
  rails: readonly RailState[],
): ReadonlySet<string> {
  const found = new Set<string>();
  if (view.senses.some((sense) => alive.has(sense.controller) && !seesBus(board, sense))) return found;
  for (const ref of view.bypasses.keys()) {
    const relay = board.part(ref);
    if (relay === null || isGone(board, ref, "coil") || board.isShort(ref, "coil")) continue;
    const rail = rails.find((one) => one.net === relay.pins.get("coil1"));
    const volts = (rail?.volts ?? 0) * (board.fault(ref, "coil")?.mode === "drift" ? 0.6 : 1);
    if (volts < PULL_IN * (relay.value.coilVolts ?? 12)) continue;
    if (pulledDown(board, alive, rails, relay.pins.get("coil2") ?? "")) found.add(ref);
  }
  return found;
}

/** Status lights that a live controller drives: LED -> lit. */
export function lights(board: FaultedBoard, alive: ReadonlySet<string>): ReadonlyMap<string, boolean> {
  const lit = new Map<string, boolean>();
  for (const part of board.board.parts.values()) {
    if (part.kind !== "led") continue;
    const good = !isGone(board, part.ref) && !board.isShort(part.ref);
    lit.set(part.ref, good && commanded(board, alive, part.pins.get("a") ?? ""));
  }
  return lit;
}

/** A fan turns from this share of its rail on (from memory). */
const FAN_STARTS = 0.6;

/** Fans (chips on a rail whose role says so) whose rail is there: reference -> turning. */
export function fans(board: FaultedBoard, rails: readonly RailState[]): ReadonlyMap<string, boolean> {
  const turning = new Map<string, boolean>();
  for (const part of board.board.parts.values()) {
    if (!isFan(part)) continue;
    const rail = rails.find((one) => one.net === board.netOf(part.ref, "vcc"));
    const nominal = board.board.rails.find((one) => one.name === rail?.name)?.volts ?? 0;
    const fed = rail?.steady === true && rail.volts > FAN_STARTS * nominal;
    turning.set(part.ref, fed && !board.isOpen(part.ref, "supply") && !board.isShort(part.ref, "supply"));
  }
  return turning;
}

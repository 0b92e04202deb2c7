/** In which condition a board with these true faults is, by the oracle's own coarse rules. */
import type { Board, Part } from "../../src/board/board.ts";
import { busGroups } from "../../src/board/bus.ts";
import type { Fault, PartFault } from "../../src/board/fault.ts";
import type { NetGroups } from "../../src/board/net-groups.ts";
import { rolesOf, switchSite } from "./oracle-cascades.ts";
import { CONDITIONS, type Condition, HOLDS_OHMS } from "./power-table.ts";

const NOTHING: ReadonlySet<string> = new Set();

interface Scene {
  readonly board: Board;
  readonly groups: NetGroups;
}

/** Leaks above this are not noticed; a drift beyond this factor stops what it measures; capacitors from here on hold energy. From memory. */
const WEAK_OHMS = 20_000;
const FAR_DRIFT = 2;
const BULK_FARADS = 2e-6;

/** Ohms of a short or leak; no path where the fault makes none. */
function pathOhms(fault: Fault): number {
  if (fault.mode === "short") return fault.value ?? 0.2;
  return fault.mode === "leaky" ? (fault.value ?? 1000) : Number.POSITIVE_INFINITY;
}

function pinsOf(part: Part, junction: string | null): readonly string[] {
  if (junction === null) return [...new Set(part.pins.values())];
  const ground = part.pins.get("gnd") ?? part.pins.get("com") ?? "";
  const supply = part.pins.get("vdd") ?? part.pins.get("vcc") ?? "";
  if (junction === "supply" || junction === "drive") return [supply, ground];
  if (part.kind === "igbt" && junction === "ce") return [part.pins.get("c") ?? "", part.pins.get("e") ?? ""];
  if (part.kind === "mosfet" && junction === "ds")
    return [part.pins.get("d") ?? "", part.pins.get("s") ?? ""];
  if (part.kind === "regulator" && junction === "outgnd")
    return [part.pins.get("out") ?? "", part.pins.get("gnd") ?? ""];
  return [];
}

function netsOf({ board }: Scene, fault: Fault): readonly string[] {
  if (fault.of === "nets") return fault.nets;
  const part = board.parts.get(fault.part);
  return part === undefined ? [] : pinsOf(part, fault.junction);
}

function holds({ groups }: Scene, nets: readonly string[], one: string, other: string): boolean {
  return (
    nets.length === 2 &&
    nets.some((net) => groups.same(net, one)) &&
    nets.some((net) => groups.same(net, other))
  );
}

function lineCondition(scene: Scene, fault: PartFault, part: Part): Condition | null {
  const roles = rolesOf(scene.board);
  const inLine =
    roles.lineFuses.includes(part.ref) || roles.inrush.includes(part.ref) || part.kind === "choke";
  if (
    inLine &&
    (fault.mode === "open" || (fault.mode === "leaky" && part.kind === "fuse" && (fault.value ?? 30) > 100))
  )
    return "input-open";
  if (part.kind === "bridge" && fault.mode === "short") return "line-short";
  const nets = netsOf(scene, fault);
  const onLine = nets.length === 2 && nets.every((net) => roles.line.includes(net));
  const across = part.kind === "varistor" || part.kind === "capacitor";
  return onLine && across && pathOhms(fault) < HOLDS_OHMS.line ? "line-short" : null;
}

function switchCondition(scene: Scene, fault: PartFault): Condition | null {
  const roles = rolesOf(scene.board);
  const motor = roles.motorSwitches.some((one) => {
    const site = switchSite(scene.board, one.site, one.part);
    return site.part === fault.part && site.junction === fault.junction;
  });
  if (motor) return motorSwitchCondition(fault);
  if (roles.boosts.some((boost) => boost.switch === fault.part))
    return fault.mode === "short" ? "bus-short" : "weak";
  if (roles.switchers.some((one) => one.part === fault.part))
    return fault.mode === "short" && fault.junction === "ds" ? "bus-short" : "supply-dead";
  return null;
}

function motorSwitchCondition(fault: PartFault): Condition {
  if (fault.mode === "open") return "no-run";
  const ohms = pathOhms(fault);
  return ohms < HOLDS_OHMS.bus ? "half-leg" : ohms < WEAK_OHMS ? "weak" : "works";
}

function railCondition(scene: Scene, fault: Fault): Condition | null {
  const { board } = scene;
  if (pathOhms(fault) >= HOLDS_OHMS.rail) return null;
  const nets = netsOf(scene, fault);
  return board.rails.some((rail) => holds(scene, nets, rail.net, rail.against ?? board.zero))
    ? "rail-short"
    : null;
}

const SUPPLY_KINDS: ReadonlySet<Part["kind"]> = new Set(["transformer", "opto", "shuntref", "regulator"]);

/** A rail or bus does with this share of its capacitance (from memory). */
const ENOUGH_FARADS = 0.6;

/** Share of the capacitance between a capacitor's two nets that is left with it open or drifted. */
function faradsLeft({ board }: Scene, fault: PartFault, part: Part): number {
  const nets = new Set(part.pins.values());
  let all = 0;
  for (const other of board.parts.values())
    if (other.kind === "capacitor" && [...other.pins.values()].every((net) => nets.has(net)))
      all += other.value.farads ?? 0;
  const own = part.value.farads ?? 0;
  const left = fault.mode === "drift" ? Math.min(own, fault.value ?? own / 2) : 0;
  return all > 0 ? (all - own + left) / all : 1;
}

/** A capacitor that holds energy is missed when it is gone and no other stands beside it; one that only takes spikes off is not, for a while. */
function capacitorCondition(scene: Scene, fault: PartFault, part: Part): Condition {
  if (fault.mode === "short") return "no-run";
  if (fault.mode !== "leaky" && faradsLeft(scene, fault, part) >= ENOUGH_FARADS) return "works";
  const holdsEnergy = (part.value.farads ?? 0) >= BULK_FARADS;
  return holdsEnergy && pathOhms(fault) > WEAK_OHMS && fault.mode === "leaky"
    ? "works"
    : holdsEnergy
      ? "weak"
      : "works";
}

/** Parts by their stage, once nothing else told. */
function stageCondition(scene: Scene, fault: PartFault, part: Part): Condition {
  if (part.kind === "capacitor") return capacitorCondition(scene, fault, part);
  if (part.kind === "varistor" || part.kind === "led") return "works";
  if (fault.mode === "leaky" && pathOhms(fault) > WEAK_OHMS) return "works";
  const hard = fault.mode === "open" || pathOhms(fault) < HOLDS_OHMS.rail;
  if (SUPPLY_KINDS.has(part.kind) || part.stage === "supply") return hard ? "supply-dead" : "weak";
  if (part.stage === "standby") return hard ? "no-run" : "weak";
  if (part.kind === "controller") return "no-run";
  const far = fault.mode === "drift" && (fault.value ?? 0) > FAR_DRIFT * (part.value.ohms ?? 1);
  return hard || far ? "no-run" : "weak";
}

function conditionOfOne(scene: Scene, fault: Fault): Condition {
  const { board } = scene;
  const bus = rolesOf(board).bus;
  const nets = netsOf(scene, fault);
  if (bus !== null && holds(scene, nets, bus.plus, bus.minus) && pathOhms(fault) < HOLDS_OHMS.bus)
    return "bus-short";
  const rail = railCondition(scene, fault);
  if (rail !== null) return rail;
  if (fault.of === "nets") return pathOhms(fault) < 20_000 ? "no-run" : "weak";
  const part = board.parts.get(fault.part);
  if (part === undefined) return "works";
  return (
    lineCondition(scene, fault, part) ?? switchCondition(scene, fault) ?? stageCondition(scene, fault, part)
  );
}

/** Upper and lower switch of one phase both shorted are a short of the bus. */
function legShorted({ board }: Scene, faults: readonly Fault[]): boolean {
  const shorted = rolesOf(board).motorSwitches.filter((one) => {
    const site = switchSite(board, one.site, one.part);
    return faults.some(
      (fault) =>
        fault.of === "part" &&
        fault.part === site.part &&
        fault.junction === site.junction &&
        pathOhms(fault) < HOLDS_OHMS.bus,
    );
  });
  return shorted.some((one) => shorted.some((other) => other.phase === one.phase && other.side !== one.side));
}

/** @param off - parts that are off the board or have a pin lifted */
export function conditionOf(
  board: Board,
  faults: readonly Fault[],
  off: ReadonlySet<string> = NOTHING,
): Condition {
  const scene: Scene = { board, groups: busGroups(board) };
  const there = faults.filter((fault) => fault.of === "nets" || !off.has(fault.part));
  const found = new Set(there.map((fault) => conditionOfOne(scene, fault)));
  if (legShorted(scene, there)) found.add("bus-short");
  for (const ref of off) {
    const missing = board.parts.get(ref);
    if (missing !== undefined) found.add(stageOrLine(scene, missing));
  }
  return CONDITIONS.find((condition) => found.has(condition)) ?? "works";
}

/** A part that is not there is as one that is open; what is plugged in from outside is not missed. */
function stageOrLine(scene: Scene, part: Part): Condition {
  if (part.kind === "motor" || part.plugged) return "works";
  return conditionOfOne(scene, { of: "part", part: part.ref, junction: null, mode: "open", value: null });
}

/** Does a short lie between the two nets that a bench supply is clipped to? */
export function shortBetween(board: Board, faults: readonly Fault[], one: string, other: string): boolean {
  const scene: Scene = { board, groups: busGroups(board) };
  return faults.some(
    (fault) => pathOhms(fault) < HOLDS_OHMS.rail && holds(scene, netsOf(scene, fault), one, other),
  );
}

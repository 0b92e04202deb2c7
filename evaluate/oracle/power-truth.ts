/** In which condition a board with these true faults is, by the oracle's own coarse rules. */
import type { Board, Part } from "../../src/board/board.ts";
import { busGroups } from "../../src/board/bus.ts";
import { isEarth } from "../../src/board/earth-net.ts";
import type { Fault, PartFault } from "../../src/board/fault.ts";
import type { NetGroups } from "../../src/board/net-groups.ts";
import { deriveRoles } from "../../src/board/roles.ts";
import { rolesOf, switchSite } from "./oracle-cascades.ts";
import { CONDITIONS, type Condition, HOLDS_OHMS } from "./power-table.ts";
import { railsWith } from "./supply-truth.ts";

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

/** A path from the mains to earth below this trips the breaker of a workshop, 30 mA (IEC 61008). */
const TRIPS_OHMS = 7_000;

function lineCondition(scene: Scene, fault: PartFault, part: Part): Condition | null {
  const roles = rolesOf(scene.board);
  const inLine =
    roles.lineFuses.includes(part.ref) || roles.inrush.includes(part.ref) || part.kind === "choke";
  if (
    inLine &&
    (fault.mode === "open" || (fault.mode === "leaky" && part.kind === "fuse" && (fault.value ?? 30) > 100))
  )
    // with one of three phases gone the other two carry on
    return scene.board.supply.at.length > 2 ? "weak" : "input-open";
  if (part.kind === "bridge" && fault.mode === "short") return "line-short";
  const nets = netsOf(scene, fault);
  const onLine = nets.length === 2 && nets.every((net) => roles.line.includes(net));
  const across = part.kind === "varistor" || part.kind === "capacitor";
  if (onLine && across && pathOhms(fault) < HOLDS_OHMS.line) return "line-short";
  const earthed =
    nets.some((net) => isEarth(scene.board, net)) && nets.some((net) => roles.line.includes(net));
  if (!earthed || !across) return null;
  return pathOhms(fault) < TRIPS_OHMS ? "earth-short" : "works";
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
    return fault.mode === "short" && fault.junction === "ds" ? "bus-short" : supplyCondition(scene, fault);
  return null;
}

const SUPPLY_WORDS = { blows: "bus-short", dead: "supply-dead", weak: "weak" } as const;

/** Watts a leak of the supply's switch turns to heat: those that end it at once, and those that do so in time (from memory). */
const DRAIN_WATTS = { dead: 10, weak: 2 } as const;

/** A leak that no rail shows and that strains its neighbours still (from memory). */
const STRAINS_OHMS = 1000;

/**
 * A fault of the small supply: its rails tell. A part that is gone, or shorted, and that no rail misses kept spikes or ripple off the
 * others: such a board comes back.
 */
function supplyCondition(scene: Scene, fault: PartFault): Condition {
  const rails = railsWith(scene.board, [fault]);
  if (rails !== "works") return SUPPLY_WORDS[rails];
  if (fault.junction === "ds" && fault.mode === "leaky") {
    const watts = scene.board.supply.volts ** 2 / pathOhms(fault);
    return watts > DRAIN_WATTS.dead ? "supply-dead" : watts > DRAIN_WATTS.weak ? "weak" : "works";
  }
  return fault.mode === "open" || pathOhms(fault) < STRAINS_OHMS ? "weak" : "works";
}

function motorSwitchCondition(fault: PartFault): Condition {
  if (fault.mode === "open") return "no-run";
  const ohms = pathOhms(fault);
  return ohms < HOLDS_OHMS.bus ? "half-leg" : ohms < WEAK_OHMS ? "weak" : "works";
}

/** Watts that a leaking part bears (from memory: what a small chip or capacitor may turn to heat for years). */
const BORNE_WATTS = 0.15;

/** A short or leak across a rail: the rail tells, or the heat in it. */
function railCondition(scene: Scene, fault: Fault): Condition | null {
  const { board } = scene;
  const ohms = pathOhms(fault);
  if (ohms >= WEAK_OHMS) return null;
  const nets = netsOf(scene, fault);
  const rail = board.rails.find(({ net, against }) => holds(scene, nets, net, against ?? board.zero));
  if (rail === undefined) return null;
  const rails = railsWith(board, [fault]);
  if (rails === "dead" || rails === "blows") return "rail-short";
  return rails === "weak" || rail.volts ** 2 / ohms > BORNE_WATTS ? "weak" : "works";
}

const SUPPLY_KINDS: ReadonlySet<Part["kind"]> = new Set(["transformer", "shuntref", "regulator"]);

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
  const tank = deriveRoles(scene.board).resonants.some(({ capacitors }) => capacitors.includes(part.ref));
  if (fault.mode === "short" || (tank && fault.mode === "open")) return "no-run";
  if (fault.mode !== "leaky" && faradsLeft(scene, fault, part) >= ENOUGH_FARADS) return "works";
  const holdsEnergy = (part.value.farads ?? 0) >= BULK_FARADS;
  return holdsEnergy && pathOhms(fault) > WEAK_OHMS && fault.mode === "leaky"
    ? "works"
    : holdsEnergy
      ? "weak"
      : "works";
}

/** Shares of its own ohms from which on a path across a resistor does nothing, and from which on it shifts little (from memory). */
const BESIDE_RESISTOR = { works: 8, weak: 0.8 } as const;

/** From here on a resistor of the mains filter only empties its capacitor once the plug is pulled (common practice: 220 k to 2.2 M). */
const DISCHARGE_OHMS = 100_000;

/** A resistor that bleeds the bus or the mains filter is not missed; across any other a path tells by that resistor's own ohms. */
function resistorCondition({ board }: Scene, fault: PartFault, part: Part): Condition | null {
  const own = part.value.ohms ?? 1;
  if (fault.mode === "open" || fault.mode === "drift")
    return rolesOf(board).bleeders.includes(part.ref) || (part.stage === "input" && own >= DISCHARGE_OHMS)
      ? "works"
      : null;
  const ohms = pathOhms(fault);
  if (ohms > BESIDE_RESISTOR.works * own) return "works";
  return ohms > BESIDE_RESISTOR.weak * own || rolesOf(board).bleeders.includes(part.ref) ? "weak" : null;
}

/** Parts by their stage, once nothing else told. */
function stageCondition(scene: Scene, fault: PartFault, part: Part): Condition {
  if (part.kind === "capacitor") return capacitorCondition(scene, fault, part);
  const resistor = part.kind === "resistor" ? resistorCondition(scene, fault, part) : null;
  if (resistor !== null) return resistor;
  if (part.kind === "varistor" || part.kind === "led") return "works";
  // a clamp that is gone clamps nothing: whatever it protects goes on until the next spike
  if (part.kind === "zener" && fault.mode === "open" && part.stage !== "supply" && part.stage !== "output")
    return "works";
  // half the bridge carries on with the bus on one half wave: it runs, and gives in under load
  if (part.kind === "bridge" && fault.mode === "open") return "weak";
  if (fault.mode === "leaky" && pathOhms(fault) > WEAK_OHMS) return "works";
  if (SUPPLY_KINDS.has(part.kind) || part.stage === "supply") return supplyCondition(scene, fault);
  const hard = fault.mode === "open" || pathOhms(fault) < HOLDS_OHMS.rail;
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

/** Wires of a three-phase supply that open parts in line cut off. */
function phasesGone({ board }: Scene, faults: readonly Fault[]): number {
  const { lineFuses } = rolesOf(board);
  if (board.supply.at.length <= 2) return 0;
  const open = faults.flatMap((fault) =>
    fault.of === "part" && fault.mode === "open" && lineFuses.includes(fault.part) ? [fault.part] : [],
  );
  return new Set(open).size;
}

/** Where one of these is found, rails that stand wrong say nothing more. */
const POWERLESS = ["input-open", "line-short", "earth-short", "bus-short", "rail-short"] as const;

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
  if (phasesGone(scene, there) > 1) found.add("input-open");
  for (const ref of off) {
    const missing = board.parts.get(ref);
    if (missing !== undefined) found.add(stageOrLine(scene, missing));
  }
  if (!POWERLESS.some((condition) => found.has(condition))) {
    const rails = railsWith(board, there, off);
    if (rails !== "works") found.add(SUPPLY_WORDS[rails]);
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

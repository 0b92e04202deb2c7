/** What each part does, derived from the circuit and helped by `stage` and `role`; it can be printed (`rolesInWords`). */
import type { Board, Part, Rail } from "./board.ts";
import { type Bus, busCapacitors, busGroups, busLegs, findBus, lineNets } from "./bus.ts";
import { busBleeders } from "./bus-bleeders.ts";
import { supplyPin } from "./kinds.ts";
import { isNearlyWire, NetGroups, SHUNT_OHMS } from "./net-groups.ts";
import { type PowerSwitch, powerSwitches } from "./power-switches.ts";
import { type Resonant, resonants } from "./resonant.ts";

/** One of the switches between the bus and a phase. */
export interface MotorSwitch extends PowerSwitch {
  readonly side: "upper" | "lower";
  readonly phase: string;
}

/** The gate of one discrete switch and what hangs on it. References. */
export interface Gate {
  readonly switch: string;
  readonly net: string;
  /** zener diodes or suppressors between gate and emitter */
  readonly clamps: readonly string[];
  /** resistors between gate and emitter */
  readonly pullDowns: readonly string[];
  /** resistors (and turn-off diodes) that the drive comes through */
  readonly series: readonly string[];
}

/** A single-switch boost: reactor to the switch, diode from there to the bus. */
export interface Boost {
  readonly switch: string;
  readonly diode: string;
  readonly reactor: string;
  readonly net: string;
}

/** A rail and what makes and holds it. References. */
export interface RailRole {
  readonly name: string;
  readonly net: string;
  readonly back: string;
  readonly volts: number;
  readonly from: string | null;
  readonly rectifiers: readonly string[];
  readonly bulk: readonly string[];
  readonly decoupling: readonly string[];
  readonly loads: readonly string[];
}

/** A controller, the net that feeds it, and that rail's name where it is one. */
export interface ControllerRole {
  readonly part: string;
  readonly net: string;
  readonly back: string;
  readonly rail: string | null;
  readonly decoupling: readonly string[];
}

export interface Roles {
  readonly bus: Bus | null;
  /** nets at mains voltage */
  readonly line: readonly string[];
  readonly motorSwitches: readonly MotorSwitch[];
  readonly phases: readonly string[];
  readonly gates: readonly Gate[];
  readonly bridges: readonly string[];
  readonly boosts: readonly Boost[];
  readonly resonants: readonly Resonant[];
  /** off-line switcher chips (or their switch) and the transformers on their output */
  readonly switchers: readonly {
    readonly part: string;
    readonly transformer: string | null;
    /** the parts behind the drain that take its spikes: a diode, and what stands across the primary with it */
    readonly clamp: readonly string[];
  }[];
  readonly busCapacitors: readonly string[];
  readonly bleeders: readonly string[];
  readonly lineFuses: readonly string[];
  readonly inrush: readonly string[];
  readonly shunts: readonly string[];
  readonly rails: readonly RailRole[];
  readonly controllers: readonly ControllerRole[];
}

/** From this on a capacitor holds a rail up rather than takes spikes off it. Common practice. */
const BULK_FARADS = 4.7e-6;
/** Gate-emitter resistors run from 1 k to 100 k; 4.7-47 k usual. Common practice. */
const PULL_DOWN_OHMS = [470, 1e6] as const;
/** Gate resistors: 10-100 ohm usual. Common practice. */
const GATE_SERIES_OHMS = 470;

interface Circuit {
  readonly board: Board;
  readonly parts: readonly Part[];
  readonly bus: Bus | null;
  readonly line: ReadonlySet<string>;
  readonly groups: NetGroups;
}

function joins(part: Part, one: string, other: string): boolean {
  const nets = [...part.pins.values()];
  return nets.includes(one) && nets.includes(other);
}

function refs(parts: readonly Part[]): readonly string[] {
  return parts.map((part) => part.ref);
}

function motorSwitches(board: Board): readonly MotorSwitch[] {
  return busLegs(board).flatMap(({ upper, lower, phase }) => [
    { ...upper, side: "upper" as const, phase },
    { ...lower, side: "lower" as const, phase },
  ]);
}

function gateOf(circuit: Circuit, one: PowerSwitch): Gate | null {
  const { gate, low } = one;
  if (gate === null) return null;
  const across = circuit.parts.filter((part) => part.ref !== one.part && joins(part, gate, low));
  const onGate = circuit.parts.filter((part) => [...part.pins.values()].includes(gate));
  const ohms = (part: Part) => part.value.ohms ?? Number.NaN;
  return {
    switch: one.part,
    net: gate,
    clamps: refs(across.filter((part) => part.kind === "zener")),
    pullDowns: refs(
      across.filter(
        (part) =>
          part.kind === "resistor" && ohms(part) >= PULL_DOWN_OHMS[0] && ohms(part) <= PULL_DOWN_OHMS[1],
      ),
    ),
    series: refs(
      onGate.filter(
        (part) =>
          !across.includes(part) &&
          ((part.kind === "resistor" && ohms(part) <= GATE_SERIES_OHMS) || part.kind === "diode"),
      ),
    ),
  };
}

/** Switches from a reactor's end to the bus minus, with the diode from there to the bus plus. */
function boosts(circuit: Circuit, motor: readonly MotorSwitch[]): readonly Boost[] {
  const { bus, groups, parts, board } = circuit;
  if (bus === null) return [];
  const ofMotor = new Set(motor.map((one) => one.part));
  return powerSwitches(board).flatMap((one) => {
    if (one.gate === null || ofMotor.has(one.part) || !groups.same(one.low, bus.minus)) return [];
    const here = (part: Part, pin: string) => {
      const net = part.pins.get(pin);
      return net !== undefined && groups.same(net, one.high);
    };
    const reactor = parts.find((part) => part.kind === "inductor" && (here(part, "1") || here(part, "2")));
    const diode = parts.find(
      (part) => part.kind === "diode" && here(part, "a") && groups.same(part.pins.get("k") ?? "", bus.plus),
    );
    if (reactor === undefined || diode === undefined) return [];
    return [{ switch: one.part, diode: diode.ref, reactor: reactor.ref, net: one.high }];
  });
}

function switchers(circuit: Circuit): Roles["switchers"] {
  const transformers = circuit.parts.filter((part) => part.kind === "transformer");
  return circuit.parts
    .filter((part) => part.kind === "switcher")
    .map((part) => {
      const drain = part.pins.get("d") ?? "";
      const onDrain = transformers.find((one) => [...one.pins.values()].includes(drain));
      return {
        part: part.ref,
        transformer: onDrain?.ref ?? null,
        clamp: clampParts(circuit, onDrain, drain),
      };
    });
}

/** From the drain through a diode to parts that end at the transformer's primary again. */
function clampParts(circuit: Circuit, transformer: Part | undefined, drain: string): readonly string[] {
  const primary = Object.values(transformer?.value.windings ?? {})
    .map(({ pins }) => pins.map((pin) => transformer?.pins.get(pin) ?? ""))
    .find((ends) => ends.includes(drain));
  const feed = primary?.find((net) => net !== drain);
  return circuit.parts.flatMap((diode) => {
    if (diode.kind !== "diode" || diode.pins.get("a") !== drain) return [];
    const behind = diode.pins.get("k") ?? "";
    const back = circuit.parts.filter((part) => {
      const nets = [...part.pins.values()];
      return part !== diode && nets.length === 2 && nets.includes(behind) && nets.includes(feed ?? "");
    });
    return back.length > 0 ? [diode.ref, ...back.map((part) => part.ref)] : [];
  });
}

/** Capacitors across two nets, each taken with what reaches it through beads, links and small resistors. */
function capacitorsAcross(
  circuit: Circuit,
  filtered: NetGroups,
  one: string,
  other: string,
): readonly Part[] {
  return circuit.parts.filter((part) => {
    if (part.kind !== "capacitor") return false;
    const [plus = "", minus = ""] = part.pins.values();
    const straight = filtered.same(plus, one) && filtered.same(minus, other);
    return straight || (filtered.same(plus, other) && filtered.same(minus, one));
  });
}

function railRole(circuit: Circuit, filtered: NetGroups, rail: Rail): RailRole {
  const back = rail.against ?? circuit.board.zero;
  const capacitors = capacitorsAcross(circuit, filtered, rail.net, back);
  const isBulk = (part: Part) =>
    part.value.type === "electrolytic" || (part.value.farads ?? 0) >= BULK_FARADS;
  const windings = new Set(
    circuit.parts.filter((part) => part.kind === "transformer").flatMap((part) => [...part.pins.values()]),
  );
  const [outPin, inPin] = rail.volts > 0 ? ["k", "a"] : ["a", "k"];
  const rectifiers = circuit.parts.filter((part) => {
    const out = part.pins.get(outPin ?? "");
    const from = part.pins.get(inPin ?? "");
    if (part.kind !== "diode" || out === undefined || from === undefined) return false;
    return filtered.same(out, rail.net) && windings.has(from);
  });
  const loads = circuit.parts.filter((part) => {
    const feed = part.kind === "controller" ? "vdd" : part.kind === "regulator" ? "in" : "vcc";
    return part.pins.get(feed) === rail.net;
  });
  return {
    name: rail.name,
    net: rail.net,
    back,
    volts: rail.volts,
    from: rail.from ?? rectifiers[0]?.ref ?? null,
    rectifiers: refs(rectifiers),
    bulk: refs(capacitors.filter(isBulk)),
    decoupling: refs(capacitors.filter((part) => !isBulk(part))),
    loads: refs(loads),
  };
}

function controllers(circuit: Circuit, filtered: NetGroups): readonly ControllerRole[] {
  return circuit.parts
    .filter((part) => part.kind === "controller")
    .map((part) => {
      const net = part.pins.get(supplyPin("controller")) ?? "";
      const back = part.pins.get("gnd") ?? circuit.board.zero;
      const rail = circuit.board.rails.find((one) => filtered.same(one.net, net));
      return {
        part: part.ref,
        net,
        back,
        rail: rail?.name ?? null,
        decoupling: refs(capacitorsAcross(circuit, filtered, net, back)),
      };
    });
}

/** Small resistors that carry a bus, leg or switch current: both ends near the bus minus or a switch. */
function shunts(circuit: Circuit): readonly Part[] {
  const { bus, groups } = circuit;
  if (bus === null) return [];
  return circuit.parts.filter((part) => {
    if (part.kind !== "resistor" || (part.value.ohms ?? Number.MAX_VALUE) > SHUNT_OHMS) return false;
    return [...part.pins.values()].every((net) => groups.same(net, bus.minus) || groups.same(net, bus.plus));
  });
}

/** Limiters in the mains path, and those between bridge and bus: an NTC, a PTC, or a resistor beside a relay's contact. */
function inrush(circuit: Circuit): readonly Part[] {
  const contacts = circuit.parts.filter((part) => part.kind === "relay");
  const bypassed = (part: Part) =>
    contacts.some((relay) => {
      const [com, no] = [relay.pins.get("com"), relay.pins.get("no")];
      return com !== undefined && no !== undefined && joins(part, com, no);
    });
  return circuit.parts.filter((part) => {
    if (part.kind === "resistor") return bypassed(part);
    if (part.kind !== "ntc" && part.kind !== "ptc") return false;
    return bypassed(part) || [...part.pins.values()].every((net) => circuit.line.has(net));
  });
}

/** Derives what every part does. Order follows the board file throughout. */
export function deriveRoles(board: Board): Roles {
  const line = lineNets(board);
  const circuit: Circuit = {
    board,
    parts: [...board.parts.values()],
    bus: findBus(board),
    line,
    groups: busGroups(board),
  };
  const filtered = new NetGroups(board, (part) => isNearlyWire(part) || part.kind === "inductor");
  const motor = motorSwitches(board);
  const boost = boosts(circuit, motor);
  const driven = powerSwitches(board).filter((one) => one.gate !== null);
  const { bus } = circuit;
  return {
    bus,
    line: [...line],
    motorSwitches: motor,
    phases: [...new Set(motor.map((one) => one.phase))],
    gates: driven.flatMap((one) => gateOf(circuit, one) ?? []),
    bridges: refs(circuit.parts.filter((part) => part.kind === "bridge")),
    boosts: boost,
    resonants: resonants(board, bus),
    switchers: switchers(circuit),
    busCapacitors: bus === null ? [] : busCapacitors(board, bus),
    bleeders: bus === null ? [] : busBleeders(board, bus),
    lineFuses: refs(
      circuit.parts.filter(
        (part) => part.kind === "fuse" && [...part.pins.values()].some((net) => line.has(net)),
      ),
    ),
    inrush: refs(inrush(circuit)),
    shunts: refs(shunts(circuit)),
    rails: board.rails.map((rail) => railRole(circuit, filtered, rail)),
    controllers: controllers(circuit, filtered),
  };
}

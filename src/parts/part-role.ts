/** What a part does on its board, in the words that decide what may stand in for it. */

import type { Board, Part } from "../board/board.ts";
import { BUS_CAPACITOR_VOLTS, busGroups } from "../board/bus.ts";
import { isEarth } from "../board/earth-net.ts";
import type { Roles } from "../board/roles.ts";
import { said } from "../messages/said.ts";

export type PartRole =
  | "bridge"
  | "boost diode"
  | "boost switch"
  | "motor switch"
  | "power module"
  | "resonant switch"
  | "off-line switch"
  | "small switch"
  | "clamp diode"
  | "secondary diode"
  | "bootstrap diode"
  | "mains diode"
  | "fast diode"
  | "signal diode"
  | "gate clamp"
  | "zener"
  | "bus capacitor"
  | "rail capacitor"
  | "supply pin capacitor"
  | "ceramic"
  | "X capacitor"
  | "Y capacitor"
  | "resonant capacitor"
  | "film capacitor"
  | "varistor"
  | "inrush part"
  | "fuse"
  | "fuse resistor"
  | "shunt"
  | "high-voltage resistor"
  | "resistor"
  | "optocoupler"
  | "shunt reference"
  | "regulator"
  | "relay"
  | "controller"
  | "chip"
  | "transistor"
  | "other";

/** A role for a person. */
export const ROLE_WORDS: Readonly<Record<PartRole, string>> = {
  bridge: said`bridge`,
  "boost diode": said`boost diode`,
  "boost switch": said`boost switch`,
  "motor switch": said`motor switch`,
  "power module": said`power module`,
  "resonant switch": said`resonant switch`,
  "off-line switch": said`off-line switch`,
  "small switch": said`small switch`,
  "clamp diode": said`clamp diode`,
  "secondary diode": said`secondary diode`,
  "bootstrap diode": said`bootstrap diode`,
  "mains diode": said`mains diode`,
  "fast diode": said`fast diode`,
  "signal diode": said`signal diode`,
  "gate clamp": said`gate clamp`,
  zener: said`zener`,
  "bus capacitor": said`bus capacitor`,
  "rail capacitor": said`rail capacitor`,
  "supply pin capacitor": said`supply pin capacitor`,
  ceramic: said`ceramic`,
  "X capacitor": said`X capacitor`,
  "Y capacitor": said`Y capacitor`,
  "resonant capacitor": said`resonant capacitor`,
  "film capacitor": said`film capacitor`,
  varistor: said`varistor`,
  "inrush part": said`inrush part`,
  fuse: said`fuse`,
  "fuse resistor": said`fuse resistor`,
  shunt: said`shunt`,
  "high-voltage resistor": said`high-voltage resistor`,
  resistor: said`resistor`,
  optocoupler: said`optocoupler`,
  "shunt reference": said`shunt reference`,
  regulator: said`regulator`,
  relay: said`relay`,
  controller: said`controller`,
  chip: said`chip`,
  transistor: said`transistor`,
  other: said`other`,
};

/** From this on a resistor at a high voltage is one of a chain that drops it. Common practice: 47 k to 1 M; 33 k to 100 k where it balances two capacitors. */
const CHAIN_OHMS = 33_000;
/** The fuse resistor in the feed of a small supply: 2.2 to 10 ohm, here with room to spare. Common practice. */
const FUSE_RESISTOR_OHMS = 47;

const netsOf = (part: Part): readonly string[] => [...part.pins.values()];

/** Resistors that each carry a share of a mains or bus voltage: from such a net through rows in which nothing else hangs. */
export function highVoltageResistors(board: Board, roles: Roles): ReadonlySet<string> {
  const groups = busGroups(board);
  const on = new Map<string, Part[]>();
  for (const part of board.parts.values())
    for (const net of new Set(netsOf(part))) on.set(net, [...(on.get(net) ?? []), part]);
  const high = new Set<string>([
    ...roles.line,
    ...roles.phases,
    ...roles.boosts.map((one) => one.net),
    ...roles.resonants.map((one) => one.switch.high),
  ]);
  const isHigh = (net: string) => high.has(net) || (roles.bus !== null && groups.same(net, roles.bus.plus));
  const chain = [...board.parts.values()].filter(
    (part) => part.kind === "resistor" && (part.value.ohms ?? 0) >= CHAIN_OHMS,
  );
  const found = new Set<string>();
  for (let before = -1; before < found.size; ) {
    before = found.size;
    for (const part of chain) {
      const nets = netsOf(part);
      if (!nets.some(isHigh)) continue;
      found.add(part.ref);
      for (const net of nets) {
        const others = on.get(net) ?? [];
        if (others.length === 2 && others.every((one) => one.kind === "resistor")) high.add(net);
      }
    }
  }
  return found;
}

function diodeRole(roles: Roles, part: Part): PartRole {
  const { ref } = part;
  if (roles.boosts.some((one) => one.diode === ref)) return "boost diode";
  if (roles.switchers.some((one) => one.clamp.includes(ref))) return "clamp diode";
  if (roles.rails.some((one) => one.rectifiers.includes(ref))) return "secondary diode";
  const { type } = part.value;
  if (type === "signal") return "signal diode";
  if (type === "rectifier") return "mains diode";
  // From a rail up to a supply that rides on a phase: high voltage, and fast.
  if (part.stage === "drive" && (part.value.volts ?? 0) >= 400) return "bootstrap diode";
  return "fast diode";
}

function capacitorRole(board: Board, roles: Roles, part: Part): PartRole {
  const { ref } = part;
  const nets = netsOf(part);
  if (roles.resonants.some((one) => one.capacitors.includes(ref))) return "resonant capacitor";
  if (nets.some((net) => isEarth(board, net))) return "Y capacitor";
  if (nets.every((net) => roles.line.includes(net))) return "X capacitor";
  const electrolytic = part.value.type === "electrolytic";
  if (roles.busCapacitors.includes(ref)) return electrolytic ? "bus capacitor" : "film capacitor";
  const supplies = [...board.parts.values()].filter((one) => one.kind === "switcher");
  if (electrolytic && supplies.some((one) => nets.includes(one.pins.get("vcc") ?? "")))
    return "supply pin capacitor";
  // The small supply's own reservoir stands on the bus's volts too.
  if (electrolytic && (part.value.volts ?? 0) >= BUS_CAPACITOR_VOLTS) return "bus capacitor";
  if (electrolytic) return "rail capacitor";
  return part.value.type === "film" ? "film capacitor" : "ceramic";
}

function resistorRole(board: Board, roles: Roles, part: Part): PartRole {
  const { ref } = part;
  if (roles.shunts.includes(ref)) return "shunt";
  if (roles.inrush.includes(ref)) return "inrush part";
  const { bus } = roles;
  const small = (part.value.ohms ?? Number.MAX_VALUE) <= FUSE_RESISTOR_OHMS;
  const onBus = bus !== null && netsOf(part).some((net) => busGroups(board).same(net, bus.plus));
  const named = part.role !== null && /fus(e|ible) resistor/.test(part.role);
  if (named || (small && onBus && part.stage === "supply")) return "fuse resistor";
  return highVoltageResistors(board, roles).has(ref) ? "high-voltage resistor" : "resistor";
}

function switchRole(roles: Roles, part: Part): PartRole {
  const { ref } = part;
  if (roles.motorSwitches.some((one) => one.part === ref)) return "motor switch";
  if (roles.boosts.some((one) => one.switch === ref)) return "boost switch";
  if (roles.resonants.some((one) => one.switch.part === ref)) return "resonant switch";
  return part.stage === "supply" || part.stage === "standby" ? "off-line switch" : "small switch";
}

/** Kinds whose role is the same wherever they stand. */
const BY_KIND: Readonly<Partial<Record<Part["kind"], PartRole>>> = {
  bridge: "bridge",
  module: "power module",
  switcher: "off-line switch",
  varistor: "varistor",
  fuse: "fuse",
  opto: "optocoupler",
  shuntref: "shunt reference",
  regulator: "regulator",
  relay: "relay",
  controller: "controller",
  ic: "chip",
  bjt: "transistor",
};

/** The role of one part, from the circuit first; `roles` is `deriveRoles(board)`. */
export function roleOf(board: Board, roles: Roles, part: Part): PartRole {
  if (part.kind === "igbt" || part.kind === "mosfet") return switchRole(roles, part);
  if (part.kind === "diode") return diodeRole(roles, part);
  if (part.kind === "capacitor") return capacitorRole(board, roles, part);
  if (part.kind === "resistor") return resistorRole(board, roles, part);
  if (part.kind === "zener")
    return roles.gates.some((gate) => gate.clamps.includes(part.ref)) ? "gate clamp" : "zener";
  if (part.kind === "ntc" || part.kind === "ptc")
    return roles.inrush.includes(part.ref) ? "inrush part" : "other";
  return BY_KIND[part.kind] ?? "other";
}

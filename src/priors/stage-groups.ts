import type { Board, Part, PartKind } from "../board/board.ts";
import { deriveRoles, type Roles } from "../board/roles.ts";

/** The stages by which first faults are counted. */
export type StageGroup =
  | "input"
  | "inrush"
  | "rectifier"
  | "pfc"
  | "bus"
  | "inverter"
  | "drive"
  | "chopper"
  | "supply"
  | "rail"
  | "logic"
  | "output"
  | "sensor"
  | "other";

const BY_WORD: Readonly<Record<string, StageGroup>> = {
  input: "input",
  inrush: "inrush",
  rectifier: "rectifier",
  pfc: "pfc",
  bus: "bus",
  inverter: "inverter",
  drive: "drive",
  chopper: "chopper",
  supply: "supply",
  standby: "rail",
  logic: "logic",
  output: "output",
  sensor: "sensor",
};

/** Where neither the board's word nor the circuit tells. */
const BY_KIND: Readonly<Partial<Record<PartKind, StageGroup>>> = {
  fuse: "input",
  varistor: "input",
  choke: "input",
  ntc: "sensor",
  ptc: "inrush",
  bridge: "rectifier",
  module: "inverter",
  igbt: "inverter",
  mosfet: "inverter",
  switcher: "supply",
  transformer: "supply",
  opto: "supply",
  shuntref: "supply",
  regulator: "rail",
  controller: "logic",
  ic: "logic",
  relay: "output",
};

/** What the circuit says of each part, the surest role first. */
function groupsByRole(roles: Roles): ReadonlyMap<string, StageGroup> {
  const groups = new Map<string, StageGroup>();
  const put = (group: StageGroup, refs: readonly (string | null)[]): void => {
    for (const ref of refs) if (ref !== null && !groups.has(ref)) groups.set(ref, group);
  };
  put(
    "pfc",
    roles.boosts.flatMap((boost) => [boost.switch, boost.diode, boost.reactor]),
  );
  put(
    "inverter",
    roles.motorSwitches.map((one) => one.part),
  );
  put(
    "inverter",
    roles.resonants.flatMap((one) => [one.switch.part, one.coil, ...one.capacitors]),
  );
  put("inverter", roles.shunts);
  put(
    "supply",
    roles.switchers.flatMap((one) => [one.part, one.transformer]),
  );
  put("input", roles.lineFuses);
  put("inrush", roles.inrush);
  put("rectifier", roles.bridges);
  put("bus", roles.busCapacitors);
  put(
    "drive",
    roles.gates.flatMap((gate) => [...gate.clamps, ...gate.pullDowns, ...gate.series]),
  );
  put(
    "logic",
    roles.controllers.flatMap((one) => [one.part, ...one.decoupling]),
  );
  put(
    "rail",
    roles.rails.flatMap((rail) => [...rail.rectifiers, ...rail.bulk, ...rail.decoupling]),
  );
  return groups;
}

/** A capacitor or clamp across a rail works for the rail, whichever stage makes it. */
function touchesRail(part: Part, board: Board): boolean {
  if (part.kind !== "capacitor" && part.kind !== "zener") return false;
  return board.rails.some((rail) => [...part.pins.values()].includes(rail.net));
}

function groupOf(part: Part, board: Board, byRole: ReadonlyMap<string, StageGroup>): StageGroup {
  const word = part.stage === null ? undefined : BY_WORD[part.stage];
  if (word === "supply") return part.kind === "regulator" || touchesRail(part, board) ? "rail" : "supply";
  return word ?? byRole.get(part.ref) ?? BY_KIND[part.kind] ?? (touchesRail(part, board) ? "rail" : "other");
}

/** The stage each part counts under: its board's word where known, else what the circuit says it does, else its kind. */
export function stageGroups(
  board: Board,
  roles: Roles = deriveRoles(board),
): ReadonlyMap<string, StageGroup> {
  const byRole = groupsByRole(roles);
  return new Map([...board.parts.values()].map((part) => [part.ref, groupOf(part, board, byRole)]));
}

import type { Board, Part, PartKind } from "../board/board.ts";

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

const BY_KIND: Readonly<Partial<Record<PartKind, StageGroup>>> = {
  fuse: "input",
  varistor: "input",
  choke: "input",
  ntc: "inrush",
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

const HIGH_VOLTS = 200;

/** The stage a part counts under: its board's word where known, else what its kind and ratings suggest. */
export function stageGroup(part: Part, board: Board): StageGroup {
  const word = part.stage === null ? undefined : BY_WORD[part.stage];
  if (word !== undefined) {
    if (word !== "supply") return word;
    return part.kind === "regulator" || touchesRail(part, board) ? "rail" : "supply";
  }
  if (part.kind === "capacitor" && (part.value.volts ?? 0) >= HIGH_VOLTS && (part.value.farads ?? 0) >= 1e-5)
    return "bus";
  return BY_KIND[part.kind] ?? (touchesRail(part, board) ? "rail" : "other");
}

/** A capacitor or clamp across a rail works for the rail, whichever stage makes it. */
function touchesRail(part: Part, board: Board): boolean {
  if (part.kind !== "capacitor" && part.kind !== "zener") return false;
  return board.rails.some((rail) => [...part.pins.values()].includes(rail.net));
}

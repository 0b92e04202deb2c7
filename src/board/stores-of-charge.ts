/** Every capacitor that can hold a dangerous charge, each to be proven empty at its own pins. */
import { said } from "../messages/said.ts";
import type { Board, Part } from "./board.ts";
import { busCapacitors, findBus, lineNets } from "./bus.ts";

/** What counts as a store of charge. */
export const CHARGE_THRESHOLDS = {
  /** volts: up to this a residual voltage is accepted (IEC 60204-1 style, second-hand; IEC 62368-1 ES1, second-hand) */
  harmlessVolts: 60,
  /** farads: at or under this no discharge is demanded (IEC 60335-1 cl. 22.5, IEC 60950-1 2.1.1.7; both second-hand) */
  harmlessFarads: 0.1e-6,
  /** joules: above this dangerous at any voltage (IEC 60950-1 hazardous energy, second-hand) */
  energyJoules: 20,
} as const;

/** What a store is to the person who looks for it. */
export type StoreKind = "bus capacitor" | "film capacitor" | "X capacitor" | "supply capacitor" | "capacitor";

/** A store as it is said. */
export const STORE_WORDS: Readonly<Record<StoreKind, string>> = {
  "bus capacitor": said`bus capacitor`,
  "film capacitor": said`film capacitor`,
  "X capacitor": said`X capacitor`,
  "supply capacitor": said`supply capacitor`,
  capacitor: said`capacitor`,
};

export interface StoreOfCharge {
  readonly part: string;
  readonly kind: StoreKind;
  /** its own two pins, plus first */
  readonly pins: readonly [string, string];
  /** rated volts, or null where the board gives none */
  readonly volts: number | null;
  readonly farads: number | null;
  /** at rated volts; null where a value is not known */
  readonly joules: number | null;
}

/** Stages in which a capacitor of unknown rating is taken for a dangerous one. Common practice. */
const HIGH_VOLTAGE_STAGES: readonly string[] = [
  "input",
  "inrush",
  "rectifier",
  "pfc",
  "bus",
  "inverter",
  "chopper",
];

/** A capacitor straight across a low rail never sees more than the rail, whatever its rating. */
function acrossLowRail(board: Board, one: string, other: string): boolean {
  return board.rails.some((rail) => {
    const back = rail.against ?? board.zero;
    const across = (rail.net === one && back === other) || (rail.net === other && back === one);
    return across && Math.abs(rail.volts) <= CHARGE_THRESHOLDS.harmlessVolts;
  });
}

function isStore(board: Board, part: Part, high: boolean): boolean {
  const { volts, farads } = part.value;
  const [one = "", other = ""] = part.pins.values();
  if (one === other || acrossLowRail(board, one, other)) return false;
  const { harmlessVolts, harmlessFarads, energyJoules } = CHARGE_THRESHOLDS;
  if (volts !== undefined && farads !== undefined && (farads * volts ** 2) / 2 > energyJoules) return true;
  const couldBeHigh = volts === undefined ? high : volts > harmlessVolts;
  return couldBeHigh && (farads === undefined || farads > harmlessFarads);
}

function kindOfStore(part: Part, onBus: boolean, onLine: boolean): StoreKind {
  if (onLine) return "X capacitor";
  if (part.value.type === "film") return "film capacitor";
  if (onBus) return "bus capacitor";
  return part.stage === "supply" || part.stage === "standby" ? "supply capacitor" : "capacitor";
}

/**
 * The board's stores of charge, most energy first (unknown before all). Each member of a series pair is one of its own: the
 * pair's two voltages need not be equal. Thresholds: `CHARGE_THRESHOLDS`.
 */
export function storesOfCharge(board: Board): readonly StoreOfCharge[] {
  const bus = findBus(board);
  const line = lineNets(board);
  const busSet = new Set(bus === null ? [] : busCapacitors(board, bus));
  const stores: StoreOfCharge[] = [];
  for (const part of board.parts.values()) {
    if (part.kind !== "capacitor") continue;
    const nets = [...part.pins.values()];
    const onBus = busSet.has(part.ref);
    const onLine = nets.every((net) => line.has(net));
    const high = onBus || onLine || HIGH_VOLTAGE_STAGES.includes(part.stage ?? "");
    if (!isStore(board, part, high)) continue;
    const { volts, farads } = part.value;
    stores.push({
      part: part.ref,
      kind: kindOfStore(part, onBus, onLine),
      pins: ["plus", "minus"],
      volts: volts ?? null,
      farads: farads ?? null,
      joules: volts === undefined || farads === undefined ? null : (farads * volts ** 2) / 2,
    });
  }
  const weight = (store: StoreOfCharge) => store.joules ?? Number.MAX_VALUE;
  return stores.sort((a, b) => weight(b) - weight(a));
}

/** How warm a part reads so many seconds after power came on: its own loss, its neighbours', and the thermometer. */
import type { Board, Part } from "../board/board.ts";
import type { PartHeat } from "./rail-state.ts";
import { COUPLING, MOST_RISE_KELVIN, RISE_SHARE, ROOM, THERMOMETERS, thermalOf } from "./thermal-table.ts";

export interface Taken {
  /** room, degC; absent: not known */
  readonly ambient?: number | undefined;
  readonly by?: "contact" | "spot" | "camera" | undefined;
  /** seconds since power came on; absent: a minute */
  readonly afterPower?: number | undefined;
}

export interface LiveTemperature {
  readonly celsius: number;
  /** one standard deviation, kelvin */
  readonly spread: number;
}

const AFTER_SECONDS = 60;

/** Parts that share a net of few pins: they are soldered side by side. */
function neighbours(board: Board, part: Part): readonly string[] {
  const found = new Set<string>();
  for (const net of part.pins.values()) {
    const on = [...board.parts.values()].filter((other) => [...other.pins.values()].includes(net));
    if (on.length <= COUPLING.mostPins) for (const other of on) if (other !== part) found.add(other.ref);
  }
  return [...found];
}

function rise(part: Part, watts: number, seconds: number, slowness = thermalOf(part).seconds): number {
  return watts * thermalOf(part).kelvinPerWatt * -Math.expm1(-seconds / slowness);
}

/** Of the rise that a spot sees, the part's own share by area; the rest is board beside it. */
function seen(part: Part, by: "contact" | "spot" | "camera", own: number, beside: number): number {
  const { share, spotMillimetres } = THERMOMETERS[by];
  const filled = Math.min(1, (thermalOf(part).millimetres / Math.max(spotMillimetres, 0.1)) ** 2);
  return share * (filled * own + (1 - filled) * beside);
}

/** The temperature of one part; null where the board has no such part. `heats` are watts by part, several rows of one part added. */
export function temperatureOf(
  board: Board,
  heats: readonly PartHeat[],
  ref: string,
  { ambient, by = "contact", afterPower = AFTER_SECONDS }: Taken,
): LiveTemperature | null {
  const part = board.parts.get(ref);
  if (part === undefined) return null;
  const watts = new Map<string, number>();
  for (const heat of heats) watts.set(heat.part, (watts.get(heat.part) ?? 0) + heat.watts);
  const beside = neighbours(board, part).reduce((sum, other) => {
    const warm = board.parts.get(other);
    const loss = watts.get(other) ?? 0;
    if (warm === undefined || loss <= 0) return sum;
    return sum + COUPLING.share * rise(warm, loss, afterPower, thermalOf(warm).seconds + COUPLING.seconds);
  }, 0);
  const free = rise(part, watts.get(ref) ?? 0, afterPower) + beside;
  const own = MOST_RISE_KELVIN * -Math.expm1(-free / MOST_RISE_KELVIN);
  const shown = seen(part, by, own, Math.min(own, beside));
  return {
    celsius: (ambient ?? ROOM.celsius) + shown,
    spread: Math.hypot(
      THERMOMETERS[by].kelvin,
      RISE_SHARE * shown,
      ambient === undefined ? ROOM.spread : 0.5,
    ),
  };
}

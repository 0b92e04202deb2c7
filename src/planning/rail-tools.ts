/** With what this bench can look along a shorted rail: only what its equipment names is proposed. */
import { INJECTION } from "../bench/injection.ts";
import { railEnds } from "../board/rail-ends.ts";
import type { RailGroup } from "../board/rail-groups.ts";
import { said } from "../messages/said.ts";
import { benchMinutes } from "../money/minutes.ts";
import type { PlanningInput } from "./planning-input.ts";
import type { Action } from "./proposal.ts";

/** Four-wire milliohms: by a meter made for it, or by a known current from supply or cell and the meter in millivolts. */
export interface MilliohmTool {
  /** minutes of one reading */
  readonly minutes: number;
  readonly how: string;
}

export function milliohmTool({ equipment, board }: PlanningInput): MilliohmTool | null {
  const { measure, clip } = benchMinutes(board);
  if (equipment.includes("milliohm-meter"))
    return {
      minutes: measure,
      how: said`Milliohm meter, four wires, on each part's own two pins.`,
    };
  // the clips on 0 V stay where they are
  const clipped = measure + clip;
  if (equipment.includes("bench-supply"))
    return {
      minutes: clipped,
      how: said`Bench supply at ${`${INJECTION.firstVolts} V`}, limit ${`${INJECTION.limitAmps} A`}: clip it and the meter (millivolts) to the part's own two pins with the output off, switch the output on, read volts over amps, switch it off before the clips move.`,
    };
  if (equipment.includes("rechargeable-cell"))
    return {
      minutes: clipped,
      how: said`A ${`${INJECTION.cellVolts} V`} rechargeable cell through ${`${INJECTION.cellOhms} ohm`}: clip it and the meter (millivolts) to the part's own two pins, close it, read; the amps are the volts across the resistor. Open it before the clips move.`,
    };
  return null;
}

/** How warmth is seen without a hand on the live board; null where the bench has nothing for it. */
export function warmthTool(equipment: readonly string[]): "camera" | "spot" | null {
  if (equipment.includes("thermal-camera")) return "camera";
  return equipment.includes("thermometer") ? "spot" : null;
}

/** The low voltages that this bench can feed into the rail, the first one first; none above the rail's own volts. A negative rail is fed by its 0 V. */
export function injections(
  equipment: readonly string[],
  group: RailGroup,
): readonly Extract<Action, { do: "power" }>[] {
  const at = railEnds(group);
  const most = Math.abs(group.volts);
  const feed = { do: "power", feed: "bench", at } as const;
  if (equipment.includes("bench-supply")) {
    const next = Math.min(INJECTION.nextVolts, most);
    const { firstVolts, limitAmps } = INJECTION;
    return [firstVolts, next]
      .filter((volts) => volts <= most)
      .map((volts) => ({ ...feed, volts, limitAmps }));
  }
  if (!equipment.includes("rechargeable-cell") || most < INJECTION.mostVolts) return [];
  const { cellVolts, cellOhms } = INJECTION;
  return [{ ...feed, volts: cellVolts, limitAmps: cellVolts / cellOhms, ohms: cellOhms }];
}

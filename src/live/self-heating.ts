/** Inrush limiters whose ohms follow their heat. */
import type { Part } from "../board/board.ts";
import { PATH_MODEL } from "./live-models.ts";
import type { SelfHeating } from "./power-circuit.ts";

const ROOM_KELVIN = 298;

/** A PTC keeps its ohms until it takes `ptcWatts`, then rises so steeply that it never takes much more. */
function ptc(ohms: number): SelfHeating {
  const { ptcWatts, ptcSteepness } = PATH_MODEL;
  return {
    ohmsAt: (watts) => ohms * Math.max(1, watts / ptcWatts) ** ptcSteepness,
    steepness: ptcSteepness,
    slow: true,
  };
}

/** An NTC falls as it warms: R25 exp(B (1/T - 1/298)). */
function ntc(part: Part, ohms: number): SelfHeating {
  const beta = part.value.beta ?? PATH_MODEL.ntcBeta;
  return {
    ohmsAt: (watts) => {
      const kelvin = ROOM_KELVIN + Math.min(watts / PATH_MODEL.ntcWattsPerKelvin, 220);
      return ohms * Math.exp(beta * (1 / kelvin - 1 / ROOM_KELVIN));
    },
    steepness: 1,
    slow: true,
  };
}

/** How the part's ohms follow its watts; undefined where they hardly do. */
export function selfHeating(part: Part, ohms: number): SelfHeating | undefined {
  if (part.kind === "ptc") return ptc(ohms);
  return part.kind === "ntc" ? ntc(part, ohms) : undefined;
}

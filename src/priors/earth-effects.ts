/** What joins a wire of the mains to the protective earth. */
import { isEarth } from "../board/earth-net.ts";
import type { CircuitView } from "./circuit-view.ts";

/** From a wire of the mains to earth this lets 30 mA through, at which a residual-current breaker trips. IEC 61008. */
const EARTH_SHORT_OHMS = 7_500;

/** Null where the nets do not lie on a wire of the mains and on earth. */
export function earthEffect(
  view: CircuitView,
  nets: readonly string[],
  ohms: number,
): "earth-short" | "none" | null {
  const there =
    nets.some((net) => isEarth(view.board, net)) &&
    nets.some((net) => view.poleOf.has(net) || view.roles.line.includes(net));
  if (!there) return null;
  return ohms < EARTH_SHORT_OHMS ? "earth-short" : "none";
}

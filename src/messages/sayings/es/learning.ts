import type { Sayings } from "../../said.ts";

export const LEARNING: Sayings = {
  "All faults together": "Todos los fallos juntos",
  "on a board that comes in": "en una placa que llega",
};

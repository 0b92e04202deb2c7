import type { Sayings } from "../../said.ts";

export const BOARD: Sayings = {};

import type { Sayings } from "../../said.ts";

export const PLANNING: Sayings = {};

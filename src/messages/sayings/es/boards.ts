import type { Sayings } from "../../said.ts";

export const BOARDS: Sayings = {};

import type { Sayings } from "../../said.ts";

export const SCREENS: Sayings = {};

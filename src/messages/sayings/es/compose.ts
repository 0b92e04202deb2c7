import type { Sayings } from "../../said.ts";

export const COMPOSE: Sayings = {};

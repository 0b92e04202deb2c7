import type { Feed } from "../bench/event.ts";
import type { Mark } from "./mark.ts";

/**
 * How much of the harm of a full-mains power-up each feed still does: knock-ons and fresh faults are scaled by it. A lamp
 * limits the current but lets the charged bus empty itself into a shorted leg; a bench supply at its limit breaks little.
 */
export const POWER_HARM: Readonly<Record<Feed, number>> = { mains: 1, lamp: 0.15, bench: 0.03 };

/** Where the figures come from. */
export const POWER_HARM_MARK: Mark = "from memory";

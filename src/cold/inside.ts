/** What the layout of a part needs to know of the circuit it goes into. */
import type { Part } from "../board/board.ts";
import type { CircuitBuilder } from "./circuit-builder.ts";

/** Nominal volts of the rail on a net, or null where the board names none. */
export type RailVolts = (net: string) => number | null;

/** The part being laid out: where its pins are connected on this bench. */
export interface Inside {
  readonly build: CircuitBuilder;
  readonly part: Part;
  /** index of the net a pin is on, or null where the part has no such pin */
  readonly pin: (name: string) => number | null;
  readonly railVolts: RailVolts;
}

/** The net of a pin that every part of the kind has. */
export function pinOf(inside: Inside, name: string): number {
  const net = inside.pin(name);
  if (net === null) throw new Error(`${inside.part.ref} has no pin ${name}`);
  return net;
}

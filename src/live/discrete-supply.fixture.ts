/** For tests: a shipped drive with the chip of its small supply exchanged for a transistor that a winding keeps swinging. */
import type { Board } from "../board/board.ts";
import { parseBoard } from "../board/parse-board.ts";
import { SHIPPED } from "../shipped/shipped.ts";

/** Faults that leave its supply silent: nothing starts it, nothing keeps it swinging, or its transistor does not switch. */
export const SILENCING = [
  "R91:open",
  "R92:open",
  "R93:open",
  "C93:open",
  "T1.aux:open",
  "Q91.be:short",
  "Q91.be:open",
  "Q91.ce:open",
] as const;

type Parts = Record<string, { pins: Record<string, string>; [more: string]: unknown }>;

export function discreteSupplyBoard(): Board {
  const raw = structuredClone(SHIPPED.find(({ id }) => id === "greenhouse-fan-drive")?.board) as {
    parts: Parts;
  };
  for (const ref of ["U4", "R29", "D6", "C17", "C18"]) delete raw.parts[ref];
  Object.assign(raw.parts, {
    Q91: {
      kind: "bjt",
      pins: { b: "BASE", c: "DRAIN", e: "NBUS" },
      value: { polarity: "npn", volts: 700, amps: 1.5 },
      stage: "supply",
    },
    R91: { kind: "resistor", pins: { "1": "SUP_P", "2": "START" }, value: { ohms: 330000 }, stage: "supply" },
    R92: { kind: "resistor", pins: { "1": "START", "2": "BASE" }, value: { ohms: 330000 }, stage: "supply" },
    R93: { kind: "resistor", pins: { "1": "AUX", "2": "SWING" }, value: { ohms: 220 }, stage: "supply" },
    C93: {
      kind: "capacitor",
      pins: { plus: "SWING", minus: "BASE" },
      value: { farads: 10e-9, volts: 100, type: "film" },
      stage: "supply",
    },
  });
  if (raw.parts.OC1 !== undefined) raw.parts.OC1.pins.c = "BASE";
  const parsed = parseBoard(raw);
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
}

import type { BenchView, StoreView } from "../wire/bench-view.ts";
import { table } from "./answer-text.ts";

/** The charge of the board in one line, for the head of a card: what may hurt by name, what is proven by its number. */
export function chargeLine({ safety }: BenchView): string {
  const named = safety.stores
    .filter(({ state }) => state !== "empty")
    .map(({ part, volts, state }) => (state === "charged" ? `${part} ${volts ?? ""}` : `${part} ?`));
  const list = safety.open || named.length === 0 ? "" : ` (${named.join(", ")})`;
  return `Charge: ${safety.words}${list}\n`;
}

/** Each store of charge with its state, and what stands before power. */
export function storesText(view: BenchView): string {
  const { stores, resistors, powerWaits, turns } = view.safety;
  const rows = stores.map((store) => [`  ${store.part}`, store.what, stateWords(store)]);
  const clipped = resistors.map(({ words }) => `  Before power: ${words}\n`).join("");
  const turn = turns.map(({ part }) => `  If ${part} turns while plugged in: turned ${part}\n`).join("");
  const gate = view.safety.open ? "" : "  To go on without the proof: overrule proof WHY\n";
  const power = powerWaits === null ? "" : "  To power with it on: overrule resistor WHY\n";
  return `${chargeLine(view)}${table(rows)}${clipped}${power}${turn}${view.powered ? "" : gate}`;
}

function stateWords({ state, volts, read, because }: StoreView): string {
  if (read === null) return because ?? state;
  return `${state}, ${volts ?? ""} (log line ${read.line - 1})`;
}

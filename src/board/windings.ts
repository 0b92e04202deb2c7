import { said } from "../messages/said.ts";
import type { Fields } from "../units/fields.ts";
import { quoted, suggestion } from "../units/nearest.ts";
import type { PartValue, Winding } from "./board.ts";

/**
 * Holds a transformer's windings against its pins. Where the file names none, the pins are taken two by two in file order and
 * each winding is called after its pins, as a choke's are (`w12`).
 */
export function fillWindings(fields: Fields, pins: ReadonlyMap<string, string>, value: PartValue): PartValue {
  const names = [...pins.keys()];
  if (value.windings === undefined) {
    if (names.length % 2 === 1)
      fields.complain("value.windings", said`is missing; an odd number of pins cannot be paired without it`);
    return { ...value, windings: pairUp(names) };
  }
  const used = new Set<string>();
  for (const [name, winding] of Object.entries(value.windings)) {
    for (const pin of winding.pins) {
      used.add(pin);
      if (!pins.has(pin))
        fields.complain(
          `value.windings.${name}.pins`,
          `${said`there is no pin ${quoted(pin)}`}${suggestion(pin, names)}`,
        );
    }
    if (winding.pins[0] === winding.pins[1])
      fields.complain(`value.windings.${name}.pins`, said`a winding joins two different pins`);
  }
  const loose = names.find((pin) => !used.has(pin));
  if (loose !== undefined) fields.complain(`pins.${loose}`, said`is in no winding of this transformer`);
  return value;
}

function pairUp(names: readonly string[]): Readonly<Record<string, Winding>> {
  const windings: Record<string, Winding> = Object.create(null);
  for (let i = 0; i + 1 < names.length; i += 2) {
    const from = names[i] ?? "";
    const to = names[i + 1] ?? "";
    windings[`w${from}${to}`] = { pins: [from, to] };
  }
  return windings;
}

import type { KeptLine } from "../../wire/stock-api.ts";
import { kindWords } from "../kind-words.ts";
import { figure, say } from "../say.ts";

/** What tells one line from another, as one text. */
export function lineKey({ type, place, used, donor }: KeptLine): string {
  return JSON.stringify([type.name, place, used, donor]);
}

/** A part that still sits on the donor board: it has a donor, and no place of the shop's yet. */
export function onDonor({ donor, place }: KeptLine): boolean {
  return donor !== null && place === null;
}

/** All the words by which a line is found. */
export function lineWords({ type, place, supplier, donor, used }: KeptLine): string {
  return [
    type.name,
    type.kind,
    kindWords(type.kind),
    place,
    supplier,
    donor,
    used ? say`pulled` : say`new`,
  ].join(" ");
}

export function priceText(price: number | null): string {
  return price === null ? say`no price` : figure(price.toFixed(2));
}

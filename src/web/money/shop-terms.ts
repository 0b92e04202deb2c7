/**
 * The shop's name and terms, what a new job starts with. They are kept by the bench computer for every page; what was typed while it was
 * away waits in this browser and goes there later.
 */
import { del, get, set } from "idb-keyval";
import type { ShopAnswer } from "../../wire/shop-api.ts";
import { Away, api } from "../api.ts";
import { freshOrKept } from "../fresh-or-kept.ts";
import { type TermsTyped, termsOf, typedTerms } from "./terms-typed.ts";

export interface ShopTyped {
  /** what stands at the head of the shop's papers: its name and address */
  readonly name: string;
  readonly terms: TermsTyped;
}

const KEY = "shop";
const UNSENT = "shop-unsent";

export async function shopTyped(): Promise<ShopTyped> {
  await sendShop();
  const unsent = await get<ShopAnswer>(UNSENT);
  const { name, terms } = unsent ?? (await freshOrKept(KEY, api.shop, { name: "", terms: {} }));
  return { name, terms: typedTerms(terms) };
}

/** Safe in this browser once this resolves; `sendShop` takes it further. */
export function keepShop({ name, terms }: ShopTyped): Promise<void> {
  return set(UNSENT, { name, terms: termsOf(terms, false) } satisfies ShopAnswer);
}

/** Sends what waits; false where the bench computer is away. Throws what it refuses. */
export async function sendShop(): Promise<boolean> {
  const unsent = await get<ShopAnswer>(UNSENT);
  if (unsent === undefined) return true;
  try {
    await set(KEY, await api.keepShop(unsent));
  } catch (problem) {
    if (problem instanceof Away) return false;
    throw problem;
  }
  // typed on meanwhile: that is still to go
  if (JSON.stringify(await get<ShopAnswer>(UNSENT)) === JSON.stringify(unsent)) await del(UNSENT);
  return true;
}

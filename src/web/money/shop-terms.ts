/** The shop's own terms, kept in this browser: what a new job starts with. */
import { get, set } from "idb-keyval";
import { type TermsTyped, USUAL_TERMS } from "./terms-typed.ts";

const KEY = "shop-terms";

export async function shopTerms(): Promise<TermsTyped> {
  return { ...USUAL_TERMS, ...((await get<Partial<TermsTyped>>(KEY)) ?? {}) };
}

const NAME_KEY = "shop-name";

/** What stands at the head of the shop's papers: its name and address. */
export async function shopName(): Promise<string> {
  return (await get<string>(NAME_KEY)) ?? "";
}

export function keepShopName(name: string): Promise<void> {
  return set(NAME_KEY, name);
}

export function keepShopTerms(terms: TermsTyped): Promise<void> {
  return set(KEY, terms);
}

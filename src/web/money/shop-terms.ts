/** The shop's own terms, kept in this browser: what a new job starts with. */
import { get, set } from "idb-keyval";
import { type TermsTyped, USUAL_TERMS } from "./terms-typed.ts";

const KEY = "shop-terms";

export async function shopTerms(): Promise<TermsTyped> {
  return { ...USUAL_TERMS, ...((await get<Partial<TermsTyped>>(KEY)) ?? {}) };
}

export function keepShopTerms(terms: TermsTyped): Promise<void> {
  return set(KEY, terms);
}

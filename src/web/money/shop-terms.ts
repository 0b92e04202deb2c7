/** The shop's name and terms as they are typed: what a new job starts with. */
import { keepShop, shopKept } from "../shop-keeper.ts";
import { type TermsTyped, termsOf, typedTerms } from "./terms-typed.ts";

export interface ShopTyped {
  /** what stands at the head of the shop's papers: its name and address */
  readonly name: string;
  readonly terms: TermsTyped;
}

export async function shopTyped(): Promise<ShopTyped> {
  const { name, terms } = await shopKept();
  return { name, terms: typedTerms(terms) };
}

/** Safe in this browser once this resolves. */
export function keepShopTyped({ name, terms }: ShopTyped): Promise<void> {
  return keepShop({ name, terms: termsOf(terms, false) });
}

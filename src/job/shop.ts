/**
 * What the shop itself is: its name and its terms, with which every new job starts. Kept beside the jobs, so that every page and the
 * terminal begin with the same figures; a job keeps the terms that it was begun with.
 */
import { said } from "../messages/said.ts";
import { Fields, Problems } from "../units/fields.ts";
import type { Parsed } from "../units/outcome.ts";
import { readTerms } from "./read-terms.ts";

export interface Shop {
  /** name and address, for the head of papers */
  readonly name: string;
  /** as the `terms` of a job file have them, without a price agreed */
  readonly terms: Readonly<Record<string, unknown>>;
}

/** A shop that has set nothing: the job file format's defaults. */
export const NEW_SHOP: Shop = { name: "", terms: {} };

const MOST_NAME = 200;

/** Where the shop is kept: `store/` fills it. What is kept replaces what was there, which stays readable in the file. */
export interface ShopStore {
  readShop(): Promise<Shop>;
  /** Once this resolves it survives a crash. */
  keepShop(shop: Shop): Promise<void>;
}

/** A problem is one line that begins with the field's path. */
export function parseShop(input: unknown): Parsed<Shop> {
  const problems = new Problems();
  const shop = new Fields(problems, "", input);
  shop.only(["name", "terms"], said`a shop`);
  shop.require("name", "terms");
  const name = shop.text("name") ?? "";
  if (name.length > MOST_NAME) shop.complain("name", said`is longer than ${MOST_NAME} characters`);
  readTerms(shop);
  const terms = shop.raw("terms") as Shop["terms"];
  if (problems.first === null && Object.hasOwn(terms, "agreedPrice"))
    problems.add("terms.agreedPrice", said`a price is agreed for one job; the shop has its usualPrice`);
  return problems.outcome({ name, terms });
}

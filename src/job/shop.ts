/**
 * What the shop itself is: its name and terms, what its bench has, its warranty. Kept beside the jobs, so that every page and the terminal
 * begin with the same; a job keeps the terms and the equipment that it was begun with.
 */
import { said } from "../messages/said.ts";
import { Fields, Problems } from "../units/fields.ts";
import type { Parsed } from "../units/outcome.ts";
import { equipmentProblem } from "./equipment.ts";
import { readTerms } from "./read-terms.ts";
import { readWordList } from "./read-word-list.ts";

export interface Shop {
  /** name and address, for the head of papers */
  readonly name: string;
  /** as the `terms` of a job file have them, without a price agreed */
  readonly terms: Readonly<Record<string, unknown>>;
  /** what the bench has beside a meter and an iron, in the words of a job file; left out: nobody has said yet */
  readonly equipment?: readonly string[];
  /** its terms of warranty, in its own words; left out: nobody has said yet */
  readonly warranty?: string;
}

/** Some of it, to be kept in the place of what was there. */
export type ShopChange = Partial<Shop>;

/** A shop that has set nothing: the job file format's defaults. */
export const NEW_SHOP: Shop = { name: "", terms: {} };

const MOST_NAME = 200;
const MOST_WARRANTY = 2000;
const SHOP_FIELDS = ["name", "terms", "equipment", "warranty"];

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
  shop.only(SHOP_FIELDS, said`a shop`);
  shop.require("name", "terms");
  const name = shop.text("name") ?? "";
  if (name.length > MOST_NAME) shop.complain("name", said`is longer than ${MOST_NAME} characters`);
  const warranty = shop.text("warranty");
  if (warranty !== undefined && warranty.length > MOST_WARRANTY)
    shop.complain("warranty", said`is longer than ${MOST_WARRANTY} characters`);
  const equipment = readWordList(problems, shop, "equipment", equipmentProblem);
  readTerms(shop);
  const terms = shop.raw("terms") as Shop["terms"];
  if (problems.first === null && Object.hasOwn(terms, "agreedPrice"))
    problems.add("terms.agreedPrice", said`a price is agreed for one job; the shop has its usualPrice`);
  return problems.outcome({
    name,
    terms,
    ...(shop.has("equipment") ? { equipment } : {}),
    ...(warranty === undefined ? {} : { warranty }),
  });
}

/** The shop with some of it changed. A problem as of `parseShop`. */
export function changedShop(shop: Shop, change: unknown): Parsed<Shop> {
  const problems = new Problems();
  const fields = new Fields(problems, "", change);
  const wrong = problems.first;
  if (wrong !== null) return { ok: false, problem: wrong };
  return parseShop({ ...shop, ...Object.fromEntries(fields.keys.map((key) => [key, fields.raw(key)])) });
}

import { said } from "../messages/said.ts";
import { type Fields, present } from "../units/fields.ts";
import type { StockPlace } from "./event.ts";

/** The `from` of a part out of stock. Stock is kept by the type's name: a part without one came from nowhere that could be counted. */
export function readStockPlace(part: Fields): StockPlace | undefined {
  if (!part.has("from")) return undefined;
  const from = part.object("from");
  from.only(["place", "donor"], "from");
  if (!part.has("with")) part.complain("from", said`a part out of stock is named: with is missing`);
  const named = (key: "place" | "donor") => {
    const text = from.text(key);
    if (text === "") from.complain(key, said`is empty`);
    return text;
  };
  return present<StockPlace>({ place: named("place"), donor: named("donor") });
}

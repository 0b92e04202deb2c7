/** Reads the customer's answer to a quote. */
import { said } from "../messages/said.ts";
import { type Fields, present } from "../units/fields.ts";
import type { QuoteEvent } from "./event.ts";
import { OFFERS, QUOTE_ANSWERS } from "./words.ts";

/** @param stamp - the fields that any event may carry, read already; their names in `stampFields` */
export function readQuote(
  event: Fields,
  stampFields: readonly string[],
  stamp: Pick<QuoteEvent, "id" | "at" | "who">,
): QuoteEvent {
  event.only([...stampFields, "offer", "price", "cap", "answer"], "quote");
  event.require("offer", "answer");
  const offer = event.word("offer", OFFERS) ?? "decline";
  const price = event.number("price", { least: 0 });
  const cap = event.number("cap", { least: 0 });
  if (cap !== undefined && offer !== "repair")
    event.complain("cap", said`is of a repair alone; leave it out of an offer to ${offer}`);
  if (cap !== undefined && price !== undefined && cap < price)
    event.complain("cap", said`${cap} is below the price of ${price}; a cap is what the price may rise to`);
  return {
    do: "quote",
    offer,
    answer: event.word("answer", QUOTE_ANSWERS) ?? "refused",
    ...present({ price, cap }),
    ...stamp,
  };
}

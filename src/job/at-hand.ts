import { readStockPlace } from "../bench/parse-stock-place.ts";
import { said } from "../messages/said.ts";
import type { AtHand } from "../money/terms.ts";
import { type Fields, present } from "../units/fields.ts";
import { FrozenMap } from "../units/frozen.ts";
import { quoted, suggestion } from "../units/nearest.ts";

/** The job file's `stock`: for places of this board, what lies at hand. */
export function readAtHand(job: Fields, refs: readonly string[]): ReadonlyMap<string, AtHand> {
  if (!job.has("stock")) return new FrozenMap<string, AtHand>([]);
  const stock = job.object("stock");
  const entries = stock.keys.map((ref): readonly [string, AtHand] => {
    if (!refs.includes(ref))
      stock.complain(ref, `${said`there is no part ${quoted(ref)}`}${suggestion(ref, refs)}`);
    const lying = stock.object(ref);
    lying.only([...LYING, "next"], said`a part at hand`);
    const next = lying.has("next") ? lying.object("next") : undefined;
    next?.only(LYING, said`a part at hand`);
    return [ref, present<AtHand>({ ...readLying(lying), next: next && readLying(next) })];
  });
  return new FrozenMap(entries);
}

const LYING = ["with", "price", "used", "from", "count"];

function readLying(lying: Fields): Omit<AtHand, "next"> {
  return present<Omit<AtHand, "next">>({
    with: lying.text("with"),
    price: lying.number("price", { least: 0 }),
    used: lying.mark("used"),
    from: readStockPlace(lying),
    count: lying.number("count", { least: 0 }),
  });
}

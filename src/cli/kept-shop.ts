/** What `serve` keeps of the shop beside its jobs, for a command that reads or sets it. */
import { type OwnWarranty, ownWarranty } from "../job/own-warranty.ts";
import type { Shop } from "../job/shop.ts";
import { NEW_SHOP } from "../job/shop.ts";
import type { StockLine } from "../parts/catalogue.ts";
import { stockLine } from "../parts/stock/stock.ts";
import type { Parsed } from "../units/outcome.ts";

/** Help of `--data`, alike in every command that has it. */
export const DATA_HELP = "where it is kept (default: FAULTWRIGHT_DATA, else ~/.local/share/faultwright)";

type Kept = NonNullable<ReturnType<typeof import("../server/main.ts").keptJobs>["store"]>;

/** @param make - make the folder where it is missing; else `use` is told of none */
async function withKept<T>(
  data: string | undefined,
  make: boolean,
  use: (store: Kept | null, folder: string) => Promise<T>,
): Promise<T> {
  // Loaded here only: most commands need neither the database nor the server.
  const { keptJobs } = await import("../server/main.ts");
  const { store, folder } = keptJobs(data, make);
  try {
    return await use(store, folder);
  } finally {
    await store?.close();
  }
}

/** A shop that has set nothing where nothing is kept. */
export function keptShop(data: string | undefined): Promise<Shop> {
  return withKept(data, false, async (store) => (await store?.readShop()) ?? NEW_SHOP);
}

/** What its own comebacks cost this shop for each repair; null where nothing is kept. */
export function keptWarranty(
  data: string | undefined,
  currency: string,
  comebackCost: number,
): Promise<OwnWarranty | null> {
  return withKept(data, false, async (store) =>
    store === null ? null : await ownWarranty(store, currency, comebackCost),
  );
}

/** Keeps what `change` makes of the shop; nothing where it makes a problem. */
export function changeShop(
  data: string | undefined,
  change: (shop: Shop) => Parsed<Shop>,
): Promise<Parsed<Shop>> {
  return withKept(data, true, async (store, folder) => {
    if (store === null) throw new Error(`${folder} was not made`);
    const changed = change(await store.readShop());
    if (changed.ok) await store.keepShop(changed.value);
    return changed;
  });
}

/** The lines of the page's parts drawer. */
export function keptDrawer(data: string | undefined): Promise<Parsed<readonly StockLine[]>> {
  return withKept(data, false, async (store, folder) =>
    store === null
      ? { ok: false, problem: `${folder}: nothing is kept there yet; name another --data` }
      : { ok: true, value: (await store.readStock()).lines().map(stockLine) },
  );
}

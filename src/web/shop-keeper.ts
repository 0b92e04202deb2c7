/**
 * What the shop is: its name, terms and warranty, and what its bench has. The bench computer keeps it for every screen; what is changed while
 * that is away waits in this browser and goes there later.
 */
import { del, get, set, update } from "idb-keyval";
import type { ShopAnswer, ShopChange } from "../wire/shop-api.ts";
import { Away, api } from "./api.ts";
import { freshOrKept } from "./fresh-or-kept.ts";

const KEY = "shop";
const UNSENT = "shop-unsent";

/** As the bench computer has it, else as last seen here, with what waits here on top. */
export async function shopKept(): Promise<ShopAnswer> {
  await sendShop();
  const shop = await freshOrKept<ShopAnswer>(KEY, async () => broughtOver(await api.shop()), {
    name: "",
    terms: {},
    ...(await fromBefore()),
  });
  return { ...shop, ...(await get<ShopChange>(UNSENT)) };
}

/** Safe in this browser once this resolves; `sendShop` takes it further. */
export function keepShop(change: ShopChange): Promise<void> {
  return update<ShopChange>(UNSENT, (waiting) => ({ ...waiting, ...change }));
}

let sending: Promise<unknown> = Promise.resolve();

/** Sends what waits, one sender at a time; false where the bench computer is away. Throws what it refuses. */
export function sendShop(): Promise<boolean> {
  const turn = sending.then(sendNow, sendNow);
  sending = turn;
  return turn;
}

async function sendNow(): Promise<boolean> {
  const unsent = await get<ShopChange>(UNSENT);
  if (unsent === undefined) return true;
  try {
    await set(KEY, await api.keepShop(unsent));
  } catch (problem) {
    if (problem instanceof Away) return false;
    throw problem;
  }
  // typed on meanwhile: that is still to go
  if (JSON.stringify(await get<ShopChange>(UNSENT)) === JSON.stringify(unsent)) await del(UNSENT);
  return true;
}

/** Where each browser kept its own equipment and warranty before the shop did. */
const EQUIPMENT_BEFORE = "bench-equipment";
const PAPERS_BEFORE = "paper-choice";

interface PapersBefore {
  readonly warranty?: string;
}

async function fromBefore(): Promise<ShopChange> {
  const equipment = await get<readonly string[]>(EQUIPMENT_BEFORE);
  const { warranty = "" } = (await get<PapersBefore>(PAPERS_BEFORE)) ?? {};
  return { ...(equipment === undefined ? {} : { equipment }), ...(warranty === "" ? {} : { warranty }) };
}

/** What this browser had of its own goes to the shop once, where the shop has said nothing yet. */
async function broughtOver(shop: ShopAnswer): Promise<ShopAnswer> {
  const before = await fromBefore();
  const missing = Object.fromEntries(Object.entries(before).filter(([name]) => !Object.hasOwn(shop, name)));
  const now = Object.keys(missing).length === 0 ? shop : await api.keepShop(missing);
  if (Object.keys(before).length > 0) {
    await del(EQUIPMENT_BEFORE);
    await update<PapersBefore>(PAPERS_BEFORE, ({ warranty: _, ...rest } = {}) => rest);
  }
  return now;
}

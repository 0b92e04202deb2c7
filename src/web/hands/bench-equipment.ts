/** What this bench is equipped with, asked once and kept with the shop: no job proposes what it has not. */
import { keepShop, sendShop, shopKept } from "../shop-keeper.ts";

/** Null where nobody has said yet. */
export async function benchEquipment(): Promise<readonly string[] | null> {
  return (await shopKept()).equipment ?? null;
}

/** Kept once this resolves: by the bench computer where it answers, else in this browser until it does. */
export async function keepBenchEquipment(equipment: ReadonlySet<string>): Promise<void> {
  await keepShop({ equipment: [...equipment] });
  await sendShop();
}

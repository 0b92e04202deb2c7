/** What this bench is equipped with, asked once and kept: no job proposes what it has not. */
import { get, set } from "idb-keyval";

const KEY = "bench-equipment";

/** Null where nobody has said yet. */
export async function benchEquipment(): Promise<readonly string[] | null> {
  return (await get<readonly string[]>(KEY)) ?? null;
}

export function keepBenchEquipment(equipment: ReadonlySet<string>): Promise<void> {
  return set(KEY, [...equipment]);
}

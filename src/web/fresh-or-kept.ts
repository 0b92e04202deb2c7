/** What the server answers, kept in the browser for the time when it is away. */
import { get, set } from "idb-keyval";
import { Away } from "./api.ts";

/** The fresh answer; where the server is away the one kept last, and `otherwise` where there is none. Throws what the server refuses. */
export async function freshOrKept<T>(key: string, fresh: () => Promise<T>, otherwise: T): Promise<T> {
  try {
    const value = await fresh();
    await set(key, value);
    return value;
  } catch (problem) {
    if (problem instanceof Away) return (await get<T>(key)) ?? otherwise;
    throw problem;
  }
}

import { plain } from "./said.ts";

/** A value with every text in it as plain English: what a test holds against what was said. */
export function inEnglish<T>(value: T): T {
  if (typeof value === "string") return plain(value) as T;
  if (Array.isArray(value)) return value.map(inEnglish) as T;
  if (value === null || typeof value !== "object" || Object.getPrototypeOf(value) !== Object.prototype)
    return value;
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, inEnglish(each)])) as T;
}

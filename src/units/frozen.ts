/** A map that cannot be changed after it is made; any attempt throws. */
export class FrozenMap<K, V> extends Map<K, V> {
  constructor(entries: Iterable<readonly [K, V]>) {
    super();
    for (const [key, value] of entries) super.set(key, value);
  }
  override set(): this {
    throw new TypeError("this map is frozen");
  }
  override delete(): boolean {
    throw new TypeError("this map is frozen");
  }
  override clear(): void {
    throw new TypeError("this map is frozen");
  }
}

/** Freezes plain objects and arrays all the way down (maps are expected to be `FrozenMap`s) and gives the same value back. */
export function deepFreeze<T>(value: T): T {
  if (typeof value !== "object" || value === null || Object.isFrozen(value)) return value;
  Object.freeze(value);
  if (value instanceof Map) for (const item of value.values()) deepFreeze(item);
  else for (const item of Object.values(value)) deepFreeze(item);
  return value;
}

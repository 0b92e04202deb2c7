/** JSON with the keys of every object sorted: two values with the same text say the same, however they were written. */
export function canonicalJson(value: unknown): string {
  return JSON.stringify(value, (_key, inner: unknown) =>
    typeof inner === "object" && inner !== null && !Array.isArray(inner) ? sortedEntries(inner) : inner,
  );
}

function sortedEntries(value: object): Record<string, unknown> {
  // Object.fromEntries defines own properties, so a key spelt `__proto__` stays an ordinary key.
  return Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0)));
}

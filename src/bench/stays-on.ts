/** Sights after which nothing is read: power goes off at once, or is off already. */
const ENDS_POWER: ReadonlySet<string> = new Set(["smoke", "trip", "fuse-blew"]);

/** Does the board stay on after this was seen, so that a meter can be read and signs of life be looked at? */
export function staysOn(seen: string): boolean {
  return !ENDS_POWER.has(seen);
}

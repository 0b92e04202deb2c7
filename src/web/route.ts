/** Which screen: kept in the address after `#`, so that reload and Back do what they should. */
import { useSyncExternalStore } from "react";

export type Route =
  | { readonly screen: "jobs" }
  | { readonly screen: "drawer" }
  | { readonly screen: "new"; readonly describing: boolean }
  | { readonly screen: "job"; readonly id: string };

export function useRoute(): Route {
  const hash = useSyncExternalStore(
    (changed) => {
      addEventListener("hashchange", changed);
      return () => removeEventListener("hashchange", changed);
    },
    () => location.hash,
  );
  return routeOf(hash);
}

/** The screen that an address names; an unknown one is the list of jobs. */
export function routeOf(hash: string): Route {
  const job = /^#\/job\/([A-Za-z0-9_-]{1,64})$/.exec(hash);
  if (job?.[1] !== undefined) return { screen: "job", id: job[1] };
  if (hash === "#/new" || hash === "#/new/board") return { screen: "new", describing: hash !== "#/new" };
  return hash === "#/drawer" ? { screen: "drawer" } : { screen: "jobs" };
}

export function go(to: string): void {
  location.hash = to;
}

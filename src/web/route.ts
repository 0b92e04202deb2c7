/** Which screen: kept in the address after `#`, so that reload and Back do what they should. */
import { useSyncExternalStore } from "react";
import { PAPER_KINDS, type PaperKind } from "../wire/paper-api.ts";

export type Route =
  | { readonly screen: "jobs" }
  | { readonly screen: "learnt" }
  | { readonly screen: "drawer" }
  | { readonly screen: "meter" }
  | { readonly screen: "new"; readonly describing: boolean }
  | { readonly screen: "boards" }
  | { readonly screen: "board"; readonly id: string }
  | { readonly screen: "shop" }
  | { readonly screen: "this-bench" }
  | { readonly screen: "job" | "quote"; readonly id: string }
  | { readonly screen: "papers"; readonly id: string; readonly kind: PaperKind };

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
  const board = /^#\/boards\/([A-Za-z0-9_-]{1,64})$/.exec(hash);
  if (board?.[1] !== undefined) return { screen: "board", id: board[1] };
  if (hash === "#/boards") return { screen: "boards" };
  const [, id, screen, paper] =
    /^#\/job\/([A-Za-z0-9_-]{1,64})(?:\/(quote|papers)(?:\/([a-z]+))?)?$/.exec(hash) ?? [];
  if (id !== undefined && screen === "papers")
    return { screen, id, kind: PAPER_KINDS.find((kind) => kind === paper) ?? "report" };
  if (id !== undefined) return { screen: screen === "quote" ? screen : "job", id };
  if (hash === "#/shop") return { screen: "shop" };
  if (hash === "#/bench") return { screen: "this-bench" };
  if (hash === "#/new" || hash === "#/new/board") return { screen: "new", describing: hash !== "#/new" };
  if (hash === "#/meter") return { screen: "meter" };
  if (hash === "#/drawer") return { screen: "drawer" };
  return { screen: hash === "#/learnt" ? "learnt" : "jobs" };
}

export function go(to: string): void {
  location.hash = to;
}

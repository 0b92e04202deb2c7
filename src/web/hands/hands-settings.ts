/** What belongs to this browser and not to a job: its keys, its voice, its screen. */
import { useSyncExternalStore } from "react";
import { COMMANDS, mayBeMapped } from "./commands.ts";

export interface HandsSettings {
  /** key, as the browser names it, to the command that it gives */
  readonly keys: Readonly<Record<string, string>>;
  readonly speaks: boolean;
  readonly staysAwake: boolean;
}

const KEPT_AS = "hands-settings";
const USUAL: HandsSettings = { keys: {}, speaks: false, staysAwake: true };

/** Settings as they were kept; whatever of it is no setting is left out. */
export function readHandsSettings(text: string | null): HandsSettings {
  let kept: unknown;
  try {
    kept = JSON.parse(text ?? "{}");
  } catch {
    return USUAL;
  }
  if (typeof kept !== "object" || kept === null) return USUAL;
  const fields = new Map<string, unknown>(Object.entries(kept));
  const keys = fields.get("keys");
  const known = (name: unknown) => COMMANDS.some((command) => command.name === name);
  return {
    keys: Object.fromEntries(
      typeof keys === "object" && keys !== null
        ? Object.entries(keys).filter(([key, name]) => mayBeMapped(key) && known(name))
        : [],
    ),
    speaks: fields.get("speaks") === true,
    staysAwake: fields.get("staysAwake") !== false,
  };
}

function kept(): HandsSettings {
  try {
    return readHandsSettings(localStorage.getItem(KEPT_AS));
  } catch {
    // a browser that keeps nothing (private mode) still works, with the usual settings
    return USUAL;
  }
}

let now: HandsSettings | null = null;
const listeners = new Set<() => void>();

export function handsSettings(): HandsSettings {
  now ??= kept();
  return now;
}

export function changeHandsSettings(change: Partial<HandsSettings>): void {
  now = { ...handsSettings(), ...change };
  try {
    localStorage.setItem(KEPT_AS, JSON.stringify(now));
  } catch {
    // see above: they then hold until the page is left
  }
  for (const listener of listeners) listener();
}

export function useHandsSettings(): HandsSettings {
  return useSyncExternalStore((changed) => {
    listeners.add(changed);
    return () => listeners.delete(changed);
  }, handsSettings);
}

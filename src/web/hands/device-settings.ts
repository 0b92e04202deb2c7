/** What belongs to this device and not to a job: its keys, its voice, its screen. */
import { useSyncExternalStore } from "react";
import { COMMANDS, mayBeMapped } from "./commands.ts";

export interface DeviceSettings {
  /** key, as the browser names it, to the command that it gives */
  readonly keys: Readonly<Record<string, string>>;
  readonly speaks: boolean;
  readonly staysAwake: boolean;
}

const KEPT_AS = "device-settings";
const USUAL: DeviceSettings = { keys: {}, speaks: false, staysAwake: true };

/** Settings as they were kept; whatever of it is no setting is left out. */
export function readDeviceSettings(text: string | null): DeviceSettings {
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

function kept(): DeviceSettings {
  try {
    return readDeviceSettings(localStorage.getItem(KEPT_AS));
  } catch {
    // a browser that keeps nothing (private mode) still works, with the usual settings
    return USUAL;
  }
}

let now: DeviceSettings | null = null;
const listeners = new Set<() => void>();

export function deviceSettings(): DeviceSettings {
  now ??= kept();
  return now;
}

export function changeDeviceSettings(change: Partial<DeviceSettings>): void {
  now = { ...deviceSettings(), ...change };
  try {
    localStorage.setItem(KEPT_AS, JSON.stringify(now));
  } catch {
    // see above: they then hold until the page is left
  }
  for (const listener of listeners) listener();
}

export function useDeviceSettings(): DeviceSettings {
  return useSyncExternalStore((changed) => {
    listeners.add(changed);
    return () => listeners.delete(changed);
  }, deviceSettings);
}

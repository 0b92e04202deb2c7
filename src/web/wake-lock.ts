/** Keeps the screen awake while a job is open: by the browser's wake lock, and where there is none by a picture that moves. */
import { useEffect, useSyncExternalStore } from "react";
import { useHandsSettings } from "./hands/hands-settings.ts";
import { type MovingPicture, startMovingPicture } from "./hands/moving-picture.ts";

/** By what the screen is kept awake now; null: it dims as the phone is set to. */
export type KeptAwakeBy = "lock" | "picture" | null;

let by: KeptAwakeBy = null;
const listeners = new Set<() => void>();

function tell(how: KeptAwakeBy): void {
  by = how;
  for (const listener of listeners) listener();
}

export function useKeptAwakeBy(): KeptAwakeBy {
  return useSyncExternalStore(
    (changed) => {
      listeners.add(changed);
      return () => listeners.delete(changed);
    },
    () => by,
  );
}

export function useWakeLock(): void {
  const { staysAwake } = useHandsSettings();
  useEffect(() => (staysAwake ? stayAwake() : undefined), [staysAwake]);
}

/** Until the function given back is called. */
function stayAwake(): () => void {
  let lock: WakeLockSentinel | null = null;
  let picture: MovingPicture | null = null;
  let left = false;
  const take = async () => {
    if (document.visibilityState !== "visible") return;
    try {
      const taken = await navigator.wakeLock.request("screen");
      if (left) return void (await taken.release());
      lock = taken;
      tell("lock");
    } catch {
      // Refused (battery saver) or not there (plain http, an older browser).
      if (left) return;
      picture ??= startMovingPicture();
      tell(picture === null ? null : "picture");
    }
  };
  // The system drops the lock whenever the page is hidden.
  document.addEventListener("visibilitychange", take);
  void take();
  return () => {
    left = true;
    document.removeEventListener("visibilitychange", take);
    void lock?.release();
    picture?.stop();
    tell(null);
  };
}

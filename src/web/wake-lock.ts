/** Keeps the screen awake while a job is open. Where the browser cannot, or will not, nothing is said. */
import { useEffect } from "react";

export function useWakeLock(): void {
  useEffect(() => {
    let lock: WakeLockSentinel | null = null;
    let left = false;
    const take = async () => {
      if (document.visibilityState !== "visible") return;
      try {
        const taken = await navigator.wakeLock.request("screen");
        if (left) await taken.release();
        else lock = taken;
      } catch {
        // Refused (battery saver, plain http, an older browser): the screen then dims as the phone is set to.
      }
    };
    // The system drops the lock whenever the page is hidden.
    document.addEventListener("visibilitychange", take);
    void take();
    return () => {
      left = true;
      document.removeEventListener("visibilitychange", take);
      void lock?.release();
    };
  }, []);
}

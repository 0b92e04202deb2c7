/** Seconds since the switch went on, kept from card to card while the board is on. */
import { useEffect, useState } from "react";

/** When the switch went on, milliseconds; null while it is off. */
let startedAt: number | null = null;

const TICK_MS = 500;

/** The switch goes on now. */
export function startClock(): void {
  startedAt = Date.now();
}

/** The board is about to be switched on: what ran before is over. */
export function stopClock(): void {
  startedAt = null;
}

/** Counts on from the switch; from now where nobody told when that was. */
export function useSecondsOn(): number {
  const [start] = useState(() => {
    startedAt ??= Date.now();
    return startedAt;
  });
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    const timer = setInterval(() => setNow(Date.now()), TICK_MS);
    return () => clearInterval(timer);
  }, []);
  return Math.max(0, (now - start) / 1000);
}

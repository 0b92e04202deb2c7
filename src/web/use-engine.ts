import { useEffect, useState } from "react";
import { Engine } from "./engine.ts";

/** A worker of this screen's own, stopped when the screen goes; null until it has started. */
export function useEngine(): Engine | null {
  return useStarted(newEngine, stopEngine);
}

/**
 * The worker of a job's screens, handed from one to the next: quote and papers ask what the bench has just worked out. It is stopped once no
 * screen has wanted it for a while.
 */
export function useJobEngine(): Engine | null {
  return useStarted(takeEngine, leaveEngine);
}

function useStarted(start: () => Engine, leave: (engine: Engine) => void): Engine | null {
  const [engine, setEngine] = useState<Engine | null>(null);
  useEffect(() => {
    const started = start();
    setEngine(started);
    return () => leave(started);
  }, [start, leave]);
  return engine;
}

const newEngine = (): Engine => new Engine();
const stopEngine = (engine: Engine): void => engine.stop();

/** An idle worker holds some tens of megabytes. */
const IDLE_MS = 60_000;
let idle: { readonly engine: Engine; readonly timer: ReturnType<typeof setTimeout> } | null = null;

function takeEngine(): Engine {
  if (idle === null) return new Engine();
  const { engine, timer } = idle;
  clearTimeout(timer);
  idle = null;
  return engine;
}

function leaveEngine(engine: Engine): void {
  // two screens of jobs at once: one worker is kept
  if (idle !== null) {
    engine.stop();
    return;
  }
  const timer = setTimeout(() => {
    idle = null;
    engine.stop();
  }, IDLE_MS);
  idle = { engine, timer };
}

import { useEffect, useState } from "react";
import { Engine } from "./engine.ts";

/** A worker of this screen's own, stopped when the screen goes; null until it has started. */
export function useEngine(): Engine | null {
  const [engine, setEngine] = useState<Engine | null>(null);
  useEffect(() => {
    const started = new Engine();
    setEngine(started);
    return () => started.stop();
  }, []);
  return engine;
}

/** The board as the answers so far describe it, worked out by the engine. */
import { useEffect, useState } from "react";
import type { ComposerView } from "../../wire/composer-view.ts";
import type { Description } from "../engine-messages.ts";
import { useEngine } from "../use-engine.ts";

interface Described {
  /** the last one that could be made; null before the first */
  readonly view: ComposerView | null;
  readonly problem: string | null;
  /** what was said has not been worked out yet: the view is of what was said before */
  readonly stale: boolean;
}

export function useDescription({ answers, name }: Description): Described {
  const engine = useEngine();
  const [described, setDescribed] = useState<
    Omit<Described, "stale"> & { of: Description["answers"] | null; name: string }
  >({
    view: null,
    problem: null,
    of: null,
    name: "",
  });
  useEffect(() => {
    if (engine === null) return;
    let wanted = true;
    engine.compose({ answers, name }).then(
      (view) => wanted && setDescribed({ view, problem: null, of: answers, name }),
      (error: Error) =>
        wanted && setDescribed((before) => ({ ...before, problem: error.message, of: answers, name })),
    );
    return () => {
      wanted = false;
    };
  }, [engine, answers, name]);
  return { ...described, stale: described.of !== answers || described.name !== name };
}

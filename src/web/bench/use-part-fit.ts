import { useEffect, useRef, useState } from "react";
import { said } from "../../messages/said.ts";
import type { FitView, TypedFit } from "../../wire/fit-view.ts";
import { keepTypedFit, typedFit } from "../keeper.ts";
import type { OpenJob } from "../use-job.ts";

const NOTHING: TypedFit = { original: {}, candidate: {} };

export interface PartFit {
  readonly view: FitView | null;
  readonly typed: TypedFit;
  readonly problem: string | null;
  type(typed: TypedFit): void;
}

/** Which part will do in one place, with what was ever typed of it in this browser; `part` null: no place is asked about. */
export function usePartFit({ id, partFit }: OpenJob, part: string | null): PartFit {
  const [typed, setTyped] = useState<TypedFit | null>(null);
  const [view, setView] = useState<FitView | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const keeping = useRef<Promise<void>>(Promise.resolve());
  useEffect(() => {
    setView(null);
    setTyped(null);
    if (part === null) return;
    let waiting = true;
    const had = (kept: TypedFit | null) => waiting && setTyped(kept ?? NOTHING);
    // after whatever is still being kept
    keeping.current.then(() => typedFit(id, part)).then(had, () => had(null));
    return () => {
      waiting = false;
    };
  }, [id, part]);
  useEffect(() => {
    if (part === null || typed === null) return;
    let waiting = true;
    partFit(part, typed).then(
      (found) => {
        if (!waiting) return;
        setView(found);
        setProblem(null);
      },
      (error: Error) => waiting && setProblem(error.message),
    );
    return () => {
      waiting = false;
    };
  }, [part, partFit, typed]);
  return {
    view,
    typed: typed ?? NOTHING,
    problem,
    type: (change) => {
      setTyped(change);
      if (part === null) return;
      keeping.current = keeping.current
        .then(() => keepTypedFit(id, part, change))
        .catch((error: Error) =>
          setProblem(said`This browser keeps nothing (${error.message}): write it down as well.`),
        );
    },
  };
}

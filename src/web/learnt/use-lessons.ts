import { useCallback, useEffect, useState } from "react";
import type { LearntView } from "../../wire/learnt-view.ts";
import type { Engine } from "../engine.ts";
import { type BenchLessons, readLessons } from "../lessons.ts";

/** Reads the closed jobs that were not read yet while the screen is open; `again` looks anew. */
export function useLessons(engine: Engine | null): {
  readonly lessons: BenchLessons | null;
  readonly problem: string | null;
  again(): void;
} {
  const [lessons, setLessons] = useState<BenchLessons | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const [round, setRound] = useState(0);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new round reads anew
  useEffect(() => {
    if (engine === null) return;
    let going = true;
    readLessons(
      engine,
      (now) => going && setLessons(now),
      () => going,
    ).catch((error: Error) => going && setProblem(error.message));
    return () => {
      going = false;
    };
  }, [engine, round]);
  const again = useCallback(() => setRound((before) => before + 1), []);
  return { lessons, problem, again };
}

/** All that the lessons say together; null until it is worked out. */
export function useLearnt(engine: Engine | null, lessons: BenchLessons | null): LearntView | null {
  const [learnt, setLearnt] = useState<LearntView | null>(null);
  useEffect(() => {
    if (engine === null || lessons === null) return;
    let wanted = true;
    const read = lessons.jobs.flatMap(({ lesson }) => (lesson === null ? [] : [lesson]));
    engine.learnt(read).then((view) => wanted && setLearnt(view));
    return () => {
      wanted = false;
    };
  }, [engine, lessons]);
  return learnt;
}

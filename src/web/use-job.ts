/** One open job: its log in this browser, the engine's view of it, and how it stands with the server. */
import { useCallback, useEffect, useRef, useState } from "react";
import type {
  ActionView,
  BecauseView,
  BenchView,
  RailBandView,
  StageView,
  StripView,
} from "../wire/bench-view.ts";
import type { FitView, TypedFit } from "../wire/fit-view.ts";
import type { Engine } from "./engine.ts";
import type { Drawing, HiddenFaults, JobSoFar, PracticeInfo } from "./engine-messages.ts";
import { happened, type KeptEvent, type KeptJob, newId, type Outcome } from "./job-event.ts";
import { drawer, dropWaiting, keepEvents, openJob, type Sync, send } from "./keeper.ts";
import { useEngine } from "./use-engine.ts";

const RETRY_MS = 5_000;
/** Progress is shown for anything longer. */
const PROGRESS_MS = 500;

export interface OpenJob {
  readonly id: string;
  readonly job: KeptJob | null | "loading";
  readonly events: readonly KeptEvent[];
  readonly view: BenchView | null;
  /** the view does not yet count the last events */
  readonly behind: boolean;
  /** behind for longer than half a second */
  readonly thinking: boolean;
  readonly problem: string | null;
  readonly sync: Sync;
  record(events: readonly KeptEvent[]): void;
  recordDone(action: ActionView, outcome: Outcome): void;
  undo(of: string): void;
  takeBackRefused(): void;
  practice(action: ActionView): Promise<Outcome>;
  hidden(): Promise<HiddenFaults>;
  why(part: string): Promise<BecauseView>;
  partFit(part: string, typed: TypedFit): Promise<FitView>;
  stages(): Promise<readonly StageView[]>;
  drawing(): Promise<Drawing | null>;
  strip(check: ActionView): Promise<StripView | null>;
  /** the last reading on the strip of its check, as things stood before it; null where there is none to show */
  lastStrip(): Promise<StripView | null>;
  rails(): Promise<readonly RailBandView[]>;
}

function useSync(id: string): readonly [Sync, () => Promise<void>] {
  const [sync, setSync] = useState<Sync>({ state: "kept" });
  const push = useCallback(() => send(id).then(setSync), [id]);
  useEffect(() => {
    void push();
    const timer = setInterval(() => void (sync.state === "waiting" && push()), RETRY_MS);
    addEventListener("online", push);
    return () => {
      clearInterval(timer);
      removeEventListener("online", push);
    };
  }, [sync.state, push]);
  return [sync, push];
}

interface Viewed {
  readonly view: BenchView | null;
  readonly of: readonly KeptEvent[] | null;
  readonly problem: string | null;
}

/** Entries that may move a part in or out of stock. */
const MOVES_STOCK: ReadonlySet<string> = new Set(["replace", "undo", "close"]);

/**
 * Gives the engine the parts drawer; a practice board has none. `ready` once the engine has it, `seen` counts how often it was looked
 * into since.
 */
function useDrawer(engine: Engine | null, job: KeptJob | null) {
  const [seen, setSeen] = useState(0);
  const practice = job === null || job.practice !== null;
  const look = useCallback(async () => {
    if (engine === null || practice) return;
    // Without the drawer the job goes on as it would in a shop that keeps none.
    const lines = await drawer().then(
      (answer) => answer?.lines ?? [],
      () => [],
    );
    await engine.drawer(lines);
    setSeen((before) => before + 1);
  }, [engine, practice]);
  useEffect(() => void look(), [look]);
  return { ready: job !== null && (practice || seen > 0), seen, look };
}

function useView(
  engine: Engine | null,
  job: KeptJob | null,
  events: readonly KeptEvent[],
): Viewed & { readonly thinking: boolean } {
  const [viewed, setViewed] = useState<Viewed>({ view: null, of: null, problem: null });
  const [thinking, setThinking] = useState(false);
  const header = job?.header;
  useEffect(() => {
    if (engine === null || header === undefined) return;
    const late = setTimeout(() => setThinking(true), PROGRESS_MS);
    const settle = (change: (before: Viewed) => Viewed) => {
      clearTimeout(late);
      setThinking(false);
      setViewed(change);
    };
    engine.view({ header, events }).then(
      (view) => view !== null && settle(() => ({ view, of: events, problem: null })),
      (error: Error) => settle((before) => ({ view: before.view, of: events, problem: error.message })),
    );
    return () => clearTimeout(late);
  }, [engine, header, events]);
  return { ...viewed, thinking };
}

/** The practice board's side of the job; both answers stay the same functions while the log does. */
function usePracticeBoard(engine: Engine | null, job: KeptJob | null, events: readonly KeptEvent[]) {
  const ask = useCallback(
    <T>(question: (on: Engine, soFar: JobSoFar, practice: PracticeInfo) => Promise<T>) => {
      if (engine === null || job === null || job.practice === null)
        return Promise.reject<T>(new Error("this is no practice job, or the engine is still starting"));
      return question(engine, { header: job.header, events }, job.practice);
    },
    [engine, job, events],
  );
  const practice = useCallback(
    (action: ActionView) => ask((on, soFar, info) => on.practice(soFar, info, action)),
    [ask],
  );
  const hidden = useCallback(() => ask((on, soFar, info) => on.hidden(soFar, info)), [ask]);
  return { practice, hidden };
}

/** What the engine says of a part, of the stages, of the board as drawn; the same functions while the log is. */
function useAboutBoard(
  engine: Engine | null,
  job: KeptJob | null,
  events: readonly KeptEvent[],
  drawerSeen: number,
) {
  const header = job?.header;
  const ask = useCallback(
    <T>(question: (on: Engine, soFar: JobSoFar) => Promise<T>) =>
      engine === null || header === undefined
        ? Promise.reject<T>(new Error("the engine is still starting"))
        : question(engine, { header, events }),
    [engine, header, events],
  );
  const why = useCallback((part: string) => ask((on, soFar) => on.why(soFar, part)), [ask]);
  const partFit = useCallback(
    (part: string, typed: TypedFit) => ask((on, soFar) => on.partFit(soFar, part, typed, drawerSeen)),
    // another look into the drawer makes another answer
    [ask, drawerSeen],
  );
  const stages = useCallback(() => ask((on, soFar) => on.stages(soFar)), [ask]);
  const rails = useCallback(() => ask((on, soFar) => on.rails(soFar)), [ask]);
  const strip = useCallback((check: ActionView) => ask((on, soFar) => on.strip(soFar, check)), [ask]);
  const lastStrip = useCallback(
    () =>
      ask(async (on, soFar) => {
        const at = soFar.events.findLastIndex(({ do: did }) => did !== "overrule" && did !== "note");
        const last = soFar.events[at];
        if (last?.do !== "measure") return null;
        const { reading, id: _id, at: _at, ...check } = last;
        return on.strip({ ...soFar, events: soFar.events.slice(0, at) }, { ...check }, reading);
      }),
    [ask],
  );
  // the log has no part in it
  const drawing = useCallback(
    () =>
      engine === null || header === undefined
        ? Promise.reject<Drawing | null>(new Error("the engine is still starting"))
        : engine.drawing(header.board),
    [engine, header],
  );
  return { why, partFit, stages, drawing, strip, lastStrip, rails };
}

/** Opens a job and keeps it: everything recorded is safe in this browser before it is sent. */
export function useJob(id: string): OpenJob {
  const engine = useEngine();
  const [job, setJob] = useState<KeptJob | null | "loading">("loading");
  const [events, setEvents] = useState<readonly KeptEvent[]>([]);
  const [sync, push] = useSync(id);
  const [unkept, setUnkept] = useState<string | null>(null);
  const known = job === "loading" ? null : job;
  const { ready, seen, look } = useDrawer(engine, known);
  const { view, of, problem, thinking } = useView(ready ? engine : null, known, events);
  const writing = useRef<Promise<void>>(Promise.resolve());

  const load = useCallback(async () => {
    const opened = await openJob(id);
    setJob(opened);
    setEvents(opened?.events ?? []);
  }, [id]);
  useEffect(() => void load(), [load]);

  const record = (added: readonly KeptEvent[]) => {
    // Shown at once; kept here next; sent last. One after another, so that the outbox holds them in order.
    setEvents((before) => [...before, ...added]);
    writing.current = writing.current
      .then(() => keepEvents(id, added))
      .then(
        () => void push().then(() => (added.some((event) => MOVES_STOCK.has(event.do)) ? look() : undefined)),
        (error: Error) => setUnkept(`This browser keeps nothing (${error.message}): write it down as well.`),
      );
  };
  const { practice, hidden } = usePracticeBoard(engine, known, events);
  const about = useAboutBoard(engine, known, events, seen);
  return {
    id,
    job,
    events,
    view,
    behind: of !== events,
    thinking,
    problem: unkept ?? problem,
    sync,
    record,
    recordDone: (action, outcome) => record([happened(action, outcome)]),
    undo: (target) => record([{ do: "undo", of: target, id: newId(), at: new Date().toISOString() }]),
    takeBackRefused: () => void dropWaiting(id).then(load).then(push),
    practice,
    hidden,
    ...about,
  };
}

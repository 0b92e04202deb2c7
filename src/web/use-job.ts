/** One open job: its log in this browser, the engine's view of it, and how it stands with the server. */
import { useCallback, useEffect, useRef, useState } from "react";
import type { PaperCatalogue } from "../messages/paper-catalogue.ts";
import { said } from "../messages/said.ts";
import type {
  ActionView,
  BecauseView,
  BenchView,
  GoodHere,
  RailBandView,
  StageView,
  StripView,
} from "../wire/bench-view.ts";
import type { FitView, TypedFit } from "../wire/fit-view.ts";
import type { Paper, PaperHead, PaperKind } from "../wire/paper-api.ts";
import type { Engine } from "./engine.ts";
import type { Drawing, HiddenFaults, JobSoFar, PracticeInfo } from "./engine-messages.ts";
import { happened, type KeptEvent, type KeptJob, newId, type Outcome } from "./job-event.ts";
import { drawer, dropRefused, keepEvents, keepNews, openJob, type Sent, type Sync, send } from "./keeper.ts";
import { listen, listenBack } from "./stream.ts";
import { useJobEngine } from "./use-engine.ts";

const RETRY_MS = 2_000;
/** Progress is shown for anything longer. */
const PROGRESS_MS = 500;
const STARTING = said`the engine is still starting`;

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
  paper(kind: PaperKind, head: PaperHead, catalogue: PaperCatalogue): Promise<Paper>;
  strip(check: ActionView): Promise<StripView | null>;
  good(check: ActionView): Promise<GoodHere>;
  /** the last reading on the strip of its check, as things stood before it; null where there is none to show */
  lastStrip(): Promise<StripView | null>;
  rails(): Promise<readonly RailBandView[]>;
}

/** Sends what waits, again and again until it is there; `caughtUp` follows where others had added to the job meanwhile. */
function useSync(id: string, caughtUp: (sent: Sent) => void): readonly [Sync, () => Promise<void>] {
  const [sync, setSync] = useState<Sync>({ state: "kept" });
  const push = useCallback(
    () =>
      send(id).then((sent) => {
        setSync(sent.sync);
        caughtUp(sent);
      }),
    [id, caughtUp],
  );
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

interface Log {
  readonly events: readonly KeptEvent[];
  /** ids of those at its end that the bench computer does not have yet */
  readonly waiting: ReadonlySet<string>;
}

/** The log with what the bench computer says was added in its place: before everything that still waits here. */
function withNews({ events, waiting }: Log, added: readonly KeptEvent[]): Log {
  const news = new Set(added.map((event) => event.id));
  const kept = events.filter((event) => !waiting.has(event.id) && !news.has(event.id));
  const still = events.filter((event) => waiting.has(event.id) && !news.has(event.id));
  const earlier = new Set(events.filter((event) => !waiting.has(event.id)).map((event) => event.id));
  const fresh = added.filter((event) => !earlier.has(event.id));
  const whole =
    fresh.length === added.length
      ? [...kept, ...added, ...still]
      : [...events.filter((event) => earlier.has(event.id)), ...fresh, ...still];
  // One's own entry that comes back changes nothing: the same list, so that nothing is weighed again.
  const same = whole.length === events.length && whole.every((event, at) => event.id === events[at]?.id);
  return { events: same ? events : whole, waiting: new Set(still.map((event) => event.id)) };
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
        return Promise.reject<T>(new Error(said`this is no practice job, or the engine is still starting`));
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

/** What the engine says of a part, of the stages, of the board as drawn, and the papers it makes; the same functions while the log is. */
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
        ? Promise.reject<T>(new Error(STARTING))
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
  const good = useCallback((check: ActionView) => ask((on, soFar) => on.good(soFar, check)), [ask]);
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
        ? Promise.reject<Drawing | null>(new Error(STARTING))
        : engine.drawing(header.board),
    [engine, header],
  );
  const paper = useCallback(
    (kind: PaperKind, head: PaperHead, catalogue: PaperCatalogue) =>
      ask((on, soFar) => on.paper(soFar, kind, head, catalogue)),
    [ask],
  );
  return { why, partFit, stages, drawing, paper, strip, good, lastStrip, rails };
}

/** The job's log on this screen: from this browser and the bench computer, and what others add while it is open. */
function useLog(id: string) {
  const [job, setJob] = useState<KeptJob | null | "loading">("loading");
  const [events, setEvents] = useState<readonly KeptEvent[]>([]);
  const log = useRef<Log>({ events: [], waiting: new Set() });
  const writing = useRef<Promise<void>>(Promise.resolve());
  const show = useCallback((now: Log) => {
    log.current = now;
    setEvents(now.events);
  }, []);
  const load = useCallback(async () => {
    await writing.current.catch(() => undefined);
    const opened = await openJob(id);
    setJob((before) => (before === null || before === "loading" ? (opened?.job ?? null) : before));
    if (opened === null) return;
    const there = new Set(opened.job.events.map((event) => event.id));
    // entered while the job was being fetched
    const later = log.current.events.filter(
      (event) => log.current.waiting.has(event.id) && !there.has(event.id),
    );
    show({
      events: [...opened.job.events, ...later],
      waiting: new Set([...opened.waiting, ...later.map((event) => event.id)]),
    });
  }, [id, show]);
  useEffect(() => void load(), [load]);
  useEffect(
    () =>
      listen("log", (news) => {
        if (news.job !== id) return;
        show(withNews(log.current, news.events));
        void keepNews(news).then((whole) => (whole ? undefined : load()));
      }),
    [id, load, show],
  );
  return { job, events, log, writing, show, load };
}

/** Opens a job and keeps it: everything recorded is safe in this browser before it is sent. */
export function useJob(id: string): OpenJob {
  const engine = useJobEngine();
  const { job, events, log, writing, show, load } = useLog(id);
  const caughtUp = useCallback(
    ({ acknowledged, others }: Sent) => {
      const waiting = new Set(log.current.waiting);
      for (const own of acknowledged) waiting.delete(own);
      log.current = { ...log.current, waiting };
      if (others) void load();
    },
    [load, log],
  );
  const [sync, push] = useSync(id, caughtUp);
  useEffect(() => listenBack(() => void push().then(load)), [push, load]);
  const [unkept, setUnkept] = useState<string | null>(null);
  const known = job === "loading" ? null : job;
  const { ready, seen, look } = useDrawer(engine, known);
  const { view, of, problem, thinking } = useView(ready ? engine : null, known, events);

  const record = (added: readonly KeptEvent[]) => {
    // Shown at once; kept here next; sent last. One after another, so that the outbox holds them in order.
    const { events: before, waiting } = log.current;
    show({
      events: [...before, ...added],
      waiting: new Set([...waiting, ...added.map(({ id: own }) => own)]),
    });
    writing.current = writing.current
      .then(() => keepEvents(id, added))
      .then(
        () => void push().then(() => (added.some((event) => MOVES_STOCK.has(event.do)) ? look() : undefined)),
        (error: Error) =>
          setUnkept(said`This browser keeps nothing (${error.message}): write it down as well.`),
      );
  };
  const takeBackRefused = () => {
    const refused = sync.state === "refused" ? sync.waiting[0] : undefined;
    const waiting = [...log.current.waiting].filter((own) => own !== refused);
    log.current = { ...log.current, waiting: new Set(waiting) };
    void dropRefused(id).then(load).then(push);
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
    takeBackRefused,
    practice,
    hidden,
    ...about,
  };
}

/** The bench: the next check as a card, and beside it what is believed, what was read, and what else can be done. */
import { useRef, useState } from "react";
import type { BenchView } from "../../wire/bench-view.ts";
import { happened, type KeptEvent } from "../job-event.ts";
import { useLayout } from "../layout.ts";
import { go } from "../route.ts";
import { Wordmark } from "../shell/icons.tsx";
import { type OpenJob, useJob } from "../use-job.ts";
import { useWakeLock } from "../wake-lock.ts";
import { actionWords } from "../words.ts";
import { type Agenda, useAgenda } from "./agenda.ts";
import { BenchBar } from "./bench-bar.tsx";
import type { Hands } from "./bench-props.ts";
import { CardPlace } from "./card-place.tsx";
import { KeyHelp } from "./key-help.tsx";
import { overrule } from "./overrule.ts";
import { Panels } from "./panels.tsx";
import { useBenchKeys } from "./use-bench-keys.ts";

export function BenchScreen({ id }: { readonly id: string }) {
  const open = useJob(id);
  useWakeLock();
  if (open.job === "loading") return <Blank words="Opening the job…" />;
  if (open.job === null)
    return (
      <Blank words="This job is not in this browser, and the bench computer does not have it or is away." />
    );
  if (open.view === null)
    return (
      <Blank words={open.problem ?? "Working out what this board would show…"} bad={open.problem !== null} />
    );
  return <Bench open={open} view={open.view} />;
}

function Blank({ words, bad = false }: { readonly words: string; readonly bad?: boolean }) {
  return (
    <main className="blank">
      <Wordmark />
      <p role={bad ? "alert" : "status"}>{words}</p>
      <button type="button" onClick={() => go("#/")}>
        All jobs
      </button>
    </main>
  );
}

function Bench({ open, view }: { readonly open: OpenJob; readonly view: BenchView }) {
  const [tab, setTab] = useState("check");
  const layout = useLayout();
  const agenda = useAgenda(view, open.behind);
  const help = useRef<HTMLDialogElement>(null);
  // from the switch to the record of what it showed the log knows nothing of the power: any entry ends it
  const [onSince, setOnSince] = useState<number | null>(null);
  const switchedOn = onSince === open.events.length;
  const hands: Hands = {
    add: open.record,
    undo: (of) => {
      agenda.clear();
      open.undo(of);
    },
    throwSwitch: (on) => setOnSince(on ? open.events.length : null),
    choose: (action) => {
      agenda.choose(action);
      setTab("check");
      scrollTo({ top: 0 });
    },
    done: (action, outcome) => {
      const event = happened(action, outcome);
      open.record(agenda.chosen === null ? [event] : [overruled(agenda, view), event]);
      agenda.next();
      scrollTo({ top: 0 });
    },
  };
  useBenchKeys({
    undo: () => {
      const last = view.log.findLast((line) => line.canUndo && !line.undone && line.id !== null);
      if (last?.id != null) hands.undo(last.id);
    },
    help: () => help.current?.showModal(),
  });
  return (
    <div className="bench" data-layout={layout}>
      <BenchBar
        open={open}
        view={view}
        live={view.powered || switchedOn}
        onHelp={() => help.current?.showModal()}
      />
      <main className="bench-body">
        {(layout !== "phone" || tab === "check") && (
          <CardPlace open={open} view={view} agenda={agenda} hands={hands} switchedOn={switchedOn} />
        )}
        <Panels layout={layout} open={open} view={view} hands={hands} tab={tab} onTab={setTab} />
      </main>
      <KeyHelp dialog={help} />
    </div>
  );
}

function overruled(agenda: Agenda, view: BenchView): KeptEvent {
  const proposed = view.card === null ? "" : ` Proposed was: ${view.card.headline}`;
  const chosen = agenda.chosen === null ? "another check" : actionWords(agenda.chosen);
  return overrule("proposal", `Chose ${chosen} instead.${proposed}`);
}

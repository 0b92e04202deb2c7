/** The bench: the next check as a card, and beside it what is believed, what was read, and what else can be done. */
import { useRef, useState } from "react";
import type { BenchView } from "../../wire/bench-view.ts";
import { lastEntry } from "../../wire/last-entry.ts";
import { noteTyped } from "../hands/typed-last.ts";
import { useSpokenStep } from "../hands/voice.ts";
import { happened, type KeptEvent } from "../job-event.ts";
import { useLayout } from "../layout.ts";
import { useBoardDesk } from "../picture/use-board-desk.ts";
import { OpenedJob } from "../shell/opened-job.tsx";
import type { OpenJob } from "../use-job.ts";
import { useWakeLock } from "../wake-lock.ts";
import { actionWords } from "../words.ts";
import { type Agenda, useAgenda } from "./agenda.ts";
import { BenchBar } from "./bench-bar.tsx";
import type { Hands } from "./bench-props.ts";
import { CardPlace, isWaiting, stepWords } from "./card-place.tsx";
import { Conflicts } from "./conflicts.tsx";
import { KeyHelp } from "./key-help.tsx";
import { overrule } from "./overrule.ts";
import { Panels } from "./panels.tsx";
import { useBenchKeys } from "./use-bench-keys.ts";
import { useBeside } from "./use-beside.ts";

export function BenchScreen({ id }: { readonly id: string }) {
  useWakeLock();
  return <OpenedJob id={id}>{(open, view) => <Bench open={open} view={view} />}</OpenedJob>;
}

function Bench({ open, view }: { readonly open: OpenJob; readonly view: BenchView }) {
  const [tab, setTab] = useState("check");
  const layout = useLayout();
  const agenda = useAgenda(view, open.behind);
  const desk = useBoardDesk(open, view, agenda.card, () => setTab("board"));
  const help = useRef<HTMLDialogElement>(null);
  // from the switch to the record of what it showed the log knows nothing of the power: any entry ends it
  const [onSince, setOnSince] = useState<number | null>(null);
  const switchedOn = onSince === open.events.length;
  const beside = useBeside(open.id);
  const hands: Hands = {
    add: open.record,
    undo: (of) => {
      agenda.clear();
      beside.done();
      open.undo(of);
    },
    throwSwitch: (on) => setOnSince(on ? open.events.length : null),
    choose: (action) => {
      agenda.choose(action);
      setTab("check");
      scrollTo({ top: 0 });
    },
    done: (action, outcome, before = []) => {
      noteTyped(false);
      const event = happened(action, outcome);
      open.record([...before, ...(agenda.chosen === null ? [] : [overruled(agenda, view)]), event]);
      agenda.next();
      beside.read(action, outcome ?? {}, view.whole);
      scrollTo({ top: 0 });
    },
  };
  const sayAgain = useSpokenStep(stepWords(view, agenda, isWaiting(open, agenda)));
  useBenchKeys({
    undo: () => {
      const last = lastEntry(open.events);
      if (last !== null) hands.undo(last.id);
    },
    again: sayAgain,
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
      <Conflicts open={open} view={view} hands={hands} />
      <main className="bench-body">
        {(layout !== "phone" || tab === "check") && (
          <CardPlace
            open={open}
            view={view}
            agenda={agenda}
            hands={hands}
            beside={beside}
            desk={desk}
            switchedOn={switchedOn}
          />
        )}
        <Panels layout={layout} open={open} view={view} hands={hands} desk={desk} tab={tab} onTab={setTab} />
      </main>
      <KeyHelp dialog={help} />
    </div>
  );
}

function overruled(agenda: Agenda, view: BenchView): KeptEvent {
  const chosen = agenda.chosen === null ? "another check" : actionWords(agenda.chosen);
  const proposed = view.card === null ? "" : ` Proposed was: ${view.card.headline}`;
  // kept in the log, in the words of its file
  return overrule("proposal", `Chose ${chosen} instead.${proposed}`);
}

import type { JobEvent } from "../../bench/event.ts";
import { undoneEvents } from "../../bench/fold.ts";
import { faultNameWords } from "../../board/fault-words.ts";
import type { BenchMeter } from "../../hookup/bench-meter.ts";
import { type Assessment, AssessmentSession, assess } from "../../job/assess.ts";
import { benchView } from "../../job/bench-view.ts";
import type { Parsed } from "../../units/outcome.ts";
import type { BenchView } from "../../wire/bench-view.ts";
import { table } from "../answer-text.ts";
import { beforeItGoesIn } from "../before-it-goes-in.ts";
import { cardText } from "../card-text.ts";
import { DONE, type Io, oneLine, refuse, whileTold } from "../io.ts";
import { storesText } from "../stores-text.ts";
import { suspectsText } from "../suspects-text.ts";
import { whyText } from "../why-text.ts";
import { BENCH_HELP } from "./bench-help.ts";
import { BesideTurns, comparedText } from "./beside-turns.ts";
import type { JobFile } from "./job-file.ts";
import type { PracticeBench } from "./practice-bench.ts";
import { parseLine } from "./typed-event.ts";
import { wiredReading } from "./wired-reading.ts";

/** One sitting at the prompt: takes lines, keeps events, shows the next step. */
export class BenchSession {
  readonly #file: JobFile;
  readonly #io: Io;
  readonly #practice: PracticeBench | null;
  readonly #engine = new AssessmentSession();
  readonly #beside = new BesideTurns();
  #assessed: { readonly assessment: Assessment; readonly view: BenchView } | null = null;

  constructor(file: JobFile, io: Io, practice: PracticeBench | null) {
    this.#file = file;
    this.#io = io;
    this.#practice = practice;
  }

  /** Shows the next step. Gives an exit code, as `take` does. */
  show(): number {
    const now = this.#now();
    if (!now.ok) return refuse(this.#io, now.problem);
    const card = this.#beside.waiting
      ? this.#beside.show(this.#file.job.board)
      : cardText(now.value.view, this.#io.color, goesIn(now.value.assessment));
    this.#io.out(`\n${card}`);
    return DONE;
  }

  take(line: string): number | "quit" {
    const words = line.trim().split(/\s+/);
    const [verb = "", word = ""] = words;
    switch (verb) {
      case "":
        return DONE;
      case "quit":
      case "exit":
        return "quit";
      case "help":
      case "?":
        this.#io.out(`${BENCH_HELP}\n`);
        return DONE;
      case "next":
        return this.show();
      case "others":
      case "compared":
      case "stores":
      case "suspects":
      case "why":
      case "log":
        return this.#tell(verb, word);
      case "undo":
        return this.#undo(word);
      case "skip":
        return this.#skip();
      case "beside":
        return words.length === 2 ? this.#turnBeside(word) : this.#enter(line);
      case "ask":
      case "reveal":
        return this.#practise(verb);
      default:
        return this.#enter(line);
    }
  }

  #skip(): number {
    if (!this.#beside.waiting) return refuse(this.#io, "skip: nothing is asked of a good board");
    this.#beside.skip();
    return this.show();
  }

  #turnBeside(word: string): number {
    const turned = this.#beside.turn(word);
    if (!turned.ok) return refuse(this.#io, turned.problem);
    this.#io.out(turned.value);
    return DONE;
  }

  #enter(line: string): number {
    const ofGood = this.#beside.answer(line.trim().split(/\s+/), this.#stamp);
    if (ofGood?.ok === false) return refuse(this.#io, ofGood.problem);
    if (ofGood?.ok === true) return this.#keep(ofGood.value);
    const now = this.#now();
    const proposed = now.ok ? now.value.assessment.proposal : null;
    const isPart = (word: string) => this.#file.job.board.parts.has(word);
    const events = parseLine(line, { card: proposed, isPart, stamp: this.#stamp });
    if (!events.ok) return refuse(this.#io, events.problem);
    return this.#keep(events.value);
  }

  /** The reading of the check proposed, off the meter on the wire. */
  async read(meter: BenchMeter | null): Promise<number> {
    if (meter === null) return refuse(this.#io, "read: no meter is on the wire; start with --meter");
    const now = this.#now();
    if (!now.ok) return refuse(this.#io, now.problem);
    const action = now.value.assessment.proposal?.action;
    if (action?.do !== "measure") return refuse(this.#io, "read: the step proposed is no measurement");
    const taken = await wiredReading(meter, action, this.#file.job.meter.beepOhms);
    if (!taken.ok) return refuse(this.#io, `read: ${taken.problem}`);
    return this.#keep([{ ...action, ...taken.value, ...this.#stamp() }]);
  }

  readonly #stamp = () => ({ id: this.#io.newId(), at: this.#io.now() });

  #practise(what: "ask" | "reveal"): number {
    if (this.#practice === null) {
      return refuse(this.#io, `${what}: this is a real board; start with --practice SEED for a hidden one`);
    }
    const now = this.#now();
    if (!now.ok) return refuse(this.#io, now.problem);
    const { assessment } = now.value;
    if (what === "reveal") {
      const hidden = this.#practice.hidden(assessment);
      const words = hidden.map((fault) => faultNameWords(fault, assessment.job.board));
      this.#io.out(`The board came in with: ${words.join(", ")}\n`);
      return DONE;
    }
    const events = this.#practice.ask(assessment, this.#stamp);
    if (!events.ok) return refuse(this.#io, events.problem);
    return this.#keep(events.value);
  }

  #undo(word: string): number {
    const { log } = this.#file.job;
    const undone = undoneEvents(log);
    const last = log.findLastIndex((event, index) => undone[index] === false && event.do !== "undo");
    const index = word === "" ? last : Number(word);
    const event = log[index];
    if (event === undefined)
      return refuse(this.#io, word === "" ? "there is nothing to undo" : `undo: the log has no line ${word}`);
    if (event.id === undefined)
      return refuse(this.#io, `undo: log line ${index} has no id, so it cannot be undone`);
    return this.#keep([{ do: "undo", of: event.id, ...this.#stamp() }]);
  }

  #keep(events: readonly JobEvent[]): number {
    const kept = this.#file.append(events);
    if (!kept.ok) return refuse(this.#io, kept.problem);
    this.#assessed = null;
    const now = this.#now();
    if (!now.ok) return refuse(this.#io, now.problem);
    for (const line of now.value.view.log.slice(-events.length))
      this.#io.out(`kept: ${oneLine(line.words)}\n`);
    const { board, log } = this.#file.job;
    const { timeline } = now.value.assessment;
    this.#beside.kept(board, timeline, new Set(events.flatMap(({ id }) => id ?? [])));
    if (events.some(({ do: what }) => what === "beside"))
      this.#io.out(comparedText(board, timeline, log.length - events.length));
    return this.show();
  }

  #tell(what: "others" | "compared" | "stores" | "suspects" | "why" | "log", part: string): number {
    const now = this.#now();
    if (!now.ok) return refuse(this.#io, now.problem);
    const { assessment, view } = now.value;
    if (what === "others") this.#io.out(othersText(view));
    else if (what === "compared") this.#io.out(comparedText(this.#file.job.board, assessment.timeline));
    else if (what === "stores") this.#io.out(storesText(view));
    else if (what === "suspects") this.#io.out(suspectsText(assessment));
    else if (what === "log") this.#io.out(logText(view));
    else {
      const why = whyText(assessment, view, part);
      if (!why.ok) return refuse(this.#io, why.problem);
      this.#io.out(why.value);
    }
    return DONE;
  }

  #now(): Parsed<{ readonly assessment: Assessment; readonly view: BenchView }> {
    if (this.#assessed === null) {
      const assessed = whileTold(this.#io, () => assess(this.#file.job, this.#engine));
      if (!assessed.ok) return assessed;
      this.#assessed = { assessment: assessed.value, view: benchView(assessed.value) };
    }
    return { ok: true, value: this.#assessed };
  }
}

function goesIn({ job, timeline, proposal }: Assessment): string {
  return beforeItGoesIn(job.board, timeline, proposal.action);
}

function othersText(view: BenchView): string {
  const others = view.card?.others ?? [];
  if (others.length === 0) return "Nothing else comes near.\n";
  return table(
    others.map((other) => [
      `  ${other.minutes} min, ${other.money} ${view.currency}`,
      other.headline,
      other.why,
    ]),
  );
}

function logText(view: BenchView): string {
  if (view.log.length === 0) return "Nothing has been done yet.\n";
  return table(
    view.log.map((line) => {
      const mark = line.undone ? "undone" : line.unexplained ? "unexplained" : "";
      return [String(line.logIndex).padStart(4), oneLine(line.words), mark];
    }),
  );
}

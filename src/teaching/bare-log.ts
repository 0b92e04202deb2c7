/**
 * A log without the people in it: notes, names, reasons, types and ids are left out, times begin on one day for all, and of answers
 * only those stay that the program itself asks for. Each event is made anew from fields known to hold no words of anybody.
 */
import type { AnswerEvent, JobEvent } from "../bench/event.ts";
import type { TimelineEntry } from "../bench/timeline.ts";

/** Between shop and customer, or of no event of its own: none of it is part of a case. */
const UNSAID = ["undo", "quote", "wait", "resume"] as const;
type Unsaid = (typeof UNSAID)[number];
const isUnsaid = (name: JobEvent["do"]): name is Unsaid => UNSAID.some((unsaid) => unsaid === name);

/** Of each event, the fields that hold a figure, a place of the board or a word of the file format. */
const KEPT: Readonly<Record<Exclude<JobEvent["do"], Unsaid>, readonly string[]>> = {
  measure: ["mode", "red", "black", "part", "ambient", "by", "reading", "settling", "afterPower", "wires"],
  beside: ["mode", "red", "black", "reading"],
  calibrate: ["mode", "known", "reading"],
  look: ["part", "finding"],
  clean: ["part", "stage", "dried"],
  resolder: ["part", "stage", "dried"],
  lift: ["place"],
  refit: ["place"],
  remove: ["part"],
  restore: ["part"],
  replace: ["part", "price", "used"],
  incoming: ["part", "mode", "red", "black", "reading"],
  clip: ["at", "ohms"],
  unclip: ["at", "ohms"],
  power: ["feed", "watts", "volts", "limitAmps", "ohms", "observed", "load", "meters", "signs"],
  unpower: ["observed", "afterPower"],
  answer: ["question", "answer"],
  mark: ["part", "as"],
  note: ["turned"],
  overrule: ["of"],
  close: ["verdict"],
};

/** Answers that the program asks for, with what may stand there. */
const ANSWERS: Readonly<Record<string, RegExp>> = {
  "powered-while-wet": /^(yes|no)$/,
  "motor-insulation": /^(OL|\d{1,5}(\.\d{1,3})?|not read|over 50|10 to 50|2 to 10|under 2)$/,
};
/** Required words that somebody wrote are replaced by these. */
const WORDS: Readonly<Record<string, object>> = { note: { text: "turned" }, overrule: { why: "overruled" } };

/** Where all practice begins. */
const FIRST_MOMENT = Date.UTC(2000, 0, 1, 9);

/** The entries that a bare log keeps, in its order. */
export function keptEntries(entries: readonly TimelineEntry[]): readonly TimelineEntry[] {
  return entries.filter(({ event }) => saysSomething(event));
}

/** The events that count, bare. */
export function bareLog(entries: readonly TimelineEntry[]): readonly JobEvent[] {
  const events = keptEntries(entries).map(({ event }) => event);
  const times = events.map((event) => Date.parse(String("at" in event ? event.at : "")));
  const first = times.find((time) => Number.isFinite(time)) ?? 0;
  return events.map((event, index) => {
    const kept = isUnsaid(event.do) ? [] : KEPT[event.do];
    const own = Object.entries(event).filter(([field]) => kept.includes(field));
    const time = times[index] ?? Number.NaN;
    const at = Number.isFinite(time) ? { at: new Date(FIRST_MOMENT + time - first).toISOString() } : {};
    const places = event.do === "power" && Array.isArray(event.at) ? { at: event.at } : {};
    const bare: object = { do: event.do, ...Object.fromEntries(own), ...WORDS[event.do], ...at, ...places };
    // The same event with fewer fields; whoever keeps it parses it again.
    return bare as unknown as JobEvent;
  });
}

function saysSomething(event: JobEvent): boolean {
  if (isUnsaid(event.do)) return false;
  if (event.do === "note") return event.turned !== undefined;
  return event.do !== "answer" || isAsked(event);
}

const isAsked = ({ question, answer }: AnswerEvent) =>
  Object.hasOwn(ANSWERS, question) && ANSWERS[question]?.test(answer) === true;

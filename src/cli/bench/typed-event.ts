/** What is typed at the prompt, as events of the log. */

import type { JobEvent, MeasureMode } from "../../bench/event.ts";
import { turnedWords } from "../../bench/note-words.ts";
import { parseEvent } from "../../bench/parse-event.ts";
import { COLD_MODES, FINDINGS, isColdMode, MEASURE_MODES, OBSERVED, OVERRULED } from "../../bench/words.ts";
import { plain } from "../../messages/said.ts";
import type { Action } from "../../planning/proposal.ts";
import { parseJsonText } from "../../units/json-text.ts";
import type { Parsed } from "../../units/outcome.ts";
import { parseReadingText } from "../../units/reading-text.ts";
import { parseTypedReadings } from "./typed-reading.ts";

/** What every event of this session carries: a fresh id, and the time where `at` does not mean two places. */
export type Stamp = () => { readonly id: string; readonly at: string };

type Fields = Readonly<Record<string, unknown>>;

/** What a line is read against. */
export interface Prompt {
  /** the step proposed, which bare readings and `done` answer */
  readonly card: Proposed | null;
  readonly isPart: (word: string) => boolean;
  readonly stamp: Stamp;
}

export interface Proposed {
  readonly action: Action;
  readonly row: readonly Action[];
}

/** The events a line stands for; whether they can happen now is for the fold to say. */
export function parseLine(line: string, prompt: Prompt): Parsed<readonly JobEvent[]> {
  const fields = line.trim().startsWith("{") ? fromJson(line) : fromWords(line.trim(), prompt);
  if (!fields.ok) return fields;
  const events: JobEvent[] = [];
  for (const one of fields.value) {
    const event = parseEvent(stamped(one, prompt.stamp), "event");
    if (!event.ok) return { ok: false, problem: event.problem.replace(/^event\.?/, "") };
    events.push(event.value);
  }
  return { ok: true, value: events };
}

function stamped(fields: Fields, stamp: Stamp): Fields {
  const { id, at } = stamp();
  const holdsPlaces =
    fields.do === "clip" || fields.do === "unclip" || (fields.do === "power" && fields.feed === "bench");
  return { id, ...(holdsPlaces ? {} : { at }), ...fields };
}

function fromJson(line: string): Parsed<readonly Fields[]> {
  const parsed = parseJsonText(line, "event");
  return parsed.ok ? one(parsed.value as Fields) : parsed;
}

function one(fields: Fields): Parsed<readonly Fields[]> {
  return { ok: true, value: [fields] };
}

function fromWords(line: string, { card, isPart }: Prompt): Parsed<readonly Fields[]> {
  const words = line.split(/\s+/);
  const [verb = "", ...rest] = words;
  const [first = "", second = "", third = "", fourth = ""] = rest;
  const after = line.slice(verb.length).trim();
  switch (verb) {
    case "measure":
    case "beside":
      return measured(verb, rest);
    case "lift":
    case "refit":
      return one({ do: verb, place: first });
    case "remove":
    case "restore":
      return one({ do: verb, part: first });
    case "replace":
      return one({ do: verb, part: first, ...(second === "" ? {} : { price: Number(second) }) });
    case "incoming":
      return ofPartInHand(rest);
    case "look":
      return one({ do: verb, part: first, finding: second });
    case "clean":
    case "resolder":
      return one({ do: verb, [isPart(first) ? "part" : "stage"]: first });
    case "clip":
    case "unclip": {
      const ohms = parseReadingText(third, "ohms");
      return ohms.ok ? one({ do: verb, at: [first, second], ohms: ohms.value }) : ohms;
    }
    case "power":
      return powered(
        first,
        [second, third, fourth, ...rest.slice(4)].filter((word) => word !== ""),
      );
    case "unpower":
      return one({ do: verb, ...seenWords(rest) });
    case "mark":
      return one({ do: verb, part: first, as: second });
    case "note":
      return one({ do: verb, text: after });
    case "turned":
      return one({ do: "note", text: plain(turnedWords(first)), turned: first });
    case "overrule": {
      const of = OVERRULED.find((known) => known === first);
      return one({
        do: verb,
        why: of === undefined ? after : after.slice(of.length).trim(),
        ...(of && { of }),
      });
    }
    case "quote":
      return one({ do: verb, offer: first, answer: second, ...sums(third, fourth) });
    case "wait":
      return one({ do: verb, for: first, ...(rest.length > 1 && { what: rest.slice(1).join(" ") }) });
    case "resume":
      return one({ do: verb });
    case "close":
      return one({ do: verb, verdict: first });
    default:
      return answered(words, card);
  }
}

/** `measure diode PBUS NBUS 0.47`, or `beside ...` of the good board: any check, in any order, whatever is proposed. */
function measured(verb: "measure" | "beside", words: readonly string[]): Parsed<readonly Fields[]> {
  const [mode = "", red = "", black = "", ...typed] = words;
  const known = MEASURE_MODES.find((one) => one === mode);
  if (known === undefined || typed.length === 0) {
    return {
      ok: false,
      problem: `write ${verb} MODE RED BLACK READING; the modes: ${MEASURE_MODES.join(" ")}`,
    };
  }
  const readings = parseTypedReadings(typed, known);
  if (!readings.ok) return readings;
  const [reading, ...more] = readings.value;
  if (reading === undefined || more.length > 0) return { ok: false, problem: "one reading to a line" };
  const { climbing, ...shown } = reading;
  return one({ do: verb, mode, red, black, ...shown, ...(climbing ? { settling: "climbing" } : {}) });
}

/** `incoming Q3 diode e c 0.46`: the part for Q3, between two of its pins, before it goes in. */
function ofPartInHand([part = "", mode = "", red = "", black = "", ...typed]: readonly string[]): Parsed<
  readonly Fields[]
> {
  const known = COLD_MODES.find((one) => one === mode);
  if (known === undefined || typed.length === 0)
    return {
      ok: false,
      problem: `write incoming PART MODE PIN PIN READING, as incoming Q3 diode e c 0.46; the modes: ${COLD_MODES.join(" ")}`,
    };
  const readings = parseTypedReadings(typed, known);
  if (!readings.ok) return readings;
  const [reading, ...more] = readings.value;
  if (reading === undefined || more.length > 0 || reading.climbing)
    return { ok: false, problem: "one settled reading of the part in the hand" };
  return one({ do: "incoming", part, mode, red, black, reading: reading.reading });
}

/** Price and cap of a quote, as far as they were typed. */
function sums(price: string, cap: string): Fields {
  return { ...(price === "" ? {} : { price: Number(price) }), ...(cap === "" ? {} : { cap: Number(cap) }) };
}

/** What was seen, where anything was said: `runs`, `trip smoke`. */
function seenWords(words: readonly string[]): Fields {
  return words.length === 0 ? {} : { observed: words };
}

/** `LED1=on K1=off` among the words of a power-up: the part came on, or it did not. */
function signsIn(typed: readonly string[]): { readonly words: readonly string[]; readonly signs: Fields } {
  const signs: Record<string, boolean> = {};
  const words = typed.filter((word) => {
    const [, part, state] = /^([^=]+)=(on|off)$/.exec(word) ?? [];
    if (part !== undefined) signs[part] = state === "on";
    return part === undefined;
  });
  return { words, signs: Object.keys(signs).length === 0 ? {} : { signs } };
}

/** `load own`, or `load 250` for a dummy of so many watts. */
function loadGiven(words: readonly string[]): Fields {
  const at = words.indexOf("load");
  if (at < 0) return {};
  const load = words[at + 1] ?? "own";
  return { load: load === "own" ? load : Number(load) };
}

/** `power lamp 100 lamp-dim runs`, `power mains fuse-blew`, `power bench 15 0.5 V15 NBUS limiting`. */
function powered(feed: string, typed: readonly string[]): Parsed<readonly Fields[]> {
  const { words, signs } = signsIn(typed);
  const observed = words.filter((word) => OBSERVED.some((known) => known === word));
  const given = words.filter((word) => !observed.includes(word));
  const seen = { ...(observed.length === 0 ? {} : { observed }), ...signs };
  if (feed === "lamp") return one({ do: "power", feed, watts: Number(given[0]), ...seen });
  if (feed !== "bench") return one({ do: "power", feed, ...loadGiven(given), ...seen });
  const [volts, limitAmps, plus = "", minus = ""] = given;
  return one({
    do: "power",
    feed,
    volts: Number(volts),
    limitAmps: Number(limitAmps),
    at: [plus, minus],
    ...seen,
  });
}

/** A bare answer to the step proposed. */
function answered(words: readonly string[], card: Proposed | null): Parsed<readonly Fields[]> {
  if (card === null)
    return { ok: false, problem: `"${words.join(" ")}": nothing is proposed to answer; type help` };
  const { action } = card;
  if (action.do === "measure") return rowOf(words, card, action.mode);
  const [word = ""] = words;
  if (action.do === "look") {
    if (FINDINGS.some((finding) => finding === word)) return one({ ...action, finding: word });
    return { ok: false, problem: `"${word}": say what you see: ${FINDINGS.join(" ")}` };
  }
  if (action.do === "power") {
    const { words: told, signs } = signsIn(words);
    const unknown = told.find((seen) => seen !== "done" && !OBSERVED.some((known) => known === seen));
    if (unknown !== undefined)
      return {
        ok: false,
        problem: `"${unknown}": say what happened: ${OBSERVED.join(" ")}; and signs of life as LED1=on or LED1=off`,
      };
    const observed = told.filter((seen) => seen !== "done");
    return one({ ...action, observed: observed.length === 0 ? ["quiet"] : observed, ...signs });
  }
  if (action.do === "answer" && word !== "done") return one({ ...action, answer: words.join(" ") });
  if (action.do === "unpower" && words.every((seen) => OBSERVED.some((known) => known === seen)))
    return one({ ...action, ...seenWords(words) });
  if (word === "done" && words.length === 1) return one({ ...action });
  return { ok: false, problem: `"${words.join(" ")}": type done once it is done, or help` };
}

/** Readings typed on one line answer the check proposed and then its row, in order. */
function rowOf(words: readonly string[], card: Proposed, mode: MeasureMode): Parsed<readonly Fields[]> {
  const readings = parseTypedReadings(words, mode);
  if (!readings.ok) return readings;
  const checks = [card.action, ...card.row];
  if (readings.value.length > checks.length) {
    return { ok: false, problem: `${readings.value.length} readings for ${checks.length} checks` };
  }
  const fields = readings.value.map(({ reading, climbing }, index) => ({
    ...checks[index],
    reading,
    ...(climbing && isColdMode(mode) ? { settling: "climbing" } : {}),
  }));
  return { ok: true, value: fields };
}

/** Reads one event of a job's log: every event and field of `faultwright-job/1`, and nothing else. */
import { said } from "../messages/said.ts";
import { Fields, found, Problems, present } from "../units/fields.ts";
import { quoted, suggestion } from "../units/nearest.ts";
import type { Parsed } from "../units/outcome.ts";
import type {
  AnswerEvent,
  CalibrateEvent,
  CleanEvent,
  ClipEvent,
  CloseEvent,
  Feed,
  JobEvent,
  LiftEvent,
  LookEvent,
  MarkEvent,
  NoteEvent,
  Observed,
  OverruleEvent,
  Place,
  PowerEvent,
  RemoveEvent,
  ReplaceEvent,
  RunLoad,
  UndoEvent,
  UnpowerEvent,
} from "./event.ts";
import { readIncoming } from "./parse-incoming.ts";
import { readBeside, readMeasure } from "./parse-measure.ts";
import { readQuote } from "./parse-quote.ts";
import { readStockPlace } from "./parse-stock-place.ts";
import { readResume, readWait } from "./parse-wait.ts";
import { readPlace } from "./place.ts";
import { FEEDS, FINDINGS, MEASURE_MODES, OBSERVED, OVERRULED, PART_MARKS, VERDICTS } from "./words.ts";

const EVENT_NAMES = [
  "measure",
  "beside",
  "calibrate",
  "look",
  "clean",
  "resolder",
  "lift",
  "refit",
  "remove",
  "restore",
  "replace",
  "incoming",
  "clip",
  "unclip",
  "power",
  "unpower",
  "answer",
  "mark",
  "note",
  "overrule",
  "undo",
  "quote",
  "wait",
  "resume",
  "close",
] as const satisfies readonly JobEvent["do"][];

const STAMP = ["do", "id", "at", "who"] as const;
/** RFC 3339, 5.6: date, time with optional fraction, offset. */
const TIME =
  /^\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\d|3[01])[Tt ](?:[01]\d|2[0-3]):[0-5]\d:(?:[0-5]\d|60)(?:\.\d+)?(?:[Zz]|[+-](?:[01]\d|2[0-3]):[0-5]\d)$/;
const MOST_ID = 200;

/** The fields any event may carry; `at` only where it is the time. */
function readStamp(event: Fields): { id?: string; at?: string; who?: string } {
  return present({ ...readIdAndWho(event), at: event.has("at") ? readTime(event) : undefined });
}

function readTime(event: Fields): string | undefined {
  const time = event.text("at");
  if (time !== undefined && !TIME.test(time))
    event.complain("at", said`${quoted(time)} is no time; write it as 2026-03-01T09:30:00Z (RFC 3339)`);
  return time;
}

function readIdAndWho(event: Fields): { id?: string; who?: string } {
  const id = event.text("id");
  if (id === "" || (id !== undefined && id.length > MOST_ID))
    event.complain("id", said`must be 1 to ${MOST_ID} characters long, is ${id.length}`);
  return present({ id, who: event.text("who") });
}

function needed(event: Fields, key: string): string {
  if (!event.has(key)) event.complain(key, said`is missing`);
  const text = event.text(key) ?? "";
  if (event.has(key) && text === "") event.complain(key, said`is empty`);
  return text;
}

function readPlaces(problems: Problems, event: Fields, words: string): readonly [Place, Place] {
  return readPair(problems, event.at("at"), event.raw("at"), words);
}

/** @param at - where the pair stands in the file */
function readPair(problems: Problems, at: string, input: unknown, words: string): readonly [Place, Place] {
  if (!Array.isArray(input) || input.length !== 2) {
    problems.add(at, said`expected ${words}, found ${found(input)}`);
    return ["", ""];
  }
  const [one, other]: unknown[] = input;
  const places = [readPlace(problems, `${at}[0]`, one), readPlace(problems, `${at}[1]`, other)] as const;
  if (places[0] === places[1])
    problems.add(at, said`names ${quoted(places[0])} twice; two places are needed`);
  return places;
}

/** Meters clipped on before power: a list of pairs of places. */
function readMeters(problems: Problems, event: Fields): readonly (readonly [Place, Place])[] {
  const input = event.raw("meters");
  const at = event.at("meters");
  if (Array.isArray(input))
    return input.map((pair: unknown, index) => readPair(problems, `${at}[${index}]`, pair, said`two places`));
  problems.add(at, said`expected a list of pairs of places, found ${found(input)}`);
  return [];
}

function readSigns(problems: Problems, event: Fields): Readonly<Record<string, boolean>> {
  const input = event.raw("signs");
  const at = event.at("signs");
  if (typeof input !== "object" || input === null || Array.isArray(input)) {
    problems.add(at, said`expected parts with true or false, found ${found(input)}`);
    return {};
  }
  const signs = Object.entries(input);
  for (const [part, came] of signs)
    if (typeof came !== "boolean")
      problems.add(`${at}.${part}`, said`expected true (it came on) or false, found ${found(came)}`);
  return Object.fromEntries(signs.filter((sign): sign is [string, boolean] => typeof sign[1] === "boolean"));
}

function readCalibrate(event: Fields): CalibrateEvent {
  event.only([...STAMP, "mode", "known", "reading"], "calibrate");
  event.require("mode", "known", "reading");
  return {
    do: "calibrate",
    mode: event.word("mode", MEASURE_MODES) ?? "ohms",
    known: event.number("known") ?? 0,
    reading: event.number("reading") ?? 0,
    ...readStamp(event),
  };
}

function readLook(event: Fields): LookEvent {
  event.only([...STAMP, "part", "finding"], "look");
  event.require("part", "finding");
  return {
    do: "look",
    part: needed(event, "part"),
    finding: event.word("finding", FINDINGS) ?? "other",
    ...readStamp(event),
  };
}

function readClean(event: Fields, name: CleanEvent["do"]): CleanEvent {
  event.only([...STAMP, "part", "stage", "dried"], name);
  if (event.has("part") === event.has("stage"))
    event.complain(event.has("part") ? "stage" : "part", said`${name} names either a part or a stage`);
  return present<CleanEvent>({
    do: name,
    part: event.has("part") ? needed(event, "part") : undefined,
    stage: event.has("stage") ? needed(event, "stage") : undefined,
    dried: event.mark("dried"),
    ...readStamp(event),
  });
}

function readLift(problems: Problems, event: Fields, name: LiftEvent["do"]): LiftEvent {
  event.only([...STAMP, "place"], name);
  event.require("place");
  const place = readPlace(problems, event.at("place"), event.raw("place"));
  if (problems.first === null && !place.includes("."))
    event.complain("place", said`${quoted(place)} is a net; ${name} takes one pin, such as Q1.c`);
  return { do: name, place, ...readStamp(event) };
}

function readRemove(event: Fields, name: RemoveEvent["do"]): RemoveEvent {
  event.only([...STAMP, "part"], name);
  return { do: name, part: needed(event, "part"), ...readStamp(event) };
}

function readReplace(event: Fields): ReplaceEvent {
  event.only([...STAMP, "part", "with", "price", "used", "from"], "replace");
  return present<ReplaceEvent>({
    do: "replace",
    part: needed(event, "part"),
    with: event.text("with"),
    price: event.number("price", { least: 0 }),
    used: event.mark("used"),
    from: readStockPlace(event),
    ...readStamp(event),
  });
}

function readClip(problems: Problems, event: Fields, name: ClipEvent["do"]): ClipEvent {
  event.only([...STAMP, "ohms"], name);
  event.require("at", "ohms");
  return {
    do: name,
    at: readPlaces(problems, event, said`two places`),
    ohms: event.number("ohms", { above: 0 }) ?? 1,
    ...readIdAndWho(event),
  };
}

function readObserved(problems: Problems, event: Fields): Observed | readonly Observed[] | undefined {
  const input = event.raw("observed");
  if (!Array.isArray(input)) return event.word("observed", OBSERVED);
  if (input.length === 0)
    event.complain("observed", said`is an empty list; quiet says that nothing was seen`);
  return input.map((item: unknown, index) => {
    const word = OBSERVED.find((known) => known === item);
    if (word === undefined) {
      const why =
        typeof item === "string" ? suggestion(item, OBSERVED) : said`; known: ${OBSERVED.join(" ")}`;
      problems.add(`${event.at("observed")}[${index}]`, said`${found(item)} is not known here${why}`);
    }
    return word ?? "quiet";
  });
}

function readLoad(event: Fields): RunLoad | undefined {
  if (typeof event.raw("load") === "number") return event.number("load", { above: 0 });
  return event.word("load", ["own"] as const);
}

const FEED_FIELDS: Readonly<Record<Feed, readonly string[]>> = {
  mains: [],
  lamp: ["watts"],
  bench: ["volts", "limitAmps"],
};

/** For a bench supply `at` is the two places it is clipped to; for the other feeds, as everywhere, the time. */
function readPower(problems: Problems, event: Fields): PowerEvent {
  event.require("feed");
  const feed = event.word("feed", FEEDS) ?? "mains";
  if (problems.first !== null) return { do: "power", feed };
  const own = [...FEED_FIELDS[feed], ...(feed === "bench" ? ["ohms"] : [])];
  event.only(
    [...STAMP, "feed", "observed", "load", "meters", "signs", ...own],
    said`power with feed ${feed}`,
  );
  event.require(...FEED_FIELDS[feed], ...(feed === "bench" ? ["at"] : []));
  return present<PowerEvent>({
    do: "power",
    feed,
    watts: event.number("watts", { above: 0 }),
    volts: event.number("volts", { above: 0 }),
    limitAmps: event.number("limitAmps", { above: 0 }),
    ohms: event.number("ohms", { above: 0 }),
    at: feed === "bench" ? readPlaces(problems, event, said`two places, [plus, minus]`) : readTime(event),
    observed: event.has("observed") ? readObserved(problems, event) : undefined,
    load: readLoad(event),
    meters: event.has("meters") ? readMeters(problems, event) : undefined,
    signs: event.has("signs") ? readSigns(problems, event) : undefined,
    id: undefined,
    who: undefined,
    ...readIdAndWho(event),
  });
}

function readWords(
  event: Fields,
  name: "answer" | "note" | "overrule",
): AnswerEvent | NoteEvent | OverruleEvent {
  const fields = { answer: ["question", "answer"], note: ["text"], overrule: ["why"] }[name];
  const optional = { answer: [], note: ["turned", "leftOut"], overrule: ["of"] }[name];
  event.only([...STAMP, ...fields, ...optional], name);
  event.require(...fields);
  const stamp = readStamp(event);
  if (name === "answer")
    return { do: name, question: needed(event, "question"), answer: event.text("answer") ?? "", ...stamp };
  if (name === "note") {
    const turned = event.has("turned") ? needed(event, "turned") : undefined;
    return present<NoteEvent>({
      do: name,
      text: event.text("text") ?? "",
      turned,
      leftOut: event.mark("leftOut"),
      ...stamp,
    });
  }
  return present<OverruleEvent>({
    do: name,
    why: event.text("why") ?? "",
    of: event.word("of", OVERRULED),
    ...stamp,
  });
}

function readMark(event: Fields): MarkEvent {
  event.only([...STAMP, "part", "as"], "mark");
  event.require("part", "as");
  return {
    do: "mark",
    part: needed(event, "part"),
    as: event.word("as", PART_MARKS) ?? "unsure",
    ...readStamp(event),
  };
}

function readUnpower(problems: Problems, event: Fields): UnpowerEvent {
  event.only([...STAMP, "observed", "afterPower"], "unpower");
  const observed = event.has("observed") ? readObserved(problems, event) : undefined;
  const afterPower = event.number("afterPower", { least: 0 });
  return { do: "unpower", ...present({ observed, afterPower }), ...readStamp(event) };
}

function readUndo(event: Fields): UndoEvent {
  event.only([...STAMP, "of"], "undo");
  return { do: "undo", of: needed(event, "of"), ...readStamp(event) };
}

function readClose(event: Fields): CloseEvent {
  event.only([...STAMP, "verdict", "shelved"], "close");
  event.require("verdict");
  return present<CloseEvent>({
    do: "close",
    verdict: event.word("verdict", VERDICTS) ?? "declined",
    shelved: event.has("shelved") ? readShelved(event) : undefined,
    ...readStamp(event),
  });
}

/** Parts by their reference, each once. */
function readShelved(event: Fields): readonly string[] {
  return event.list("shelved").map((ref, index, all) => {
    if (typeof ref !== "string")
      event.complain("shelved", said`expected references of parts, found ${found(ref)}`);
    else if (all.indexOf(ref) < index) event.complain("shelved", said`${quoted(ref)} stands twice`);
    return typeof ref === "string" ? ref : "";
  });
}

function readEvent(problems: Problems, event: Fields, name: JobEvent["do"]): JobEvent {
  switch (name) {
    case "measure":
      return readMeasure(problems, event, STAMP, readStamp(event));
    case "beside":
      return readBeside(problems, event, STAMP, readStamp(event));
    case "calibrate":
      return readCalibrate(event);
    case "look":
      return readLook(event);
    case "clean":
    case "resolder":
      return readClean(event, name);
    case "lift":
    case "refit":
      return readLift(problems, event, name);
    case "remove":
    case "restore":
      return readRemove(event, name);
    case "replace":
      return readReplace(event);
    case "incoming":
      return readIncoming(problems, event, STAMP, readStamp(event));
    case "clip":
    case "unclip":
      return readClip(problems, event, name);
    case "power":
      return readPower(problems, event);
    case "unpower":
      return readUnpower(problems, event);
    case "mark":
      return readMark(event);
    case "answer":
    case "note":
    case "overrule":
      return readWords(event, name);
    case "undo":
      return readUndo(event);
    case "quote":
      return readQuote(event, STAMP, readStamp(event));
    case "wait":
      return readWait(event, STAMP, readStamp(event));
    case "resume":
      return readResume(event, STAMP, readStamp(event));
    case "close":
      return readClose(event);
  }
}

/**
 * One event as written in a log. `path` is where it stands (`log[7]`); a problem is one line that begins with the path of the
 * field. Whether its places and parts exist, and whether it can happen now, is for the fold to say.
 */
export function parseEvent(input: unknown, path: string): Parsed<JobEvent> {
  const problems = new Problems();
  const event = new Fields(problems, path, input);
  event.require("do");
  const name = event.word("do", EVENT_NAMES);
  if (problems.first !== null || name === undefined) return { ok: false, problem: problems.first ?? path };
  return problems.outcome(readEvent(problems, event, name));
}

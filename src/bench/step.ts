/** One event applied to one state of the bench. */

import type { Board } from "../board/board.ts";
import { KNOWN_STAGES } from "../board/stages.ts";
import { said } from "../messages/said.ts";
import { quoted, suggestion } from "../units/nearest.ts";
import type { Parsed } from "../units/outcome.ts";
import type { BenchState, Clip } from "./bench-state.ts";
import type {
  BesideEvent,
  CleanEvent,
  ClipEvent,
  IncomingEvent,
  JobEvent,
  LookEvent,
  MarkEvent,
  MeasureEvent,
  Place,
  PowerEvent,
} from "./event.ts";
import { partProblem, pinOfPlace, placeProblem } from "./place.ts";
import { isColdMode } from "./words.ts";

type Step = Parsed<BenchState>;

function no(field: string, why: string): Step {
  return { ok: false, problem: `${field}: ${why}` };
}

function yes(state: BenchState): Step {
  return { ok: true, value: state };
}

const LIVE_REFUSAL = said`the board is powered; unpower first`;

/** Why no probe or clip can go there: no such place, or a pin of a part that never came. */
function reachProblem(
  board: Board,
  absent: ReadonlySet<string>,
  bench: BenchState,
  place: Place,
): string | null {
  const unknown = placeProblem(board, place);
  if (unknown !== null) return unknown;
  const pin = pinOfPlace(place);
  if (pin === null || !absent.has(pin.ref) || !bench.off.has(pin.ref)) return null;
  const net = board.parts.get(pin.ref)?.pins.get(pin.pin) ?? "";
  return said`${pin.ref} did not come with the board; write its net, ${quoted(net)}`;
}

function measure(board: Board, absent: ReadonlySet<string>, bench: BenchState, event: MeasureEvent): Step {
  if (isColdMode(event.mode) && bench.powered)
    return no("mode", said`${event.mode} is a cold mode and ${LIVE_REFUSAL}`);
  for (const key of ["red", "black"] as const) {
    const place = event[key];
    const problem = place === undefined ? null : reachProblem(board, absent, bench, place);
    if (problem !== null) return no(key, problem);
  }
  const unknown = event.part === undefined ? null : partProblem(board, event.part);
  return unknown === null ? yes(bench) : no("part", unknown);
}

/** The good board is whole and stays as it is: only whether its places are on the board. */
function beside(board: Board, bench: BenchState, event: BesideEvent): Step {
  for (const key of ["red", "black"] as const) {
    const problem = placeProblem(board, event[key]);
    if (problem !== null) return no(key, problem);
  }
  return yes(bench);
}

function liftOrRefit(board: Board, bench: BenchState, name: "lift" | "refit", place: Place): Step {
  const unknown = placeProblem(board, place);
  if (unknown !== null) return no("place", unknown);
  const pin = pinOfPlace(place);
  if (pin === null) return no("place", said`${quoted(place)} is a net; ${name} takes one pin, such as Q1.c`);
  if (bench.powered) return no("do", LIVE_REFUSAL);
  if (bench.off.has(pin.ref))
    return no("place", said`${pin.ref} is off the board; there is no pin to ${name}`);
  const up = bench.lifted.has(place);
  if (name === "lift" && up) return no("place", said`${place} is lifted already`);
  if (name === "refit" && !up) return no("place", said`${place} is not lifted`);
  const lifted = new Set(bench.lifted);
  if (name === "lift") lifted.add(place);
  else lifted.delete(place);
  return yes({ ...bench, lifted });
}

/** A part in the hand, whatever the board is doing: its pins are those of the place that it is to go into. */
function incoming(board: Board, bench: BenchState, { part, red, black }: IncomingEvent): Step {
  const unknown = partProblem(board, part);
  if (unknown !== null) return no("part", unknown);
  const pins = [...(board.parts.get(part)?.pins.keys() ?? [])];
  for (const [key, pin] of [
    ["red", red],
    ["black", black],
  ] as const)
    if (!pins.includes(pin))
      return no(key, `${said`${part} has no pin ${quoted(pin)}`}${suggestion(pin, pins)}`);
  return yes(bench);
}

/** A part that leaves or comes back has no lifted pins: all its joints are open, or all are made. */
function withoutLifts(bench: BenchState, ref: string): ReadonlySet<Place> {
  return new Set([...bench.lifted].filter((place) => pinOfPlace(place)?.ref !== ref));
}

function offOrOn(board: Board, bench: BenchState, name: "remove" | "restore" | "replace", ref: string): Step {
  const unknown = partProblem(board, ref);
  if (unknown !== null) return no("part", unknown);
  if (bench.powered) return no("do", LIVE_REFUSAL);
  if (name === "remove" && bench.off.has(ref)) return no("part", said`${ref} is off the board already`);
  if (name === "restore" && !bench.off.has(ref))
    return no("part", said`${ref} is on the board; nothing to restore`);
  const off = new Set(bench.off);
  if (name === "remove") off.add(ref);
  else off.delete(ref);
  return yes({ ...bench, off, lifted: withoutLifts(bench, ref) });
}

function sameClip(clip: Clip, event: ClipEvent): boolean {
  const [one, other] = event.at;
  const there = (clip.at[0] === one && clip.at[1] === other) || (clip.at[0] === other && clip.at[1] === one);
  return there && clip.ohms === event.ohms;
}

function clipOrUnclip(board: Board, absent: ReadonlySet<string>, bench: BenchState, event: ClipEvent): Step {
  for (const [index, place] of event.at.entries()) {
    const problem = reachProblem(board, absent, bench, place);
    if (problem !== null) return no(`at[${index}]`, problem);
  }
  if (event.do === "clip")
    return yes({ ...bench, clips: [...bench.clips, { at: event.at, ohms: event.ohms }] });
  const index = bench.clips.findIndex((clip) => sameClip(clip, event));
  if (index < 0)
    return no("at", said`no ${event.ohms} ohm is clipped on between ${event.at[0]} and ${event.at[1]}`);
  return yes({ ...bench, clips: bench.clips.filter((_, other) => other !== index) });
}

function power(board: Board, absent: ReadonlySet<string>, bench: BenchState, event: PowerEvent): Step {
  const places = typeof event.at === "object" ? event.at : [];
  for (const [index, place] of places.entries()) {
    const problem = reachProblem(board, absent, bench, place);
    if (problem !== null) return no(`at[${index}]`, problem);
  }
  for (const [index, place] of (event.meters ?? []).flat().entries()) {
    const problem = reachProblem(board, absent, bench, place);
    if (problem !== null) return no(`meters[${Math.floor(index / 2)}][${index % 2}]`, problem);
  }
  for (const part of Object.keys(event.signs ?? {})) {
    const problem = partProblem(board, part);
    if (problem !== null) return no(`signs.${part}`, problem);
  }
  return yes({ ...bench, powered: true });
}

/** Looking, marking, cleaning, resoldering: only whether the part, or the stage, is there. */
function attend(board: Board, bench: BenchState, event: LookEvent | CleanEvent | MarkEvent): Step {
  const unknown = event.part === undefined ? null : partProblem(board, event.part);
  if (unknown !== null) return no("part", unknown);
  const stage = event.do === "clean" || event.do === "resolder" ? event.stage : undefined;
  if (stage === undefined || KNOWN_STAGES.includes(stage)) return yes(bench);
  const stages = [...board.parts.values()].flatMap((part) => (part.stage === null ? [] : [part.stage]));
  if (stages.includes(stage)) return yes(bench);
  return no(
    "stage",
    `${said`no part is in the stage ${quoted(stage)}`}${suggestion(stage, [...new Set(stages)])}`,
  );
}

/**
 * The bench after one event, or `field: why` it cannot happen. `absent` are the parts that did not come with the board. A board
 * already on may be powered again (the feed turned up or changed) and one already off unpowered again.
 */
export function step(board: Board, absent: ReadonlySet<string>, bench: BenchState, event: JobEvent): Step {
  switch (event.do) {
    case "measure":
      return measure(board, absent, bench, event);
    case "beside":
      return beside(board, bench, event);
    case "lift":
    case "refit":
      return liftOrRefit(board, bench, event.do, event.place);
    case "remove":
    case "restore":
    case "replace":
      return offOrOn(board, bench, event.do, event.part);
    case "clip":
    case "unclip":
      return clipOrUnclip(board, absent, bench, event);
    case "power":
      return power(board, absent, bench, event);
    case "unpower":
      return yes({ ...bench, powered: false });
    case "look":
    case "mark":
    case "clean":
    case "resolder":
      return attend(board, bench, event);
    case "note": {
      const unknown = event.turned === undefined ? null : partProblem(board, event.turned);
      return unknown === null ? yes(bench) : no("turned", unknown);
    }
    case "close": {
      const unknown = event.shelved
        ?.map((ref) => partProblem(board, ref))
        .find((problem) => problem !== null);
      return unknown === undefined ? yes(bench) : no("shelved", unknown);
    }
    case "incoming":
      return incoming(board, bench, event);
    case "wait":
      return bench.powered ? no("do", said`a job is not put aside while ${LIVE_REFUSAL}`) : yes(bench);
    case "calibrate":
    case "answer":
    case "overrule":
    case "quote":
    case "resume":
    case "undo":
      return yes(bench);
  }
}

import type { Board } from "../board/board.ts";
import { said } from "../messages/said.ts";
import { found, NAME, type Problems } from "../units/fields.ts";
import { quoted, suggestion } from "../units/nearest.ts";
import type { Place } from "./event.ts";

/** `Q1.c` taken apart; null where the place is a net. */
export function pinOfPlace(place: Place): { readonly ref: string; readonly pin: string } | null {
  const dot = place.indexOf(".");
  return dot < 0 ? null : { ref: place.slice(0, dot), pin: place.slice(dot + 1) };
}

/** The net of a place, as the board is drawn; a place that the board does not have is its own. */
export function netOfPlace(board: Board, place: Place): string {
  const pin = pinOfPlace(place);
  return pin === null ? place : (board.parts.get(pin.ref)?.pins.get(pin.pin) ?? place);
}

/** Does this pin come off by pulling a plug or spade, without an iron? */
export function isPlugged(board: Board, place: Place): boolean {
  return board.parts.get(pinOfPlace(place)?.ref ?? "")?.plugged === true;
}

/** `NET` or `REF.pin` by its spelling; whether the board has it is for `placeProblem` to say. */
export function readPlace(problems: Problems, path: string, input: unknown): Place {
  if (typeof input !== "string") {
    problems.add(path, said`expected a place (a net, or REF.pin), found ${found(input)}`);
    return "";
  }
  const names = input.split(".");
  if (names.length > 2 || !names.every((name) => NAME.test(name)))
    problems.add(path, said`${quoted(input)} is no place; write a net (PBUS) or one pin (Q1.c)`);
  return input;
}

/** Why the board has no such place, or null where it has. */
export function placeProblem(board: Board, place: Place): string | null {
  const pin = pinOfPlace(place);
  if (pin === null) {
    if (board.nets.has(place)) return null;
    const point = board.points.find((one) => one.name === place);
    if (point !== undefined)
      return said`${quoted(place)} is a test point, which is no place; write its net, ${quoted(point.net)}`;
    return `${said`there is no net ${quoted(place)}`}${suggestion(place, [...board.nets.keys()])}`;
  }
  const part = board.parts.get(pin.ref);
  if (part === undefined) return partProblem(board, pin.ref);
  if (part.pins.has(pin.pin)) return null;
  return `${said`${pin.ref} has no pin ${quoted(pin.pin)}`}${suggestion(pin.pin, [...part.pins.keys()])}`;
}

/** Why the board has no such part, or null where it has. */
export function partProblem(board: Board, ref: string): string | null {
  if (board.parts.has(ref)) return null;
  return `${said`there is no part ${quoted(ref)}`}${suggestion(ref, [...board.parts.keys()])}`;
}

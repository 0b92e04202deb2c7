/** Actions, places and faults in the words a technician uses at the bench. */
import type {
  JobEvent,
  MeasureEvent,
  OfferName,
  Overruled,
  PartMark,
  Place,
  PowerEvent,
  QuoteAnswer,
  QuoteEvent,
  ReplaceEvent,
  RunLoad,
  WaitsFor,
} from "../bench/event.ts";
import { noteText } from "../bench/note-words.ts";
import { overruleReason } from "../bench/overrule-reasons.ts";
import { isPlugged } from "../bench/place.ts";
import { MODE_WORDS } from "../bench/words.ts";
import type { Board, Part } from "../board/board.ts";
import { kindOf } from "../board/kinds.ts";
import { netPlaceWords } from "../board/net-words.ts";
import { stageWords } from "../board/stages.ts";
import { knownWords } from "../messages/known-words.ts";
import { said } from "../messages/said.ts";
import { amount } from "../planning/expectations.ts";
import type { Action } from "../planning/proposal.ts";
import { MOTOR_INSULATION } from "../priors/told.ts";
import { ASKS_INSULATION, insulationRead } from "./insulation-words.ts";
import { BOARD_REVISION } from "./told-in.ts";

/** `DC bus + (C1 plus pin)`: a net by its label and a place the eye finds; a single pin by part and pin. */
export function placeWords(board: Board, place: Place): string {
  const dot = place.indexOf(".");
  if (dot < 0 || board.nets.has(place)) return netPlaceWords(board, place);
  const [ref, pin] = [place.slice(0, dot), place.slice(dot + 1)];
  const part = board.parts.get(ref);
  if (part === undefined) return said`${ref} pin ${pin}`;
  const { words } = kindOf(part.kind);
  const size = sizeWords(part);
  return size === null ? said`${ref} pin ${pin} (${words})` : said`${ref} pin ${pin} (${words}, ${size})`;
}

/** What is printed on the part and helps the eye: `470 uF`, `47 ohm`. */
function sizeWords(part: Part): string | null {
  if (part.value.farads !== undefined) return amount(part.value.farads, "F");
  if (part.kind === "resistor" && part.value.ohms !== undefined) return amount(part.value.ohms, "ohm");
  return null;
}

export function partWords(board: Board, ref: string): string {
  const part = board.parts.get(ref);
  if (part === undefined) return ref;
  const { words } = kindOf(part.kind);
  return part.stage === null ? said`${ref}, ${words}` : said`${ref}, ${words} (${stageWords(part.stage)})`;
}

export function modeWords(mode: string): string {
  const words: Readonly<Record<string, string>> = MODE_WORDS;
  return words[mode] ?? mode;
}

/** A contact of a plug, or a spade: `contact u of MOT1 (motor)`. */
function contactWords(board: Board, place: Place): string {
  const [ref = "", pin = ""] = place.split(".");
  const part = board.parts.get(ref);
  return part === undefined
    ? said`contact ${pin} of ${ref}`
    : said`contact ${pin} of ${ref} (${part.role === null ? kindOf(part.kind).words : knownWords(part.role)})`;
}

/** One line that says what to do (or was done). */
export function actionWords(board: Board, action: Action | JobEvent): string {
  switch (action.do) {
    case "measure":
      return measureWords(board, action);
    case "beside":
      return said`Good board beside it, ${modeWords(action.mode)}: red on ${placeWords(board, action.red)}, black on ${placeWords(board, action.black)}`;
    case "calibrate":
      return said`Meter tried on a known part: ${modeWords(action.mode)} ${action.known} showed ${action.reading}`;
    case "look":
      return said`Look at ${partWords(board, action.part)}`;
    case "clean":
      if (action.part !== undefined) return said`Clean ${partWords(board, action.part)}`;
      return action.stage === undefined
        ? said`Clean the board area`
        : said`Clean the ${stageWords(action.stage)} area`;
    case "resolder":
      if (action.part !== undefined) return said`Resolder ${partWords(board, action.part)}`;
      return action.stage === undefined
        ? said`Resolder the board area`
        : said`Resolder the ${stageWords(action.stage)} area`;
    case "lift":
      return isPlugged(board, action.place)
        ? said`Pull ${contactWords(board, action.place)}`
        : said`Lift ${placeWords(board, action.place)} off its pad`;
    case "refit":
      return isPlugged(board, action.place)
        ? said`Push ${contactWords(board, action.place)} back on`
        : said`Solder ${placeWords(board, action.place)} back`;
    case "remove":
      return board.parts.get(action.part)?.kind === "motor"
        ? said`Unplug ${partWords(board, action.part)}`
        : said`Take ${partWords(board, action.part)} off the board`;
    case "restore":
      return said`Put ${partWords(board, action.part)} back`;
    case "replace":
      return replaceWords(partWords(board, action.part), action);
    case "clip":
      return said`Clip ${amount(action.ohms, "ohm")} across ${placeWords(board, action.at[0])} and ${placeWords(board, action.at[1])}`;
    case "unclip":
      return said`Take the ${amount(action.ohms, "ohm")} clip off ${placeWords(board, action.at[0])} and ${placeWords(board, action.at[1])}`;
    default:
      return otherWords(board, action);
  }
}

function measureWords(board: Board, action: Omit<MeasureEvent, "reading">): string {
  if (action.part !== undefined) return said`Temperature of ${partWords(board, action.part)}`;
  const red = placeWords(board, action.red ?? "?");
  if (action.mode === "amps")
    return said`Amps fed into ${red}: on the supply's own display, no meter across it`;
  const black = placeWords(board, action.black ?? "?");
  return action.wires === 4
    ? said`milliohms, four wires: red on ${red}, black on ${black}`
    : said`${modeWords(action.mode)}: red on ${red}, black on ${black}`;
}

function replaceWords(part: string, { with: fitted, used }: Pick<ReplaceEvent, "with" | "used">): string {
  if (fitted === undefined) return used === true ? said`Replace ${part}, pulled` : said`Replace ${part}`;
  return used === true
    ? said`Replace ${part}, with ${fitted}, pulled`
    : said`Replace ${part}, with ${fitted}`;
}

function otherWords(board: Board, action: Action | JobEvent): string {
  switch (action.do) {
    case "power":
      if (action.feed === "lamp") return said`Power up through a ${`${action.watts ?? "?"} W`} series lamp`;
      if (action.feed === "bench") return fedWords(board, action);
      return action.load === undefined
        ? said`Power up on the mains`
        : said`Power up on the mains with ${loadWords(action.load)}, and run it`;
    case "unpower":
      return said`Switch off and unplug`;
    case "answer":
      if (action.question === BOARD_REVISION) return said`Revision on the board: ${action.answer}`;
      return action.question === MOTOR_INSULATION.question
        ? insulationAsked(action.answer)
        : said`Customer: ${action.question}: ${action.answer}`;
    case "mark":
      return said`${action.part}: ${MARK_WORDS[action.as]}`;
    case "note":
      if (action.turned === undefined) return said`Note: ${noteText(action)}`;
      return action.text === ""
        ? said`${action.turned} turned and charged the board`
        : said`${action.turned} turned and charged the board: ${noteText(action)}`;
    case "overrule":
      return said`${action.of === undefined ? said`Overruled` : OVERRULED_WORDS[action.of]}: ${overruleReason(action.why)}`;
    case "undo":
      return said`Undo ${action.of}`;
    case "incoming":
      return said`The part for ${action.part} before it goes in, ${modeWords(action.mode)}, red on ${action.red}, black on ${action.black}`;
    case "quote":
      return quoteWords(action);
    case "wait":
      return action.what === undefined
        ? said`Put aside: ${WAITS_FOR_WORDS[action.for]}`
        : said`Put aside: ${WAITS_FOR_WORDS[action.for]}, ${action.what}`;
    case "resume":
      return said`Taken up again`;
    case "close":
      return said`Close the job: ${VERDICT_WORDS[action.verdict] ?? action.verdict}`;
    default:
      return action.do;
  }
}

function quoteWords({ offer, price, cap, answer }: QuoteEvent): string {
  const [what, came] = [OFFER_WORDS[offer], QUOTE_ANSWER_WORDS[answer]];
  if (price === undefined)
    return cap === undefined
      ? said`Quote, ${what}: ${came}`
      : said`Quote, ${what} not above ${cap} without asking again: ${came}`;
  return cap === undefined
    ? said`Quote, ${what} at ${price}: ${came}`
    : said`Quote, ${what} at ${price}, not above ${cap} without asking again: ${came}`;
}

const OFFER_WORDS: Readonly<Record<OfferName, string>> = {
  repair: said`repair`,
  replace: said`a new board`,
  decline: said`no repair`,
};

const QUOTE_ANSWER_WORDS: Readonly<Record<QuoteAnswer, string>> = {
  accepted: said`accepted`,
  refused: said`refused`,
};

/** A proposal asks with the answer that nobody has given yet. */
function insulationAsked(answer: string): string {
  return answer === MOTOR_INSULATION.notRead ? ASKS_INSULATION : insulationRead(answer);
}

/** A bench supply, or a cell through its resistor, and where it is clipped on. */
function fedWords(board: Board, { volts, limitAmps, ohms, at }: PowerEvent): string {
  const source =
    ohms === undefined
      ? said`the bench supply, ${`${volts ?? "?"} V`}, limit ${`${limitAmps ?? "?"} A`}`
      : said`a ${`${volts ?? "?"} V`} cell through ${`${ohms} ohm`}`;
  if (typeof at !== "object") return said`Power from ${source}`;
  const [plus, minus] = at.map((place) => placeWords(board, place));
  return said`Power from ${source}: plus on ${plus}, minus on ${minus}`;
}

/** What the board is told to drive. */
function loadWords(load: RunLoad): string {
  return load === "own" ? said`its own load` : said`a dummy load of ${`${load} W`}`;
}

const OVERRULED_WORDS: Readonly<Record<Overruled, string>> = {
  proof: said`Went on without the proof`,
  resistor: said`Power with the resistor on`,
  motor: said`Motor driven unread`,
  proposal: said`Overruled`,
};

const MARK_WORDS: Readonly<Record<PartMark, string>> = {
  absent: said`not on this board`,
  different: said`another part than drawn`,
  unsure: said`not sure it is as drawn`,
  "as-drawn": said`as drawn after all`,
};

const WAITS_FOR_WORDS: Readonly<Record<WaitsFor, string>> = {
  drying: said`until it is dry`,
  part: said`until a part comes`,
  answer: said`until the customer has answered`,
};

export const VERDICT_WORDS: Readonly<Record<string, string>> = {
  repaired: said`repaired`,
  "not-economic": said`not worth repairing`,
  "not-repairable": said`cannot be repaired`,
  "no-fault": said`no fault found`,
  declined: said`declined`,
};

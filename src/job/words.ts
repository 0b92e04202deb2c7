/** Actions, places and faults in the words a technician uses at the bench. */
import type {
  JobEvent,
  OfferName,
  Overruled,
  PartMark,
  Place,
  PowerEvent,
  QuoteEvent,
  RunLoad,
  WaitsFor,
} from "../bench/event.ts";
import { isPlugged } from "../bench/place.ts";
import { MODE_WORDS } from "../bench/words.ts";
import type { Board, Part } from "../board/board.ts";
import { kindOf } from "../board/kinds.ts";
import { netPlaceWords } from "../board/net-words.ts";
import { said } from "../messages/said.ts";
import { amount } from "../planning/expectations.ts";
import type { Action } from "../planning/proposal.ts";
import { MOTOR_INSULATION } from "../priors/told.ts";
import { BOARD_REVISION } from "./told-in.ts";

/** `DC bus + (C1 plus pin)`: a net by its label and a place the eye finds; a single pin by part and pin. */
export function placeWords(board: Board, place: Place): string {
  const dot = place.indexOf(".");
  if (dot >= 0 && !board.nets.has(place)) {
    const part = board.parts.get(place.slice(0, dot));
    return `${place.slice(0, dot)} pin ${place.slice(dot + 1)}${part === undefined ? "" : ` (${kindOf(part.kind).words}${sizeWords(part)})`}`;
  }
  return netPlaceWords(board, place);
}

/** What is printed on the part and helps the eye: `, 470 uF`, `, 47 ohm`. */
function sizeWords(part: Part): string {
  if (part.value.farads !== undefined) return `, ${amount(part.value.farads, "F")}`;
  if (part.kind === "resistor" && part.value.ohms !== undefined) return `, ${amount(part.value.ohms, "ohm")}`;
  return "";
}

export function partWords(board: Board, ref: string): string {
  const part = board.parts.get(ref);
  return part === undefined
    ? ref
    : `${ref}, ${kindOf(part.kind).words}${part.stage === null ? "" : ` (${part.stage})`}`;
}

export function modeWords(mode: string): string {
  const words: Readonly<Record<string, string>> = MODE_WORDS;
  return words[mode] ?? mode;
}

/** A contact of a plug, or a spade: `contact u of MOT1 (motor)`. */
function contactWords(board: Board, place: Place): string {
  const [ref = "", pin = ""] = place.split(".");
  const part = board.parts.get(ref);
  return `contact ${pin} of ${ref}${part === undefined ? "" : ` (${part.role ?? kindOf(part.kind).words})`}`;
}

/** One line that says what to do (or was done). */
export function actionWords(board: Board, action: Action | JobEvent): string {
  switch (action.do) {
    case "measure":
      if (action.part !== undefined) return `Temperature of ${partWords(board, action.part)}`;
      if (action.mode === "amps")
        return `Amps fed into ${placeWords(board, action.red ?? "?")}: on the supply's own display, no meter across it`;
      return `${action.wires === 4 ? "milliohms, four wires" : modeWords(action.mode)}: red on ${placeWords(board, action.red ?? "?")}, black on ${placeWords(board, action.black ?? "?")}`;
    case "beside":
      return `Good board beside it, ${modeWords(action.mode)}: red on ${placeWords(board, action.red)}, black on ${placeWords(board, action.black)}`;
    case "calibrate":
      return `Meter tried on a known part: ${modeWords(action.mode)} ${action.known} showed ${action.reading}`;
    case "look":
      return `Look at ${partWords(board, action.part)}`;
    case "clean":
    case "resolder":
      return `${action.do === "clean" ? "Clean" : "Resolder"} ${action.part === undefined ? `the ${action.stage ?? "board"} area` : partWords(board, action.part)}`;
    case "lift":
      return isPlugged(board, action.place)
        ? `Pull ${contactWords(board, action.place)}`
        : `Lift ${placeWords(board, action.place)} off its pad`;
    case "refit":
      return isPlugged(board, action.place)
        ? `Push ${contactWords(board, action.place)} back on`
        : `Solder ${placeWords(board, action.place)} back`;
    case "remove":
      return board.parts.get(action.part)?.kind === "motor"
        ? `Unplug ${partWords(board, action.part)}`
        : `Take ${partWords(board, action.part)} off the board`;
    case "restore":
      return `Put ${partWords(board, action.part)} back`;
    case "replace":
      return `Replace ${partWords(board, action.part)}${action.with === undefined ? "" : `, with ${action.with}`}${action.used === true ? ", pulled" : ""}`;
    case "clip":
      return `Clip ${amount(action.ohms, "ohm")} across ${placeWords(board, action.at[0])} and ${placeWords(board, action.at[1])}`;
    case "unclip":
      return `Take the ${amount(action.ohms, "ohm")} clip off ${placeWords(board, action.at[0])} and ${placeWords(board, action.at[1])}`;
    default:
      return otherWords(board, action);
  }
}

function otherWords(board: Board, action: Action | JobEvent): string {
  switch (action.do) {
    case "power":
      if (action.feed === "lamp") return `Power up through a ${action.watts ?? "?"} W series lamp`;
      if (action.feed === "bench") return fedWords(board, action);
      return action.load === undefined
        ? "Power up on the mains"
        : `Power up on the mains with ${loadWords(action.load)}, and run it`;
    case "unpower":
      return "Switch off and unplug";
    case "answer":
      if (action.question === BOARD_REVISION) return said`Revision on the board: ${action.answer}`;
      return action.question === MOTOR_INSULATION.question
        ? insulationWords(action.answer)
        : `Customer: ${action.question}: ${action.answer}`;
    case "mark":
      return `${action.part}: ${MARK_WORDS[action.as]}`;
    case "note":
      return action.turned === undefined
        ? `Note: ${action.text}`
        : `${action.turned} turned and charged the board${action.text === "" ? "" : `: ${action.text}`}`;
    case "overrule":
      return `${action.of === undefined ? "Overruled" : OVERRULED_WORDS[action.of]}: ${action.why}`;
    case "undo":
      return `Undo ${action.of}`;
    case "incoming":
      return `The part for ${action.part} before it goes in, ${modeWords(action.mode)}, red on ${action.red}, black on ${action.black}`;
    case "quote":
      return quoteWords(action);
    case "wait":
      return `Put aside: ${WAITS_FOR_WORDS[action.for]}${action.what === undefined ? "" : `, ${action.what}`}`;
    case "resume":
      return "Taken up again";
    case "close":
      return `Close the job: ${VERDICT_WORDS[action.verdict]}`;
    default:
      return action.do;
  }
}

function quoteWords({ offer, price, cap, answer }: QuoteEvent): string {
  const sum = price === undefined ? "" : ` at ${price}`;
  const most = cap === undefined ? "" : `${sum === "" ? "" : ","} not above ${cap} without asking again`;
  return `Quote, ${OFFER_WORDS[offer]}${sum}${most}: ${answer}`;
}

const OFFER_WORDS: Readonly<Record<OfferName, string>> = {
  repair: "repair",
  replace: "a new board",
  decline: "no repair",
};

function insulationWords(answer: string): string {
  if (answer === MOTOR_INSULATION.notRead) return "Motor insulation to earth, megohms";
  return `Motor insulation to earth: ${answer}${/\d$/.test(answer) ? " Mohm" : ""}`;
}

/** A bench supply, or a cell through its resistor, and where it is clipped on. */
function fedWords(board: Board, { volts, limitAmps, ohms, at }: PowerEvent): string {
  const source =
    ohms === undefined
      ? `the bench supply, ${volts ?? "?"} V, limit ${limitAmps ?? "?"} A`
      : `a ${volts ?? "?"} V cell through ${ohms} ohm`;
  if (typeof at !== "object") return `Power from ${source}`;
  const [plus, minus] = at.map((place) => placeWords(board, place));
  return `Power from ${source}: plus on ${plus}, minus on ${minus}`;
}

/** What the board is told to drive. */
function loadWords(load: RunLoad): string {
  return load === "own" ? "its own load" : `a dummy load of ${load} W`;
}

const OVERRULED_WORDS: Readonly<Record<Overruled, string>> = {
  proof: "Went on without the proof",
  resistor: "Power with the resistor on",
  motor: "Motor driven unread",
  proposal: "Overruled",
};

const MARK_WORDS: Readonly<Record<PartMark, string>> = {
  absent: "not on this board",
  different: "another part than drawn",
  unsure: "not sure it is as drawn",
  "as-drawn": "as drawn after all",
};

const WAITS_FOR_WORDS: Readonly<Record<WaitsFor, string>> = {
  drying: "until it is dry",
  part: "until a part comes",
  answer: "until the customer has answered",
};

export const VERDICT_WORDS: Readonly<Record<string, string>> = {
  repaired: "repaired",
  "not-economic": "not worth repairing",
  "not-repairable": "cannot be repaired",
  "no-fault": "no fault found",
  declined: "declined",
};

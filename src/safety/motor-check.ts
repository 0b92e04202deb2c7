/** A motor before it is driven: its three windings alike, its insulation to earth. Figures with their source. */
import type { BenchState } from "../bench/bench-state.ts";
import type { JobEvent } from "../bench/event.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Board, Part } from "../board/board.ts";
import { said } from "../messages/said.ts";
import { MOTOR_INSULATION } from "../priors/told.ts";

/** Common practice; the maker's own limit goes before all of them. */
export const MOTOR_LIMITS = {
  /** the three windings read alike within this share, and within what leads and contacts add */
  windingShare: 0.1,
  leadOhms: 0.1,
  /** under these megohms to earth a motor is not connected before that is looked into */
  insulationMegohms: 10,
  /** a hermetic compressor cold and full of refrigerant reads low: under this it is read again warm */
  hermeticMegohms: 2,
} as const;

export const WINDINGS = [
  ["u", "v"],
  ["v", "w"],
  ["u", "w"],
] as const;

/** What is known of a motor before it is connected. */
export interface MotorCheck {
  /** ohms of each winding pair, null where not read with the plug pulled; infinite: open */
  readonly windings: readonly (number | null)[];
  /** has the insulation to earth been read, or said that it cannot be */
  readonly insulationAsked: boolean;
  /** the technician has said that it is driven as it is */
  readonly overruled: boolean;
  /** why this motor is not to be connected; null: nothing against it so far */
  readonly against: string | null;
}

/** Motors that came with the board or were brought to it. */
export function motorsOf(board: Board, absent: ReadonlySet<string>): readonly Part[] {
  return [...board.parts.values()].filter((part) => part.kind === "motor" && !absent.has(part.ref));
}

/** Does the motor hang on the board by two contacts or more? */
export function isConnected(
  { off, lifted }: Pick<BenchState, "off" | "lifted">,
  { ref, pins }: Part,
): boolean {
  if (off.has(ref)) return false;
  return [...pins.keys()].filter((pin) => pin !== "pe" && !lifted.has(`${ref}.${pin}`)).length > 1;
}

/** Motors that would be driven. */
export function connectedMotors(board: Board, bench: Pick<BenchState, "off" | "lifted">): readonly Part[] {
  return motorsOf(board, bench.off).filter((motor) => isConnected(bench, motor));
}

/** A compressor in its shell: by its role, or on the board of an outdoor unit. */
function isHermetic({ family }: Board, { role }: Part): boolean {
  return /compressor/.test(role ?? "") || /outdoor|compressor|refriger/.test(family ?? "");
}

/** What the log says of the motor as it is now: since it was fitted, the last reading of each kind. */
export function motorCheck(board: Board, { entries }: Timeline, motor: Part): MotorCheck {
  const fitted = entries.findLastIndex(({ event }) => event.do === "replace" && event.part === motor.ref);
  const since = entries.slice(fitted + 1);
  const apart = since.flatMap(({ event, before }) => (isConnected(before, motor) ? [] : [event]));
  const windings = WINDINGS.map(([a, b]) => lastOhms(apart, `${motor.ref}.${a}`, `${motor.ref}.${b}`));
  const insulation = insulationOf(
    apart,
    since.map(({ event }) => event),
    motor,
  );
  return {
    windings,
    insulationAsked: insulation !== null,
    overruled: since.some(({ event }) => event.do === "overrule" && event.of === "motor"),
    against: unlike(motor, windings) ?? leaks(board, motor, insulation),
  };
}

/**
 * Why power from the mains waits for a motor, in one line that says what to do; null where none is in its way, or where the last thing said
 * overrules whatever stands before the next event.
 */
export function motorInTheWay(board: Board, timeline: Timeline): string | null {
  const last = timeline.entries.at(-1)?.event;
  if (last?.do === "overrule" && last.of === undefined) return null;
  for (const motor of connectedMotors(board, timeline.now)) {
    const check = motorCheck(board, timeline, motor);
    if (isCleared(check)) continue;
    const why = check.against ?? said`${motor.ref} has not been read`;
    return said`${why}: pull its plug, and read its windings and its insulation before it is driven`;
  }
  return null;
}

/** Everything read and nothing against it, or overruled. */
export function isCleared({ windings, insulationAsked, overruled, against }: MotorCheck): boolean {
  return overruled || (against === null && insulationAsked && windings.every((ohms) => ohms !== null));
}

function lastOhms(events: readonly JobEvent[], one: string, other: string): number | null {
  const read = events.findLast(
    (event) =>
      event.do === "measure" &&
      event.mode === "ohms" &&
      [event.red, event.black].includes(one) &&
      [event.red, event.black].includes(other),
  );
  if (read?.do !== "measure") return null;
  if (typeof read.reading === "number") return read.reading;
  return read.reading === "zero" ? 0 : Number.POSITIVE_INFINITY;
}

/** Ohms to earth; `cannot` where it was said so; null: not asked yet. */
function insulationOf(
  apart: readonly JobEvent[],
  all: readonly JobEvent[],
  { ref, pins }: Part,
): number | "cannot" | null {
  const told = all.findLast((event) => event.do === "answer" && event.question === MOTOR_INSULATION.question);
  if (told?.do === "answer") return ohmsIn(told.answer) ?? "cannot";
  if (!pins.has("pe")) return null;
  const read = ["u", "v", "w"].flatMap((pin) => lastOhms(apart, `${ref}.${pin}`, `${ref}.pe`) ?? []);
  return read.length === 0 ? null : Math.min(...read);
}

/** `12`, `over 50`, `under 2`, `0.8 Mohm`, `OL`: ohms; null where no figure is said. */
function ohmsIn(text: string): number | null {
  if (/^\s*(OL|open)\s*$/i.test(text)) return Number.POSITIVE_INFINITY;
  const figure = /\d+([.,]\d+)?/.exec(text)?.[0];
  if (figure === undefined) return null;
  const ohms = Number(figure.replace(",", ".")) * 1e6;
  // less than a limit is not the limit
  return /under|below|less|</i.test(text) ? ohms / 2 : ohms;
}

function unlike({ ref }: Part, windings: readonly (number | null)[]): string | null {
  const read = windings.filter((ohms) => ohms !== null);
  if (read.includes(Number.POSITIVE_INFINITY)) return said`a winding of ${ref} is open`;
  if (read.length < WINDINGS.length) return null;
  const [least, most] = [Math.min(...read), Math.max(...read)];
  const { windingShare, leadOhms } = MOTOR_LIMITS;
  if (most - least <= windingShare * least + leadOhms) return null;
  return said`the windings of ${ref} are not alike (${least.toFixed(1)} to ${`${most.toFixed(1)} ohm`})`;
}

function leaks(board: Board, motor: Part, insulation: number | "cannot" | null): string | null {
  if (insulation === null) return null;
  if (insulation === "cannot") return said`the insulation of ${motor.ref} to earth could not be read`;
  const hermetic = isHermetic(board, motor);
  const least = hermetic ? MOTOR_LIMITS.hermeticMegohms : MOTOR_LIMITS.insulationMegohms;
  if (insulation >= least * 1e6) return null;
  const limit = `${least} Mohm`;
  return hermetic
    ? said`${motor.ref} reads under ${limit} to earth; cold and full a compressor reads low: read it again warm`
    : said`${motor.ref} reads under ${limit} to earth`;
}

/** The limit for this motor, in the words of the card. */
export function insulationSentence(board: Board, motor: Part): string {
  const { hermeticMegohms, insulationMegohms } = MOTOR_LIMITS;
  return isHermetic(board, motor)
    ? said`A hermetic compressor reads over ${`${hermeticMegohms} Mohm`}; lower when cold and full: then again warm; the maker's limit goes before it.`
    : said`Common practice is over ${`${insulationMegohms} Mohm`}; the maker's limit goes before it.`;
}

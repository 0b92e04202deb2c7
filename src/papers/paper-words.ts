/** Parts, faults, places and readings in the words of one language. */
import type { MeasureEvent, Place, PowerEvent } from "../bench/event.ts";
import { isColdMode } from "../bench/words.ts";
import type { Board } from "../board/board.ts";
import { isEarth } from "../board/earth-net.ts";
import type { PartFault } from "../board/fault.ts";
import { parseFault } from "../board/parse-fault.ts";
import { deriveRoles, type Roles } from "../board/roles.ts";
import { KNOWN_STAGES } from "../board/stages.ts";
import { shownWords } from "../diagnosis/cold-evidence.ts";
import { shownLive } from "../diagnosis/live-evidence.ts";
import type { PaperMessages } from "../messages/paper-catalogue.ts";
import type { PaperSpeaker } from "../messages/paper-speaker.ts";

type StageKey = Extract<keyof PaperMessages, `stage.${string}`>;

export class PaperWords {
  readonly board: Board;
  readonly speak: PaperSpeaker;
  readonly #roles: Roles;

  constructor(board: Board, speak: PaperSpeaker) {
    this.board = board;
    this.speak = speak;
    this.#roles = deriveRoles(board);
  }

  /** `fuse F1`; a name that is no part of the board stays as it is. */
  part(ref: string): string {
    const part = this.board.parts.get(ref);
    if (part === undefined) return this.speak.apart(ref);
    return this.speak.say("part.named", { kind: this.speak.say(`kind.${part.kind}`), ref });
  }

  /** A net by its name in the board file and what it is; a pin by part and pin. */
  place(place: Place): string {
    const what = this.board.nets.has(place) ? this.#net(place) : null;
    return what === null
      ? this.speak.apart(place)
      : this.speak.say("place.named", { net: place, words: what });
  }

  #net(net: string): string | null {
    const { say } = this.speak;
    const { bus, motorSwitches } = this.#roles;
    if (net === bus?.plus) return say("net.busPlus");
    if (net === bus?.minus) return say("net.busMinus");
    if (motorSwitches.some(({ phase }) => phase === net)) return say("net.phase", { phase: net });
    if (this.board.supply.at.includes(net)) return say("net.mains");
    return isEarth(this.board, net) ? say("net.earth") : null;
  }

  /** A fault by its name in the board file's spelling. */
  fault(name: string): string {
    const { say, apart } = this.speak;
    const read = parseFault(name, this.board);
    if (!read.ok) return apart(name);
    const fault = read.value;
    if (fault.of === "nets") {
      const [a, b] = fault.nets;
      return say("fault.dirt", { a: this.place(a), b: this.place(b) });
    }
    const part = this.part(fault.part);
    const how = say(`mode.${fault.mode}`);
    const where = this.#inside(fault);
    return where === null ? say("fault.part", { part, how }) : say("fault.inside", { part, where, how });
  }

  /** Where inside a part of many; null where the part has but one place that counts for who reads a paper. */
  #inside({ part, junction }: PartFault): string | null {
    const { say } = this.speak;
    const kind = this.board.parts.get(part)?.kind;
    if (junction === null) return null;
    if (kind === "module") {
      const [, phase, side] = /^([uvw])([pn])$/.exec(junction) ?? [];
      if (phase === undefined) return say("inside.pin", { pin: junction });
      return say(side === "p" ? "inside.upper" : "inside.lower", { phase: phase.toUpperCase() });
    }
    if (kind === "transformer") return say("inside.winding", { winding: junction });
    if (kind !== "controller" && kind !== "ic") return null;
    return junction === "supply"
      ? say("inside.supply")
      : say("inside.pin", { pin: junction.replace(/\.supply$/, "") });
  }

  /** A stage word of the board file; one that the format does not know stays as it is. */
  stage(stage: string): string {
    // Every known stage has its message: a test holds the two lists together.
    return KNOWN_STAGES.includes(stage)
      ? this.speak.say(`stage.${stage}` as StageKey)
      : this.speak.apart(stage);
  }

  /** A reading as the display showed it, the signs of units as they are printed. */
  reading(event: MeasureEvent): string {
    const { say } = this.speak;
    const { reading } = event;
    const shown =
      typeof reading === "number"
        ? this.#quantity(
            isColdMode(event.mode) ? shownWords(event.mode, reading) : shownLive(event.mode, reading),
          )
        : reading === "OL"
          ? this.speak.apart("OL")
          : say(`shown.${reading}`);
    return event.settling === "climbing" ? say("shown.climbing", { reading: shown }) : shown;
  }

  /** What a meter would show, by the circuit. */
  predicted(mode: MeasureEvent["mode"], shown: number | "OL" | "beep" | "silent"): string {
    return this.reading({ do: "measure", mode, reading: shown });
  }

  #quantity(words: string): string {
    const printed = words
      .replace(/ ac$/, "")
      .replace(/ohm$/, "Ω")
      .replace(/ u(?=[FΩV])/, " µ")
      .replace(/degC$/, "°C");
    return this.speak.shown(printed);
  }

  /** How a board was powered and what was seen. */
  run(event: PowerEvent, seen: readonly (keyof PaperMessages & `observed.${string}`)[]): string {
    const { say } = this.speak;
    const words = this.speak.list(seen.map((one) => say(one)));
    return say("run.line", { run: this.#feed(event), seen: words === "" ? say("run.notSeen") : words });
  }

  #feed({ feed, watts, volts, load }: PowerEvent): string {
    const { say, shown } = this.speak;
    const quantity = (value: number | undefined, unit: string) => shown(`${value ?? "?"} ${unit}`);
    if (feed === "lamp") return say("run.lamp", { power: quantity(watts, "W") });
    if (feed === "bench") return say("run.bench", { volts: quantity(volts, "V") });
    if (load === undefined) return say("run.mains");
    return load === "own" ? say("run.own") : say("run.dummy", { power: quantity(load, "W") });
  }
}

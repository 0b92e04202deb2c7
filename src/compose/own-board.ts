/** What follows from the answers for the board as a whole: volts, ratings, names of rails, phases and signals. */
import type { SettledAnswers } from "./answers.ts";
import type { QuestionId } from "./questions.ts";
import { THREE_LINES } from "./stages/mains.ts";

export interface OwnRail {
  readonly name: string;
  readonly volts: number;
  readonly tolerance: number;
}

/** A rail below this feeds logic and is held closer. Common practice: 5 % against 10 %. */
const LOGIC_VOLTS = 6;
/** Peak of a boosted bus. Common practice: 360 to 400 V. */
const BOOSTED_VOLTS = 390;
/** Up to this bus 600 V switches and a 700 V off-line switch are used; above it 1200 V and 1500 V. Common practice. */
const LOW_BUS_VOLTS = 420;
/** Ratings of bus electrolytics with their usual headroom. Common practice. */
const LOW_ELECTROLYTIC = { volts: 250, upTo: 200 } as const;
const ELECTROLYTIC_VOLTS = 450;
/** Mains of 60 Hz. */
const SIXTY_HERTZ: ReadonlySet<number> = new Set([120, 480]);

export class OwnBoard {
  readonly #answers: SettledAnswers;
  readonly mainsVolts: number;
  readonly threePhase: boolean;
  readonly boosted: boolean;
  readonly discrete: boolean;
  readonly rails: readonly OwnRail[];
  /** the nets that the mains comes in on */
  readonly terminals: readonly string[];

  constructor(answers: SettledAnswers) {
    this.#answers = answers;
    const [volts, lines] = this.answer("supply").split("-");
    this.mainsVolts = Number(volts);
    this.threePhase = lines === "3";
    this.boosted = this.answer("boost") === "switch";
    this.discrete = this.answer("switches") === "discrete";
    this.rails = this.answer("rails")
      .split(",")
      .map((text) => {
        const railVolts = Number(text);
        return {
          name: `V${text.replace(".", "")}`,
          volts: railVolts,
          tolerance: railVolts < LOGIC_VOLTS ? 0.05 : 0.1,
        };
      });
    this.terminals = this.threePhase ? THREE_LINES.map(({ terminal }) => terminal) : ["L_IN", "N_IN"];
  }

  /** "" where the question does not apply. */
  answer(id: QuestionId): string {
    return this.#answers.values.get(id) ?? "";
  }

  number(id: QuestionId): number {
    return Number(this.answer(id));
  }

  /** A number that was answered; undefined where it was not: nobody has read it. */
  said(id: QuestionId): number | undefined {
    return this.#answers.open.has(id) ? undefined : this.number(id);
  }

  /** The stages to take as not seen where one of these questions is open: all, or none. */
  doubtOf(...ids: readonly QuestionId[]): "all" | readonly string[] {
    return ids.some((id) => this.#answers.open.has(id)) ? "all" : [];
  }

  /** Who knows the switches need not know what stands round their gates. */
  get doubtOfSwitches(): "all" | readonly string[] {
    if (this.#answers.open.has("switches")) return "all";
    return this.#answers.open.has("gates") ? ["drive"] : [];
  }

  get hertz(): number {
    return SIXTY_HERTZ.has(this.mainsVolts) ? 60 : 50;
  }

  get busVolts(): number {
    return this.boosted ? BOOSTED_VOLTS : this.mainsVolts * Math.SQRT2;
  }

  get highBus(): boolean {
    return this.busVolts > LOW_BUS_VOLTS;
  }

  /** Rating of switches and fast diodes on the bus, volts. */
  get switchVolts(): 600 | 1200 {
    return this.highBus ? 1200 : 600;
  }

  get electrolyticVolts(): number {
    return this.busVolts <= LOW_ELECTROLYTIC.upTo ? LOW_ELECTROLYTIC.volts : ELECTROLYTIC_VOLTS;
  }

  get filmVolts(): number {
    return this.highBus ? 1000 : 630;
  }

  /** The rail of the gate drive; every set of rails has it. */
  get driveRail(): string {
    return "V15";
  }

  /** The rail that feeds the controller, or what its board is given: the lowest one. */
  get logicRail(): OwnRail {
    const volts = this.number("controller");
    const lowest = this.rails.reduce((low, rail) => (rail.volts < low.volts ? rail : low));
    return this.rails.find((rail) => rail.volts === volts) ?? lowest;
  }

  /** The rail of relay coils: 12 V where there is one. Common practice. */
  get coilRail(): { readonly name: string; readonly volts: 12 | 15 } {
    return this.rails.some(({ volts }) => volts === 12)
      ? { name: "V12", volts: 12 }
      : { name: "V15", volts: 15 };
  }

  /** Has the inrush a relay, which the controller pulls in? */
  get inrushRelay(): boolean {
    return this.answer("inrush").endsWith("-relay");
  }

  /** The net of a lower switch's current on the first leg. */
  get shuntNet(): string {
    return this.discrete ? "E_U" : "N_U";
  }
}

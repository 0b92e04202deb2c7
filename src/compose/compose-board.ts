/**
 * A whole board file out of a few answers: the stages that were picked, with the trade's values and generated names. Parts of a
 * stage that nobody has answered for carry `assumed`.
 */
import { parseBoard } from "../board/parse-board.ts";
import { plain } from "../messages/said.ts";
import type { Parsed } from "../units/outcome.ts";
import { type Answers, type SettledAnswers, settleAnswers } from "./answers.ts";
import { Composer } from "./composer.ts";
import { OwnBoard } from "./own-board.ts";
import { addLogic } from "./own-logic.ts";
import { addPowerPath } from "./own-power-path.ts";
import { addRails } from "./own-rails.ts";
import { QUESTIONS } from "./questions.ts";
import { PHASES } from "./stages/discrete-inverter.ts";

export interface Described {
  /** a board file's content; it parses */
  readonly board: Readonly<Record<string, unknown>>;
  readonly settled: SettledAnswers;
}

export interface Heading {
  readonly name?: string;
  /** what outcomes are pooled by */
  readonly family?: string;
}

/** Family of boards that got no other: outcomes of boards of one's own are pooled apart from the shipped ones'. */
const OWN_FAMILY = "own-board";

/** The board that the answers describe, complete and readable. A problem is one line about an answer. */
export function composeBoard(answers: Answers, heading: Heading = {}): Parsed<Described> {
  const settled = settleAnswers(answers);
  if (!settled.ok) return settled;
  const own = new OwnBoard(settled.value);
  const board = new Composer(
    {
      name: heading.name ?? nameOf(settled.value),
      family: heading.family ?? OWN_FAMILY,
      supply: { kind: "ac", volts: own.mainsVolts, hz: own.hertz, at: own.terminals },
      zero: "NBUS",
    },
    { priced: false },
  );
  addPowerPath(board, own);
  const feeds = addRails(board, own);
  addLogic(board, own);
  for (const { name, volts, tolerance } of own.rails)
    board.rail(name, name, volts, tolerance, feeds.get(name) ?? "");
  addPlaces(board, own);
  const file = board.file();
  const parsed = parseBoard(file);
  if (!parsed.ok) throw new Error(`a composed board does not read: ${parsed.problem}`);
  return { ok: true, value: { board: file, settled: settled.value } };
}

/** "own board, 230 V one phase, no boost, power module": the first answers in words. */
function nameOf({ values }: SettledAnswers): string {
  const words = QUESTIONS.filter(({ first }) => first).map((question) => {
    const value = values.get(question.id);
    const choice = question.kind === "choice" && question.choices.find((one) => one.value === value);
    return choice ? plain(choice.words).toLowerCase().replaceAll(" v", " V") : "";
  });
  const [supply, boost, ...rest] = words;
  return ["own board", supply, boost === "none" ? "no boost" : "boost", ...rest].join(", ");
}

/** What the eye finds without knowing the names. */
function addPlaces(board: Composer, own: OwnBoard): void {
  own.terminals.forEach((net, i) => {
    board.point(`TP_L${i + 1}`, net, `mains terminal ${own.threePhase ? `L${i + 1}` : i === 0 ? "L" : "N"}`);
  });
  board.point("TP_P", "PBUS", "plus pin of a large capacitor, the one away from bus minus");
  board.point("TP_0", "NBUS", "minus pin of a large capacitor, the striped side");
  for (const phase of PHASES) board.point(`TP_${phase}`, phase, `motor terminal ${phase}`);
  for (const { name, volts } of own.rails)
    board.point(`TP_${name}`, name, `${volts} V, at any capacitor on it`);
}

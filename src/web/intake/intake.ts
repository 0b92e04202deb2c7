/** What the intake gathers, and the job it becomes. */

import { said } from "../../messages/said.ts";
import { CAUSE_WORDS } from "../../wire/cause-words.ts";
import { partFacts, withAssumed } from "../board-facts.ts";
import { happened, type JobHeader, type KeptEvent, newId } from "../job-event.ts";
import { type TermsTyped, termsOf, termsProblem, USUAL_TERMS } from "../money/terms-typed.ts";
import type { PictureToSend } from "../picture/kept-picture.ts";

export const CAUSES: readonly { readonly cause: string; readonly words: string; readonly hint: string }[] = [
  { cause: "water", words: CAUSE_WORDS.water, hint: said`leak, flood, condensation` },
  { cause: "surge", words: CAUSE_WORDS.surge, hint: said`thunderstorm, mains trouble` },
  { cause: "overload", words: CAUSE_WORDS.overload, hint: said`locked rotor, heat` },
  { cause: "age", words: CAUSE_WORDS.age, hint: said`worn out, faded slowly` },
  { cause: "insects", words: CAUSE_WORDS.insects, hint: said`ants, geckos, nests` },
  { cause: "impact", words: CAUSE_WORDS.impact, hint: said`dropped, struck` },
  { cause: "unknown", words: CAUSE_WORDS.unknown, hint: said`nobody can say` },
];

export const SYMPTOMS: readonly { readonly symptom: string; readonly words: string }[] = [
  { symptom: "dead", words: said`Dead` },
  { symptom: "trips-supply", words: said`Trips the supply` },
  { symptom: "starts-then-stops", words: said`Starts, then stops` },
  { symptom: "no-output", words: said`Lives, but no output` },
  { symptom: "other", words: said`Something else` },
];

export const EQUIPMENT: readonly { readonly name: string; readonly words: string }[] = [
  { name: "lamp-60", words: said`Lamp, 60 W` },
  { name: "lamp-100", words: said`Lamp, 100 W` },
  { name: "lamp-200", words: said`Lamp, 200 W` },
  { name: "resistor-2200", words: said`Resistor, 2.2 kohm 10 W` },
  { name: "resistor-4700", words: said`Resistor, 4.7 kohm 10 W` },
  { name: "resistor-10000", words: said`Resistor, 10 kohm 10 W` },
  { name: "bench-supply", words: said`Bench supply` },
  { name: "high-voltage-supply", words: said`Isolated supply, 100 to 150 V` },
  { name: "rechargeable-cell", words: said`1.2 V cell with 1 ohm` },
  { name: "milliohm-meter", words: said`Milliohm meter` },
  { name: "isolation-transformer", words: said`Isolation transformer` },
  { name: "thermometer", words: said`Spot thermometer` },
  { name: "thermal-camera", words: said`Thermal camera` },
  { name: "clip-leads", words: said`Clip-on leads` },
  { name: "hot-air", words: said`Hot air` },
];

/** How a part of this board stands to the board file. */
export type PartMark = "absent" | "different" | "unsure";

/** What was said of a board of one's own; `id` is the one it is kept by. */
export interface Described {
  readonly id: string;
  readonly answers: Readonly<Record<string, string>>;
  readonly name: string;
}

export interface Intake {
  readonly boardId: string;
  readonly board: unknown;
  /** kept while the intake is open, so that going back to the questions loses none */
  readonly described: Described | null;
  /** what the board came out of, and whose it is */
  readonly unit: string;
  readonly customer: string;
  readonly cause: string;
  readonly symptom: string;
  /** for water: whether it was powered while wet */
  readonly poweredWet: "yes" | "no" | "unknown";
  readonly marks: ReadonlyMap<string, PartMark>;
  readonly agreed: boolean;
  readonly terms: TermsTyped;
  readonly equipment: ReadonlySet<string>;
  readonly pictures: readonly PictureToSend[];
  readonly practice: boolean;
  readonly seed: string;
}

export const FIRST_INTAKE: Intake = {
  boardId: "",
  board: null,
  described: null,
  unit: "",
  customer: "",
  cause: "",
  symptom: "dead",
  poweredWet: "unknown",
  marks: new Map(),
  agreed: false,
  terms: USUAL_TERMS,
  equipment: new Set(["lamp-100"]),
  pictures: [],
  practice: false,
  seed: "",
};

/** What is still missing before the job can start; null where it can. */
export function missing(intake: Intake): string | null {
  if (intake.board === null) return said`Choose the board that is like this one.`;
  if (intake.cause === "") return said`Choose what happened to it; 'not known' is an answer too.`;
  const wrong = termsProblem(intake.terms);
  if (wrong !== null) return wrong;
  if (intake.practice && intake.seed !== "" && !/^\d{1,9}$/.test(intake.seed))
    return said`The practice number is up to nine digits, or empty for any.`;
  return null;
}

function marked(intake: Intake, mark: PartMark): readonly string[] {
  return [...intake.marks].filter(([, given]) => given === mark).map(([ref]) => ref);
}

/** The job file's header. Where no price is agreed the field is left out, so the shop's usual one counts and is named so. */
export function headerOf(intake: Intake): JobHeader {
  const written = { unit: intake.unit.trim(), customer: intake.customer.trim() };
  return {
    format: "faultwright-job/1",
    board: withAssumed(intake.board, new Set([...marked(intake, "different"), ...marked(intake, "unsure")])),
    cause: intake.cause,
    symptom: intake.symptom,
    absent: marked(intake, "absent"),
    equipment: [...intake.equipment],
    terms: termsOf(intake.terms, intake.agreed),
    ...Object.fromEntries(Object.entries(written).filter(([, text]) => text !== "")),
  };
}

/** What the job is called in lists; null: after its board. */
export function titleOf({ unit, customer }: Intake): string | null {
  const named = [unit.trim(), customer.trim()].filter((text) => text !== "");
  return named.length === 0 ? null : named.join(", ");
}

/** What the customer said that is no field of the header goes into the log as its first answer. */
export function firstEvents(intake: Intake): readonly KeptEvent[] {
  if (intake.cause !== "water") return [];
  return [happened({ do: "answer", question: "powered-while-wet", answer: intake.poweredWet })];
}

/** The practice seed typed, or one from this job's fresh id where none was. */
export function seedOf(intake: Intake): number {
  return intake.seed === "" ? Number.parseInt(newId().slice(0, 7), 16) : Number(intake.seed);
}

/** The choice of a board: what comes off by a plug and stays with the appliance did not come with it. */
export function chosenBoard(boardId: string, board: unknown): Pick<Intake, "boardId" | "board" | "marks"> {
  const away = partFacts(board).filter((part) => part.kind === "motor");
  return { boardId, board, marks: new Map(away.map((part): [string, PartMark] => [part.ref, "absent"])) };
}

/** What every part of the intake is given. */
export interface IntakeProps {
  readonly intake: Intake;
  change(part: Partial<Intake>): void;
}

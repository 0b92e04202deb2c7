/** What is one tap at the bench stands in the file in plain English, and is told in the reader's language wherever the log shows it. */
import { describe, expect, it } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import { LEFT_OUT, turnedWords } from "../bench/note-words.ts";
import { OVERRULE_REASONS } from "../bench/overrule-reasons.ts";
import { plain } from "../messages/said.ts";
import { AR } from "../messages/sayings/ar.ts";
import { ES } from "../messages/sayings/es.ts";
import { HI } from "../messages/sayings/hi.ts";
import { finder, tell } from "../messages/tell.ts";
import { MOTOR_INSULATION } from "../priors/told.ts";
import { assess } from "./assess.ts";
import { eventWords } from "./event-words.ts";
import { insulationAnswers } from "./insulation-words.ts";
import { rectifierJob } from "./rectifier-job.fixture.ts";
import { safetyView } from "./safety-view.ts";

const { board } = rectifierJob([]);
const telling = (find: ReturnType<typeof finder>) => (text: string) =>
  tell(text, { find, category: () => "other", value: (value) => value });
const inSpanish = telling(finder(ES));
const logged = (event: JobEvent) => eventWords(board, event);

const TAPPED: readonly JobEvent[] = [
  ...Object.values(OVERRULE_REASONS)
    .flat()
    .map((why): JobEvent => ({ do: "overrule", of: "proposal", why: plain(why) })),
  { do: "note", text: plain(LEFT_OUT), leftOut: true },
  { do: "note", text: plain(turnedWords("M1")), turned: "M1" },
  { do: "answer", question: MOTOR_INSULATION.question, answer: MOTOR_INSULATION.notRead },
  { do: "answer", question: MOTOR_INSULATION.question, answer: "over 50" },
];

describe.each([
  ["es", finder(ES)],
  ["hi", finder(HI)],
  ["ar", finder(AR)],
] as const)("in %s", (_, find) => {
  it.each(TAPPED.map((event) => [plain(logged(event)), event] as const))("%s", (_english, event) => {
    const told = telling(find)(logged(event));
    expect(told).not.toBe(plain(logged(event)));
    const kept = "text" in event ? event.text : "why" in event ? event.why : event.do;
    expect(told).not.toContain(kept);
  });
});

it("the log tells a tapped reason, what was typed stays as it is", () => {
  const overruled = (why: string) => inSpanish(logged({ do: "overrule", of: "proof", why }));
  expect(overruled("Emptied it through my own resistor")).toContain("La descargué con mi propia resistencia");
  expect(overruled("the customer's electrician did")).toContain("the customer's electrician did");
  // the same words without the mark of a tap are somebody's own
  expect(inSpanish(logged({ do: "note", text: plain(LEFT_OUT) }))).toContain(plain(LEFT_OUT));
});

it("the safety strip tells the reason for which the proof was passed over", () => {
  const why = "Emptied it through my own resistor";
  const assessed = assess(rectifierJob([{ do: "overrule", of: "proof", why }]));
  if (!assessed.ok) throw new Error(assessed.problem);
  const { overruled, words } = safetyView(assessed.value.job, assessed.value.timeline);
  expect(inSpanish(overruled ?? "")).toBe("La descargué con mi propia resistencia");
  expect(inSpanish(words)).toContain("La descargué con mi propia resistencia");
});

describe("the insulation of a motor", () => {
  it("is answered in words of the reader, and kept as the file has it", () => {
    expect(insulationAnswers().map(({ answer }) => answer)).toEqual([
      ...MOTOR_INSULATION.answers,
      MOTOR_INSULATION.notRead,
    ]);
    expect(insulationAnswers().map(({ words }) => plain(words))).toEqual([
      "over 50 Mohm",
      "10 to 50 Mohm",
      "2 to 10 Mohm",
      "under 2 Mohm",
      "not read",
    ]);
    expect(insulationAnswers().map(({ words }) => inSpanish(words))).toEqual([
      "más de 50 Mohm",
      "10 a 50 Mohm",
      "2 a 10 Mohm",
      "menos de 2 Mohm",
      "sin medir",
    ]);
  });

  it("stands in the log as it was answered, a typed figure with its unit", () => {
    const read = (answer: string) =>
      plain(logged({ do: "answer", question: MOTOR_INSULATION.question, answer }));
    expect(read(MOTOR_INSULATION.notRead)).toBe("Motor insulation to earth: not read");
    expect(read("12")).toBe("Motor insulation to earth: 12 Mohm");
    expect(read("OL")).toBe("Motor insulation to earth: OL");
    expect(read("0.8 Mohm")).toBe("Motor insulation to earth: 0.8 Mohm");
  });
});

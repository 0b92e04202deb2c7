import { expect, it } from "vitest";
import { revisionTold, toldIn } from "./told-in.ts";

const revision = (answer: string, id = answer) => ({
  do: "answer" as const,
  question: "board-revision",
  answer,
  id,
});

it("the last answer to a question counts, unless it is undone", () => {
  const wet = { do: "answer" as const, question: "powered-while-wet", answer: "yes" };
  const log = [wet, revision("rev C"), revision(" rev D ", "d")];
  expect(revisionTold([])).toBeNull();
  expect(revisionTold(log)).toBe("rev D");
  expect(revisionTold([...log, { do: "undo", of: "d" }])).toBe("rev C");
  expect(revisionTold([...log, revision("")])).toBeNull();
  expect(toldIn(log)).toEqual({ poweredWet: true });
});

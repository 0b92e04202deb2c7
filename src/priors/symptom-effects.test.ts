import { expect, it } from "vitest";
import { parseBoard } from "../board/parse-board.ts";
import { parseFault } from "../board/parse-fault.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import type { Symptom } from "./cause.ts";
import { symptomAgainst } from "./symptom-effects.ts";

const parsed = parseBoard(SHIPPED.find(({ id }) => id === "greenhouse-fan-drive")?.board);
if (!parsed.ok) throw new Error(parsed.problem);
const board = parsed.value;

const against = (symptom: Symptom, name: string): number => {
  const fault = parseFault(name, board);
  if (!fault.ok) throw new Error(fault.problem);
  return symptomAgainst(board, symptom, fault.value);
};

it("a drive that starts and then stops has no blown fuse and no short across its bus", () => {
  expect(against("starts-then-stops", "F1:open")).toBeLessThan(0.5);
  expect(against("starts-then-stops", "C5:short")).toBeLessThan(0.5);
});

it("a drive that is dead may have either, and an open fuse trips no breaker", () => {
  expect(against("dead", "F1:open")).toBe(1);
  expect(against("dead", "C5:short")).toBe(1);
  expect(against("trips-supply", "C5:short")).toBe(1);
  expect(against("trips-supply", "F1:open")).toBeLessThan(0.6);
});

it("what another fault may hide is not ruled out by what the customer says", () => {
  expect(against("dead", "K1.contact:open")).toBe(1);
  expect(against("no-output", "Q1.ce:short")).toBe(1);
});

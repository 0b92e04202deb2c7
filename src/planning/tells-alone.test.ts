import { expect, it } from "vitest";
import { parseBoard } from "../board/parse-board.ts";
import { parseFault } from "../board/parse-fault.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { tellsAlone } from "./hands-on-steps.ts";

const parsed = parseBoard(SHIPPED.find(({ id }) => id === "small-frequency-drive-3ph")?.board);
if (!parsed.ok) throw new Error(parsed.problem);
const board = parsed.value;

function tells(name: string): boolean {
  const fault = parseFault(name, board);
  if (!fault.ok || fault.value.of !== "part") throw new Error(name);
  const part = board.parts.get(fault.value.part);
  if (part === undefined) throw new Error(name);
  return tellsAlone(part, fault.value);
}

it("a free shunt of milliohms reads zero whether it is whole, shorted or doubled; open it reads open", () => {
  expect(board.parts.get("R13")?.value.ohms).toBeLessThan(0.1);
  expect(tells("R13:short")).toBe(false);
  expect(tells("R13:drift")).toBe(false);
  expect(tells("R13:open")).toBe(true);
});

it("of a free capacitor of a nanofarad a meter does not tell whether it is open, of one of a hundred it does", () => {
  expect(board.parts.get("C19")?.value.farads).toBeLessThan(1.5e-9);
  expect(tells("C19:open")).toBe(false);
  expect(tells("C19:short")).toBe(true);
  expect(board.parts.get("C26")?.value.farads).toBeGreaterThan(5e-8);
  expect(tells("C26:open")).toBe(true);
});

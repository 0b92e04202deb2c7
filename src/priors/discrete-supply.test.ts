/** What the faults of a small supply without a chip do to the board, and which of them bring others. */
import { expect, it } from "vitest";
import { parseFault } from "../board/parse-fault.ts";
import { discreteSupplyBoard } from "../live/discrete-supply.fixture.ts";
import { boardEffect } from "./power-effects.ts";
import { priorTable } from "./prior-table.ts";

const board = discreteSupplyBoard();

function effect(name: string) {
  const fault = parseFault(name, board);
  if (!fault.ok) throw new Error(fault.problem);
  return boardEffect(board, [fault.value]);
}

it("open in what starts it or keeps it swinging, it is dead; shorted through, it lies across the bus behind its winding", () => {
  for (const name of [
    "R91:open",
    "R92:open",
    "R93:open",
    "C93:open",
    "T1.aux:open",
    "Q91.be:short",
    "Q91.ce:open",
  ])
    expect(effect(name)).toBe("supply-dead");
  expect(effect("Q91.ce:short")).toBe("supply-short");
});

it("shorted through, its transistor opens the fuse resistor before it", () => {
  const { faults, knockOns } = priorTable(board, "unknown", "dead");
  const brought = knockOns
    .filter(({ parent }) => faults[parent].reportAs === "Q91.ce:short")
    .map(({ child }) => faults[child].reportAs);
  expect(brought).toContain("R27:open");
});

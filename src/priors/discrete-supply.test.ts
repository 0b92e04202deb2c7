/** What the faults of a small supply without a chip do to the board, and which of them bring others. */
import { expect, it } from "vitest";
import { discreteSupplyBoard, SILENCING } from "../live/discrete-supply.fixture.ts";
import { faultsNamed } from "../live/on-power.fixture.ts";
import { boardEffect } from "./power-effects.ts";
import { priorTable } from "./prior-table.ts";

const board = discreteSupplyBoard();

const effect = (name: string) => boardEffect(board, faultsNamed(board, name));

it("open in what starts it or keeps it swinging, it is dead; shorted through, it lies across the bus behind its winding", () => {
  for (const name of SILENCING) expect(effect(name)).toBe("supply-dead");
  expect(effect("Q91.ce:short")).toBe("supply-short");
});

it("shorted through, its transistor opens the fuse resistor before it", () => {
  const { faults, knockOns } = priorTable(board, "unknown", "dead");
  const brought = knockOns
    .filter(({ parent }) => faults[parent].reportAs === "Q91.ce:short")
    .map(({ child }) => faults[child].reportAs);
  expect(brought).toContain("R27:open");
});

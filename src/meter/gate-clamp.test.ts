/** A gate clamp reads 0.5 to 0.65 V with a 90 % spread under 80 mV among like parts, meter and room (common practice, no source), on every shipped board with gates. */
import { expect, test } from "vitest";
import { parseBoard } from "../board/parse-board.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { makePredictor } from "./predictor.ts";
import { DEFAULT_METER } from "./settings.ts";

/** A module keeps its gates inside. */
const WITHOUT_GATES: readonly string[] = ["washing-machine-drive"];

test.each(SHIPPED.map(({ id, board }) => [id, board] as const))("the gate clamps of %s", (id, content) => {
  const parsed = parseBoard(content);
  if (!parsed.ok) throw new Error(parsed.problem);
  const board = parsed.value;
  const off = new Set([...board.parts].filter(([, part]) => part.kind === "motor").map(([ref]) => ref));
  const bench = { lifted: new Set<string>(), off, clips: [], powered: false };
  const predictor = makePredictor(board, bench, DEFAULT_METER);
  const clamps = [...board.parts.values()].flatMap(({ ref, kind, pins }) => {
    const [red, black] = [pins.get("a") ?? "", pins.get("k") ?? ""];
    return kind === "zener" && black.startsWith("G_") ? [{ ref, red, black }] : [];
  });
  const outside = clamps.flatMap(({ ref, red, black }) => {
    const reading = predictor.predict({ mode: "diode", red, black }, []);
    if (!reading.solved) throw new Error(reading.why);
    const good = reading.raw >= 0.5 && reading.raw <= 0.65 && 2 * 1.645 * reading.alike < 0.08;
    return good ? [] : [`${ref} ${red}>${black} ${reading.raw.toFixed(4)} V`];
  });
  expect(clamps.length > 0).toBe(!WITHOUT_GATES.includes(id));
  expect(outside).toEqual([]);
});

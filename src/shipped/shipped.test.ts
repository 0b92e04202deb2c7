/** The shipped boards as files: what is committed is what the stages compose, and every board is whole. */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parseBoard } from "../board/parse-board.ts";
import { knownWords } from "../messages/known-words.ts";
import { isSaid, plain } from "../messages/said.ts";
import { SHIPPED } from "./shipped.ts";

describe.each(SHIPPED.map((shipped) => [shipped.id, shipped] as const))("%s", (id, shipped) => {
  const parsed = parseBoard(shipped.board);
  if (!parsed.ok) throw new Error(parsed.problem);
  const board = parsed.value;
  const pinsOf = new Map<string, string[]>();
  for (const [ref, part] of board.parts)
    for (const [pin, net] of part.pins) pinsOf.set(net, [...(pinsOf.get(net) ?? []), `${ref}.${pin}`]);

  it("is committed as composed", () => {
    const file = readFileSync(`boards/${id}.json`, "utf8");
    expect(file === `${JSON.stringify(shipped.board, null, 2)}\n`, "run npm run boards").toBe(true);
  });

  it("is told in another language: its name and title, nets, places and parts", () => {
    const labels = [...board.nets.values()].filter((label) => label !== null);
    const roles = [...board.parts.values()].flatMap(({ role }) => role ?? []);
    const places = board.points.flatMap(({ at }) => at ?? []);
    const texts = new Set([board.name, shipped.title, ...labels, ...places, ...roles]);
    expect(
      [...texts].filter((text) => !isSaid(knownWords(text)) || plain(knownWords(text)) !== text),
    ).toEqual([]);
  });

  it("has two pins on every net, but where the mains comes in", () => {
    expect(pinsOf.size).toBe(board.nets.size);
    const terminals = board.supply.at as readonly string[];
    const loose = [...pinsOf].filter(([net, pins]) => pins.length < 2 && !terminals.includes(net));
    expect(loose).toEqual([]);
  });

  it("feeds every rail from a part with a pin on it", () => {
    for (const rail of board.rails) {
      const source = rail.from === null ? undefined : board.parts.get(rail.from);
      expect([rail.name, source && [...source.pins.values()].includes(rail.net)]).toEqual([rail.name, true]);
    }
  });

  it("names its test points on nets of the board, in the picture", () => {
    expect(board.points.length).toBeGreaterThan(0);
    for (const point of board.points) {
      expect([point.name, pinsOf.has(point.net)]).toEqual([point.name, true]);
      for (const share of point.xy ?? []) expect(share >= 0 && share <= 1).toBe(true);
    }
  });

  it("has the size of a real board, with one controller that nobody sells programmed", () => {
    expect(board.parts.size).toBeGreaterThanOrEqual(100);
    const controllers = [...board.parts.values()].filter((part) => part.kind === "controller");
    expect(controllers.map((part) => part.obtainable)).toEqual([false]);
  });
});

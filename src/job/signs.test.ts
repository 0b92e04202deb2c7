/** What is seen and heard without a meter: a light, a relay that clicks, a fan. */
import { describe, expect, it } from "vitest";
import { parseBoard } from "../board/parse-board.ts";
import { signsOf } from "../live/signs.ts";
import { plain } from "../messages/said.ts";
import { provenEmpty } from "../planning/scene.fixture.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { AssessmentSession, beliefOf } from "./assess.ts";
import { eventWords } from "./event-words.ts";
import { parseJob } from "./parse-job.ts";

const content = SHIPPED.find(({ id }) => id === "small-frequency-drive-3ph")?.board;
const parsed = parseBoard(content);
if (!parsed.ok) throw new Error(parsed.problem);
const board = parsed.value;
const HEADER = { format: "faultwright-job/1", board: content, cause: "surge", symptom: "dead", terms: {} };
const session = new AssessmentSession();

/** Chances of the parts, a power-up on the mains that showed nothing but these signs. */
function suspected(signs: Readonly<Record<string, boolean>> | undefined): (part: string) => number {
  const power = { do: "power", feed: "mains", observed: "quiet", ...(signs && { signs }) };
  const job = parseJob({ ...HEADER, log: [...provenEmpty(board), power] }, board);
  if (!job.ok) throw new Error(job.problem);
  const believed = beliefOf(job.value, session);
  if (!believed.ok) throw new Error(believed.problem);
  const { suspects } = believed.value.belief;
  return (part) => suspects.find((one) => one.part === part)?.probability ?? 0;
}

describe("the signs of life of a drive that does nothing on the mains", () => {
  const without = suspected(undefined);

  it("are those of its light, its inrush relay and its fan", () => {
    expect(signsOf(board)).toEqual([
      { part: "LED1", kind: "light" },
      { part: "K1", kind: "relay" },
      { part: "FAN1", kind: "fan" },
    ]);
  });

  it("all there: the small supply works, and its parts are hardly suspected any more", () => {
    const alive = suspected({ LED1: true, K1: true, FAN1: true });
    for (const part of ["U2", "D5", "F1"]) expect(alive(part)).toBeLessThan(0.5 * without(part));
  });

  it("all missing: the small supply, or what feeds it", () => {
    const dead = suspected({ LED1: false, K1: false, FAN1: false });
    expect(dead("U2")).toBeGreaterThan(without("U2"));
    expect(dead("K1")).toBeLessThan(without("K1"));
  });

  it("all but the relay: its coil, or the transistor that drives it", () => {
    const silent = suspected({ LED1: true, K1: false, FAN1: true });
    const clicks = suspected({ LED1: true, K1: true, FAN1: true });
    expect(silent("K1")).toBeGreaterThan(5 * clicks("K1"));
  });

  it("seen again at the same feed on a board left as it is tell nothing new", () => {
    const power = { do: "power", feed: "mains", observed: "quiet", signs: { LED1: false } };
    const belief = (times: number) => {
      const again = Array.from({ length: times }, () => [power, { do: "unpower" }]).flat();
      const job = parseJob({ ...HEADER, log: [...provenEmpty(board), ...again] }, board);
      if (!job.ok) throw new Error(job.problem);
      const believed = beliefOf(job.value, session);
      if (!believed.ok) throw new Error(believed.problem);
      return believed.value.belief.suspects.find(({ part }) => part === "LED1")?.probability ?? 0;
    };
    // a power-up may break something: that alone moves it
    expect(Math.abs(belief(2) - belief(1))).toBeLessThan(0.2 * belief(1));
  });

  it("stand in the log by the names of their parts", () => {
    const power = {
      do: "power",
      feed: "mains",
      observed: "quiet",
      signs: { K1: false, LED1: true },
    } as const;
    expect(plain(eventWords(board, power))).toMatch(/quiet, LED1: lit, K1: no click$/);
  });

  it("of a part that the board has not are refused, with its name", () => {
    const power = { do: "power", feed: "mains", observed: "quiet", signs: { LED9: true } };
    const job = parseJob({ ...HEADER, log: [...provenEmpty(board), power] }, board);
    const folded = job.ok ? beliefOf(job.value, session) : job;
    expect(folded.ok ? "" : plain(folded.problem)).toMatch(/signs\.LED9/);
  });
});

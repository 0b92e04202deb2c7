import { describe, expect, it } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import type { Board } from "../board/board.ts";
import { parseBoard } from "../board/parse-board.ts";
import { deriveRoles } from "../board/roles.ts";
import type { Belief } from "../diagnosis/belief.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { AssessmentSession, beliefOf } from "./assess.ts";
import { parseJob } from "./parse-job.ts";

const content = SHIPPED.find(({ id }) => id === "greenhouse-fan-drive")?.board;
const board = parsedBoard();
const { bus, rails } = deriveRoles(board);
const session = new AssessmentSession();

function parsedBoard(): Board {
  const parsed = parseBoard(content);
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
}

const volts = (red: string, black: string, reading: number): JobEvent => ({
  do: "measure",
  mode: "dcv",
  red,
  black,
  reading,
});
const busReads = (reading: number) => volts(bus?.plus ?? "", bus?.minus ?? "", reading);
const railReads = (name: string, reading: number): JobEvent => {
  const rail = rails.find((one) => one.name === name);
  return volts(rail?.net ?? "", rail?.back ?? "", reading);
};

/** What is believed of a board that showed nothing on the mains and on which this was read meanwhile. */
function believed(...readings: readonly JobEvent[]): Belief {
  const log = [{ do: "power", feed: "mains", observed: "quiet" }, ...readings];
  const job = parseJob(
    { format: "faultwright-job/1", board: content, cause: "unknown", symptom: "dead", log },
    board,
  );
  if (!job.ok) throw new Error(job.problem);
  const found = beliefOf(job.value, session);
  if (!found.ok) throw new Error(found.problem);
  return found.value.belief;
}

/** Chance that a part of one of these stages is faulty: of the parts taken one by one, the largest. */
function most(belief: Belief, wanted: (ref: string) => boolean): number {
  return Math.max(
    0,
    ...belief.suspects.filter(({ part }) => wanted(part)).map(({ probability }) => probability),
  );
}

const kindOf = (ref: string) => board.parts.get(ref)?.kind;
const pinsOf = (ref: string): readonly string[] => [...(board.parts.get(ref)?.pins.values() ?? [])];
const onNet = (ref: string, net: string) => pinsOf(ref).includes(net);

describe("a board that shows nothing on the mains", () => {
  const nothingRead = believed();

  it("with no volts on its bus has its way from the mains open", () => {
    const belief = believed(busReads(0.1));
    const way = (ref: string) => ["fuse", "ntc", "ptc", "bridge", "choke"].includes(kindOf(ref) ?? "");
    expect(way(belief.suspects[0]?.part ?? "")).toBe(true);
    const supply = (ref: string) => kindOf(ref) === "switcher";
    expect(most(belief, supply)).toBeLessThan(most(nothingRead, supply));
  });

  it("with its bus right has that way whole, and its supply or what hangs on it is suspected", () => {
    const belief = believed(busReads(322));
    const way = (ref: string) => kindOf(ref) === "fuse";
    expect(most(belief, way)).toBeLessThan(0.01);
    expect(most(belief, (ref) => kindOf(ref) === "switcher")).toBeGreaterThan(
      most(nothingRead, (ref) => kindOf(ref) === "switcher"),
    );
  });

  it("with its first rail right and the second dead has lost what makes the second from the first", () => {
    const belief = believed(busReads(322), railReads("V15", 15.1), railReads("V5", 0.01));
    expect(kindOf(belief.suspects[0]?.part ?? "")).toBe("regulator");
    expect(most(belief, (ref) => kindOf(ref) === "switcher")).toBeLessThan(0.01);
  });

  it("with every rail dead on a sound bus has lost its supply or has a rail shorted, not its regulator", () => {
    const belief = believed(busReads(322), railReads("V15", 0.02), railReads("V5", 0.01));
    expect(most(belief, (ref) => kindOf(ref) === "regulator")).toBeLessThan(0.05);
    const first = belief.suspects[0]?.part ?? "";
    const v15 = rails.find(({ name }) => name === "V15");
    expect(onNet(first, v15?.net ?? "") || board.parts.get(first)?.stage === "supply").toBe(true);
    expect(most(belief, (ref) => kindOf(ref) === "fuse")).toBeLessThan(0.01);
  });

  it("believes the same whichever reading came first", () => {
    const one = believed(busReads(322), railReads("V15", 15.1), railReads("V5", 0.01));
    const other = believed(railReads("V5", 0.01), busReads(322), railReads("V15", 15.1));
    for (const { part, probability } of one.suspects.slice(0, 10))
      expect(other.suspects.find((suspect) => suspect.part === part)?.probability).toBeCloseTo(
        probability,
        6,
      );
  });
});

it("volts read on a board without power change no suspect", () => {
  const job = (log: readonly JobEvent[]) => {
    const parsed = parseJob(
      { format: "faultwright-job/1", board: content, cause: "unknown", symptom: "dead", log },
      board,
    );
    if (!parsed.ok) throw new Error(parsed.problem);
    const found = beliefOf(parsed.value, session);
    if (!found.ok) throw new Error(found.problem);
    return found.value.belief.suspects.slice(0, 5).map(({ part, probability }) => [part, probability]);
  };
  expect(job([busReads(0.3)])).toEqual(job([]));
});

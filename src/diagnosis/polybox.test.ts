/**
 * The polybox: three multipliers and two adders, the standard example of model-based diagnosis (de Kleer & Williams,
 * Artificial Intelligence 32 (1987) 97; rows D1-D3 as published in B. C. Williams, MIT 16.412J lecture, 10 Mar 2004; rows
 * D4-D12 computed from them). A broken part's output is one unknown shared by all readings that depend on it.
 */
import { expect, test } from "vitest";
import { COMMON_POINTS, COMMON_WEIGHTS, type Evidence } from "./evidence.ts";
import { posteriorCores } from "./posterior.ts";
import { scoreSet } from "./scored-set.ts";
import { makeUniverse, type Universe } from "./universe.ts";

const PARTS = ["M1", "M2", "M3", "A1", "A2"] as const;
type Net = "X" | "Y" | "Z" | "F" | "G";
type Seen = Partial<Record<Net, number>>;

/** Every part fails with probability 0.01, independently. */
function polybox(): Universe {
  const rate = PARTS.map(() => -Math.log(0.99));
  return makeUniverse({
    fault: [0, 1, 2, 3, 4],
    site: [0, 1, 2, 3, 4],
    rate,
    from: [-1, -1, -1, -1, -1],
    until: [9, 9, 9, 9, 9],
    knockOns: [],
  });
}

/** What is known of each net when the parts of `broken` may put out anything, and the seen nets are as seen. */
function consistent(broken: ReadonlySet<string>, seen: Seen): boolean {
  const x = broken.has("M1") ? seen.X : 6;
  const y = broken.has("M2") ? seen.Y : 6;
  const z = broken.has("M3") ? seen.Z : 6;
  for (const [net, value] of [
    ["X", x],
    ["Y", y],
    ["Z", z],
  ] as const)
    if (seen[net] !== undefined && value !== undefined && seen[net] !== value) return false;
  const first = broken.has("A1") || seen.F === undefined;
  const second = broken.has("A2") || seen.G === undefined;
  const yByF = x === undefined || first ? undefined : (seen.F as number) - x;
  const yByG = z === undefined || second ? undefined : (seen.G as number) - z;
  const ys = [y, yByF, yByG].filter((value) => value !== undefined);
  return ys.every((value) => value === ys[0]);
}

function evidenceOf(seen: Seen): Evidence {
  return {
    logIndex: 0,
    best: 0,
    slip: Number.NEGATIVE_INFINITY,
    logLikelihood(faults) {
      const broken = new Set(faults.map((fault) => PARTS[fault]));
      return new Float64Array(COMMON_POINTS.length).fill(
        consistent(broken, seen) ? 0 : Number.NEGATIVE_INFINITY,
      );
    },
    wouldShow: () => "",
    hears: () => true,
    audible: () => new Uint8Array(PARTS.length).fill(1),
  };
}

const LOG_WEIGHTS = Float64Array.from(COMMON_WEIGHTS, Math.log);
const ALL_SETS = Array.from({ length: 32 }, (_, bits) =>
  [0, 1, 2, 3, 4].filter((part) => bits & (1 << part)),
);

/** Posterior of every set, by scoring all 32. */
function posterior(seen: Seen): Map<string, number> {
  const universe = polybox();
  const scores = ALL_SETS.map((set) => scoreSet(universe, [evidenceOf(seen)], LOG_WEIGHTS, set).score);
  const total = scores.reduce((sum, score) => sum + Math.exp(score), 0);
  return new Map(
    ALL_SETS.map((set, i) => [set.map((part) => PARTS[part]).join("+"), Math.exp(scores[i]) / total]),
  );
}

/** Minimal consistent sets. */
function minimalDiagnoses(seen: Seen): string[] {
  const possible = ALL_SETS.filter((set) => consistent(new Set(set.map((part) => PARTS[part])), seen));
  return possible
    .filter(
      (set) =>
        !possible.some((other) => other.length < set.length && other.every((part) => set.includes(part))),
    )
    .map((set) => set.map((part) => PARTS[part]).join("+"))
    .sort();
}

const marginal = (sets: Map<string, number>, part: string): number =>
  [...sets].reduce((sum, [name, probability]) => sum + (name.split("+").includes(part) ? probability : 0), 0);

test("published (D1-D3): F = 10, G = 12 is explained by A1, M1, A2 with M2, or M2 with M3", () => {
  expect(minimalDiagnoses({ F: 10, G: 12 })).toEqual(["A1", "M1", "M2+A2", "M2+M3"]);
});

test("published (D2): the minimal conflicts are A1, M1, M2 and A1, A2, M1, M3", () => {
  const conflict = (sound: readonly number[]): boolean =>
    !consistent(new Set(PARTS.filter((_, part) => !sound.includes(part))), { F: 10, G: 12 });
  const conflicts = ALL_SETS.filter(conflict);
  const minimal = conflicts.filter(
    (set) =>
      !conflicts.some((other) => other.length < set.length && other.every((part) => set.includes(part))),
  );
  expect(
    minimal
      .map((set) =>
        set
          .map((part) => PARTS[part])
          .sort()
          .join("+"),
      )
      .sort(),
  ).toEqual(["A1+A2+M1+M3", "A1+M1+M2"]);
});

test("computed (D4): 27 of the 32 sets are consistent", () => {
  expect([...posterior({ F: 10, G: 12 }).values()].filter((probability) => probability > 0)).toHaveLength(27);
});

test("computed (D5): posterior of sets and parts with prior 0.01", () => {
  const sets = posterior({ F: 10, G: 12 });
  expect(sets.get("A1")).toBeCloseTo(0.478026, 6);
  expect(sets.get("M1")).toBeCloseTo(0.478026, 6);
  expect(sets.get("M2+A2")).toBeCloseTo(0.004829, 6);
  expect(marginal(sets, "A1")).toBeCloseTo(0.497635, 6);
  expect(marginal(sets, "M2")).toBeCloseTo(0.019609, 6);
  expect(marginal(sets, "A2")).toBeCloseTo(0.01478, 6);
});

test("computed (D6): what the next reading would show, X being the most telling", () => {
  const sets = posterior({ F: 10, G: 12 });
  const shows = (net: Net, value: number): number =>
    [...sets].reduce((sum, [name, probability]) => {
      const broken = new Set(name.split("+"));
      const others = [value - 1.5, value + 1.25].some((other) =>
        consistent(broken, { F: 10, G: 12, [net]: other }),
      );
      return sum + (!others && consistent(broken, { F: 10, G: 12, [net]: value }) ? probability : 0);
    }, 0);
  expect(shows("X", 6)).toBeCloseTo(0.502365, 6);
  expect(shows("X", 4)).toBeCloseTo(0.492561, 6);
  expect(shows("Y", 6)).toBeCloseTo(0.990097, 6);
  expect(shows("Z", 6)).toBeCloseTo(0.994926, 6);
});

test("computed (D7-D9): after X or Y has been seen too", () => {
  expect(posterior({ F: 10, G: 12, X: 6 }).get("A1")).toBeCloseTo(0.942037, 6);
  expect(minimalDiagnoses({ F: 10, G: 12, X: 6 })).toEqual(["A1", "M2+A2", "M2+M3"]);
  expect(posterior({ F: 10, G: 12, X: 4 }).get("M1")).toBeCloseTo(0.960596, 6);
  expect(minimalDiagnoses({ F: 10, G: 12, Y: 4 })).toEqual(["M2+A2", "M2+M3"]);
});

test("computed (D10-D12): other outputs", () => {
  for (const single of ["A1", "M1", "M2"]) expect(posterior({ F: 10 }).get(single)).toBeCloseTo(0.323422, 6);
  expect(posterior({ F: 10, G: 10 }).get("M2")).toBeCloseTo(0.924357, 6);
  const doubles = [...posterior({ F: 10, G: 14 })].filter(([name]) => name.split("+").length === 2);
  const likely = doubles.filter(([, probability]) => probability > 0);
  expect(likely).toHaveLength(8);
  for (const [, probability] of likely) expect(probability).toBeCloseTo(0.123434, 6);
});

test("the search finds by itself what scoring every set finds", () => {
  const limits = { expansions: 40, width: 12, size: 5 };
  const cores = posteriorCores(
    polybox(),
    [evidenceOf({ F: 10, G: 12 })],
    LOG_WEIGHTS,
    limits,
    1,
    new Uint8Array(5).fill(1),
  );
  const exact = posterior({ F: 10, G: 12 });
  for (const core of cores.slice(0, 6)) {
    const name = core.set.map((part) => PARTS[part]).join("+");
    expect(core.probability).toBeCloseTo(exact.get(name) ?? 0, 3);
  }
  expect(cores.reduce((sum, core) => sum + core.probability, 0)).toBeCloseTo(1, 12);
});

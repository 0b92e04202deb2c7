/** What becomes of an oracle board on the bench: repairs cure, power breaks, fitted parts may be bad. A function of seed and log. */
import type { CleanEvent, PowerEvent, ReplaceEvent } from "../../src/bench/event.ts";
import type { Timeline, TimelineEntry } from "../../src/bench/timeline.ts";
import type { Board, PartKind } from "../../src/board/board.ts";
import type { Fault } from "../../src/board/fault.ts";
import { faultSites } from "../../src/board/fault-sites.ts";
import { seededRandom } from "../../src/practice/seeded-random.ts";
import { pick } from "./draw.ts";
import { nameOf } from "./fault-name.ts";
import { BY_VOLTS } from "./fault-table.ts";
import { faultOhms } from "./fault-values.ts";
import { bentRates, drawRoots, type OracleBoard } from "./oracle-board.ts";
import { cascade, rolesOf, siteKey } from "./oracle-cascades.ts";
import type { SurfaceLeak } from "./oracle-deck.ts";
import { observed } from "./power-outcome.ts";
import { FITTED_BAD, JOINT_OPENS, POWER_BREAKS } from "./power-table.ts";
import { conditionOf } from "./power-truth.ts";

/** The hidden state after some entries of a log. */
export interface Hidden {
  readonly faults: readonly Fault[];
  readonly generations: ReadonlyMap<string, number>;
  readonly leaks: readonly SurfaceLeak[];
}

/** The hidden state after all entries of the timeline. */
export function hiddenAfter(oracle: OracleBoard, timeline: Timeline): Hidden {
  let hidden: Hidden = { faults: oracle.faults, generations: new Map(), leaks: oracle.leaks };
  for (const entry of timeline.entries) hidden = afterEntry(oracle, hidden, entry);
  return hidden;
}

/** Parts that power does not reach: off the board or with a pin lifted. */
export function outOfCircuit({ lifted, off }: TimelineEntry["before"]): ReadonlySet<string> {
  return new Set([...off, ...[...lifted].map((place) => place.split(".")[0] ?? "")]);
}

function afterEntry(oracle: OracleBoard, hidden: Hidden, entry: TimelineEntry): Hidden {
  const { event } = entry;
  switch (event.do) {
    case "power":
      return {
        ...hidden,
        faults: [...hidden.faults, ...Object.values(breaksAt(oracle, hidden.faults, event, entry)).flat()],
      };
    case "replace":
      return afterReplace(oracle, hidden, event, entry.logIndex);
    case "clean":
      return afterCleaning(oracle, hidden, event);
    case "resolder":
      return { ...hidden, faults: afterSolder(oracle, hidden.faults, event) };
    default:
      return hidden;
  }
}

/** What one power-up breaks, by what broke it. */
interface Breaks {
  /** the fuse, by the current that was seen to blow it */
  readonly blown: readonly Fault[];
  /** by faults that were there */
  readonly brought: readonly Fault[];
  /** by nothing else that was wrong */
  readonly fresh: readonly Fault[];
}

const NO_BREAKS: Breaks = { blown: [], brought: [], fresh: [] };

function breaksAt(
  oracle: OracleBoard,
  faults: readonly Fault[],
  event: PowerEvent,
  entry: Pick<TimelineEntry, "before" | "logIndex">,
): Breaks {
  const { file, seed, cause } = oracle;
  const off = outOfCircuit(entry.before);
  // what the mains does not reach, it does not break
  if (event.feed !== "bench" && conditionOf(oracle.board, faults, off) === "input-open") return NO_BREAKS;
  const there = faults.filter((fault) => fault.of === "nets" || !off.has(fault.part));
  const random = seededRandom(seed, `breaks ${entry.logIndex}`);
  const { byAmps, byVolts, fresh } = POWER_BREAKS[event.feed];
  const brought = cascade(file, cause, there, random, (trigger) =>
    BY_VOLTS.has(trigger) ? byVolts : byAmps,
  );
  const root = drawRoots(file, bentRates(file, cause, seed), fresh, random);
  const present = new Set(faults.map(siteKey));
  const isNew = (fault: Fault) => {
    const key = siteKey(fault);
    if (present.has(key)) return false;
    if (fault.of === "part" && (off.has(fault.part) || !oracle.board.parts.has(fault.part))) return false;
    present.add(key);
    return true;
  };
  const [broughtNow, freshNow] = [brought.filter(isNew), root.filter(isNew)];
  // what breaks at a switch-on is among what is seen then
  const seen = [
    event.observed ?? observed(oracle, [...faults, ...broughtNow, ...freshNow], event, off),
  ].flat();
  const blown: readonly Fault[] = seen.includes("fuse-blew")
    ? rolesOf(file).lineFuses.map((part) => ({ of: "part", part, junction: null, mode: "open", value: null }))
    : [];
  return { blown: blown.filter(isNew), brought: broughtNow, fresh: freshNow };
}

/** The faults by which a switch-on is seen: with what it broke, but for the fuse, which blows by what is seen. */
export function faultsUnderPower(
  oracle: OracleBoard,
  faults: readonly Fault[],
  event: PowerEvent,
  entry: Pick<TimelineEntry, "before" | "logIndex">,
): readonly Fault[] {
  const { brought, fresh } = breaksAt(oracle, faults, event, entry);
  return [...faults, ...brought, ...fresh];
}

/** Parts that the last entry, a power-up, broke with nothing else wrong: they would have died at any switch-on. */
export function diedOfThemselves(oracle: OracleBoard, timeline: Timeline): ReadonlySet<string> {
  const last = timeline.entries.at(-1);
  if (last?.event.do !== "power") return new Set();
  const before = hiddenAfter(oracle, { ...timeline, entries: timeline.entries.slice(0, -1) });
  const { fresh } = breaksAt(oracle, before.faults, last.event, last);
  return new Set(fresh.map(nameOf));
}

function afterReplace(oracle: OracleBoard, hidden: Hidden, event: ReplaceEvent, logIndex: number): Hidden {
  const kept = hidden.faults.filter((fault) => fault.of === "nets" || fault.part !== event.part);
  const generations = new Map(hidden.generations);
  generations.set(event.part, (generations.get(event.part) ?? 0) + 1);
  const random = seededRandom(oracle.seed, `fitted ${event.part} ${logIndex}`);
  const bad = (event.used === true ? FITTED_BAD.used : FITTED_BAD.new) + FITTED_BAD.wrong;
  const part = oracle.board.parts.get(event.part);
  if (part === undefined || random() >= bad) return { ...hidden, faults: kept, generations };
  const site = pick(random, faultSites(part));
  const mode = pick(random, site?.modes ?? []);
  if (site === undefined || mode === undefined) return { ...hidden, faults: kept, generations };
  const fault = { of: "part", part: part.ref, junction: site.junction, mode, value: null } as const;
  return { ...hidden, faults: [...kept, faultOhms(oracle.board, fault, random)], generations };
}

/** Does work at this part or stage, or on the whole board, reach one of the nets? */
function reaches(board: Board, event: CleanEvent, nets: readonly string[]): boolean {
  if (event.part === undefined && event.stage === undefined) return true;
  return [...board.parts.values()].some(
    (part) =>
      (part.ref === event.part || (event.stage !== undefined && part.stage === event.stage)) &&
      [...part.pins.values()].some((net) => nets.includes(net)),
  );
}

function afterCleaning(oracle: OracleBoard, hidden: Hidden, event: CleanEvent): Hidden {
  return {
    ...hidden,
    faults: hidden.faults.filter((fault) => fault.of === "part" || !reaches(oracle.file, event, fault.nets)),
    leaks: hidden.leaks.filter(({ nets }) => !reaches(oracle.file, event, nets)),
  };
}

const HEAVY: ReadonlySet<PartKind> = new Set([
  "inductor",
  "choke",
  "transformer",
  "relay",
  "link",
  "ptc",
  "ntc",
  "bridge",
  "capacitor",
]);

/** Soldering again closes the opens that are a joint. */
function afterSolder(oracle: OracleBoard, faults: readonly Fault[], event: CleanEvent): readonly Fault[] {
  return faults.filter((fault) => {
    if (fault.of === "nets" || fault.mode !== "open") return true;
    const part = oracle.board.parts.get(fault.part);
    if (part === undefined || (part.ref !== event.part && part.stage !== (event.stage ?? ""))) return true;
    const share =
      part.kind === "fuse" ? JOINT_OPENS.fuse : HEAVY.has(part.kind) ? JOINT_OPENS.heavy : JOINT_OPENS.light;
    return seededRandom(oracle.seed, `joint ${siteKey(fault)}`)() >= share;
  });
}

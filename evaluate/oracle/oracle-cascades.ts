/** What a fault brings with it on a board of the oracle: the rules of `fault-table.ts` on the parts of one board. */
import type { Board, Part } from "../../src/board/board.ts";
import type { Fault, PartFault } from "../../src/board/fault.ts";
import { faultSites } from "../../src/board/fault-sites.ts";
import { deriveRoles, type Roles } from "../../src/board/roles.ts";
import type { Random } from "../../src/practice/seeded-random.ts";
import type { Cause } from "../../src/priors/cause.ts";
import { pick } from "./draw.ts";
import { CASCADES, type CascadePlace, type CascadeRule } from "./fault-table.ts";
import { faultOhms } from "./fault-values.ts";

/** A junction that may fail. */
export interface SiteOf {
  readonly part: string;
  readonly junction: string | null;
}

const known = new WeakMap<Board, Roles>();

export function rolesOf(board: Board): Roles {
  const roles = known.get(board) ?? deriveRoles(board);
  known.set(board, roles);
  return roles;
}

/** The site of a power switch: `Q1.ce`, `IPM1.up`, `U2.ds`. */
export function switchSite(board: Board, site: string, part: string): SiteOf {
  const dot = site.indexOf(".");
  if (dot >= 0) return { part, junction: site.slice(dot + 1) };
  const kind = board.parts.get(part)?.kind;
  return { part, junction: kind === "igbt" ? "ce" : kind === "bjt" ? "ce" : "ds" };
}

function sitesOf(part: Part | undefined, junction?: string): readonly SiteOf[] {
  if (part === undefined) return [];
  return faultSites(part)
    .filter((site) => junction === undefined || site.junction === junction)
    .map((site) => ({ part: part.ref, junction: site.junction }));
}

function ofRefs(board: Board, refs: readonly string[], junction?: string): readonly SiteOf[] {
  return refs.flatMap((ref) => sitesOf(board.parts.get(ref), junction));
}

function ofKind(board: Board, kinds: readonly Part["kind"][], junction?: string): readonly SiteOf[] {
  return [...board.parts.values()]
    .filter((part) => kinds.includes(part.kind))
    .flatMap((part) => sitesOf(part, junction));
}

/** What kind of trigger a fault is, or null. */
export function triggerOf(board: Board, fault: Fault): CascadeRule["trigger"] | null {
  if (fault.of === "nets") return "net leak";
  const part = board.parts.get(fault.part);
  const roles = rolesOf(board);
  if (part === undefined) return null;
  const shorted = fault.mode === "short";
  const motor = roles.motorSwitches.some((one) => {
    const site = switchSite(board, one.site, one.part);
    return site.part === fault.part && site.junction === fault.junction;
  });
  if (shorted && motor) return "motor switch";
  // the single switch of a resonant stage stands where a boost switch does: behind fuse and bridge, a driver at its gate
  const single = [
    ...roles.boosts.map((boost) => boost.switch),
    ...roles.resonants.map((one) => one.switch.part),
  ];
  if (shorted && single.includes(fault.part)) return "boost switch";
  if (shorted && roles.switchers.some((one) => one.part === fault.part)) return "supply switch";
  if (shorted && part.kind === "varistor") return "varistor";
  if (shorted && part.kind === "bridge") return "bridge";
  if (part.kind === "module" && fault.junction === "drive") return "module drive";
  // an optocoupler of the control terminals feeds nothing back
  const feedsBack = (part.kind === "opto" || part.kind === "shuntref") && part.stage === "supply";
  if (feedsBack && fault.mode !== "leaky") return "feedback";
  if (part.kind === "capacitor" && fault.mode === "drift") return "dry capacitor";
  return null;
}

function gatesOf(board: Board, fault: PartFault, of: "series" | "clamps"): readonly SiteOf[] {
  const gates = rolesOf(board).gates.filter((gate) => gate.switch === fault.part);
  return ofRefs(
    board,
    gates.flatMap((gate) => [...gate[of]]),
  );
}

function sameLeg(board: Board, fault: PartFault): readonly SiteOf[] {
  const { motorSwitches } = rolesOf(board);
  const own = motorSwitches.find((one) => {
    const site = switchSite(board, one.site, one.part);
    return site.part === fault.part && site.junction === fault.junction;
  });
  return motorSwitches
    .filter((one) => one.phase === own?.phase && one.side !== own.side)
    .map((one) => switchSite(board, one.site, one.part));
}

/** What drives the gate of a switch: chips, optos and transistors at the gate or behind its series part; a module has its driver within. */
function driverOf(board: Board, fault: PartFault): readonly SiteOf[] {
  const gate = rolesOf(board).gates.find((one) => one.switch === fault.part);
  if (gate === undefined) return ofRefs(board, [fault.part], "drive");
  const series = gate.series.flatMap((ref) => [...(board.parts.get(ref)?.pins.values() ?? [])]);
  const near = new Set([gate.net, ...series].filter((net) => net !== board.zero));
  return [...board.parts.values()]
    .filter(({ ref, kind, pins }) => {
      const drives = kind === "ic" || kind === "opto" || kind === "bjt";
      return drives && ref !== fault.part && [...pins.values()].some((net) => near.has(net));
    })
    .flatMap((part) => sitesOf(part));
}

const FEED_OHMS = 47;

/** Sites that a rule's victim stands for, given the fault that triggers it. */
export function victims(board: Board, fault: Fault, place: CascadePlace): readonly SiteOf[] {
  const roles = rolesOf(board);
  const parts = [...board.parts.values()];
  switch (place) {
    case "line fuse":
      return ofRefs(board, roles.lineFuses);
    case "bridge":
      return ofRefs(board, roles.bridges);
    case "supply switch":
      return ofRefs(
        board,
        roles.switchers.map((one) => one.part),
        "ds",
      );
    case "varistor":
      return ofKind(board, ["varistor"]);
    case "same leg":
      return fault.of === "part" ? sameLeg(board, fault) : [];
    case "gate series":
      return fault.of === "part" ? gatesOf(board, fault, "series") : [];
    case "gate clamp":
      return fault.of === "part" ? gatesOf(board, fault, "clamps") : [];
    case "driver":
      return fault.of === "part" ? driverOf(board, fault) : [];
    case "shunt":
      return ofRefs(board, roles.shunts);
    case "feed resistor":
      return parts
        .filter(
          (part) =>
            part.kind === "resistor" && part.stage === "supply" && (part.value.ohms ?? 1e6) <= FEED_OHMS,
        )
        .flatMap((part) => sitesOf(part));
    case "feedback":
      return ofKind(board, ["opto", "shuntref"]);
    case "rail capacitor":
      return ofRefs(
        board,
        roles.rails.flatMap((rail) => [...rail.bulk]),
      );
    case "regulator":
      return ofKind(board, ["regulator"]);
    case "logic chip":
      return ofKind(board, ["ic"], "supply");
    case "controller":
      return ofKind(board, ["controller"], "supply");
    case "motor switch":
      return roles.motorSwitches.map((one) => switchSite(board, one.site, one.part));
    case "boost switch":
      return ofRefs(
        board,
        roles.boosts.map((boost) => boost.switch),
        "ce",
      );
    case "sense chain":
      return parts
        .filter((part) => part.kind === "resistor" && (part.value.ohms ?? 0) >= 100_000)
        .flatMap((part) => sitesOf(part));
    case "relay coil":
      return ofKind(board, ["relay"], "coil");
    case "any electrolytic":
      return parts
        .filter((part) => part.kind === "capacitor" && (part.value.farads ?? 0) >= 4.7e-6)
        .flatMap((part) => sitesOf(part));
  }
}

/** Two layers deep: what a victim brings in its turn. */
const LAYERS = 2;

/** Share of a rule's chance that one switch-on has. */
type ScaleOf = (trigger: CascadeRule["trigger"]) => number;

/** Faults that these have brought with them when a board comes in, or bring at one switch-on (`scale`: a share of them); junctions that have failed already fail no more. */
export function cascade(
  board: Board,
  cause: Cause,
  roots: readonly Fault[],
  random: Random,
  scale: ScaleOf | null = null,
): readonly Fault[] {
  const taken = new Set(roots.map(siteKey));
  const found: Fault[] = [];
  let layer = roots;
  for (let depth = 0; depth < LAYERS && layer.length > 0; depth++) {
    const next = layer.flatMap((fault) => broughtBy(board, cause, fault, taken, random, scale));
    found.push(...next);
    layer = next;
  }
  return found;
}

function broughtBy(
  board: Board,
  cause: Cause,
  fault: Fault,
  taken: Set<string>,
  random: Random,
  scale: ScaleOf | null,
): readonly Fault[] {
  const trigger = triggerOf(board, fault);
  return CASCADES.flatMap((rule): Fault[] => {
    if (rule.trigger !== trigger || (rule.cause !== undefined && rule.cause !== cause)) return [];
    if (scale !== null && rule.slow) return [];
    const free = victims(board, fault, rule.victim).filter(
      (site) =>
        !taken.has(`${site.part}.${site.junction ?? ""}`) &&
        (fault.of === "nets" || site.part !== fault.part || site.junction !== fault.junction) &&
        (rule.mode !== "drift" || canDrift(board, site)),
    );
    const hit = random() < rule.chance * (scale === null ? 1 : scale(rule.trigger));
    const site = pick(random, free);
    if (!hit || site === undefined) return [];
    taken.add(`${site.part}.${site.junction ?? ""}`);
    return [faultOhms(board, { of: "part", ...site, mode: rule.mode, value: null }, random)];
  });
}

function canDrift(board: Board, site: SiteOf): boolean {
  const part = board.parts.get(site.part);
  return (
    part !== undefined &&
    faultSites(part).some((one) => one.junction === site.junction && one.drifts !== null)
  );
}

/** Two faults with the same key cannot be there together. */
export function siteKey(fault: Fault): string {
  return fault.of === "nets" ? fault.nets.join("~") : `${fault.part}.${fault.junction ?? ""}`;
}

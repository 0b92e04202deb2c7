/** What does not change of a board while its faults do: roles, the nets that carry power, the plans of its small supplies. */
import type { Board, Part } from "../board/board.ts";
import { throughPairs } from "../board/net-groups.ts";
import { deriveRoles, type Roles } from "../board/roles.ts";
import { type BusSense, busSenses } from "./bus-sense.ts";
import { PATH_MODEL } from "./live-models.ts";
import { type SupplyPlan, supplyPlans } from "./supply-plan.ts";

export interface LiveView {
  readonly board: Board;
  readonly roles: Roles;
  /** nets on mains and bus that power flows through */
  readonly powerNets: ReadonlySet<string>;
  readonly lineNets: ReadonlySet<string>;
  readonly supplies: readonly SupplyPlan[];
  /** relays whose contact lies across an inrush part: ref -> that part */
  readonly bypasses: ReadonlyMap<string, string>;
  readonly senses: readonly BusSense[];
}

/** Does the part carry the board's power between its pins? */
export function carriesPower(part: Part): boolean {
  const limit = (part.value.ohms ?? Number.MAX_VALUE) <= PATH_MODEL.mostSeriesOhms;
  if (part.kind === "resistor" || part.kind === "ntc" || part.kind === "ptc") return limit;
  return ["fuse", "link", "inductor", "choke", "relay", "transformer"].includes(part.kind);
}

function joined(part: Part): readonly (readonly [string, string])[] {
  if (part.kind === "bridge") {
    const pin = (name: string) => part.pins.get(name);
    return ["ac1", "ac2", "ac3"].flatMap((ac) =>
      ["plus", "minus"].flatMap((pole) => {
        const [one, far] = [pin(ac), pin(pole)];
        return one === undefined || far === undefined ? [] : [[one, far] as const];
      }),
    );
  }
  if (part.kind === "diode" && part.value.type !== "signal")
    return [[part.pins.get("a") ?? "", part.pins.get("k") ?? ""]];
  return carriesPower(part) ? throughPairs(part) : [];
}

/** From the terminals and the bus through everything that carries power, up to the rails. */
function powerNets(board: Board, roles: Roles): ReadonlySet<string> {
  const rails = new Set(board.rails.map((rail) => rail.net));
  const found = new Set<string>(board.supply.at);
  if (roles.bus !== null) found.add(roles.bus.plus).add(roles.bus.minus);
  const pairs = [...board.parts.values()].flatMap(joined);
  for (let before = -1; before < found.size; ) {
    before = found.size;
    for (const [one, far] of pairs) {
      if (found.has(one) && !rails.has(far)) found.add(far);
      if (found.has(far) && !rails.has(one)) found.add(one);
    }
  }
  return found;
}

function bypasses(board: Board, roles: Roles): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  for (const relay of board.parts.values()) {
    if (relay.kind !== "relay") continue;
    const ends = [relay.pins.get("com") ?? "", relay.pins.get("no") ?? ""];
    const limiter = roles.inrush.find((ref) => {
      const nets = [...(board.parts.get(ref)?.pins.values() ?? [])];
      return ends.every((end) => nets.includes(end));
    });
    if (limiter !== undefined) found.set(relay.ref, limiter);
  }
  return found;
}

const views = new WeakMap<Board, LiveView>();

export function liveView(board: Board): LiveView {
  const known = views.get(board);
  if (known !== undefined) return known;
  const roles = deriveRoles(board);
  const view: LiveView = {
    board,
    roles,
    powerNets: powerNets(board, roles),
    lineNets: new Set(roles.line),
    supplies: supplyPlans(board, roles),
    bypasses: bypasses(board, roles),
    senses: busSenses(board, roles.bus),
  };
  views.set(board, view);
  return view;
}

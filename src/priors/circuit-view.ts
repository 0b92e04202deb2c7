import type { Board, Part } from "../board/board.ts";
import { type PowerSwitch as BoardSwitch, powerSwitches } from "../board/power-switches.ts";
import { deriveRoles, type Roles } from "../board/roles.ts";
import { liveView } from "../live/live-view.ts";
import { mainsPoles } from "./mains-poles.ts";
import { type StageGroup, stageGroups } from "./stage-groups.ts";

/** A power switch with the site of its own fault (`Q1.ce`, `M1.up`). */
export interface SwitchSite extends BoardSwitch {
  readonly fault: string;
}

/** The board as the knock-on rules see it: what the circuit says each part does, and the stage it counts under. */
export interface CircuitView {
  readonly board: Board;
  readonly roles: Roles;
  readonly groupOf: ReadonlyMap<string, StageGroup>;
  readonly motorSwitches: readonly SwitchSite[];
  /** the upper and the lower switch of each leg */
  readonly legs: readonly (readonly [SwitchSite, SwitchSite])[];
  /** single switches that work into a resonant coil */
  readonly resonantSwitches: readonly SwitchSite[];
  /** what delivers the board's power: motor and resonant switches */
  readonly workingSwitches: readonly SwitchSite[];
  /** boost, brake and resonant switches: a short of one loads the bus by itself */
  readonly otherSwitches: readonly SwitchSite[];
  /** brake switches, each with the resistor it puts across the bus; null where none is connected */
  readonly choppers: readonly { readonly found: SwitchSite; readonly resistor: Part | null }[];
  /** bus capacitors that stand in series two by two */
  readonly seriesPairs: readonly (readonly [Part, Part])[];
  /** which wire of the mains a net of the filter is on, as an index of the supply's places */
  readonly poleOf: ReadonlyMap<string, number>;
  /** the switch of the small supply */
  readonly supplySwitches: readonly SwitchSite[];
  readonly lineFuses: readonly Part[];
  readonly inrushLimiters: readonly Part[];
  on(net: string): readonly Part[];
  inGroups(...groups: readonly StageGroup[]): readonly Part[];
}

/** A limiter of this many ohms cold holds a short below what opens a fuse of 10 A for the moment that counts. */
const LIMITING_OHMS = 20;

function isLimiting(part: Part): boolean {
  return part.kind === "ptc" || (part.kind === "resistor" && (part.value.ohms ?? 47) >= LIMITING_OHMS);
}

/**
 * Does a PTC or resistor stand in the way of a short behind the rectifier? An NTC does not count: it is a few ohms, and less
 * once warm. Common practice; the ohms `from memory`.
 */
export function limitsShorts(view: CircuitView): boolean {
  return view.inrushLimiters.some(isLimiting);
}

/** Does it stand in the line, where a shorted bridge draws through it too? A charge resistor between bridge and bus does not. */
export function limitsBridge(view: CircuitView): boolean {
  return view.inrushLimiters.some(
    (part) => isLimiting(part) && netsOf(part).every((net) => view.poleOf.has(net)),
  );
}

/** Do the nets lie on two wires of the mains, so that a short between them is one of the line? */
export function acrossMains(view: CircuitView, [one, other]: readonly string[]): boolean {
  const poles = [view.poleOf.get(one ?? ""), view.poleOf.get(other ?? "")];
  return !poles.includes(undefined) && poles[0] !== poles[1];
}

/** Does the swing of a small supply without a chip come through this part? */
export function keepsSwinging({ board }: CircuitView, { ref }: Part): boolean {
  return liveView(board).supplies.some(({ discrete, own }) => discrete !== null && own?.series.includes(ref));
}

/** Nets of a part, without repeats. */
export function netsOf(part: Part): readonly string[] {
  return [...new Set(part.pins.values())];
}

/** Does the part join these two nets? */
export function joins(part: Part, a: string, b: string): boolean {
  const nets = netsOf(part);
  return nets.includes(a) && nets.includes(b);
}

function siteOf(board: Board, one: BoardSwitch): SwitchSite {
  if (one.gate === null) return { ...one, fault: one.site };
  return { ...one, fault: `${one.part}.${board.parts.get(one.part)?.kind === "igbt" ? "ce" : "ds"}` };
}

/** Switches that work neither for the motor nor for the small supply: boost, brake, resonant. */
function otherSwitches(board: Board, roles: Roles, groupOf: ReadonlyMap<string, StageGroup>): SwitchSite[] {
  const motor = new Set(roles.motorSwitches.map((one) => one.part));
  const known = new Set([
    ...roles.boosts.map((boost) => boost.switch),
    ...roles.resonants.map((one) => one.switch.part),
  ]);
  return powerSwitches(board)
    .filter((one) => one.gate !== null && !motor.has(one.part))
    .filter((one) => known.has(one.part) || ["pfc", "chopper"].includes(groupOf.get(one.part) ?? ""))
    .map((one) => siteOf(board, one));
}

/** Brake switches: of the stage's name, not a boost. */
function choppers(
  board: Board,
  roles: Roles,
  groupOf: ReadonlyMap<string, StageGroup>,
  others: readonly SwitchSite[],
): CircuitView["choppers"] {
  const plus = roles.bus?.plus ?? "";
  return others
    .filter((found) => groupOf.get(found.part) === "chopper")
    .map((found) => ({
      found,
      resistor:
        [...board.parts.values()].find(
          (part) => part.kind === "resistor" && joins(part, found.high, plus) && found.high !== plus,
        ) ?? null,
    }));
}

/** Pairs of bus capacitors with a net of their own between them. */
function seriesPairs(board: Board, roles: Roles): (readonly [Part, Part])[] {
  const { bus } = roles;
  if (bus === null) return [];
  const capacitors = roles.busCapacitors.flatMap((ref) => board.parts.get(ref) ?? []);
  return capacitors
    .filter((upper) => upper.pins.get("plus") === bus.plus && upper.pins.get("minus") !== bus.minus)
    .flatMap((upper) =>
      capacitors
        .filter(
          (lower) =>
            lower.pins.get("plus") === upper.pins.get("minus") && lower.pins.get("minus") === bus.minus,
        )
        .map((lower) => [upper, lower] as const),
    );
}

/** The switcher chip, or the transistor that works into a transformer. */
function supplySwitches(board: Board, roles: Roles, taken: ReadonlySet<string>): SwitchSite[] {
  const windings = new Set(
    [...board.parts.values()].filter((part) => part.kind === "transformer").flatMap(netsOf),
  );
  const chips = roles.switchers.flatMap(({ part }): SwitchSite[] => {
    const pins = board.parts.get(part)?.pins;
    if (pins === undefined) return [];
    return [
      {
        site: part,
        part,
        fault: `${part}.ds`,
        high: pins.get("d") ?? "",
        low: pins.get("s") ?? "",
        gate: null,
      },
    ];
  });
  const transistors = powerSwitches(board)
    .filter((one) => one.gate !== null && !taken.has(one.part) && windings.has(one.high))
    .map((one) => siteOf(board, one));
  const known = new Set(transistors.map(({ part }) => part));
  // the power switches of a board are those that bear its bus by a gate; a bipolar one starts and swings by itself
  const swinging = liveView(board).supplies.flatMap((plan): SwitchSite[] => {
    const { switcher: part, discrete, through, high, back } = plan;
    if (discrete === null || known.has(part)) return [];
    const pin = board.parts.get(part)?.pins.get(high) ?? "";
    return [{ site: part, part, fault: `${part}.${through}`, high: pin, low: back, gate: null }];
  });
  return [...chips, ...transistors, ...swinging];
}

function legsOf(board: Board, roles: Roles): (readonly [SwitchSite, SwitchSite])[] {
  const [uppers, lowers] = (["upper", "lower"] as const).map((side) =>
    roles.motorSwitches.filter((one) => one.side === side),
  );
  return (uppers ?? []).flatMap((upper) =>
    (lowers ?? [])
      .filter((lower) => lower.phase === upper.phase)
      .map((lower) => [siteOf(board, upper), siteOf(board, lower)] as const),
  );
}

/** Derives the view; the order of everything follows the board file. */
export function circuitView(board: Board): CircuitView {
  const roles = deriveRoles(board);
  const parts = [...board.parts.values()];
  const groupOf = stageGroups(board, roles);
  const byNet = new Map<string, Part[]>();
  for (const part of parts) for (const net of netsOf(part)) byNet.set(net, [...(byNet.get(net) ?? []), part]);
  const others = otherSwitches(board, roles, groupOf);
  const motor = roles.motorSwitches.map((one) => siteOf(board, one));
  const resonant = roles.resonants.map((one) => siteOf(board, one.switch));
  const taken = new Set([...roles.motorSwitches, ...others].map((one) => one.part));
  const known = (refs: readonly string[]): Part[] => parts.filter((part) => refs.includes(part.ref));
  return {
    board,
    roles,
    groupOf,
    motorSwitches: motor,
    resonantSwitches: resonant,
    workingSwitches: [...motor, ...resonant],
    legs: legsOf(board, roles),
    otherSwitches: others,
    choppers: choppers(board, roles, groupOf, others),
    seriesPairs: seriesPairs(board, roles),
    poleOf: mainsPoles(board, groupOf),
    supplySwitches: supplySwitches(board, roles, taken),
    lineFuses: known(roles.lineFuses).filter((part) => groupOf.get(part.ref) !== "supply"),
    inrushLimiters: known(roles.inrush),
    on: (net) => byNet.get(net) ?? [],
    inGroups: (...groups) =>
      parts.filter((part) => {
        const own = groupOf.get(part.ref);
        return own !== undefined && groups.includes(own);
      }),
  };
}

const views = new WeakMap<Board, CircuitView>();

/** The board's view, derived once a board. */
export function viewOf(board: Board): CircuitView {
  const known = views.get(board);
  if (known !== undefined) return known;
  const view = circuitView(board);
  views.set(board, view);
  return view;
}

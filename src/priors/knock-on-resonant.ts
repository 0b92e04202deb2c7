import type { Part } from "../board/board.ts";
import { said } from "../messages/said.ts";
import { type CircuitView, netsOf } from "./circuit-view.ts";
import {
  every,
  type Failing,
  type KnockOnRule,
  type Link,
  ofKind,
  rule,
  short,
  shortsOf,
} from "./knock-on-rule.ts";

const known = (view: CircuitView, refs: readonly string[]): Part[] =>
  refs.flatMap((ref) => view.board.parts.get(ref) ?? []);

/** Lost capacitance, in part or whole. */
const weak = (parts: readonly Part[]): Failing[] =>
  parts.flatMap(({ ref }): Failing[] => [
    { site: ref, mode: "drift" },
    { site: ref, mode: "open" },
  ]);

/** What `of` names of each resonant switch, each to a short of that switch. */
function killSwitch(
  view: CircuitView,
  of: (one: CircuitView["roles"]["resonants"][number]) => readonly Failing[],
): Link[] {
  return view.roles.resonants.flatMap((one, at) => {
    const found = view.resonantSwitches[at];
    return found === undefined ? [] : every(of(one), [short(found.fault)]);
  });
}

/** Electrolytics of the rail that the transistors at a gate are fed from. */
function driveRailBulk(view: CircuitView, gateNet: string): Part[] {
  const gate = view.roles.gates.find((one) => one.net === gateNet);
  const beyond = known(view, gate?.series ?? []).flatMap(netsOf);
  const drivers = beyond.flatMap((net) => ofKind(view.on(net), "bjt"));
  const fed = new Set(drivers.flatMap(netsOf));
  return view.roles.rails.filter((rail) => fed.has(rail.net)).flatMap((rail) => known(view, rail.bulk));
}

/**
 * One switch that works into a resonant coil (induction hobs). That a weak resonant or bus capacitor, a drifted resistor of the
 * sensing chains and a low drive rail each kill the switch, and that the bridge goes with it, is in published repair texts (weak
 * sources); the strengths are judged `from memory`.
 */
export const RESONANT_RULES: readonly KnockOnRule[] = [
  rule(
    "weak-tank-kills-switch",
    0.15,
    said`with less resonant or bus capacitance the switch sees more volts than it stands`,
    (view) => killSwitch(view, (one) => weak(known(view, [...one.capacitors, ...one.busCapacitors]))),
  ),
  rule(
    "shorted-tank-kills-switch",
    0.5,
    said`a shorted coil or resonant capacitor puts the bus across the switch at its first pulse`,
    (view) => killSwitch(view, (one) => shortsOf(known(view, [one.coil, ...one.capacitors]))),
  ),
  rule(
    "sensing-kills-switch",
    0.15,
    said`a drifted or open chain from the coil turns the switch on at the wrong moment`,
    (view) => killSwitch(view, (one) => weak(known(view, one.sensing))),
  ),
  rule(
    "low-drive-rail-kills-switch",
    0.12,
    said`a dry capacitor lets the drive rail sag: the switch runs linear`,
    (view) => killSwitch(view, (one) => weak(driveRailBulk(view, one.switch.gate ?? ""))),
  ),
  rule(
    "resonant-switch-takes-bridge",
    0.1,
    said`no limiter stands before it: the shorted switch takes bridge junctions`,
    (view) =>
      every(
        view.resonantSwitches.map((found) => short(found.fault)),
        shortsOf(ofKind(view.inGroups("rectifier"), "bridge")),
      ),
  ),
];

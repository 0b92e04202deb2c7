import type { Part } from "../board/board.ts";
import { said } from "../messages/said.ts";
import { type CircuitView, limitsBridge, limitsShorts, netsOf } from "./circuit-view.ts";
import {
  every,
  type Failing,
  type KnockOnRule,
  ofKind,
  open,
  opensOf,
  pair,
  rule,
  short,
  shortsOf,
} from "./knock-on-rule.ts";

/** Capacitors across what comes out of the bridge; one of a series pair alone is no short of it. */
function acrossBus(view: CircuitView): Part[] {
  const inPair = new Set(view.seriesPairs.flat());
  return view
    .inGroups("bus", "rectifier", "pfc")
    .filter((part) => part.kind === "capacitor" && !inPair.has(part));
}

/** Is the limiter between bridge and bus, so that a short before it draws all that the line gives? */
const limitsBehindBridge = (view: CircuitView): boolean => limitsShorts(view) && !limitsBridge(view);

/** A capacitor before such a limiter. */
function aheadOfLimiter(view: CircuitView): Part[] {
  if (!limitsBehindBridge(view)) return [];
  return acrossBus(view).filter((part) => !netsOf(part).includes(view.roles.bus?.plus ?? ""));
}

/** Shorts that draw the line's current through the fuse as soon as power is on. A brake switch draws through its resistor. */
function busShorts(view: CircuitView): Failing[] {
  const brakes = new Set(view.choppers.map(({ found }) => found));
  const others = view.otherSwitches.filter((found) => !brakes.has(found));
  return [...shortsOf(acrossBus(view)), ...others.map((found) => short(found.fault))];
}

/** Those of them whose current a limiter would carry. */
function behindLimiter(view: CircuitView): Failing[] {
  const ahead = new Set(aheadOfLimiter(view).map((part) => part.ref));
  return busShorts(view).filter(({ site }) => !ahead.has(site));
}

/** Brake switches that put a resistor across the bus when they short. */
const braking = (view: CircuitView): Failing[] =>
  view.choppers.filter(({ resistor }) => resistor !== null).map(({ found }) => short(found.fault));

const bridges = (view: CircuitView): Part[] =>
  view
    .inGroups("rectifier", "input")
    .filter((part) => part.kind === "bridge" || (part.kind === "diode" && part.value.type !== "signal"));

const shunts = (view: CircuitView): Part[] =>
  view.roles.shunts.flatMap((ref) => view.board.parts.get(ref) ?? []);

/** The shunts that a leg's current goes through first: its own, or the one that all legs share; all where none hangs on its low end. */
function shuntsUnder(view: CircuitView, low: string): Part[] {
  const own = shunts(view).filter((part) => netsOf(part).includes(low));
  return own.length > 0 ? own : shunts(view);
}

/** Shorts at the bridge itself, or at its pins before a limiter. */
const bridgeShorts = (view: CircuitView): Failing[] => [
  ...shortsOf(bridges(view)),
  ...shortsOf(aheadOfLimiter(view)),
];

/** The fuses in the wires of the mains that a part hangs on: one from neutral to earth opens none of the line's. */
function fusesOf(view: CircuitView, part: Part): Part[] {
  const wires = new Set(netsOf(part).flatMap((net) => view.poleOf.get(net) ?? []));
  return view.lineFuses.filter((fuse) => netsOf(fuse).some((net) => wires.has(view.poleOf.get(net) ?? -1)));
}

/** With a PTC or resistor in the path a short draws too little to be sure of the fuse. */
const LIMITED_TIMES = 0.3;
/** A PTC gets hot and holds a short back for as long as it lasts (common practice: hot PTC and no bus); few crack at switch-on. From memory. */
const PTC_STANDS = 0.25;

/** Power path: what a short on the line or bus takes with it. */
export const POWER_RULES: readonly KnockOnRule[] = [
  rule("leg-shoots-through", 0.9, said`a shorted switch shorts its partner at the next gate pulse`, (view) =>
    view.legs.flatMap(([upper, lower]) => [
      pair(short(upper.fault), short(lower.fault)),
      pair(short(lower.fault), short(upper.fault)),
    ]),
  ),
  rule(
    "module-takes-its-legs",
    0.05,
    said`mostly one leg of a module goes short; it may take another in the same case`,
    (view) =>
      view.motorSwitches.flatMap((one) =>
        view.motorSwitches
          .filter((other) => other.part === one.part && other.site !== one.site)
          .map((other) => pair(short(one.fault), short(other.fault))),
      ),
  ),
  rule(
    "short-opens-fuse",
    1.2,
    said`a short behind the rectifier opens the line fuse unless a limiter stood in its path`,
    (view) => [
      ...every(behindLimiter(view), opensOf(view.lineFuses), limitsShorts(view) ? LIMITED_TIMES : 1),
      ...every(bridgeShorts(view), opensOf(view.lineFuses), limitsBridge(view) ? LIMITED_TIMES : 1),
      ...every(
        view.motorSwitches.map((found) => short(found.fault)),
        opensOf(view.lineFuses),
        0.6,
      ),
    ],
  ),
  rule("varistor-opens-fuse", 2, said`a varistor that shorts opens the fuse before it`, (view) =>
    ofKind(view.inGroups("input"), "varistor").flatMap((part) =>
      every(shortsOf([part]), opensOf(fusesOf(view, part))),
    ),
  ),
  rule(
    "surge-past-varistor",
    0.12,
    said`what shorted the varistor also reached the bridge and the small supply`,
    (view) =>
      every(shortsOf(ofKind(view.inGroups("input"), "varistor")), [
        ...shortsOf(bridges(view)),
        ...view.supplySwitches.map((found) => short(found.fault)),
      ]),
  ),
  rule("short-takes-bridge", 0.04, said`fault current takes a bridge junction with it`, (view) =>
    every(
      [...busShorts(view), ...view.motorSwitches.map((found) => short(found.fault))],
      shortsOf(bridges(view)),
      limitsShorts(view) ? LIMITED_TIMES : 1,
    ),
  ),
  rule("short-opens-limiter", 0.2, said`a steady short overheats the inrush limiter`, (view) =>
    view.inrushLimiters.flatMap((limiter) =>
      every(
        [
          ...behindLimiter(view),
          ...braking(view),
          ...(limitsBehindBridge(view) ? [] : bridgeShorts(view)),
          ...view.motorSwitches.map((found) => short(found.fault)),
        ],
        opensOf([limiter]),
        limiter.kind === "ptc" ? PTC_STANDS : 1,
      ),
    ),
  ),
  rule("relay-never-closed", 0.25, said`the board ran through its inrush limiter`, (view) => {
    const relays = ofKind(view.inGroups("inrush"), "relay");
    return every(
      relays.flatMap((part) => [open(`${part.ref}.coil`), open(`${part.ref}.contact`)]),
      opensOf(view.inrushLimiters),
    );
  }),
  rule("leg-cracks-shunt", 0.35, said`the current of a shorted leg cracks the shunt under it`, (view) =>
    view.legs.flatMap(([upper, lower]) => {
      const under = shuntsUnder(view, lower.low);
      return every([short(upper.fault), short(lower.fault)], opensOf(under), 1 / Math.max(1, under.length));
    }),
  ),
  rule("motor-kills-leg", 0.15, said`a shorted motor shorts a leg`, (view) =>
    every(
      shortsOf([...view.board.parts.values()].filter((part) => part.kind === "motor")),
      view.motorSwitches.map((found) => short(found.fault)),
    ),
  ),
  rule("weak-bus", 0.02, said`ripple of a dry bus capacitor stresses the switches`, (view) =>
    every(
      view
        .inGroups("bus")
        .filter((part) => part.kind === "capacitor")
        .map((part): Failing => ({ site: part.ref, mode: "drift" })),
      view.workingSwitches.map((found) => short(found.fault)),
    ),
  ),
  rule(
    "series-partner",
    0.6,
    said`a shorted capacitor of a series pair leaves all the voltage to its partner`,
    (view) =>
      view.seriesPairs.flatMap(([upper, lower]) => [
        pair(short(upper.ref), short(lower.ref)),
        pair(short(lower.ref), short(upper.ref)),
      ]),
  ),
  rule("brake-burns-resistor", 0.3, said`a shorted brake switch leaves its resistor across the bus`, (view) =>
    view.choppers.flatMap(({ found, resistor }) =>
      resistor === null ? [] : [pair(short(found.fault), open(resistor.ref))],
    ),
  ),
];

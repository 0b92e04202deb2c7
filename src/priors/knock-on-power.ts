import type { Part } from "../board/board.ts";
import { type CircuitView, limitsShorts } from "./circuit-view.ts";
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

/** Shorts that draw the line's current through the fuse as soon as power is on. */
function busShorts(view: CircuitView): Failing[] {
  const caps = view.inGroups("bus", "rectifier", "pfc").filter((part) => part.kind === "capacitor");
  return [...shortsOf(caps), ...view.otherSwitches.map((found) => short(found.fault))];
}

const bridges = (view: CircuitView): Part[] =>
  view
    .inGroups("rectifier", "input")
    .filter((part) => part.kind === "bridge" || (part.kind === "diode" && part.value.type !== "signal"));

const shunts = (view: CircuitView): Part[] =>
  view.roles.shunts.flatMap((ref) => view.board.parts.get(ref) ?? []);

/** With a PTC or resistor in the path a short draws too little to be sure of the fuse. */
const fuseTimes = (view: CircuitView): number => (limitsShorts(view) ? 0.3 : 1);

/** Power path: what a short on the line or bus takes with it. */
export const POWER_RULES: readonly KnockOnRule[] = [
  rule("leg-shoots-through", 0.9, "a shorted switch shorts its partner at the next gate pulse", (view) =>
    view.legs.flatMap(([upper, lower]) => [
      pair(short(upper.fault), short(lower.fault)),
      pair(short(lower.fault), short(upper.fault)),
    ]),
  ),
  rule(
    "module-takes-its-legs",
    0.3,
    "what shorts one leg of a module mostly takes others in the same case",
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
    "a short behind the rectifier opens the line fuse unless a limiter stood in its path",
    (view) => [
      ...every([...busShorts(view), ...shortsOf(bridges(view))], opensOf(view.lineFuses), fuseTimes(view)),
      ...every(
        view.motorSwitches.map((found) => short(found.fault)),
        opensOf(view.lineFuses),
        0.6,
      ),
    ],
  ),
  rule("varistor-opens-fuse", 2, "a varistor that shorts opens the fuse before it", (view) =>
    every(shortsOf(ofKind(view.inGroups("input"), "varistor")), opensOf(view.lineFuses)),
  ),
  rule(
    "surge-past-varistor",
    0.12,
    "what shorted the varistor also reached the bridge and the small supply",
    (view) =>
      every(shortsOf(ofKind(view.inGroups("input"), "varistor")), [
        ...shortsOf(bridges(view)),
        ...view.supplySwitches.map((found) => short(found.fault)),
      ]),
  ),
  rule("short-takes-bridge", 0.04, "fault current takes a bridge junction with it", (view) =>
    every(
      [...busShorts(view), ...view.motorSwitches.map((found) => short(found.fault))],
      shortsOf(bridges(view)),
    ),
  ),
  rule("short-opens-limiter", 0.2, "a steady short overheats the inrush limiter", (view) =>
    every(
      [
        ...busShorts(view),
        ...shortsOf(bridges(view)),
        ...view.motorSwitches.map((found) => short(found.fault)),
      ],
      opensOf(view.inrushLimiters),
    ),
  ),
  rule("relay-never-closed", 0.25, "the board ran through its inrush limiter", (view) => {
    const relays = ofKind(view.inGroups("inrush"), "relay");
    return every(
      relays.flatMap((part) => [open(`${part.ref}.coil`), open(`${part.ref}.contact`)]),
      opensOf(view.inrushLimiters),
    );
  }),
  rule("leg-cracks-shunt", 0.35, "the current of a shorted leg cracks the shunt under it", (view) =>
    every(
      view.motorSwitches.map((found) => short(found.fault)),
      opensOf(shunts(view)),
      1 / Math.max(1, shunts(view).length),
    ),
  ),
  rule("motor-kills-leg", 0.15, "a shorted motor shorts a leg", (view) =>
    every(
      shortsOf([...view.board.parts.values()].filter((part) => part.kind === "motor")),
      view.motorSwitches.map((found) => short(found.fault)),
    ),
  ),
  rule("weak-bus", 0.02, "ripple of a dry bus capacitor stresses the switches", (view) =>
    every(
      view
        .inGroups("bus")
        .filter((part) => part.kind === "capacitor")
        .map((part): Failing => ({ site: part.ref, mode: "drift" })),
      view.workingSwitches.map((found) => short(found.fault)),
    ),
  ),
];

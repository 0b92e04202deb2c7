import type { Part } from "../board/board.ts";
import { type CircuitView, netsOf } from "./circuit-view.ts";
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
} from "./knock-on-rule.ts";

/** Chips, controllers, modules and clamps fed by a net. */
function fedBy(view: CircuitView, net: string): Failing[] {
  return view.on(net).flatMap((part): Failing[] => {
    if (part.kind === "controller" && part.pins.get("vdd") === net) return [short(`${part.ref}.supply`)];
    if (part.kind === "ic" && part.pins.get("vcc") === net) return [short(`${part.ref}.supply`)];
    if (part.kind === "module" && part.pins.get("vcc") === net) return [short(`${part.ref}.drive`)];
    if (part.kind === "zener" && part.pins.get("k") === net) return [short(part.ref)];
    if (part.kind === "regulator" && part.pins.get("in") === net) return [short(`${part.ref}.outgnd`)];
    return [];
  });
}

const feedbackParts = (view: CircuitView): Failing[] => {
  const parts = view.inGroups("supply", "rail");
  return [
    ...ofKind(parts, "opto").flatMap((part) => [open(`${part.ref}.led`), open(`${part.ref}.out`)]),
    ...ofKind(parts, "shuntref").map((part) => open(`${part.ref}.ka`)),
  ];
};

/** Parts between the bus and the small supply's switch that open when it shorts. */
function supplyFuses(view: CircuitView): Part[] {
  return view
    .inGroups("supply")
    .filter((part) => part.kind === "fuse" || (part.kind === "resistor" && (part.value.ohms ?? 100) <= 47));
}

/** The small supply and its rails. */
export const SUPPLY_RULES: readonly KnockOnRule[] = [
  rule(
    "supply-switch-opens-feed",
    1,
    "a shorted supply switch opens the fuse or fuse resistor before it",
    (view) =>
      every(
        view.supplySwitches.map((found) => short(found.fault)),
        opensOf(supplyFuses(view)),
      ),
  ),
  rule(
    "supply-switch-opens-line-fuse",
    0.3,
    "where no fuse resistor stands before it, the line fuse",
    (view) =>
      supplyFuses(view).length > 0
        ? []
        : every(
            view.supplySwitches.map((found) => short(found.fault)),
            opensOf(view.lineFuses),
          ),
  ),
  rule(
    "supply-switch-kills-feedback",
    0.3,
    "drain voltage reaches the control side: opto, reference, supply clamp",
    (view) => {
      const parts = view.inGroups("supply");
      return every(
        view.supplySwitches.map((found) => short(found.fault)),
        [
          ...ofKind(parts, "opto").map((part) => short(`${part.ref}.out`)),
          ...ofKind(parts, "zener").map((part) => short(part.ref)),
          ...ofKind(parts, "switcher").map((part) => short(`${part.ref}.vcc`)),
        ],
      );
    },
  ),
  rule("opto-passes-on", 0.25, "an opto whose output took the drain passes on to the reference", (view) => {
    const parts = view.inGroups("supply", "rail");
    return every(
      ofKind(parts, "opto").map((part) => short(`${part.ref}.out`)),
      ofKind(parts, "shuntref").map((part) => short(`${part.ref}.ka`)),
    );
  }),
  rule("clamp-open", 0.35, "without its clamp the supply switch is over-volted", (view) =>
    every(
      view
        .inGroups("supply")
        .filter((part) => part.kind === "diode" || part.kind === "zener")
        .filter((part) => view.supplySwitches.some((found) => netsOf(part).includes(found.high)))
        .map((part) => open(part.ref)),
      view.supplySwitches.map((found) => short(found.fault)),
    ),
  ),
  rule(
    "feedback-open-raises-rails",
    0.35,
    "with the feedback open every rail rises: what hangs on it dies",
    (view) => view.board.rails.flatMap((rail) => every(feedbackParts(view), fedBy(view, rail.net))),
  ),
  rule("regulator-through", 0.6, "a regulator shorted through over-volts what it feeds", (view) =>
    [...view.board.parts.values()]
      .filter((part) => part.kind === "regulator")
      .flatMap((part) => every([short(`${part.ref}.inout`)], fedBy(view, part.pins.get("out") ?? ""))),
  ),
  rule("leak-turns-switch-on", 0.5, "dirt from a gate to the bus or a supply turns the switch on", (view) =>
    view.motorSwitches.flatMap((found) => {
      const gate = found.gate;
      if (gate === null) return [];
      const near = [found.high, ...view.board.rails.map((rail) => rail.net)].filter((net) => net !== gate);
      return near.map((net) =>
        pair({ site: gate < net ? `${gate}~${net}` : `${net}~${gate}`, mode: "leaky" }, short(found.fault)),
      );
    }),
  ),
  rule("leak-to-logic", 0.25, "dirt that brings a higher rail to a controller pin kills the pin", (view) =>
    [...view.board.parts.values()]
      .filter((part) => part.kind === "controller")
      .flatMap((part) =>
        view.board.rails
          .filter((rail) => rail.volts > 5.5)
          .flatMap((rail) =>
            [...part.pins]
              .filter(([name, net]) => name !== "vdd" && name !== "gnd" && net !== rail.net)
              .map(([name, net]) =>
                pair(
                  { site: net < rail.net ? `${net}~${rail.net}` : `${rail.net}~${net}`, mode: "leaky" },
                  short(`${part.ref}.${name}`),
                ),
              ),
          ),
      ),
  ),
];

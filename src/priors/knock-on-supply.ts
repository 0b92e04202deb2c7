import type { Part } from "../board/board.ts";
import { said } from "../messages/said.ts";
import { type CircuitView, netsOf } from "./circuit-view.ts";
import {
  every,
  type Failing,
  type KnockOnRule,
  type Link,
  ofKind,
  open,
  opensOf,
  pair,
  rule,
  short,
  shortsOf,
} from "./knock-on-rule.ts";
import { LOGIC_VOLTS } from "./net-neighbours.ts";

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

/** Nets of the windings that a supply switch works into: its drain, and the feed at the other end. */
function primaryNets(view: CircuitView): ReadonlySet<string> {
  const high = new Set(view.supplySwitches.map((found) => found.high));
  const windings = [...view.board.parts.values()].flatMap((part) =>
    Object.values(part.value.windings ?? {}).map(({ pins }) =>
      pins.flatMap((pin) => part.pins.get(pin) ?? []),
    ),
  );
  return new Set(windings.filter((nets) => nets.some((net) => high.has(net))).flat());
}

/**
 * Fuse or low resistor between the bus and the small supply's transformer, or before its primary where the supply is fed from
 * elsewhere: it opens when the switch shorts.
 */
function supplyFuses(view: CircuitView): Part[] {
  const transformers = view.roles.switchers.flatMap(({ transformer }) =>
    transformer === null ? [] : (view.board.parts.get(transformer) ?? []),
  );
  const windings = new Set(transformers.flatMap(netsOf));
  const plus = view.roles.bus?.plus ?? "";
  const primary = primaryNets(view);
  return [...view.board.parts.values()].filter((part) => {
    if (part.kind !== "fuse" && !(part.kind === "resistor" && (part.value.ohms ?? 100) <= 47)) return false;
    const nets = netsOf(part);
    const between = nets.includes(plus) && nets.some((net) => windings.has(net));
    const before = view.groupOf.get(part.ref) === "supply" && nets.some((net) => primary.has(net));
    return (
      between ||
      before ||
      (part.kind === "fuse" && view.groupOf.get(part.ref) === "supply") ||
      isFeed(view, part)
    );
  });
}

/** Low resistors of the supply's stage that stand elsewhere: between its own winding and what feeds the switch's control. */
function controlFeeds(view: CircuitView): Part[] {
  const fuses = new Set(supplyFuses(view));
  return ofKind(view.inGroups("supply"), "resistor").filter(
    (part) => !fuses.has(part) && (part.value.ohms ?? 1e6) <= 47,
  );
}

/** A low resistor of the supply's stage on the bus, though no winding follows at once (a coil or a second fuse between). */
function isFeed(view: CircuitView, part: Part): boolean {
  return view.groupOf.get(part.ref) === "supply" && netsOf(part).includes(view.roles.bus?.plus ?? "");
}

/** A leak between two nets, spelled as the table spells it. */
function leak(one: string, other: string): Failing {
  return { site: one < other ? `${one}~${other}` : `${other}~${one}`, mode: "leaky" };
}

/** Nets one small resistor away. */
function throughSmallResistor(view: CircuitView, net: string): string[] {
  return view
    .on(net)
    .filter((part) => part.kind === "resistor" && (part.value.ohms ?? 1e6) <= 1000)
    .flatMap(netsOf)
    .filter((other) => other !== net && other !== view.board.zero);
}

/** Leaks from each switch input of a module to its other inputs and to the rails, each with the switch it turns on. */
function inputLeaks(view: CircuitView, part: Part): Link[] {
  const inputs = ["up", "vp", "wp", "un", "vn", "wn"].flatMap((name) => {
    const net = part.pins.get(`in${name}`);
    return net === undefined ? [] : [{ name, net }];
  });
  const others = [...inputs.map(({ net }) => net), ...view.board.rails.map((rail) => rail.net)];
  return inputs.flatMap(({ name, net }) =>
    others
      .filter((other) => other !== net)
      .map((other) => pair(leak(net, other), short(`${part.ref}.${name}`))),
  );
}

/** The small supply and its rails. */
export const SUPPLY_RULES: readonly KnockOnRule[] = [
  rule(
    "supply-switch-opens-feed",
    1,
    said`a shorted supply switch opens the fuse or fuse resistor before it`,
    (view) =>
      every(
        view.supplySwitches.map((found) => short(found.fault)),
        opensOf(supplyFuses(view)),
      ),
  ),
  rule(
    "supply-switch-opens-line-fuse",
    0.3,
    said`where no fuse resistor stands before it, the line fuse`,
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
    said`drain voltage reaches the control side: opto, reference, supply clamp`,
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
  rule(
    "supply-switch-burns-control-feed",
    0.15,
    said`drain voltage reaches the control side: the low resistor that feeds it from its own winding burns`,
    (view) =>
      every(
        view.supplySwitches.map((found) => short(found.fault)),
        opensOf(controlFeeds(view)),
      ),
  ),
  rule(
    "supply-switch-raises-rails",
    0.12,
    said`the last gulp of a dying supply switch lifts its rails: their clamps short`,
    (view) =>
      every(
        view.supplySwitches.map((found) => short(found.fault)),
        view.board.rails.flatMap((rail) =>
          shortsOf(ofKind(view.on(rail.net), "zener").filter((part) => part.pins.get("k") === rail.net)),
        ),
      ),
  ),
  rule(
    "opto-passes-on",
    0.25,
    said`an opto whose output took the drain passes on to the reference`,
    (view) => {
      const parts = view.inGroups("supply", "rail");
      return every(
        ofKind(parts, "opto").map((part) => short(`${part.ref}.out`)),
        ofKind(parts, "shuntref").map((part) => short(`${part.ref}.ka`)),
      );
    },
  ),
  rule("clamp-open", 0.35, said`without its clamp the supply switch is over-volted`, (view) =>
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
    said`with the feedback open every rail rises: what hangs on it dies`,
    (view) => view.board.rails.flatMap((rail) => every(feedbackParts(view), fedBy(view, rail.net))),
  ),
  rule("regulator-through", 0.6, said`a regulator shorted through over-volts what it feeds`, (view) =>
    [...view.board.parts.values()]
      .filter((part) => part.kind === "regulator")
      .flatMap((part) => every([short(`${part.ref}.inout`)], fedBy(view, part.pins.get("out") ?? ""))),
  ),
  rule(
    "leak-turns-switch-on",
    0.5,
    said`dirt from a gate to the bus or a supply turns the switch on`,
    (view) =>
      view.workingSwitches.flatMap((found) => {
        const gate = found.gate;
        if (gate === null) return [];
        const near = [found.high, ...view.board.rails.map((rail) => rail.net)].filter((net) => net !== gate);
        return near.map((net) => pair(leak(gate, net), short(found.fault)));
      }),
  ),
  rule(
    "leak-at-input-turns-leg-on",
    0.4,
    said`dirt from a module input to another input or a rail drives its switch against its partner`,
    (view) => ofKind([...view.board.parts.values()], "module").flatMap((part) => inputLeaks(view, part)),
  ),
  rule(
    "leak-to-logic",
    0.25,
    said`dirt that brings a higher rail to a controller pin kills the pin`,
    (view) =>
      view.board.rails
        .filter((rail) => rail.volts > LOGIC_VOLTS)
        .flatMap((rail) =>
          view.roles.controllers.flatMap(({ part }) => {
            const pins = [...(view.board.parts.get(part)?.pins ?? [])];
            return pins
              .filter(([name, net]) => name !== "vdd" && name !== "gnd" && net !== rail.net)
              .flatMap(([name, net]) =>
                [net, ...throughSmallResistor(view, net)]
                  .filter((near) => near !== rail.net)
                  .map((near) => pair(leak(near, rail.net), short(`${part}.${name}`))),
              );
          }),
        ),
  ),
];

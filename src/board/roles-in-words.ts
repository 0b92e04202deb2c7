import type { Board } from "./board.ts";
import { deriveRoles, type Roles } from "./roles.ts";

function list(title: string, items: readonly string[]): readonly string[] {
  return items.length === 0 ? [] : [`${title}: ${items.join(" ")}`];
}

function gateLines(roles: Roles): readonly string[] {
  return roles.gates.map((gate) => {
    const hung = [
      ...list("clamp", gate.clamps),
      ...list("pull-down", gate.pullDowns),
      ...list("through", gate.series),
    ];
    return `gate of ${gate.switch}: ${gate.net}${hung.length === 0 ? "" : `, ${hung.join(", ")}`}`;
  });
}

function railLines(roles: Roles): readonly string[] {
  return roles.rails.map((rail) => {
    const about = [
      ...(rail.from === null ? [] : [`from ${rail.from}`]),
      ...list("rectifier", rail.rectifiers),
      ...list("bulk", rail.bulk),
      ...list("decoupling", rail.decoupling),
      ...list("feeds", rail.loads),
    ];
    const head = `rail ${rail.name}: ${rail.net} to ${rail.back}, ${rail.volts} V`;
    return about.length === 0 ? head : `${head}, ${about.join(", ")}`;
  });
}

/** What was derived of a board, one line each, for a person to check. */
export function rolesInWords(board: Board): readonly string[] {
  const roles = deriveRoles(board);
  const { bus } = roles;
  return [
    bus === null ? "bus: none found" : `bus: ${bus.plus} to ${bus.minus} (by its ${bus.from})`,
    ...list("mains side", roles.line),
    ...list("line fuses", roles.lineFuses),
    ...list("inrush", roles.inrush),
    ...list("bridges", roles.bridges),
    ...list("bus capacitors", roles.busCapacitors),
    ...roles.boosts.map(
      (boost) => `boost: switch ${boost.switch}, diode ${boost.diode}, reactor ${boost.reactor}`,
    ),
    ...roles.resonants.map(
      (one) =>
        `resonant: switch ${one.switch.part}, coil ${one.coil}, ${list("capacitor", one.capacitors).join("")}`,
    ),
    ...roles.motorSwitches.map((one) => `motor switch ${one.site}: ${one.side}, phase ${one.phase}`),
    ...gateLines(roles),
    ...list("shunts", roles.shunts),
    ...roles.switchers.map(
      ({ part, transformer, clamp }) =>
        `off-line switcher: ${part}${transformer === null ? "" : ` into ${transformer}`}${clamp.length === 0 ? "" : `, ${list("clamp", clamp).join("")}`}`,
    ),
    ...railLines(roles),
    ...roles.controllers.map(
      (one) =>
        `controller ${one.part}: fed by ${one.rail ?? one.net}${one.decoupling.length === 0 ? "" : `, ${list("decoupling", one.decoupling).join("")}`}`,
    ),
  ];
}

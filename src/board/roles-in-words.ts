import { said } from "../messages/said.ts";
import type { Board } from "./board.ts";
import { deriveRoles, type Roles } from "./roles.ts";

/** A title and the parts under it; nothing where there are none. */
function list(items: readonly string[], words: (parts: string) => string): readonly string[] {
  return items.length === 0 ? [] : [words(items.join(" "))];
}

const decoupling = (parts: string) => said`decoupling: ${parts}`;
const clamp = (parts: string) => said`clamp: ${parts}`;

function gateLines(roles: Roles): readonly string[] {
  return roles.gates.map((gate) => {
    const hung = [
      ...list(gate.clamps, clamp),
      ...list(gate.pullDowns, (parts) => said`pull-down: ${parts}`),
      ...list(gate.series, (parts) => said`through: ${parts}`),
    ];
    return [said`gate of ${gate.switch}: ${gate.net}`, ...hung].join(", ");
  });
}

function railLines(roles: Roles): readonly string[] {
  return roles.rails.map((rail) =>
    [
      said`rail ${rail.name}: ${rail.net} to ${rail.back}, ${`${rail.volts} V`}`,
      ...(rail.from === null ? [] : [said`from ${rail.from}`]),
      ...list(rail.rectifiers, (parts) => said`rectifier: ${parts}`),
      ...list(rail.bulk, (parts) => said`bulk: ${parts}`),
      ...list(rail.decoupling, decoupling),
      ...list(rail.loads, (parts) => said`feeds: ${parts}`),
    ].join(", "),
  );
}

function busLine({ bus }: Roles): string {
  if (bus === null) return said`bus: none found`;
  return bus.from === "inverter legs"
    ? said`bus: ${bus.plus} to ${bus.minus} (by its inverter legs)`
    : said`bus: ${bus.plus} to ${bus.minus} (by its largest capacitor)`;
}

function switcherLine({ part, transformer, clamp: clamps }: Roles["switchers"][number]): string {
  const head =
    transformer === null
      ? said`off-line switcher: ${part}`
      : said`off-line switcher: ${part} into ${transformer}`;
  return [head, ...list(clamps, clamp)].join(", ");
}

/** What was derived of a board, one line each, for a person to check. */
export function rolesInWords(board: Board): readonly string[] {
  const roles = deriveRoles(board);
  return [
    busLine(roles),
    ...list(roles.line, (parts) => said`mains side: ${parts}`),
    ...list(roles.lineFuses, (parts) => said`line fuses: ${parts}`),
    ...list(roles.inrush, (parts) => said`inrush: ${parts}`),
    ...list(roles.bridges, (parts) => said`bridges: ${parts}`),
    ...list(roles.busCapacitors, (parts) => said`bus capacitors: ${parts}`),
    ...roles.boosts.map(
      (boost) => said`boost: switch ${boost.switch}, diode ${boost.diode}, reactor ${boost.reactor}`,
    ),
    ...roles.resonants.map(
      (one) =>
        said`resonant: switch ${one.switch.part}, coil ${one.coil}, capacitor: ${one.capacitors.join(" ")}`,
    ),
    ...roles.motorSwitches.map((one) => said`motor switch ${one.site}: ${one.side}, phase ${one.phase}`),
    ...gateLines(roles),
    ...list(roles.shunts, (parts) => said`shunts: ${parts}`),
    ...roles.switchers.map(switcherLine),
    ...railLines(roles),
    ...roles.controllers.map((one) =>
      [said`controller ${one.part}: fed by ${one.rail ?? one.net}`, ...list(one.decoupling, decoupling)].join(
        ", ",
      ),
    ),
  ];
}
